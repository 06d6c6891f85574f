// SPDX-License-Identifier: MIT
// The long work of the calibration can be watched and called off: in this process, and with Ctrl+C as a process of its own.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <string>
#include <vector>

#include "tests/calibration/simulation.h"
#include "tests/support/scratch_folder.h"

extern char** environ;

namespace {

/// strikebook-calibration, with its error stream to be read.
class Program {
  public:
    explicit Program(std::vector<std::string> arguments) {
        std::array<int, 2> ends{};
        if (::pipe2(ends.data(), O_CLOEXEC) != 0) return;
        posix_spawn_file_actions_t actions;
        posix_spawn_file_actions_init(&actions);
        posix_spawn_file_actions_adddup2(&actions, ends[1], STDERR_FILENO);
        arguments.insert(arguments.begin(), STRIKEBOOK_CALIBRATION);
        std::vector<char*> words;
        for (std::string& argument : arguments) words.push_back(argument.data());
        words.push_back(nullptr);
        hasStarted_ = ::posix_spawn(&process_, words.front(), &actions, nullptr, words.data(), environ) == 0;
        posix_spawn_file_actions_destroy(&actions);
        ::close(ends[1]);
        said_ = ends[0];
    }
    ~Program() { ::close(said_); }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    [[nodiscard]] bool hasStarted() const { return hasStarted_; }
    /// The next that it says; waits for it. Empty at the end.
    [[nodiscard]] std::string says() const {
        std::array<char, 4096> block{};
        const auto count = ::read(said_, block.data(), block.size());
        return {block.data(), static_cast<std::size_t>(count > 0 ? count : 0)};
    }
    void interrupt() const { ::kill(process_, SIGINT); }
    [[nodiscard]] int status() const {
        int state = 0;
        ::waitpid(process_, &state, 0);
        return WIFEXITED(state) ? WEXITSTATUS(state) : -1;
    }

  private:
    pid_t process_{};
    int said_ = -1;
    bool hasStarted_ = false;
};

TEST(CalibrationProgress, RisesToOneAndEndsTheWorkWhenItSaysSo) {
    const std::vector<calibration::Study> all = calibration::allStudies();
    const std::vector<calibration::Study> quick{all[1]};
    double last = -1;
    int told = 0;
    EXPECT_TRUE(calibration::simulate(quick, {.seasons = 20, .seed = 1, .threads = 2}, [&](double share) {
        EXPECT_GE(share, last);
        last = share;
        return ++told > 0;
    }));
    EXPECT_NEAR(last, 1, 1e-9);
    EXPECT_GT(told, 2);
    int toldBefore = 0;
    EXPECT_FALSE(calibration::simulate(quick, {.seasons = 20, .seed = 1, .threads = 1},
                                       [&](double) { return ++toldBefore < 2; }));
    EXPECT_EQ(toldBefore, 2) << "one thread goes no further than the piece it is at";
}

TEST(CalibrationProgram, SaysHowFarItIsAndLeavesNothingBehindOnCtrlC) {
    const support::ScratchFolder folder;
    const Program program({"--seasons", "3000", "--threads", "1", "--to", (folder / "page.md").string()});
    ASSERT_TRUE(program.hasStarted());
    EXPECT_TRUE(program.says().starts_with("0 %"));
    program.interrupt();
    std::string rest;
    for (std::string more = program.says(); !more.empty(); more = program.says()) rest += more;
    EXPECT_TRUE(rest.ends_with("Stopped; nothing was written.\n")) << rest;
    EXPECT_EQ(program.status(), 130);
    EXPECT_TRUE(folder.names().empty());
}

TEST(CalibrationProgram, WritesTheWholePageWhereItIsWanted) {
    const support::ScratchFolder folder;
    const Program program({"--seasons", "1", "--to", (folder / "page.md").string()});
    ASSERT_TRUE(program.hasStarted());
    std::string said;
    for (std::string more = program.says(); !more.empty(); more = program.says()) said += more;
    EXPECT_NE(said.find("100 %"), std::string::npos) << said;
    EXPECT_EQ(program.status(), 0);
    EXPECT_EQ(folder.names(), std::vector<std::string>{"page.md"});
    EXPECT_TRUE(support::contentOf(folder / "page.md").starts_with("# How often the figures are right"));
}

}  // namespace
