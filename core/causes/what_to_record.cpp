// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/causes/suspect_search.h"
#include "core/comparison/english.h"

namespace core {

namespace {

bool isReadInFirstDays(const SuspectSearch& search) {
    const ConditionsOnRecord& conditions = search.records.conditions;
    const auto climate = conditions.climates.find(search.own().station);
    if (climate == conditions.climates.end()) return false;
    const Date stuckOn = search.own().stuckOn;
    const Moment from = conditions.dayStart(stuckOn), to = conditions.dayStart(addDays(stuckOn, conditionDays));
    return std::ranges::any_of(climate->second,
                               [&](const auto& each) { return !valuesWithin(each.second, from, to).empty(); });
}

void askForLots(const SuspectSearch& search, std::vector<std::string>& sentences) {
    const Shelves& shelves = search.records.shelves;
    const Batch& own = search.own();
    const Treatment* treatment = find(shelves.treatments, own.treatment);
    if (treatment == nullptr)
        sentences.emplace_back("What was done to the cut ends: the batch has no treatment on record.");
    else if (!treatment->auxins.empty() && lotInUse(shelves.lots, own.treatment, own.stuckOn) == nullptr)
        sentences.push_back("The lot of \u201c" + treatment->name +
                            "\u201d and the day on which it was made: an old one is told by it.");
    const Medium* medium = find(shelves.media, own.medium);
    if (medium != nullptr && lotInUse(shelves.lots, own.medium, own.stuckOn) == nullptr)
        sentences.push_back("The lot of the medium \u201c" + medium->name + "\u201d.");
}

void askForCauses(const SuspectSearch& search, std::vector<std::string>& sentences) {
    int lost = 0, unknown = 0;
    for (const Check& check : search.batch.record->checks)
        for (const Loss& loss : check.losses) {
            lost += loss.count;
            if (!loss.cause.isSet()) unknown += loss.count;
        }
    if (unknown > 0)
        sentences.push_back("What cuttings are lost to: " + std::to_string(unknown) + " of " + std::to_string(lost) +
                            " lost here have no cause on record.");
}

std::string workerOf(const SuspectSearch& search) {
    for (const Session& session : search.records.sessions)
        if (session.id == search.own().session) return session.worker;
    return {};
}

}  // namespace

std::vector<std::string> whatToRecord(const SuspectSearch& search) {
    std::vector<std::string> sentences;
    const Batch& own = search.own();
    if (!own.station.isSet())
        sentences.emplace_back("The station: without it nothing is known of the climate.");
    else if (!isReadInFirstDays(search))
        sentences.push_back("Readings at its station in the first " + std::to_string(conditionDays) +
                            " days: temperature above all, EC and pH of a solution, humidity of the air.");
    askForLots(search, sentences);
    askForCauses(search, sentences);
    if (!own.stockPlant.isSet()) sentences.emplace_back("The stock plant from which it was cut.");
    if (workerOf(search).empty()) sentences.emplace_back("Who did the session.");
    return sentences;
}

}  // namespace core
