// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;
using testing::Not;

/// A demo of 300 batches, whose records are invented, on 2026-06-30.
class LossesOnTheCommandLine : public testing::Test {
  protected:
    void SetUp() override { ASSERT_EQ(run({"demo", log_, "--batches", "300"}).status, 0); }

    [[nodiscard]] nlohmann::json losses(std::vector<std::string> more = {}) const {
        std::vector<std::string> words{"losses", log_, "--json"};
        words.insert(words.end(), more.begin(), more.end());
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 0) << ran.err;
        return ran.json();
    }

    support::TemporaryFolder folder_;
    std::string log_ = folder_ / "demo.strikebook";
};

TEST_F(LossesOnTheCommandLine, AddUpOverCausesMonthsAndStations) {
    const nlohmann::json json = losses();
    ASSERT_GT(json["lost"].get<int>(), 0);
    int byCause = 0, byMonth = 0, byStation = 0;
    double running = 0;
    for (const auto& cause : json["causes"]) {
        byCause += cause["count"].get<int>();
        running += cause["share"].get<double>();
        EXPECT_NEAR(cause["running_share"].get<double>(), running, 1e-9);
        EXPECT_LE(cause["as_counted"]["low"].get<double>(), cause["share"].get<double>());
        EXPECT_GE(cause["as_counted"]["high"].get<double>(), cause["share"].get<double>());
    }
    for (const auto& month : json["months"]) byMonth += month["lost"].get<int>();
    for (const auto& station : json["stations"]) byStation += station["lost"].get<int>();
    EXPECT_EQ(byCause, json["lost"]);
    EXPECT_EQ(byMonth, json["lost"]);
    EXPECT_EQ(byStation, json["lost"]);
    EXPECT_NEAR(running, 1, 1e-9);
}

TEST_F(LossesOnTheCommandLine, ListRarestFirstWhatIsOutOfTheOrdinary) {
    const nlohmann::json json = losses();
    double before = 0;
    for (const auto& batch : json["out_of_the_ordinary"]) {
        EXPECT_LT(batch["chance_of_so_few"].get<double>(), json["false_alarms"].get<double>());
        EXPECT_GE(batch["chance_of_so_few"].get<double>(), before);
        before = batch["chance_of_so_few"].get<double>();
        EXPECT_GT(batch["past_batches"].get<int>(), 0);
    }
}

TEST_F(LossesOnTheCommandLine, KeepToSpanPlantAndMethod) {
    const int all = losses()["stood"];
    EXPECT_LT(losses({"--from", "2026-03-01", "--until", "2026-04-30"})["stood"].get<int>(), all);
    const int hebe = losses({"--species", "Hebe albicans"})["stood"];
    EXPECT_LT(hebe, all);
    EXPECT_LE(losses({"--species", "Hebe albicans", "--method", "media tray"})["stood"].get<int>(), hebe);
}

TEST_F(LossesOnTheCommandLine, SaySoWhereNothingStood) {
    const support::Ran ran = run({"losses", log_, "--from", "1950-01-01", "--until", "1950-12-31"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("No cuttings stood in this time"));
    EXPECT_THAT(ran.out, Not(HasSubstr("What went with rooting")));
}

TEST_F(LossesOnTheCommandLine, GoNoFurtherThanToday) {
    const nlohmann::json json = losses({"--from", "2026-03-01", "--until", "2027-12-31"});
    EXPECT_EQ(json["until"], "2026-06-30");
    ASSERT_FALSE(json["months"].empty());
    EXPECT_EQ(json["months"].back()["month"], "2026-06");
    const support::Ran ran = run({"losses", log_, "--from", "2027-01-01"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("--from is after today"));
}

TEST_F(LossesOnTheCommandLine, AreSaidInWordsWithTheirTables) {
    const support::Ran ran = run({"losses", log_});
    EXPECT_EQ(ran.status, 0) << ran.err;
    for (const char* words : {"of the cuttings that stood were found lost", "lost to", "running", "month", "station",
                              "What went with rooting"})
        EXPECT_THAT(ran.out, HasSubstr(words));
}

TEST_F(LossesOnTheCommandLine, RefuseDaysTheWrongWayRoundAndNamesThatAreNotThere) {
    const support::Ran days = run({"losses", log_, "--from", "2026-05-01", "--until", "2026-04-01"});
    EXPECT_EQ(days.status, 2);
    EXPECT_THAT(days.err, HasSubstr("--from is later than --until"));
    EXPECT_EQ(run({"losses", log_, "--from", "yesterday"}).status, 2);
    const support::Ran plant = run({"losses", log_, "--species", "Quercus nowhere"});
    EXPECT_EQ(plant.status, 1);
    EXPECT_THAT(plant.err, HasSubstr("Quercus nowhere"));
    EXPECT_EQ(run({"losses", log_, "--method", "cold frame"}).status, 1);
}

using SuspectsOnTheCommandLine = LossesOnTheCommandLine;

TEST_F(SuspectsOnTheCommandLine, ComeWithWhatSpeaksForAndAgainstThemAndAWarning) {
    const nlohmann::json unusual = losses()["out_of_the_ordinary"];
    ASSERT_FALSE(unusual.empty()) << "the demo has a batch that failed";
    const std::string code = unusual.front()["batch"];
    const support::Ran ran = run({"suspects", log_, "--batch", code, "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json json = ran.json();
    EXPECT_EQ(json["batch"], code);
    EXPECT_LT(json["chance_of_so_few"].get<double>(), 0.05) << "out of the ordinary here as in the list";
    EXPECT_THAT(json["warning"].get<std::string>(), HasSubstr("not an experiment"));
    double before = 1e300;
    for (const auto& suspect : json["suspects"]) {
        EXPECT_FALSE(suspect["for"].empty()) << suspect;
        EXPECT_LE(suspect["odds"].get<double>(), before);
        before = suspect["odds"];
        EXPECT_FALSE(suspect["change_next_time"].get<std::string>().empty()) << suspect;
    }
    const std::string text = run({"suspects", log_, "--batch", code}).out;
    EXPECT_THAT(text, HasSubstr("What may have gone wrong with " + code));
    EXPECT_THAT(text, HasSubstr("not an experiment"));
}

TEST_F(SuspectsOnTheCommandLine, RefuseABatchThatIsNotThere) {
    const support::Ran ran = run({"suspects", log_, "--batch", "B999999Z"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("There is no batch"));
    EXPECT_EQ(run({"suspects", log_}).status, 2);
}

}  // namespace
