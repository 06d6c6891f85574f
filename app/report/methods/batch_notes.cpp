// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/curve_notes.h"
#include "app/report/methods/interval_note.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"

namespace report {
namespace {

MethodNote soFarNote(const core::BatchSummary& summary) {
    MethodNote note{QStringLiteral("strike_rate_so_far"), {}};
    const core::Tally& tally = summary.tally;
    putCount(note.numbers, QStringLiteral("stuck"), tally.stuck);
    putCount(note.numbers, QStringLiteral("rooted"), tally.rooted);
    putCount(note.numbers, QStringLiteral("lost"), tally.lost);
    putCount(note.numbers, QStringLiteral("withdrawn"), tally.withdrawn);
    putCount(note.numbers, QStringLiteral("undecided"), tally.undecided());
    put(note.numbers, QStringLiteral("rate"), summary.rate);
    put(note.numbers, QStringLiteral("at_most"), static_cast<double>(tally.rooted + tally.undecided()) / tally.stuck);
    return note;
}

MethodNote pastNote(const core::AgainstThePast& against) {
    MethodNote note{QStringLiteral("against_the_past"), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("day"), against.day);
    putCount(numbers, QStringLiteral("past_batches"), against.pastBatches);
    numbers[QStringLiteral("past")] = countsInWords(against.past);
    putCount(numbers, QStringLiteral("rooted"), against.rooted);
    putCount(numbers, QStringLiteral("of"), against.of);
    put(numbers, QStringLiteral("expected"), against.expected, 1);
    putCount(numbers, QStringLiteral("fewest"), against.usualFewest);
    putCount(numbers, QStringLiteral("most"), against.usualMost);
    put(numbers, QStringLiteral("chance"), against.chanceOfSoFew);
    numbers[QStringLiteral("y_r")] = listForR(rootedOf(against.past));
    numbers[QStringLiteral("n_r")] = listForR(assessedOf(against.past));
    numbers[QStringLiteral("rho_r")] = listForR(against.correlations);
    return note;
}

MethodNote turnNote(const core::TurningPoint& turn) {
    MethodNote note{QStringLiteral("turning_point"), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("most"), core::mostBatchesForTurn);
    numbers[QStringLiteral("called")] = plot::levelText(core::chanceOfCalledTurn);
    putCount(numbers, QStringLiteral("batches"), turn.batches);
    numbers[QStringLiteral("counted")] = countsInWords(turn.counted);
    put(numbers, QStringLiteral("chance"), turn.chance);
    put(numbers, QStringLiteral("share"), turn.chanceOfLikeliest);
    putLevel(numbers, turn.level);
    numbers[QStringLiteral("code")] = named(turn.likeliest.code);
    numbers[QStringLiteral("earliest")] = named(turn.earliest.code);
    numbers[QStringLiteral("latest")] = named(turn.latest.code);
    put(numbers, QStringLiteral("before"), turn.before.rate);
    put(numbers, QStringLiteral("before_low"), turn.before.limits.low);
    put(numbers, QStringLiteral("before_high"), turn.before.limits.high);
    put(numbers, QStringLiteral("after"), turn.after.rate);
    put(numbers, QStringLiteral("after_low"), turn.after.limits.low);
    put(numbers, QStringLiteral("after_high"), turn.after.limits.high);
    numbers[QStringLiteral("y_r")] = listForR(rootedOf(turn.counted));
    numbers[QStringLiteral("n_r")] = listForR(assessedOf(turn.counted));
    numbers[QStringLiteral("rho_r")] = listForR(turn.correlations);
    return note;
}

}  // namespace

std::vector<MethodNote> notesOnBatch(const core::BatchSummary& summary) {
    std::vector<MethodNote> notes;
    if (summary.tally.stuck == 0) return notes;
    notes.push_back(soFarNote(summary));
    notes.push_back(intervalNote(summary.interval,
                                 {.rooted = summary.tally.rooted,
                                  .of = summary.tally.stuck,
                                  .limits = summary.asCounted,
                                  .level = summary.level},
                                 QStringLiteral("stuck had rooted so far")));
    for (MethodNote& note : notesOnCurve({.name = QStringLiteral("This batch"),
                            .makeup = summary.makeup,
                            .rootedByDay = summary.rootedByDay,
                            .ofStuck = summary.ofStuck,
                            .ofRooted = summary.ofRooted}))
        notes.push_back(std::move(note));
    if (summary.againstPast) notes.push_back(pastNote(*summary.againstPast));
    return notes;
}

std::vector<MethodNote> notesOnChart(const core::StrikeChart& chart, const std::optional<core::TurningPoint>& turn) {
    const auto last = std::find_if(chart.batches.rbegin(), chart.batches.rend(),
                                   [](const core::ChartedBatch& batch) { return batch.assessed > 0; });
    if (!chart.centre || last == chart.batches.rend()) return {};
    MethodNote note{QStringLiteral("control_chart"), {}};
    Numbers& numbers = note.numbers;
    std::vector<int> rooted, assessed;
    for (const core::ChartedBatch& batch : chart.batches) {
        if (batch.assessed == 0) continue;
        rooted.push_back(batch.rooted);
        assessed.push_back(batch.assessed);
    }
    put(numbers, QStringLiteral("correlation"), chart.correlation, 3);
    putCount(numbers, QStringLiteral("batches"), static_cast<int>(rooted.size()));
    put(numbers, QStringLiteral("centre"), *chart.centre);
    numbers[QStringLiteral("alarm")] = plot::amountText(1000 * chart.falseAlarmRate);
    numbers[QStringLiteral("alarm_r")] = forR(chart.falseAlarmRate);
    numbers[QStringLiteral("code")] = named(last->code);
    putCount(numbers, QStringLiteral("rooted"), last->rooted);
    putCount(numbers, QStringLiteral("assessed"), last->assessed);
    putCount(numbers, QStringLiteral("fewest"), static_cast<int>(std::lround(last->limits.low * last->assessed)));
    putCount(numbers, QStringLiteral("most"), static_cast<int>(std::lround(last->limits.high * last->assessed)));
    numbers[QStringLiteral("y_r")] = listForR(rooted);
    numbers[QStringLiteral("n_r")] = listForR(assessed);
    numbers[QStringLiteral("rho_r")] = forR(chart.correlation);
    std::vector<MethodNote> notes{std::move(note)};
    if (turn) notes.push_back(turnNote(*turn));
    return notes;
}

std::vector<MethodNote> notesOnSplit(const core::Allocation& allocation, std::uint32_t seed) {
    if (allocation.armOfCutting.empty() || allocation.perArm.empty()) return {};
    MethodNote note{QStringLiteral("split_by_chance"), {}};
    Numbers& numbers = note.numbers;
    constexpr std::size_t shown = 10;
    QStringList perArm, firstTen;
    for (const int count : allocation.perArm) perArm << QString::number(count);
    const std::span<const int> arms(allocation.armOfCutting);
    for (const int arm : arms.first(std::min(shown, arms.size()))) firstTen << QString::number(arm + 1);
    putCount(numbers, QStringLiteral("cuttings"), static_cast<int>(arms.size()));
    putCount(numbers, QStringLiteral("arms"), static_cast<int>(allocation.perArm.size()));
    numbers[QStringLiteral("per_arm")] = perArm.join(QStringLiteral(" and "));
    numbers[QStringLiteral("seed")] = QString::number(seed);
    numbers[QStringLiteral("first_ten")] = firstTen.join(QStringLiteral(", "));
    return {std::move(note)};
}

}  // namespace report
