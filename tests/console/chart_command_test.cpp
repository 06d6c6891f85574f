// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

class Chart : public testing::Test {
  protected:
    void SetUp() override { ASSERT_EQ(run({"demo", log_}).status, 0); }

    support::TemporaryFolder folder_;
    std::string log_ = folder_ / "demo.strikebook";
};

TEST_F(Chart, GivesEveryBatchItsOwnLimitsAroundOneCentre) {
    const auto ran = run({"chart", log_, "--species", "Hebe albicans", "--method", "media tray", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    ASSERT_GE(json["batches"].size(), 2u);
    for (const auto& batch : json["batches"]) {
        if (batch["signal"] == "nothing_known") continue;
        const double rate = batch["rate"], low = batch["limits"]["low"], high = batch["limits"]["high"];
        EXPECT_LE(low, json["centre"].get<double>());
        EXPECT_GE(high, json["centre"].get<double>());
        EXPECT_EQ(batch["signal"] == "inside", rate >= low && rate <= high) << batch;
    }
    const auto& newest = json["newest"];
    ASSERT_FALSE(newest.is_null());
    EXPECT_GE(newest["chance_of_so_few"].get<double>(), 0);
    EXPECT_LE(newest["chance_of_so_few"].get<double>(), 1);
    EXPECT_EQ(newest["past_batches"].get<std::size_t>() + 1, json["batches"].size());
}

TEST_F(Chart, DrawsTheLimitsCloserWhereMoreFalseAlarmsAreAllowed) {
    const auto widthAt = [this](const char* falseAlarms) {
        const auto json = run({"chart", log_, "--species", "Hebe albicans", "--method", "media tray", "--false-alarms",
                               falseAlarms, "--json"})
                              .json();
        double width = 0;
        for (const auto& batch : json["batches"])
            width += batch["limits"]["high"].get<double>() - batch["limits"]["low"].get<double>();
        return width;
    };
    EXPECT_GT(widthAt("0.001"), widthAt("0.2"));
}

TEST_F(Chart, SaysInWordsWhatIsOutOfTheOrdinary) {
    const auto ran = run({"chart", log_, "--species", "Hebe albicans", "--method", "media tray"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("put about 2.7 batches in a thousand outside."));
    EXPECT_THAT(ran.out, HasSubstr("The newest batch. By day "));
}

TEST_F(Chart, RefusesAMethodThatIsNotThereAndAShareThatIsNone) {
    const auto unknown = run({"chart", log_, "--species", "Hebe albicans", "--method", "cold frame"});
    EXPECT_EQ(unknown.status, 1);
    EXPECT_THAT(unknown.err, HasSubstr("There is no method \"cold frame\" in "));
    const auto none =
        run({"chart", log_, "--species", "Hebe albicans", "--method", "media tray", "--false-alarms", "3"});
    EXPECT_EQ(none.status, 2);
    EXPECT_THAT(none.err, HasSubstr("--false-alarms is \"3\"; a share of batches from 0.000001 to 0.5 is allowed"));
}

}  // namespace
