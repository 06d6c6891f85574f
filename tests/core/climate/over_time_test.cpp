// SPDX-License-Identifier: MIT
// Sums over uneven readings against an integration by another way: many thin slices of the same straight lines.
#include "core/climate/over_time.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "stats/numeric/seeded_random.h"

namespace {

using core::Moment;
using core::TimedValue;
using core::TimeSpan;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using testing::HasSubstr;

const Moment midnight{std::chrono::sys_days{std::chrono::year{2026} / 5 / 1}};

TimeSpan day() {
    return {.from = midnight, .to = midnight + hours{24}, .longestGap = hours{3}};
}

/// Light of a lamp and a passing sky at uneven moments, from the evening before to the morning after.
std::vector<TimedValue> unevenReadings(stats::SeededRandom& random, double low, double high) {
    std::vector<TimedValue> readings;
    for (Moment at = midnight - hours{2}; at < midnight + hours{27}; at += seconds{30 + random.below(7200)})
        readings.push_back({.at = at, .value = low + (high - low) * random.uniform()});
    return readings;
}

double lineAt(const std::vector<TimedValue>& readings, double second) {
    const auto secondsOf = [](Moment at) { return static_cast<double>((at - midnight).count()); };
    for (std::size_t i = 1; i < readings.size(); ++i)
        if (second <= secondsOf(readings[i].at)) {
            const double before = secondsOf(readings[i - 1].at), after = secondsOf(readings[i].at);
            return readings[i - 1].value +
                   (readings[i].value - readings[i - 1].value) * (second - before) / (after - before);
        }
    return readings.back().value;
}

/// Midpoints of slices of a second.
template <class Of>
double sliced(const std::vector<TimedValue>& readings, Of of) {
    double sum = 0;
    for (int second = 0; second < 24 * 3600; ++second) sum += of(lineAt(readings, second + 0.5));
    return sum;
}

TEST(DailyLight, EqualsASlicedIntegrationOfUnevenReadings) {
    stats::SeededRandom random(1);
    for (int times = 0; times < 5; ++times) {
        const auto readings = unevenReadings(random, 0, 400);
        const core::SumOverTime light = core::dailyLight(readings, day()).value();
        const double slices = sliced(readings, [](double value) { return value; }) / 1e6;
        EXPECT_NEAR(light.sum, slices, 0.001 * slices);
        EXPECT_EQ(light.share(), 1);
        EXPECT_TRUE(light.gaps.empty());
    }
}

TEST(DailyLight, OfAHalfSineComesCloseToItsIntegralInClosedForm) {
    stats::SeededRandom random(2);
    std::vector<TimedValue> readings{{.at = midnight, .value = 0}};
    for (Moment at = midnight + hours{6}; at <= midnight + hours{18}; at += seconds{60 + random.below(600)})
        readings.push_back(
            {.at = at,
             .value = 500 * std::sin(std::numbers::pi * static_cast<double>((at - midnight - hours{6}).count()) /
                                     (12 * 3600.0))});
    readings.push_back({.at = midnight + hours{18}, .value = 0});
    readings.push_back({.at = midnight + hours{24}, .value = 0});
    const TimeSpan span{.from = midnight, .to = midnight + hours{24}, .longestGap = hours{7}};
    const double exact = 500 * 12 * 3600 * 2 / std::numbers::pi / 1e6;
    EXPECT_NEAR(core::dailyLight(readings, span).value().sum, exact, 0.001 * exact);
}

TEST(DailyLight, OfALampThatIsSwitchedEqualsHoursTimesStrength) {
    // On from 06:00 to 22:00: two readings of one moment are a jump.
    const std::vector<TimedValue> readings{{midnight, 0},
                                           {midnight + hours{6}, 0},
                                           {midnight + hours{6}, 150},
                                           {midnight + hours{22}, 150},
                                           {midnight + hours{22}, 0},
                                           {midnight + hours{24}, 0}};
    const TimeSpan span{.from = midnight, .to = midnight + hours{24}, .longestGap = hours{20}};
    EXPECT_NEAR(core::dailyLight(readings, span).value().sum, core::dailyLightOf(150, 16).value(), 1e-12);
}

TEST(DailyLight, LeavesGapsOutAndSaysWhichTheyAre) {
    const std::vector<TimedValue> readings{{midnight + hours{8}, 100},
                                           {midnight + hours{9}, 100},
                                           {midnight + hours{14}, 100},
                                           {midnight + hours{15}, 100}};
    const core::SumOverTime light = core::dailyLight(readings, day()).value();
    EXPECT_NEAR(light.sum, core::dailyLightOf(100, 2).value(), 1e-12);
    EXPECT_EQ(light.covered, hours{2});
    ASSERT_EQ(light.gaps.size(), 3U);
    EXPECT_EQ(light.gaps[0], (core::TimeGap{midnight, midnight + hours{8}}));
    EXPECT_EQ(light.gaps[1], (core::TimeGap{midnight + hours{9}, midnight + hours{14}}));
    EXPECT_EQ(light.gaps[2], (core::TimeGap{midnight + hours{15}, midnight + hours{24}}));
    EXPECT_NEAR(light.share(), 2.0 / 24, 1e-12);
}

TEST(DailyLight, OfNoReadingAndOfOneIsAllGap) {
    for (const std::vector<TimedValue>& readings :
         {std::vector<TimedValue>{}, std::vector<TimedValue>{{midnight + hours{12}, 200}},
          std::vector<TimedValue>{{midnight - hours{9}, 200}, {midnight - hours{8}, 200}}}) {
        const core::SumOverTime light = core::dailyLight(readings, day()).value();
        EXPECT_EQ(light.sum, 0);
        EXPECT_EQ(light.share(), 0);
        ASSERT_EQ(light.gaps.size(), 1U);
        EXPECT_EQ(light.gaps[0], (core::TimeGap{midnight, midnight + hours{24}}));
    }
}

TEST(DailyLight, TakesALineAcrossMidnightForWhatLiesInTheDay) {
    const std::vector<TimedValue> readings{{midnight - hours{1}, 100}, {midnight + hours{1}, 100}};
    EXPECT_NEAR(core::dailyLight(readings, day()).value().sum, core::dailyLightOf(100, 1).value(), 1e-12);
}

TEST(LightForDaily, GoesThereAndBack) {
    for (double hour = 1; hour <= 24; hour += 0.5)
        for (double light = 0; light <= 1000; light += 25)
            EXPECT_NEAR(core::lightForDaily(core::dailyLightOf(light, hour).value(), hour).value(), light, 1e-9);
}

TEST(DegreeDays, EqualASlicedIntegrationAlsoWhereLinesCrossTheBase) {
    stats::SeededRandom random(3);
    for (int times = 0; times < 5; ++times) {
        const auto readings = unevenReadings(random, 2, 28);
        const double slices = sliced(readings, [](double value) { return std::max(0.0, value - 12); }) / (24 * 3600);
        EXPECT_NEAR(core::degreeDays(readings, 12, day()).value().sum, slices, 0.001 * slices);
    }
}

TEST(DegreeDays, OfASteadyTemperatureAreItsExcessOverTheBase) {
    const std::vector<TimedValue> readings{{midnight, 22}, {midnight + hours{24}, 22}};
    const TimeSpan span{.from = midnight, .to = midnight + hours{24}, .longestGap = hours{25}};
    EXPECT_NEAR(core::degreeDays(readings, 10, span).value().sum, 12, 1e-12);
    EXPECT_EQ(core::degreeDays(readings, 22, span).value().sum, 0);
    EXPECT_EQ(core::degreeDaysOf(22, 22, 10).value(), 12);
    EXPECT_EQ(core::degreeDaysOf(2, 8, 10).value(), 0);
}

TEST(TimeOutside, EqualsASlicedCountOfUnevenReadings) {
    stats::SeededRandom random(4);
    const core::Band band{.low = 18, .high = 24, .source = {}};
    for (int times = 0; times < 5; ++times) {
        const auto readings = unevenReadings(random, 10, 30);
        const core::TimeOutside outside = core::timeOutside(readings, band, day()).value();
        const double below = sliced(readings, [&](double value) { return value < band.low ? 1 : 0; }) / 3600;
        const double above = sliced(readings, [&](double value) { return value > band.high ? 1 : 0; }) / 3600;
        EXPECT_NEAR(outside.hoursBelow, below, 0.001 * below);
        EXPECT_NEAR(outside.hoursAbove, above, 0.001 * above);
        EXPECT_NEAR(outside.hoursCovered, 24, 1e-12);
    }
}

TEST(TimeOutside, CountsTheEndsOfTheBandAsInside) {
    const std::vector<TimedValue> readings{{midnight, 24}, {midnight + hours{1}, 24}, {midnight + hours{2}, 18}};
    const core::TimeOutside outside = core::timeOutside(readings, {.low = 18, .high = 24, .source = {}}, day()).value();
    EXPECT_EQ(outside.hoursAbove, 0);
    EXPECT_EQ(outside.hoursBelow, 0);
    EXPECT_EQ(outside.hoursCovered, 2);
}

TEST(SumsOverTime, RefuseWhatIsOutsideTheirDomainWithASentence) {
    const auto sentence = [](const auto& result) {
        return result ? std::string("not refused") : result.error().front().sentence;
    };
    const std::vector<TimedValue> disordered{{midnight + hours{1}, 1}, {midnight, 1}};
    EXPECT_THAT(sentence(core::dailyLight(disordered, day())),
                HasSubstr("Light at 2026-05-01T00:00:00Z is out of order"));
    EXPECT_THAT(sentence(core::dailyLight(std::vector<TimedValue>{{midnight, -1}}, day())),
                HasSubstr("is -1; 0 to 3000 umol/m2/s is allowed."));
    EXPECT_THAT(sentence(core::dailyLight(std::vector<TimedValue>{{midnight, NAN}}, day())), HasSubstr("not a number"));
    EXPECT_THAT(sentence(core::dailyLight({}, {.from = midnight, .to = midnight})),
                HasSubstr("End is 2026-05-01T00:00:00Z; later than"));
    EXPECT_THAT(sentence(core::dailyLight({}, {.from = midnight, .to = midnight + hours{1}, .longestGap = seconds{0}})),
                HasSubstr("Longest gap is 0 s"));
    EXPECT_THAT(sentence(core::degreeDays({}, 41, day())), HasSubstr("Base temperature is 41; -10 to 40 C"));
    EXPECT_THAT(sentence(core::degreeDaysOf(20, 10, 5)), HasSubstr("Highest temperature is 10; 20 to 60 C"));
    EXPECT_THAT(sentence(core::dailyLightOf(100, 25)), HasSubstr("Hours of light is 25; 0 to 24 h"));
    EXPECT_THAT(sentence(core::lightForDaily(10, 0)), HasSubstr("Hours of light is 0; more than 0 and up to 24 h"));
    EXPECT_THAT(sentence(core::lightForDaily(100, 1)), HasSubstr("Light that takes is"));
    EXPECT_THAT(sentence(core::timeOutside({}, {.low = 5, .high = 4, .source = {}}, day())),
                HasSubstr("Upper end of the band"));
    EXPECT_THAT(sentence(core::sumAbove(std::vector<TimedValue>{{midnight, INFINITY}}, 0, day())),
                HasSubstr("infinite"));
}

}  // namespace
