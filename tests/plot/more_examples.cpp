// SPDX-License-Identifier: MIT
#include "tests/plot/more_examples.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/proportion/wilson_interval.h"

namespace examples {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

core::Limits wilson(int rooted, int assessed) {
    const stats::Interval interval = stats::wilsonInterval(rooted, assessed, 0.95);
    return {.low = interval.low, .high = interval.high};
}

core::DosePoint point(double dose, int rooted, int assessed) {
    return {.milligramsPerLitre = dose,
            .batches = 3,
            .rooted = rooted,
            .assessed = assessed,
            .rate = static_cast<double>(rooted) / assessed,
            .asCounted = wilson(rooted, assessed)};
}

void drawHill(core::DoseSeries& series, double lowest, double highest) {
    for (int i = 0; i <= 40; ++i) {
        const double dose = lowest * std::pow(highest / lowest, i / 40.0), away = std::log(dose / 1800);
        const double rate = 0.78 * std::exp(-0.25 * away * away);
        series.curve.push_back({.milligramsPerLitre = dose,
                                .rate = rate,
                                .asCounted = {.low = rate - 0.08, .high = rate + 0.08},
                                .withSpread = core::Limits{.low = rate - 0.14, .high = rate + 0.14}});
    }
}

}  // namespace

core::DoseSeries doseSeries() {
    core::DoseSeries series;
    series.auxin = "IBA, gel";
    series.points = {point(0, 21, 60), point(500, 34, 60), point(1000, 43, 60), point(3000, 44, 58),
                     point(8000, 22, 56)};
    series.trendP = 0.04, series.batchTrendP = 0.22, series.trendPerStep = 0.03;
    series.best = core::BestDose::Inside;
    series.bestMilligrams = 1800, series.bestRate = 0.78;
    series.asCounted = core::Limits{.low = 1300, .high = 2500};
    series.withSpread = core::Limits{.low = 900, .high = 4200};
    drawHill(series, 500, 8000);
    series.inWords =
        "IBA, gel: batch by batch the rate neither rises nor falls clearly with the dose. The curve is highest near "
        "1800 mg/L, where about 78 of 100 would root.";
    return series;
}

core::DoseSeries twoDoses() {
    core::DoseSeries series;
    series.auxin = "NAA";
    series.points = {point(200, 0, 12), point(400, 12, 12)};
    series.inWords = "NAA: with so few batches it can't be judged. A curve takes three doses above none.";
    return series;
}

core::DoseSeries endlessDoses() {
    core::DoseSeries series = doseSeries();
    series.asCounted = core::Limits{.low = 0, .high = endless};
    series.withSpread.reset();
    series.isUnboundedWithSpread = false;
    for (core::DoseCurvePoint& each : series.curve) each.withSpread.reset();
    return series;
}

core::DoseSeries crowdedDoses() {
    core::DoseSeries series;
    series.auxin = "IBA (salt), powder";
    series.isPowder = true;
    for (int i = 0; i < 14; ++i) series.points.push_back(point(1000 + 150 * i, 300 + 20 * i, 700));
    series.best = core::BestDose::AboveHighest;
    drawHill(series, 1000, 2950);
    return series;
}

core::GoesWith goesWith(int count) {
    core::GoesWith answer;
    answer.batches = 48, answer.cuttings = 1130, answer.dispersion = 2.1;
    for (int i = 0; i < count; ++i) {
        const double odds = std::exp(0.3 * (i % 7) - 0.8);
        core::Association each;
        each.name = i % 2 == 0 ? "medium perlite and coir " + std::to_string(i) + ", against coir"
                               : "IBA, each tenfold dose " + std::to_string(i);
        each.batches = 4 + i, each.oddsRatio = odds;
        each.asCounted = {.low = odds / 1.5, .high = odds * 1.5}, each.asCountedP = 0.03;
        each.withSpread = core::Limits{.low = odds / 2.2, .high = odds * 2.2};
        each.withSpreadP = 0.2, each.holmP = 0.6;
        answer.associations.push_back(each);
    }
    if (count > 0)
        answer.associations[0].withSpread = core::Limits{.low = 0.2, .high = 0.9}, answer.associations[0].holmP = 0.02;
    if (count > 1) answer.associations[1].asCounted.high = endless, answer.associations[1].withSpread->high = endless;
    if (count > 2) answer.associations[2].asCounted.low = 0, answer.associations[2].withSpread->low = 0;
    if (count == 0)
        answer.whyNot = "Nothing on record differs between these batches, so there is nothing to set beside them.";
    if (count > 2)
        answer.cannotBeTold = {"method aerated water, against media tray", "kind of cutting heel, against stem tip"};
    answer.inWords =
        count == 0 ? answer.whyNot : "In 48 batches these went with rooting: medium perlite and coir (worse).";
    return answer;
}

core::Comparison withSpeeds(core::Comparison comparison) {
    for (std::size_t i = 0; i < comparison.arms.size(); ++i) {
        core::Arm& arm = comparison.arms[i];
        if (i + 1 == comparison.arms.size() && comparison.arms.size() > 2) {
            arm.speed.whyNot = "there was one check only, which says how many rooted, not how fast";
            break;
        }
        const double day = 14.2 - 2.5 * static_cast<double>(i);
        arm.speed.fits = {{.shape = "log-normal",
                           .rootingShare = 0.72 - 0.05 * static_cast<double>(i),
                           .rootingShareLimits = core::Limits{.low = 0.6 - 0.05 * static_cast<double>(i), .high = 0.81},
                           .medianDay = day,
                           .medianDayLimits = {.low = day - 1.8, .high = day + 2.1},
                           .isByBatch = i == 0,
                           .akaike = 210.4},
                          {.shape = "Weibull",
                           .rootingShare = 1,
                           .rootingShareLimits = {},
                           .medianDay = day + 1,
                           .medianDayLimits = {.low = day - 1.2, .high = endless},
                           .isByBatch = i == 0,
                           .akaike = 214.9}};
    }
    for (core::Pair& pair : comparison.pairs)
        pair.speed = {.shape = "log-normal",
                      .ratio = 1.21,
                      .asCounted = {.low = 1.05, .high = 1.4},
                      .asCountedP = 0.008,
                      .byBatch = core::Limits{.low = 0.94, .high = 1.56},
                      .byBatchP = 0.12,
                      .whyNot = ""};
    return comparison;
}

core::StrikeChart strikeChart(int count) {
    core::StrikeChart chart;
    chart.falseAlarmRate = core::usualFalseAlarmRate, chart.correlation = 0.08;
    if (count > 0) chart.centre = 0.61;
    for (int i = 0; i < count; ++i) {
        const int assessed = i + 1 == count && count > 1 ? 0 : 8 + i * 5 % 23;
        core::ChartedBatch batch{.id = {i + 1},
                                 .code = "B26" + std::to_string(1000 + i) + "K",
                                 .stuckOn = core::addDays(*core::dateFromIso("2026-01-05"), 6 * i),
                                 .rooted = 0,
                                 .assessed = assessed,
                                 .rate = {},
                                 .limits = {.low = 0, .high = 1},
                                 .signal = core::ChartSignal::NothingKnown};
        if (assessed > 0) {
            const bool isOut = i % 7 == 5;
            batch.rooted = isOut ? (i % 2 == 0 ? assessed : 0) : static_cast<int>(std::lround(0.61 * assessed));
            batch.rate = static_cast<double>(batch.rooted) / assessed;
            const double reach = 1.6 / std::sqrt(assessed);
            batch.limits = {.low = std::max(0.0, 0.61 - reach), .high = std::min(1.0, 0.61 + reach)};
            batch.signal = !isOut                    ? core::ChartSignal::Inside
                           : batch.rooted < assessed ? core::ChartSignal::Below
                                                     : core::ChartSignal::Above;
        }
        chart.batches.push_back(batch);
    }
    chart.inWords = "About 61 of 100 rooted over these batches.";
    return chart;
}

core::TurningPoint turningPoint() {
    const core::StrikeChart chart = strikeChart(14);
    const auto batchAt = [&](std::size_t index) {
        return core::TurnBatch{.id = chart.batches[index].id,
                               .code = chart.batches[index].code,
                               .stuckOn = chart.batches[index].stuckOn,
                               .lastBefore = chart.batches[index - 1].stuckOn};
    };
    core::TurningPoint turn;
    turn.chance = 0.97, turn.level = 0.95, turn.batches = 13;
    turn.likeliest = batchAt(8), turn.earliest = batchAt(6), turn.latest = batchAt(10);
    turn.chanceOfLikeliest = 0.5;
    turn.before = {.rate = 0.68, .limits = {.low = 0.6, .high = 0.75}};
    turn.after = {.rate = 0.41, .limits = {.low = 0.3, .high = 0.53}};
    turn.change = {.low = -0.4, .high = -0.12};
    turn.inWords = "From about batch B261008K fewer rooted.";
    return turn;
}

}  // namespace examples
