// SPDX-License-Identifier: MIT
// What a batch lived through, against an integration by another way: slices of a second of the same straight lines, and closed forms.
#include "core/climate/lived_through.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>

#include "core/climate/vapour.h"
#include "stats/numeric/seeded_random.h"
#include "tests/support/builders.h"

namespace {

using core::ClimateQuantity;
using core::Moment;
using core::TimedValue;
using std::chrono::hours;
using std::chrono::seconds;
using support::aBatch;

/// Days begin at midnight two hours east of Greenwich.
Moment midnightOf(core::Date day) {
    return Moment{std::chrono::sys_days{day}} - hours{2};
}

Moment stuckAt() {
    return midnightOf(support::stickingDay());
}

core::StationClimate climateOf(core::MeasuredValues measured) {
    return core::climateFrom(std::move(measured), support::someShelves().facts);
}

std::vector<core::LivedQuantity> lived(const core::BatchRecord& record, const core::StationClimate& climate, int days,
                                       const core::Shelves& shelves = support::someShelves()) {
    return core::livedThrough(record, shelves, climate, midnightOf(core::addDays(record.batch.stuckOn, days)),
                              midnightOf);
}

const core::LivedQuantity* ofQuantity(const std::vector<core::LivedQuantity>& all, ClimateQuantity quantity) {
    const auto found = std::ranges::find(all, quantity, &core::LivedQuantity::quantity);
    return found == all.end() ? nullptr : &*found;
}

/// Uneven in time, from some hours before sticking on, with gaps too long to bridge.
std::vector<TimedValue> unevenValues(stats::SeededRandom& random, int days, double low, double high) {
    std::vector<TimedValue> values;
    for (Moment at = stuckAt() - hours{5}; at < stuckAt() + hours{24 * days + 5};) {
        values.push_back({.at = at, .value = low + (high - low) * random.uniform()});
        at += random.below(40) == 0 ? seconds{4 * 3600 + random.below(20'000)} : seconds{20 + random.below(7000)};
    }
    return values;
}

struct Sliced {
    double covered{}, sum{}, below{}, above{};  // seconds, value x seconds, seconds
};

/// By midpoints of slices of a second, as if nobody knew of trapezia.
Sliced sliced(const std::vector<TimedValue>& values, int firstDay, int lastDay, double low, double high,
              seconds longestGap) {
    Sliced all;
    std::size_t next = 1;
    for (Moment at = stuckAt() + hours{24 * firstDay}; at < stuckAt() + hours{24 * lastDay}; at += seconds{1}) {
        while (next < values.size() && values[next].at <= at) ++next;
        if (next >= values.size()) break;
        const TimedValue &before = values[next - 1], &after = values[next];
        if (before.at > at || after.at - before.at > longestGap) continue;
        const double share =
            (static_cast<double>((at - before.at).count()) + 0.5) / static_cast<double>((after.at - before.at).count());
        const double value = before.value + share * (after.value - before.value);
        all.covered += 1;
        all.sum += value;
        if (value < low) all.below += 1;
        if (value > high) all.above += 1;
    }
    return all;
}

void expectWithinAThousandth(double ours, double independent) {
    EXPECT_NEAR(ours, independent, 0.001 * std::max(1.0, std::abs(independent)));
}

TEST(LivedThrough, HoursOutsideEqualASlicedIntegrationOfUnevenReadings) {
    constexpr std::uint32_t seed = 20261126;
    std::cout << "seed " << seed << '\n';
    stats::SeededRandom random(seed);
    const core::BatchRecord record = aBatch().stuck(24).looked(5, {.rooted = 2});  // first roots from day 5 on
    for (int times = 0; times < 4; ++times) {
        const auto humidity = unevenValues(random, 10, 60, 100);
        const auto all = lived(record, climateOf({{core::Quantity::RelativeHumidity, humidity}}), 10);
        const core::LivedFigures& figures = ofQuantity(all, ClimateQuantity::RelativeHumidity)->all;
        const Sliced before = sliced(humidity, 0, 5, 90, 100, hours{3});
        const Sliced after = sliced(humidity, 5, 10, 80, 95, hours{3});
        expectWithinAThousandth(figures.hoursCovered, (before.covered + after.covered) / 3600);
        expectWithinAThousandth(figures.hoursBelow, (before.below + after.below) / 3600);
        expectWithinAThousandth(figures.hoursAbove, (before.above + after.above) / 3600);
        expectWithinAThousandth(figures.mean, (before.sum + after.sum) / (before.covered + after.covered));
        EXPECT_EQ(figures.hours, 240);
        EXPECT_LT(figures.covered(), 1);
        const core::LivedFigures first = ofQuantity(all, ClimateQuantity::RelativeHumidity)->first[0].value();
        expectWithinAThousandth(first.hoursBelow, sliced(humidity, 0, 3, 90, 100, hours{3}).below / 3600);
    }
}

TEST(LivedThrough, LightOfDaysEqualsASlicedIntegrationOfUnevenReadings) {
    constexpr std::uint32_t seed = 7;
    std::cout << "seed " << seed << '\n';
    stats::SeededRandom random(seed);
    const auto light = unevenValues(random, 6, 0, 400);
    const auto days = core::dailyLights(light, support::stickingDay(), midnightOf);
    ASSERT_GE(days.size(), 6U);
    for (int day = 0; day < 6; ++day) {
        const Sliced slices = sliced(light, day, day + 1, 0, 1e9, hours{3});
        EXPECT_NEAR(days[static_cast<std::size_t>(day)].moles, slices.sum / 1e6, 0.001 * slices.sum / 1e6);
        EXPECT_NEAR(days[static_cast<std::size_t>(day)].covered, slices.covered / 86'400, 0.001);
    }
}

TEST(LivedThrough, LightOfALampAgreesWithItsClosedForm) {
    std::vector<TimedValue> light;
    for (int day = 0; day < 5; ++day) {
        const Moment on = stuckAt() + hours{24 * day + 6};
        for (int minute = -360; minute < 1080; minute += 10)
            light.push_back(
                {.at = on + std::chrono::minutes{minute}, .value = minute >= 0 && minute < 960 ? 100.0 : 0.0});
    }
    light.push_back({.at = stuckAt() + hours{120}, .value = 0});
    const core::BatchRecord record = aBatch().stuck(24);
    const auto all = lived(record, climateOf({{core::Quantity::Light, light}}), 5);
    const core::LivedQuantity* daily = ofQuantity(all, ClimateQuantity::DailyLight);
    ASSERT_NE(daily, nullptr);
    EXPECT_NEAR(daily->all.mean, 5.76, 0.001 * 5.76);  // 100 for 16 h
    EXPECT_EQ(daily->all.readings, 5);
    EXPECT_EQ(daily->all.hoursOutside(), 0);  // 4 to 6
    EXPECT_EQ(daily->all.hoursWithBand, 120);
    EXPECT_EQ(daily->first[0]->readings, 3);
    EXPECT_FALSE(daily->first[1]);
}

TEST(LivedThrough, WorksOutWhatComesOfPairs) {
    core::MeasuredValues measured;
    for (int hour = 0; hour <= 48; ++hour) {
        const Moment at = stuckAt() + hours{hour};
        measured[core::Quantity::AirTemperature].push_back({at, 24});
        measured[core::Quantity::RelativeHumidity].push_back({at + std::chrono::minutes{10}, 80});
        measured[core::Quantity::LeafTemperature].push_back({at, 22});
        measured[core::Quantity::DissolvedOxygen].push_back({at, 6});
        measured[core::Quantity::SolutionTemperature].push_back({at, 24});
    }
    core::Shelves shelves = support::someShelves();
    shelves.facts.altitudeMetres = 1000;
    const auto all = lived(aBatch(), core::climateFrom(measured, shelves.facts), 2, shelves);
    EXPECT_NEAR(ofQuantity(all, ClimateQuantity::VapourDeficit)->all.mean, core::airVapourDeficit(24, 80).value(),
                1e-9);
    EXPECT_NEAR(ofQuantity(all, ClimateQuantity::LeafDeficit)->all.mean, 0.2568, 0.0005);  // of the reference
    EXPECT_NEAR(ofQuantity(all, ClimateQuantity::DewPoint)->all.mean, core::dewPoint(24, 80).value(), 1e-9);
    EXPECT_NEAR(ofQuantity(all, ClimateQuantity::OxygenSaturation)->all.mean, 80.66, 0.05);  // of the reference
    // Above 10 C, two days at 24.
    EXPECT_NEAR(ofQuantity(all, ClimateQuantity::SolutionTemperature)->all.degreeDays.value(), 28, 1e-9);
    EXPECT_FALSE(ofQuantity(all, ClimateQuantity::RelativeHumidity)->all.degreeDays);
}

TEST(LivedThrough, PairsAcrossAGapAreNone) {
    core::MeasuredValues measured;
    measured[core::Quantity::AirTemperature] = {{stuckAt(), 20}, {stuckAt() + hours{10}, 30}};
    measured[core::Quantity::RelativeHumidity] = {{stuckAt() + hours{5}, 80}};
    EXPECT_FALSE(climateOf(measured).contains(ClimateQuantity::VapourDeficit));
    measured[core::Quantity::RelativeHumidity] = {{stuckAt() + hours{10}, 80}};
    EXPECT_EQ(climateOf(measured).at(ClimateQuantity::VapourDeficit).size(), 1U);
}

TEST(LivedThrough, ASingleReadingCoversNothingAndIsItsOwnMean) {
    const auto all = lived(aBatch(), climateOf({{core::Quantity::AirTemperature, {{stuckAt() + hours{9}, 21}}}}), 20);
    const core::LivedFigures& figures = ofQuantity(all, ClimateQuantity::AirTemperature)->all;
    EXPECT_TRUE(figures.isMeanOfReadings);
    EXPECT_EQ(figures.mean, 21);
    EXPECT_EQ(figures.hoursCovered, 0);
    EXPECT_EQ(figures.hoursOutside(), 0);
    EXPECT_EQ(figures.readings, 1);
    EXPECT_FALSE(figures.degreeDays);
}

TEST(LivedThrough, KnowsNothingOfWhatWasNotReadNorBeforeSticking) {
    EXPECT_TRUE(lived(aBatch(), {}, 14).empty());
    EXPECT_TRUE(
        lived(aBatch(), climateOf({{core::Quantity::AirTemperature, {{stuckAt() - hours{9}, 21}}}}), 14).empty());
    EXPECT_TRUE(
        lived(aBatch(), climateOf({{core::Quantity::AirTemperature, {{stuckAt() + hours{9}, 21}}}}), 0).empty());
}

TEST(LivedThrough, CountsEveryOneOfAMillionSamples) {
    core::MeasuredValues measured;
    for (int i = 0; i < 500'000; ++i) {
        const Moment at = stuckAt() + seconds{60 * i};
        measured[core::Quantity::AirTemperature].push_back({at, 20 + std::sin(i / 200.0) * 5});
        measured[core::Quantity::RelativeHumidity].push_back({at, 85 + std::sin(i / 100.0) * 10});
    }
    const auto all = lived(aBatch(), climateOf(std::move(measured)), 347);
    EXPECT_EQ(ofQuantity(all, ClimateQuantity::VapourDeficit)->all.readings, 347 * 1440);
}

}  // namespace
