// SPDX-License-Identifier: MIT
#include "db/actions/station_actions.h"

#include "core/event_rules.h"
#include "db/actions/ask_first.h"
#include "db/inside.h"
#include "db/tables/care_table.h"
#include "db/tables/reading_table.h"

namespace db {

namespace {

std::string wordsForVisit(const core::Shelves& shelves, const StationVisit& visit) {
    const core::Station* station = core::find(shelves.stations, visit.station);
    const std::string at = " at " + (station == nullptr ? std::string("a station") : station->name);
    if (!visit.gone.empty() && visit.readings.empty() && visit.care.empty()) return "deletion of readings" + at;
    for (const core::Reading& reading : visit.readings)
        if (reading.id.isSet()) return "change of readings" + at;
    if (visit.readings.empty()) return "care" + at;
    return (visit.care.empty() ? "readings" : "readings and care") + at;
}

bool hasReading(const Logbook& logbook, core::ReadingId id) {
    return logbook.inside().with([&](Connection& connection) { return readingIn(connection, id).has_value(); });
}

bool hasCare(const Logbook& logbook, core::CareId id) {
    return logbook.inside().with([&](Connection& connection) { return careIn(connection, id).has_value(); });
}

/// A new one is added, one with an id is changed.
template <class Thing>
void put(Writer& writer, const Thing& thing) {
    if (thing.id.isSet())
        writer.change(thing);
    else
        writer.add(thing);
}

core::Refusals keepReadings(Logbook& logbook, Writer& writer, const StationVisit& visit, const core::Shelves& shelves,
                            core::Moment now) {
    core::Refusals faults;
    for (const core::Reading& reading : visit.readings) {
        core::Refusals found = core::faultsIn(reading, shelves, now);
        if (reading.id.isSet() && !hasReading(logbook, reading.id)) found.push_back(notThere("Reading", "reading"));
        if (found.empty()) put(writer, reading);
        append(faults, std::move(found));
    }
    for (const core::Reading& reading : visit.gone) {
        if (hasReading(logbook, reading.id))
            writer.remove(reading.id);
        else
            faults.push_back(notThere("Reading", "reading"));
    }
    return faults;
}

}  // namespace

core::Result<Changes> keepVisit(Logbook& logbook, const StationVisit& visit, core::Moment now) {
    const core::Shelves shelves = logbook.shelves();
    return actUnlessRefused(logbook, wordsForVisit(shelves, visit), [&](Writer& writer) {
        core::Refusals faults = keepReadings(logbook, writer, visit, shelves, now);
        for (const core::Care& care : visit.care) {
            core::Refusals found = core::faultsIn(care, shelves, now);
            if (care.id.isSet() && !hasCare(logbook, care.id)) found.push_back(notThere("Care", "care"));
            if (found.empty()) put(writer, care);
            append(faults, std::move(found));
        }
        return faults;
    });
}

}  // namespace db
