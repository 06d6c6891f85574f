// SPDX-License-Identifier: MIT
#include "core/climate/logger_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "core/climate/logger_format.h"
#include "tests/support/builders.h"

namespace {

using namespace std::chrono_literals;
using core::Sample;
using support::someShelves;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const core::Moment loggedUntil = std::chrono::sys_days(2026y / 6 / 30) + 10h;

core::LoggerDay airOf(std::vector<Sample> samples) {
    return {.station = support::tubNorth,
            .quantity = core::Quantity::AirTemperature,
            .day = 2026y / 6 / 30,
            .samples = std::move(samples)};
}

std::vector<std::string> loggerSentences(const core::LoggerDay& day) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(day, someShelves(), loggedUntil))
        sentences.push_back(refusal.sentence);
    return sentences;
}

TEST(LoggerDayRules, PassADayInOrder) {
    EXPECT_THAT(loggerSentences(airOf({{0, -30}, {1, 20.5}, {36'000, 60}})), IsEmpty());
    core::LoggerDay before = airOf({{86'399, 20}});
    before.day = 2026y / 6 / 29;
    EXPECT_THAT(loggerSentences(before), IsEmpty());
}

TEST(LoggerDayRules, RefuseValuesOutOfOrderAndSuchAsNoMeterShows) {
    for (const auto& samples :
         std::vector<std::vector<Sample>>{{{2, 20}, {1, 20}}, {{1, 20}, {1, 20}}, {{-1, 20}}, {{86'400, 20}}})
        EXPECT_THAT(loggerSentences(airOf(samples)), ElementsAre(HasSubstr("out of order, or two of one second")));
    EXPECT_THAT(loggerSentences(airOf({{3600, 61}})),
                ElementsAre("The logger's air temperature at 2026-06-30T01:00:00Z is 61 C; -30 to 60 C is allowed."));
    EXPECT_EQ(loggerSentences(airOf({{0, std::numeric_limits<double>::quiet_NaN()}})).size(), 1U);
    EXPECT_THAT(loggerSentences(airOf({})), ElementsAre(HasSubstr("has no values")));
}

TEST(LoggerDayRules, RefuseAnUnknownStationADayOfNoCalendarAndWhatIsStillToCome) {
    core::LoggerDay day = airOf({{0, 20}});
    day.station = {};
    EXPECT_THAT(loggerSentences(day), ElementsAre(HasSubstr("Station is not given")));
    EXPECT_THAT(loggerSentences(airOf({{36'300, 20}})), IsEmpty()) << "a clock may run a little fast";
    EXPECT_THAT(loggerSentences(airOf({{36'301, 20}})),
                ElementsAre("Moment is 2026-06-30T10:05:01Z; 1800-01-01 to now is allowed."));
    for (const core::Date bad : {core::Date(2026y / 2 / 30), core::Date(1799y / 12 / 31)}) {
        day = airOf({{0, 20}});
        day.day = bad;
        EXPECT_THAT(loggerSentences(day), ElementsAre(HasSubstr("1800-01-01 to today is allowed")));
    }
}

TEST(MergedSamples, KeepWhatWasThereFirstAndCount) {
    const core::MergedSamples merged =
        core::mergedSamples({{10, 1}, {20, 2}, {30, 3}}, {{5, 0}, {20, 2}, {30, 9}, {40, 4}});
    EXPECT_THAT(merged.samples, ElementsAre(Sample{5, 0}, Sample{10, 1}, Sample{20, 2}, Sample{30, 3}, Sample{40, 4}));
    EXPECT_EQ(merged.added, 2);
    EXPECT_EQ(merged.known, 1);
    EXPECT_EQ(merged.differing, 1);
}

TEST(MergedSamples, OfNothingAreTheOthers) {
    const std::vector<Sample> some{{10, 1}, {20, 2}};
    EXPECT_EQ(core::mergedSamples({}, some).samples, some);
    EXPECT_EQ(core::mergedSamples(some, {}).samples, some);
    EXPECT_EQ(core::mergedSamples(some, some).known, 2);
    EXPECT_EQ(core::mergedSamples(some, some).added, 0);
}

TEST(LoggerFormatRules, WantANameOfTheirOwnAndColumns) {
    core::LoggerFormat format{.id = {2}, .name = "greenhouse", .header = "time;t", .mapping = "{}"};
    EXPECT_THAT(core::faultsIn(format, {format}), IsEmpty());
    EXPECT_EQ(core::faultsIn(format, {{.id = {1}, .name = "greenhouse"}}).front().field, "Name");
    format.mapping = " ";
    EXPECT_EQ(core::faultsIn(format, {}).front().field, "Columns of the file");
    format.mapping = std::string(100'001, 'x');
    EXPECT_EQ(core::faultsIn(format, {}).front().allowed, "text of at most 100000 characters");
}

}  // namespace
