// SPDX-License-Identifier: MIT
#include "db/actions/moved_things.h"

#include "core/climate/own_band_rules.h"
#include "db/inside.h"
#include "db/tables/logger_day_table.h"

namespace db {

void moveLoggerDays(const Logbook& logbook, Writer& writer, core::StationId goes, core::StationId stays) {
    logbook.inside().with([&](Connection& connection) {
        for (core::LoggerDay& day : loggerDaysOf(connection, goes)) {
            writer.remove(goes, day.quantity, day.day);
            core::MergedSamples merged =
                core::mergedSamples(samplesOf(connection, stays, day.quantity, day.day), day.samples);
            if (merged.added == 0) continue;
            day.station = stays;
            day.samples = std::move(merged.samples);
            writer.put(day);
        }
    });
}

void moveOwnBands(Writer& writer, const core::Shelves& shelves, core::PlantId goes, core::PlantId stays) {
    for (core::OwnBand band : shelves.ownBands) {
        if (band.plant != goes) continue;
        if (core::ownBandOf(shelves, band.stage, band.quantity, stays) != nullptr) {
            writer.remove(band.id);
            continue;
        }
        band.plant = stays;
        writer.change(band);
    }
}

}  // namespace db
