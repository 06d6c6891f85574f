// SPDX-License-Identifier: MIT
#include "db/actions/logger_actions.h"

#include "db/actions/ask_first.h"
#include "db/inside.h"
#include "db/tables/logger_day_table.h"

namespace db {

namespace {

core::Refusal stoppedEarly() {
    return {.field = "Logger",
            .value = "stopped",
            .allowed = "",
            .sentence = "The logger's values were not brought in, because it was stopped before the end."};
}

/// Puts one day together with what is there, and counts.
void mergeDay(const Logbook& logbook, Writer& writer, const core::LoggerDay& day, LoggerAdded& counts) {
    const std::vector<core::Sample> stored = logbook.inside().with(
        [&](Connection& connection) { return samplesOf(connection, day.station, day.quantity, day.day); });
    core::MergedSamples merged = core::mergedSamples(stored, day.samples);
    counts.added += merged.added;
    counts.known += merged.known;
    counts.differing += merged.differing;
    if (merged.added == 0) return;
    writer.put(
        {.station = day.station, .quantity = day.quantity, .day = day.day, .samples = std::move(merged.samples)});
}

std::string atStation(const core::Shelves& shelves, core::StationId id) {
    const core::Station* station = core::find(shelves.stations, id);
    return " at " + (station == nullptr ? std::string("a station") : station->name);
}

}  // namespace

core::Result<LoggerAdded> addLoggerDays(Logbook& logbook, std::span<const core::LoggerDay> days,
                                        const std::string& words, core::Moment now, const std::stop_token& stop,
                                        const LoggerProgress& progress, const core::LoggerFormat* remembered) {
    LoggerAdded counts;
    auto done = actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        for (std::size_t place = 0; place < days.size(); ++place) {
            if (stop.stop_requested()) return core::Refusals{stoppedEarly()};
            core::Refusals faults = core::faultsIn(days[place], shelves, now);
            if (!faults.empty()) return faults;
            mergeDay(logbook, writer, days[place], counts);
            if (progress) progress(place + 1, days.size());
        }
        if (remembered == nullptr) return core::Refusals{};
        core::Refusals faults = core::faultsIn(*remembered, logbook.loggerFormats());
        if (faults.empty()) writer.add(*remembered);
        return faults;
    });
    if (!done) return core::refused(std::move(done.error()));
    counts.changes = std::move(*done);
    return counts;
}

core::Result<Changes> removeLoggerDays(Logbook& logbook, core::StationId station, core::Quantity quantity,
                                       core::Date from, core::Date until) {
    const std::string words =
        "removal of logged " + std::string(core::factsOf(quantity).name) + atStation(logbook.shelves(), station);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const auto days = logbook.inside().with(
            [&](Connection& connection) { return loggedDays(connection, station, quantity, from, until); });
        for (const core::Date day : days) writer.remove(station, quantity, day);
        return core::Refusals{};
    });
}

core::Result<Changes> keep(Logbook& logbook, const core::LoggerFormat& format) {
    const std::string words = (format.id.isSet() ? "change of " : "new ") + std::string("logger format ") + format.name;
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const std::vector<core::LoggerFormat> formats = logbook.loggerFormats();
        core::Refusals faults = core::faultsIn(format, formats);
        if (format.id.isSet() && core::find(formats, format.id) == nullptr)
            faults.push_back(notThere("Logger format", "logger format"));
        if (!faults.empty()) return faults;
        if (format.id.isSet()) {
            writer.change(format);
        } else {
            writer.add(format);
        }
        return faults;
    });
}

core::Result<Changes> remove(Logbook& logbook, core::LoggerFormatId id) {
    const std::vector<core::LoggerFormat> formats = logbook.loggerFormats();
    const core::LoggerFormat* format = core::find(formats, id);
    if (format == nullptr) return core::refused({notThere("Logger format", "logger format")});
    return actUnlessRefused(logbook, "removal of logger format " + format->name, [&](Writer& writer) {
        writer.remove(id);
        return core::Refusals{};
    });
}

}  // namespace db
