// SPDX-License-Identifier: MIT
#include "core/climate/band_warning.h"

#include <algorithm>

namespace core {

StandingByStation standingByStation(std::span<const BatchLine> lines) {
    StandingByStation all;
    for (const BatchLine& line : lines) {
        if (isClosed(line.batch, line.tally)) continue;
        const Standing standing{.plant = line.batch.plant, .stage = stageOf(line.batch, line.tally)};
        std::vector<Standing>& here = all[line.batch.station];
        if (std::ranges::find(here, standing) == here.end()) here.push_back(standing);
    }
    return all;
}

std::optional<BandWarning> warningOf(const Reading& reading, std::span<const Standing> standing,
                                     const Shelves& shelves) {
    std::optional<BandWarning> worst;
    double farthest = 0;
    for (const Standing& each : standing) {
        auto band = bandFor(shelves, each.plant, each.stage, climateQuantityOf(reading.quantity));
        if (!band) continue;
        const double off = std::max(band->band.low - reading.value, reading.value - band->band.high);
        if (off <= farthest) continue;
        farthest = off;
        worst = BandWarning{.standing = each, .band = std::move(*band)};
    }
    return worst;
}

std::vector<Reading> newestOf(std::vector<Reading> byHand, std::span<const Reading> byLogger) {
    std::vector<Reading> newest = std::move(byHand);
    for (const Reading& logged : byLogger) {
        const auto same = std::ranges::find_if(newest, [&](const Reading& reading) {
            return reading.station == logged.station && reading.quantity == logged.quantity;
        });
        if (same == newest.end())
            newest.push_back(logged);
        else if (same->readAt < logged.readAt)
            *same = logged;
    }
    return newest;
}

}  // namespace core
