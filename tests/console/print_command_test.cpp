// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

TEST(PrintCommand, WritesAPdfAndReplacesAnOlderOne) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook", pdf = folder / "batch.pdf";
    ASSERT_EQ(run({"demo", log, "--batches", "10"}).status, 0);
    ASSERT_EQ(run({"export", log, folder / "out"}).status, 0);
    const std::string batches = folder.read("out/batches.csv");
    const std::size_t start = batches.find("\r\n") + 2;
    const std::string code = batches.substr(start, batches.find(',', start) - start);
    folder.write("batch.pdf", "older");
    const support::Ran ran = run({"print", log, "--batch", code, "--to", pdf, "--paper", "Letter"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(folder.read("batch.pdf").starts_with("%PDF-"));
    EXPECT_EQ(run({"print", log, "--batch", code, "--to", folder / "nowhere/batch.pdf"}).status, 1);
}

TEST(PrintCommand, SaysWhatIsWrong) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook", pdf = folder / "batch.pdf";
    ASSERT_EQ(run({"create", log}).status, 0);
    EXPECT_THAT(run({"print", log, "--to", pdf}).err,
                HasSubstr("Of --batch CODE, --round and --session DATE one is needed"));
    EXPECT_THAT(run({"print", log, "--batch", "B1"}).err, HasSubstr("--to FILE.pdf is missing"));
    EXPECT_THAT(run({"print", log, "--batch", "B1", "--to", log}).err, HasSubstr("ends in .pdf"));
    EXPECT_THAT(run({"print", log, "--batch", "B1", "--to", pdf, "--paper", "A3"}).err, HasSubstr("A4 or Letter"));
    const support::Ran none = run({"print", log, "--batch", "B1", "--to", pdf});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("There is no batch \"B1\""));
    EXPECT_FALSE(std::filesystem::exists(pdf));
}

}  // namespace
