// SPDX-License-Identifier: MIT
#include "tests/support/conditions_by_chance.h"

#include <stdexcept>

#include "db/actions/band_actions.h"
#include "db/actions/logger_actions.h"
#include "db/actions/mix_actions.h"
#include "tests/support/chance_values.h"

namespace support {

namespace {

core::Moment lateOn(core::Date day) {
    return std::chrono::sys_days(day) + std::chrono::days(1);
}

core::Quantity someQuantity(Chance& chance) {
    return some(std::vector(core::allQuantities.begin(), core::allQuantities.end()), chance);
}

/// Where cuttings stand: other stations stay free to be removed.
core::StationId stationInUse(const db::Logbook& logbook, Chance& chance) {
    return some(logbook.batchLines(), chance).batch.station;
}

core::KeptMix newMix(Chance& chance, core::Date today) {
    core::KeptMix mix;
    mix.madeAt = std::chrono::sys_days(someDay(chance, today)) + std::chrono::seconds(pick(chance, 86'400));
    mix.kind = some(std::vector(core::allMixKinds.begin(), core::allMixKinds.end()), chance);
    mix.title = someName(chance);
    mix.amounts = "2.4 g of salts\n" + someName(chance);
    mix.workings = someName(chance);
    mix.cautions = pick(chance, 8) == 0 ? "moonlight" : "acids\nadvice";
    return mix;
}

std::vector<core::KeptMix> keptMixes(const db::Logbook& logbook) {
    return logbook.records().mixes;
}

Done doKeepMix(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::KeptMix mix = newMix(chance, today);
    if (pick(chance, 3) == 0) mix.id = some(keptMixes(logbook), chance).id;
    return db::keepMix(logbook, some(logbook.sessions(), chance).id, mix, lateOn(today));
}

Done doKeepMixWithCare(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Care care;
    if (pick(chance, 3) == 0) care = some(logbook.records().care, chance);
    if (!care.id.isSet()) care.station = stationInUse(logbook, chance);
    care.doneAt = std::chrono::sys_days(someDay(chance, today)) + std::chrono::hours(9);
    care.litres = pick(chance, 20);  // none is refused
    return db::keepMixWithCare(logbook, care, newMix(chance, today), lateOn(today));
}

Done doSetBand(db::Logbook& logbook, Chance& chance) {
    core::OwnBand band;
    band.stage = some(std::vector(core::allStages.begin(), core::allStages.end()), chance);
    band.quantity = static_cast<core::BandQuantity>(pick(chance, static_cast<int>(core::bandQuantities)));
    if (pick(chance, 2) == 0) band.plant = some(logbook.shelves().plants, chance).id;
    if (pick(chance, 4) != 0) band.low = pick(chance, 12);
    if (pick(chance, 4) != 0) band.high = 5 + pick(chance, 6);
    band.note = someName(chance);
    return db::setOwnBand(logbook, band);
}

core::LoggerDay newLoggerDay(const db::Logbook& logbook, Chance& chance, core::Date today) {
    core::LoggerDay day;
    day.station = stationInUse(logbook, chance);
    day.quantity = someQuantity(chance);
    day.day = core::addDays(today, 1 - pick(chance, 8));
    const core::QuantityFacts& facts = core::factsOf(day.quantity);
    for (int second = pick(chance, 900); second < core::secondsInADay / 4; second += 900)
        day.samples.push_back(
            {.second = second, .value = facts.low + (facts.high - facts.low) * pick(chance, 101) / 100});
    if (pick(chance, 10) == 0) day.samples.back().value = facts.high + 1;
    return day;
}

Done doAddLoggerDays(db::Logbook& logbook, Chance& chance, core::Date today) {
    std::vector<core::LoggerDay> days;
    for (int number = pick(chance, 4); number >= 0; --number) days.push_back(newLoggerDay(logbook, chance, today));
    auto done = db::addLoggerDays(logbook, days, "values of a logger", lateOn(today));
    if (!done) return core::refused(std::move(done.error()));
    return done->changes;
}

Done doRemoveLoggerDays(db::Logbook& logbook, Chance& chance) {
    const core::LoggerSpan span = some(logbook.loggerSpans(), chance);
    return db::removeLoggerDays(logbook, span.station, span.quantity, span.firstDay,
                                pick(chance, 2) == 0 ? span.firstDay : span.lastDay);
}

Done doKeepFormat(db::Logbook& logbook, Chance& chance) {
    core::LoggerFormat format = some(logbook.loggerFormats(), chance, true);
    format.name = someName(chance);
    format.header = "time;" + someName(chance);
    format.mapping = R"({"time":0})";
    return db::keep(logbook, format);
}

}  // namespace

Done performCondition(db::Logbook& logbook, Action action, Chance& chance, core::Date today) {
    switch (action) {
        case Action::KeepMix:
            return doKeepMix(logbook, chance, today);
        case Action::KeepMixWithCare:
            return doKeepMixWithCare(logbook, chance, today);
        case Action::RemoveMix:
            return db::remove(logbook, some(keptMixes(logbook), chance).id);
        case Action::SetOwnBand:
            return doSetBand(logbook, chance);
        case Action::RemoveOwnBand:
            return db::removeOwnBand(logbook, some(logbook.shelves().ownBands, chance).id);
        case Action::AddLoggerDays:
            return doAddLoggerDays(logbook, chance, today);
        case Action::RemoveLoggerDays:
            return doRemoveLoggerDays(logbook, chance);
        case Action::KeepLoggerFormat:
            return doKeepFormat(logbook, chance);
        case Action::RemoveLoggerFormat:
            return db::remove(logbook, some(logbook.loggerFormats(), chance).id);
        default:
            throw std::logic_error("nothing of conditions");
    }
}

}  // namespace support
