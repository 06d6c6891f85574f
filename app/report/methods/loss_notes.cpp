// SPDX-License-Identifier: MIT
#include <algorithm>

#include "app/plot/loss_words.h"
#include "app/report/methods/interval_note.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"

namespace report {
namespace {

MethodNote shareNote(const core::Losses& losses, const core::LossRow& row) {
    MethodNote note{QStringLiteral("lost_to_what"), {}};
    Numbers& numbers = note.numbers;
    std::vector<int> counts;
    for (const core::LossRow& each : losses.rows) counts.push_back(each.loss.count);
    numbers[QStringLiteral("cause")] = named(row.loss.cause);
    putCount(numbers, QStringLiteral("count"), row.loss.count);
    putCount(numbers, QStringLiteral("lost"), losses.lost);
    putCount(numbers, QStringLiteral("batches"), row.batches);
    putCount(numbers, QStringLiteral("batches_lost"), losses.batchesWithLosses);
    put(numbers, QStringLiteral("share"), row.share);
    put(numbers, QStringLiteral("running"), row.runningShare);
    numbers[QStringLiteral("counts_r")] = listForR(counts);
    return note;
}

MethodNote spreadOfShareNote(const core::LossRow& row, double level) {
    SpreadRate rate{.name = QStringLiteral("Lost to: %1").arg(named(row.loss.cause)),
                    .rooted = {},
                    .assessed = {},
                    .limits = *row.withSpread,
                    .level = level};
    for (const stats::Tray& tray : row.counted) {
        rate.rooted.push_back(tray.successes);
        rate.assessed.push_back(tray.trials);
    }
    return withSpreadNote(rate);
}

std::vector<MethodNote> notesOnLossRate(const QString& name, const core::LossCount& count, double level) {
    if (count.stood <= 0) return {};
    MethodNote note{QStringLiteral("lost_of_those_that_stood"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("name")] = name;
    putCount(numbers, QStringLiteral("lost"), count.lost);
    putCount(numbers, QStringLiteral("stood"), count.stood);
    putCount(numbers, QStringLiteral("batches"), count.batches);
    put(numbers, QStringLiteral("rate"), static_cast<double>(count.lost) / count.stood);
    return {std::move(note),
            intervalNote(core::RateInterval::Wilson,
                         {.rooted = count.lost, .of = count.stood, .limits = count.asCounted, .level = level},
                         QStringLiteral("that stood were lost"))};
}

}  // namespace

std::vector<MethodNote> notesOnLosses(const core::Losses& losses) {
    if (losses.rows.empty()) return {};
    const core::LossRow& row = losses.rows.front();
    std::vector<MethodNote> notes{
        shareNote(losses, row),
        intervalNote(core::RateInterval::Wilson,
                     {.rooted = row.loss.count, .of = losses.lost, .limits = row.asCounted, .level = losses.level},
                     QStringLiteral("lost were lost to: ") + named(row.loss.cause))};
    if (row.withSpread && !row.counted.empty()) notes.push_back(spreadOfShareNote(row, losses.level));
    return notes;
}

std::vector<MethodNote> notesOnLossesByMonth(const core::Losses& losses) {
    const auto worst = std::ranges::max_element(
        losses.months, {}, [](const core::MonthOfLosses& month) { return month.count.rate.value_or(0); });
    if (worst == losses.months.end()) return {};
    return notesOnLossRate(plot::monthText(worst->month), worst->count, losses.level);
}

std::vector<MethodNote> notesOnLossesByStation(const core::Losses& losses) {
    if (losses.stations.empty()) return {};
    const core::StationOfLosses& first = losses.stations.front();
    return notesOnLossRate(named(first.name), first.count, losses.level);
}

}  // namespace report
