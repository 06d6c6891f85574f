// SPDX-License-Identifier: MIT
#include "db/actions/mix_actions.h"

#include "core/event_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/ask_first.h"
#include "db/actions/session_actions.h"
#include "db/inside.h"
#include "db/tables/care_table.h"
#include "db/tables/mix_table.h"

namespace db {

namespace {

/// "mix 12 L at 1.2 mS/cm"
std::string calledMix(const core::KeptMix& mix) {
    return core::isBlank(mix.title) ? std::string("mix") : "mix " + core::quotable(mix.title);
}

std::string wordsForMix(const core::KeptMix& mix) {
    return (mix.id.isSet() ? "change of the " : "") + calledMix(mix);
}

/// Judges and writes; what it belongs to is there already.
core::Refusals keepIfSound(const Logbook& logbook, Writer& writer, const core::KeptMix& mix, core::Moment now) {
    core::Refusals faults = core::faultsIn(mix, now);
    const bool isNew = !mix.id.isSet();
    if (!isNew && !logbook.inside().with([&](Connection& connection) { return mixIn(connection, mix.id); }))
        faults.push_back(notThere("Mix", "mix"));
    if (!faults.empty()) return faults;
    if (isNew) {
        writer.add(mix);
    } else {
        writer.change(mix);
    }
    return faults;
}

/// With its id, which a new one is given here.
core::Refusals keepCareIfSound(const Logbook& logbook, Writer& writer, core::Care& care, core::Moment now) {
    core::Refusals faults = core::faultsIn(care, logbook.shelves(), now);
    const bool isNew = !care.id.isSet();
    if (isNew) {
        care.id.value = newId();
    } else if (!logbook.inside().with([&](Connection& connection) { return careIn(connection, care.id); })) {
        faults.push_back(notThere("Care", "care"));
    }
    if (!faults.empty()) return faults;
    if (isNew) {
        writer.add(care);
    } else {
        writer.change(care);
    }
    return faults;
}

}  // namespace

core::Result<Changes> keepMix(Logbook& logbook, core::SessionId session, core::KeptMix mix, core::Moment now) {
    mix.session = session;
    mix.care = {};
    return actUnlessRefused(logbook, wordsForMix(mix), [&](Writer& writer) {
        if (core::find(logbook.sessions(), session) == nullptr) return core::Refusals{notThere("Session", "session")};
        return keepIfSound(logbook, writer, mix, now);
    });
}

core::Result<Changes> keepMixWithCare(Logbook& logbook, core::Care care, core::KeptMix mix, core::Moment now) {
    const core::Shelves shelves = logbook.shelves();
    const core::Station* station = core::find(shelves.stations, care.station);
    const std::string words = wordsForMix(mix) + " at " + (station == nullptr ? "a station" : station->name);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = keepCareIfSound(logbook, writer, care, now);
        mix.session = {};
        mix.care = care.id;
        core::Refusals found = faults.empty() ? keepIfSound(logbook, writer, mix, now) : core::faultsIn(mix, now);
        prefix(found, "Mix");
        append(faults, std::move(found));
        return faults;
    });
}

core::Result<Changes> remove(Logbook& logbook, core::KeptMixId id) {
    const auto mix = logbook.inside().with([&](Connection& connection) { return mixIn(connection, id); });
    if (!mix) return core::refused({notThere("Mix", "mix")});
    return actUnlessRefused(logbook, "removal of the " + calledMix(*mix), [&](Writer& writer) {
        writer.remove(id);
        return core::Refusals{};
    });
}

}  // namespace db
