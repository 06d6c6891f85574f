// SPDX-License-Identifier: MIT
// What the batch shares with others by circumstance: mother plant, place, day, hands, month. Nothing is known of how any of these would harm
// cuttings, so they weigh least; they are what another station, another day shows.
#include <algorithm>
#include <unordered_map>

#include "core/causes/suspect_search.h"

namespace core {

namespace {

struct Circumstance {
    SuspectKind kind;
    std::string name;
    std::string shares;  // sentence
    std::string change;
    std::string check;
};

void addShared(const SuspectSearch& search, Circumstance words, const std::function<bool(const BatchAround&)>& share,
               std::vector<Candidate>& candidates) {
    Candidate candidate{.kind = words.kind, .name = std::move(words.name), .others = othersThat(search.around, share)};
    if (candidate.others.empty()) return;  // nothing to judge by
    candidate.speaksFor.push_back(std::move(words.shares));
    candidate.changeNextTime = std::move(words.change);
    candidate.checkInstead = std::move(words.check);
    candidates.push_back(std::move(candidate));
}

void addStockPlant(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    const StockPlant* stock = find(search.records.shelves.stockPlants, search.own().stockPlant);
    if (stock == nullptr) return;
    addShared(
        search,
        {.kind = SuspectKind::StockPlant,
         .name = "stock plant " + stock->label,
         .shares = "It was cut from stock plant " + stock->label + ".",
         .change = "Take part of the cuttings from another stock plant.",
         .check = "A stock plant is no factor of a trial: cut from two on the same day, half from each, stick them in "
                  "one station as two batches, and compare these."},
        [&](const BatchAround& other) { return other.batch().stockPlant == stock->id; }, candidates);
}

void addStation(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    const Station* station = find(search.records.shelves.stations, search.own().station);
    if (station == nullptr) return;
    addShared(
        search,
        {.kind = SuspectKind::Station,
         .name = "station " + station->name,
         .shares = "It stood in " + station->name + ".",
         .change = "Clean and measure " + station->name + " before the next batch, or use another station.",
         .check =
             "One method at two stations is no factor of a trial: on the same day stick half of the next batch in " +
             station->name +
             " and half in another station of the method. If the other does better again, it is "
             "the station."},
        [&](const BatchAround& other) { return other.batch().station == station->id && other.daysApart < search.day; },
        candidates);
}

void addSession(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    const SessionId session = search.own().session;
    if (!session.isSet()) return;
    const std::string day = isoText(search.own().stuckOn);
    addShared(
        search,
        {.kind = SuspectKind::Session,
         .name = "session of " + day,
         .shares = "It was stuck in the session of " + day + ".",
         .change = "Think of what was otherwise on that day: weather, knives, how long cuttings waited.",
         .check = "A day can't be repeated: stick the same again on two other days and see whether it comes back."},
        [&](const BatchAround& other) { return other.batch().session == session; }, candidates);
}

void addWorker(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    std::unordered_map<SessionId, std::string_view> workers;
    for (const Session& session : search.records.sessions) workers[session.id] = session.worker;
    const std::string worker(workers[search.own().session]);
    if (worker.empty()) return;
    addShared(
        search,
        {.kind = SuspectKind::Worker,
         .name = "worker " + worker,
         .shares = worker + " did the session.",
         .change = "Do the next session together, and watch for what is done otherwise.",
         .check = "Share the next cuttings between two people on the same day, as two batches, and compare these."},
        [&](const BatchAround& other) {
            const auto found = workers.find(other.batch().session);
            return found != workers.end() && found->second == worker;
        },
        candidates);
}

void addMonth(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    const Date day = search.own().stuckOn;
    const std::string month = isoText(day).substr(0, 7);
    addShared(
        search,
        {.kind = SuspectKind::Month,
         .name = "month " + month,
         .shares = "It was stuck in " + month + ".",
         .change =
             "Stick at another time of the year, or look for what that month brought: heat, dull days, soft growth.",
         .check = "A month can't be repeated: stick a few each month, and see whether it comes back next year."},
        [&](const BatchAround& other) {
            const Date theirs = other.batch().stuckOn;
            return theirs.year() == day.year() && theirs.month() == day.month();
        },
        candidates);
}

}  // namespace

std::vector<std::size_t> othersThat(const BatchesAround& around, const std::function<bool(const BatchAround&)>& share) {
    std::vector<std::size_t> others;
    for (std::size_t i = 0; i < around.batches.size(); ++i)
        if (share(around.batches[i])) others.push_back(i);
    return others;
}

void addCircumstances(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    addStockPlant(search, candidates);
    addStation(search, candidates);
    addSession(search, candidates);
    addWorker(search, candidates);
    addMonth(search, candidates);
}

}  // namespace core
