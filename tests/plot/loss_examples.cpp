// SPDX-License-Identifier: MIT
#include "tests/plot/loss_examples.h"

#include "stats/proportion/wilson_interval.h"

namespace examples {
namespace {

core::Limits wilsonOf(int lost, int stood) {
    const stats::Interval interval = stats::wilsonInterval(lost, stood, 0.95);
    return {.low = interval.low, .high = interval.high};
}

/// Those lost are shared by the causes, as evenly as it goes.
core::LossCount countOf(int batches, int stood, int lost, int causes) {
    core::LossCount count{.batches = batches, .stood = stood, .lost = lost};
    count.rate = static_cast<double>(lost) / stood;
    count.asCounted = wilsonOf(lost, stood);
    for (int cause = 0; cause < causes; ++cause) count.byCause.push_back((lost + cause) / causes);
    return count;
}

void addCauses(core::Losses& losses, int causes) {
    for (int i = 0; i < causes; ++i) losses.lost += 5 * (causes - i);
    double running = 0;
    for (int i = 0; i < causes; ++i) {
        const int count = 5 * (causes - i);
        core::LossRow row{.batches = 1 + count / 6, .share = static_cast<double>(count) / losses.lost};
        const bool isKnown = i + 1 < causes || causes == 1;
        if (isKnown) row.cause.value = 800 + i;
        row.loss = {.cause = isKnown ? "cause number " + std::to_string(i + 1) : "cause not known", .count = count};
        row.asCounted = wilsonOf(count, losses.lost);
        if (row.batches > 1) row.withSpread = core::Limits{.low = row.asCounted.low / 2, .high = row.asCounted.high};
        row.runningShare = running += row.share;
        losses.rows.push_back(std::move(row));
    }
}

void addMonthsAndStations(core::Losses& losses, int months, int stations, int causes, int lost) {
    constexpr std::chrono::year_month first{std::chrono::year{2026}, std::chrono::January};
    for (int i = 0; i < months; ++i)
        losses.months.push_back(
            {.month = first + std::chrono::months{i}, .count = countOf(3 + i % 4, 60 + i, lost * (i % 5), causes)});
    for (int i = 0; i < stations; ++i) {
        const bool isNamed = i + 1 < stations || stations == 1;
        core::StationOfLosses station{.name = isNamed ? "Bench " + std::to_string(i + 1) : "station not recorded",
                                      .count = countOf(4, 80, lost * (stations - i), causes)};
        if (isNamed) station.station.value = 400 + i;
        losses.stations.push_back(std::move(station));
    }
}

}  // namespace

core::Losses losses(int causes, int months, int stations) {
    core::Losses losses{.level = 0.95};
    if (causes + months + stations == 0) return losses;
    losses.from = *core::dateFromIso("2026-01-01");
    losses.until = *core::dateFromIso("2026-06-30");
    losses.batches = 24, losses.stood = 560, losses.batchesWithLosses = 11;
    addCauses(losses, causes);
    addMonthsAndStations(losses, months, stations, causes, 2);
    losses.inWords = "Most were lost to cause number 1.";
    return losses;
}

core::Losses nothingLost() {
    core::Losses losses{.level = 0.95};
    losses.batches = 6, losses.stood = 144;
    addMonthsAndStations(losses, 3, 2, 0, 0);
    losses.inWords = "Nothing was found lost.";
    return losses;
}

}  // namespace examples
