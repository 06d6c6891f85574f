// SPDX-License-Identifier: MIT
// The program itself, as a process of its own: that it starts, answers and ends with the right status. All else is tested in this process.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <nlohmann/json.hpp>

#include "tests/db/exchange/exchange_folder.h"

namespace {

struct Ended {
    int status{};
    std::string out;  // with what it said on the error stream
};

Ended ended(const std::string& arguments) {
    Ended result;
    FILE* pipe = ::popen(("'" STRIKEBOOK_CLI "' " + arguments + " 2>&1").c_str(), "r");
    if (pipe == nullptr) return {.status = -1, .out = "popen failed"};
    std::array<char, 4096> block{};
    while (const std::size_t count = std::fread(block.data(), 1, block.size(), pipe))
        result.out.append(block.data(), count);
    const int state = ::pclose(pipe);
    result.status = WIFEXITED(state) ? WEXITSTATUS(state) : -1;
    return result;
}

TEST(StrikebookCli, AnswersWithStatusZeroOneAndTwo) {
    const Ended rates = ended("rates 18/24 11/24 --json");
    EXPECT_EQ(rates.status, 0);
    EXPECT_EQ(nlohmann::json::parse(rates.out)["arms"][0]["rate"], 0.75);
    EXPECT_EQ(ended("due /no/such/file").status, 1);
    EXPECT_EQ(ended("rates 30/24 11/24").status, 2);
    EXPECT_EQ(ended("").status, 2);
}

TEST(StrikebookCli, IsNotContentWithAFullDisk) {
    EXPECT_EQ(ended("rates 18/24 11/24 --json > /dev/full").status, 1);
}

TEST(StrikebookCli, DoesTheMainJobWithoutADisplay) {
    const support::TemporaryFolder folder;
    const std::string log = "'" + std::string(folder / "demo.strikebook") + "'";
    EXPECT_EQ(ended("demo " + log + " --batches 20").status, 0);
    EXPECT_EQ(ended("due " + log).status, 0);
    EXPECT_EQ(ended("compare " + log + " --by method").status, 0);
    EXPECT_EQ(ended("verify " + log).status, 0);
}

TEST(StrikebookCli, PrintsWithoutRemarksOnTheMachine) {
    const support::TemporaryFolder folder;
    const std::string log = "'" + std::string(folder / "demo.strikebook") + "'";
    ASSERT_EQ(ended("demo " + log + " --batches 20").status, 0);
    const auto batches = nlohmann::json::parse(ended("due " + log + " --on 9999-12-31 --json").out)["due"];
    ASSERT_FALSE(batches.empty());
    const std::string code = batches[0]["batch"];
    ::unsetenv("XDG_RUNTIME_DIR");
    const Ended print = ended("print " + log + " --batch " + code + " --to '" + std::string(folder / "a.pdf") + "'");
    EXPECT_EQ(print.status, 0);
    EXPECT_THAT(print.out, testing::StartsWith("Printed " + code));
}

}  // namespace
