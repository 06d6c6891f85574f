// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

class LabelsCommand : public testing::Test {
  protected:
    LabelsCommand() {
        EXPECT_EQ(run({"create", log_}).status, 0);
        std::filesystem::create_directories(folder_ / "tables");
        folder_.write("tables/batches.csv",
                      "batch,stuck_on,species,method,station,stuck\r\n"
                      "B1,2026-06-10,Hebe albicans,media tray,Bench west,12\r\n"
                      "B2,2026-06-10,Hebe albicans,media tray,Bench west,8\r\n"
                      "B3,2026-06-11,Hebe albicans,media tray,Bench west,9\r\n");
        folder_.write("tables/checks.csv", "batch,checked_on,rooted\r\n");
        const support::Ran imported = run({"import", log_, folder_ / "tables"});
        EXPECT_EQ(imported.status, 0) << imported.err << imported.out;
    }

    support::TemporaryFolder folder_;
    std::string log_ = folder_ / "bench.strikebook";
    std::string pdf_ = folder_ / "out.pdf";
};

TEST_F(LabelsCommand, WritesTheLabelsOfADay) {
    const support::Ran ran = run({"labels", log_, "--session", "2026-06-10", "--to", pdf_});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("2 batches"));
    EXPECT_TRUE(folder_.read("out.pdf").starts_with("%PDF-"));
}

TEST_F(LabelsCommand, SaysForMachinesOnWhichSheetAndHowManyPages) {
    const support::Ran ran =
        run({"labels", log_, "--session", "2026-06-10", "--to", pdf_, "--sheet", "a4-21", "--start", "21", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["labels"], 2);
    EXPECT_EQ(ran.json()["sheet"], "a4-21");
    EXPECT_EQ(ran.json()["pages"], 2);
}

TEST_F(LabelsCommand, SaysWhatIsWrong) {
    const auto fault = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"labels", log_, "--session", "2026-06-10", "--to", pdf_};
        words.insert(words.end(), more.begin(), more.end());
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 2);
        return ran.err;
    };
    EXPECT_THAT(fault({"--sheet", "a5"}), HasSubstr("a4-21, a4-65"));
    EXPECT_THAT(fault({"--start", "22"}), HasSubstr("1 to 21"));
    EXPECT_THAT(fault({"--start", "0"}), HasSubstr("1 to 21"));
    EXPECT_THAT(run({"labels", log_, "--to", pdf_}).err, HasSubstr("--session DATE is missing"));
    EXPECT_THAT(run({"labels", log_, "--session", "today", "--to", pdf_}).err, HasSubstr("--session"));
    EXPECT_THAT(run({"labels", log_, "--session", "2026-06-10", "--to", log_}).err, HasSubstr("ends in .pdf"));
    for (const char* offset : {"1", "0.3,0", "11,0", "x,y", "1,", "1,2,3"})
        EXPECT_THAT(fault({"--offset", offset}), HasSubstr("steps of 0.5 from -10 to 10")) << offset;
    const support::Ran none = run({"labels", log_, "--session", "2026-06-09", "--to", pdf_});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("Nothing was stuck on 9 June 2026"));
    EXPECT_FALSE(std::filesystem::exists(pdf_));
}

TEST_F(LabelsCommand, MovesTheLabelsAndPrintsAPageToFindTheOffset) {
    EXPECT_EQ(run({"labels", log_, "--session", "2026-06-10", "--to", pdf_, "--offset", "-0.5,1"}).status, 0);
    const support::Ran page =
        run({"labels", log_, "--calibration", "--sheet", "a4-65", "--offset", "0.5,-1.5", "--to", pdf_, "--json"});
    ASSERT_EQ(page.status, 0) << page.err;
    EXPECT_EQ(page.json()["calibration"], true);
    EXPECT_EQ(page.json()["sheet"], "a4-65");
    EXPECT_TRUE(folder_.read("out.pdf").starts_with("%PDF-"));
}

TEST_F(LabelsCommand, StandsBesidePrintedSheetsOfRoundAndSession) {
    EXPECT_EQ(run({"print", log_, "--round", "--to", pdf_}).status, 0);
    EXPECT_TRUE(folder_.read("out.pdf").starts_with("%PDF-"));
    const support::Ran session = run({"print", log_, "--session", "2026-06-11", "--to", pdf_});
    EXPECT_EQ(session.status, 0) << session.err;
    EXPECT_THAT(session.out, HasSubstr("Session of 11 June 2026"));
    EXPECT_EQ(run({"print", log_, "--session", "2026-06-09", "--to", pdf_}).status, 1);
    EXPECT_EQ(run({"print", log_, "--round", "--batch", "B1", "--to", pdf_}).status, 2);
}

}  // namespace
