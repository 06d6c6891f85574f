// SPDX-License-Identifier: MIT
#include "core/comparison/unusual.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/comparison/english.h"
#include "core/units/figure_text.h"
#include "stats/surveillance/control_limits.h"
#include "stats/surveillance/predictive_tail.h"

namespace core {
namespace {

std::string oneIn(double chance) {
    if (chance < 0.001) return "less than once in a thousand batches";
    if (chance >= 0.1) return "about " + std::to_string(static_cast<int>(std::lround(10 * chance))) + " times in 10";
    return "about once in " + std::to_string(roundedUp(static_cast<int>(std::lround(1 / chance)))) + " batches";
}

std::string tailInWords(const AgainstThePast& tail) {
    std::string words = "By day " + std::to_string(tail.day) + ", " +
                        counted(tail.pastBatches, "earlier batch", "earlier batches") +
                        " of this plant by this method would foretell " + std::to_string(tail.usualFewest) + " to " +
                        std::to_string(tail.usualMost) + " rooted of " + std::to_string(tail.of) +
                        " nine times in ten; here it was " + std::to_string(tail.rooted) + ".";
    if (tail.usualFewest == 0 && tail.usualMost == tail.of)
        return words + " So few batches can't say what is usual yet.";
    const double few = tail.chanceOfSoFew;
    if (few < 0.05) return words + " So few or fewer would come " + oneIn(few) + ".";
    if (few > 0.95) return words + " So many or more would come " + oneIn(1 - few) + ".";
    return words + " That is nothing out of the ordinary.";
}

ChartSignal signalFrom(stats::ChartSignal signal) {
    switch (signal) {
        case stats::ChartSignal::Inside:
            return ChartSignal::Inside;
        case stats::ChartSignal::Below:
            return ChartSignal::Below;
        case stats::ChartSignal::Above:
            return ChartSignal::Above;
        case stats::ChartSignal::NoTrials:
            return ChartSignal::NothingKnown;
    }
    return ChartSignal::NothingKnown;
}

std::string chartInWords(const StrikeChart& chart) {
    if (!chart.centre) return "Nothing is known yet of the fate of these batches.";
    std::vector<std::string> below, above;
    int known = 0;
    for (const ChartedBatch& batch : chart.batches) {
        if (batch.signal != ChartSignal::NothingKnown) ++known;
        if (batch.signal == ChartSignal::Below) below.push_back(batch.code);
        if (batch.signal == ChartSignal::Above) above.push_back(batch.code);
    }
    std::string words = "About " + std::to_string(perHundred(*chart.centre)) + " of 100 rooted over " +
                        counted(known, "batch", "batches") + ". ";
    if (below.empty() && above.empty())
        words += "None lies outside its limits.";
    else {
        if (!below.empty()) words += "Fewer than luck would explain: " + listed(below) + ". ";
        if (!above.empty()) words += "More than luck would explain: " + listed(above) + ". ";
    }
    if (words.back() == ' ') words.pop_back();
    return words + " Luck and the usual spread between batches put about " +
           figureText(std::round(chart.falseAlarmRate * 10000) / 10) + " batches in a thousand outside.";
}

}  // namespace

std::optional<AgainstThePast> againstThePast(const Course& batch, std::span<const Course> earlier, int horizonDay,
                                             const stats::PooledSpread& spread) {
    if (batch.looks.empty()) return {};
    const int day = std::min(horizonDay, batch.looks.back().day);
    const HorizonFate now = fateAt(day, batch.stuck(), batch.looks);
    std::vector<BatchCount> counted;
    stats::PastBatches past{.batches = {}, .spread = spread.law, .prior = {}};
    for (const Course& course : earlier) {
        const HorizonFate fate = fateAt(day, course.stuck(), course.looks);
        if (fate.assessed == 0) continue;
        past.batches.push_back({.successes = fate.rooted, .trials = fate.assessed});
        counted.push_back({.code = course.record->batch.code, .rooted = fate.rooted, .assessed = fate.assessed});
    }
    if (past.batches.empty() || now.assessed == 0) return {};
    constexpr int mostCuttings = 20'000;
    if (now.assessed > mostCuttings) return {};
    const stats::PredictiveTail tail = stats::predictiveTail(now.rooted, now.assessed, past);
    AgainstThePast answer{.day = day,
                          .rooted = now.rooted,
                          .of = now.assessed,
                          .pastBatches = tail.pastBatches,
                          .expected = tail.expected,
                          .usualFewest = tail.usualFewest,
                          .usualMost = tail.usualMost,
                          .chanceOfSoFew = tail.middle,
                          .past = std::move(counted),
                          .correlations = {},
                          .inWords = {}};
    for (const stats::WeightedCorrelation& each : spread.law) answer.correlations.push_back(each.correlation);
    answer.inWords = tailInWords(answer);
    return answer;
}

StrikeChart strikeChart(std::span<const Course> batches, double falseAlarmRate, const stats::PooledSpread& spread) {
    std::vector<const Course*> inOrder;
    for (const Course& course : batches) inOrder.push_back(&course);
    std::sort(inOrder.begin(), inOrder.end(), [](const Course* a, const Course* b) {
        return std::tuple(a->record->batch.stuckOn, a->record->batch.id) <
               std::tuple(b->record->batch.stuckOn, b->record->batch.id);
    });
    std::vector<stats::Tray> trays;
    for (const Course* course : inOrder)
        trays.push_back({.successes = course->fate.rooted, .trials = course->fate.assessed});
    const stats::ControlChart computed =
        stats::controlChart(trays, {.correlation = spread.correlation, .falseAlarmRate = falseAlarmRate, .centre = {}});
    StrikeChart chart{.centre = computed.centre,
                      .batches = {},
                      .falseAlarmRate = falseAlarmRate,
                      .correlation = spread.correlation,
                      .inWords = {}};
    for (std::size_t i = 0; i < inOrder.size(); ++i) {
        const Batch& batch = inOrder[i]->record->batch;
        const stats::ChartPoint& point = computed.points[i];
        chart.batches.push_back({.id = batch.id,
                                 .code = batch.code,
                                 .stuckOn = batch.stuckOn,
                                 .rooted = trays[i].successes,
                                 .assessed = trays[i].trials,
                                 .rate = point.rate,
                                 .limits = {.low = point.limits.low, .high = point.limits.high},
                                 .signal = signalFrom(point.signal)});
    }
    chart.inWords = chartInWords(chart);
    return chart;
}

}  // namespace core
