// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "db/actions/event_actions.h"
#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using namespace std::chrono_literals;
using support::run;
using testing::HasSubstr;

class StationClimateCommand : public testing::Test {
  protected:
    /// The demo, whose first station with readings is asked about.
    StationClimateCommand() {
        EXPECT_EQ(run({"demo", log_, "--batches", "20"}).status, 0);
        db::OpenOptions options;
        options.clock = [] { return std::chrono::sys_seconds{}; };
        const db::Logbook logbook = db::Logbook::open(log_, options);
        const core::Shelves shelves = logbook.shelves();
        const auto newest = logbook.newestReadings();
        EXPECT_FALSE(newest.empty());
        if (!newest.empty()) station_ = core::find(shelves.stations, newest.front().station)->name;
    }

    support::TemporaryFolder folder_;
    std::string log_ = folder_ / "demo.strikebook";
    std::string station_;
};

TEST_F(StationClimateCommand, GivesTheFiguresOfAllThatWasRead) {
    const support::Ran ran = run({"climate", log_, "--station", station_, "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json json = ran.json();
    EXPECT_EQ(json["station"], station_);
    ASSERT_FALSE(json["figures"].empty());
    for (const nlohmann::json& each : json["figures"]) {
        EXPECT_LE(each["hours_covered"], each["hours"]) << each;
        EXPECT_LE(each["lowest"], each["mean"]) << each;
        EXPECT_LE(each["mean"], each["highest"]) << each;
        for (const nlohmann::json& band : each["bands"]) EXPECT_FALSE(band["source"].get<std::string>().empty());
    }
    const std::string text = run({"climate", log_, "--station", station_}).out;
    EXPECT_THAT(text, HasSubstr("Climate of " + station_));
    EXPECT_THAT(text, HasSubstr("outside its band"));
    EXPECT_THAT(text, HasSubstr("good: "));
}

TEST_F(StationClimateCommand, TakesDaysAndSaysWhereNothingWasRead) {
    const support::Ran none =
        run({"climate", log_, "--station", station_, "--from", "1950-01-01", "--to", "1950-01-05"});
    EXPECT_EQ(none.status, 0) << none.err;
    EXPECT_THAT(none.out, HasSubstr("Nothing was read at"));
}

TEST_F(StationClimateCommand, SaysWhatIsWrong) {
    EXPECT_EQ(run({"climate", log_, "--station", "Nowhere"}).status, 1);
    EXPECT_THAT(run({"climate", log_, "--station", "Nowhere"}).err, HasSubstr("There is no station \"Nowhere\""));
    EXPECT_THAT(run({"climate", log_, "--station", station_, "--batch", "B1"}).err,
                HasSubstr("There is no batch \"B1\""));
    const support::Ran late =
        run({"climate", log_, "--station", station_, "--from", "2026-05-01", "--to", "2026-04-01"});
    EXPECT_EQ(late.status, 2);
    EXPECT_THAT(late.err, HasSubstr("--from is later"));
    EXPECT_EQ(run({"climate", log_, "--station", station_, "--from", "soon"}).status, 2);
    EXPECT_EQ(run({"climate", log_, "--station", station_, "--air", "20"}).status, 2);
    EXPECT_EQ(run({"climate", "vapour", "--air", "20", "--humidity", "50", "--batch", "B1"}).status, 2);
}

}  // namespace
