// SPDX-License-Identifier: MIT
// Care of the station that is out of the usual: the pump stood still, or nothing was done at all where others are looked after.
#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "core/causes/suspect_search.h"

namespace core {

namespace {

using CareByStation = std::unordered_map<StationId, std::vector<const Care*>>;

/// So long without air is worth a look (common practice, no source).
constexpr double fewestHoursWithoutPump = 6;
/// Others of the method of which care must be on record before missing care says anything.
constexpr std::size_t fewestCaredFor = 3;

CareByStation careByStation(std::span<const Care> care) {
    CareByStation byStation;
    for (const Care& each : care) byStation[each.station].push_back(&each);
    for (auto& [station, list] : byStation) std::ranges::sort(list, {}, &Care::doneAt);
    return byStation;
}

struct FirstDaysOf {
    Moment from, to;
};

FirstDaysOf firstDaysOf(const Batch& batch, const RecordsForSuspects& records) {
    const auto start = [&](Date day) {
        return records.conditions.dayStart ? records.conditions.dayStart(day) : Moment{std::chrono::sys_days{day}};
    };
    return {.from = start(batch.stuckOn), .to = start(addDays(batch.stuckOn, conditionDays))};
}

double hoursWithoutPump(const std::vector<const Care*>& care, const FirstDaysOf& days) {
    bool isOff = false;
    Moment offSince = days.from;
    std::chrono::seconds off{};
    const auto add = [&](Moment until) {
        const Moment from = std::max(offSince, days.from), to = std::min(until, days.to);
        if (isOff && from < to) off += to - from;
    };
    for (const Care* each : care) {
        if (each->kind == CareKind::PumpOff && !isOff) {
            isOff = true;
            offSince = each->doneAt;
        } else if (each->kind == CareKind::PumpOn) {
            add(each->doneAt);
            isOff = false;
        }
    }
    add(days.to);
    return std::chrono::duration<double, std::ratio<3600>>(off).count();
}

bool isCaredFor(const std::vector<const Care*>& care, const FirstDaysOf& days) {
    return std::ranges::any_of(care,
                               [&](const Care* each) { return days.from <= each->doneAt && each->doneAt < days.to; });
}

struct CareSearch {
    const SuspectSearch& search;
    CareByStation byStation;

    [[nodiscard]] const std::vector<const Care*>& of(const Batch& batch) const {
        static const std::vector<const Care*> none;
        const auto found = byStation.find(batch.station);
        return found == byStation.end() ? none : found->second;
    }
    [[nodiscard]] double pumpOff(const Batch& batch) const {
        return hoursWithoutPump(of(batch), firstDaysOf(batch, search.records));
    }
    [[nodiscard]] bool isCared(const Batch& batch) const {
        return isCaredFor(of(batch), firstDaysOf(batch, search.records));
    }
};

void addPumpOff(const CareSearch& care, std::vector<Candidate>& candidates) {
    const double hours = care.pumpOff(care.search.own());
    if (hours < fewestHoursWithoutPump) return;
    Candidate candidate{.kind = SuspectKind::Care, .name = "pump off"};
    candidate.others = othersThat(care.search.around, [&](const BatchAround& other) {
        return care.pumpOff(other.batch()) >= std::max(fewestHoursWithoutPump, hours / 2);
    });
    candidate.speaksFor.push_back("The pump of its station was off for " + std::to_string(std::lround(hours)) +
                                  " hours in the first " + std::to_string(conditionDays) +
                                  " days, by the care on record.");
    candidate.changeNextTime = "Look at the pump each day until the first roots, and write down when it stops.";
    candidate.checkInstead =
        "No trial is needed, and none that stops a pump is worth its cuttings: keep it running and see whether the "
        "next "
        "batch does as usual.";
    candidates.push_back(std::move(candidate));
}

void addNoCare(const CareSearch& care, std::vector<Candidate>& candidates) {
    const Batch& own = care.search.own();
    if (!own.station.isSet() || care.isCared(own)) return;
    std::size_t sameMethod = 0, caredFor = 0;
    Candidate candidate{.kind = SuspectKind::Care, .name = "no care on record"};
    candidate.others = othersThat(care.search.around, [&](const BatchAround& other) {
        if (other.batch().method != own.method) return false;
        ++sameMethod;
        if (!care.isCared(other.batch())) return true;
        ++caredFor;
        return false;
    });
    if (caredFor < fewestCaredFor || 2 * caredFor < sameMethod) return;
    candidate.speaksFor.push_back("No care of its station is on record in the first " + std::to_string(conditionDays) +
                                  " days; of " + std::to_string(sameMethod) + " other batches of the method " +
                                  std::to_string(caredFor) + " have some.");
    candidate.speaksAgainst.emplace_back("What isn't on record may have been done all the same.");
    candidate.changeNextTime = "Look after the station as usual, and write down each time.";
    candidate.checkInstead = "Stick the next batch there, look after it as usual, and see whether it does as usual.";
    candidates.push_back(std::move(candidate));
}

}  // namespace

void addCare(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    if (search.records.care.empty()) return;
    const CareSearch care{.search = search, .byStation = careByStation(search.records.care)};
    addPumpOff(care, candidates);
    addNoCare(care, candidates);
}

}  // namespace core
