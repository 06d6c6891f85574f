// SPDX-License-Identifier: MIT
#include "core/planning/what_fits.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <unordered_map>

#include "core/comparison/english.h"

namespace core {
namespace {

std::vector<std::size_t> firstToStickFirst(std::span<const PlanToFit> plans) {
    std::vector<std::size_t> order(plans.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&plans](std::size_t plan) {
        const std::optional<Date>& day = plans[plan].stickBy;
        return std::tuple(!day, day.value_or(Date{}), -plans[plan].cuttings);
    });
    return order;
}

/// Gaps that will do for the plan, the largest first.
std::vector<FreeStation*> gapsFor(const PlanToFit& plan, std::vector<FreeStation>& stations) {
    std::vector<FreeStation*> gaps;
    for (FreeStation& station : stations)
        if (station.free > 0 && (!plan.method.isSet() || station.method == plan.method)) gaps.push_back(&station);
    std::ranges::stable_sort(gaps, std::ranges::greater(), &FreeStation::free);
    return gaps;
}

void place(int cuttings, FreeStation& station, PlanFit& fit) {
    fit.places.push_back({.station = station.station, .name = station.name, .cuttings = cuttings});
    station.free -= cuttings;
}

PlanFit fitOf(const PlanToFit& plan, std::vector<FreeStation>& stations) {
    PlanFit fit;
    const std::vector<FreeStation*> gaps = gapsFor(plan, stations);
    for (const FreeStation* gap : gaps) fit.free += gap->free;
    fit.fits = fit.free >= plan.cuttings;
    if (!fit.fits) return fit;
    int left = plan.cuttings;
    for (std::size_t i = 0; left > 0; ++i) {
        // What is left goes into the smallest gap that holds all of it.
        if (gaps[i]->free >= left) {
            while (i + 1 < gaps.size() && gaps[i + 1]->free >= left) ++i;
            place(left, *gaps[i], fit);
            break;
        }
        left -= gaps[i]->free;
        place(gaps[i]->free, *gaps[i], fit);
    }
    return fit;
}

std::string inWordsOf(const PlanToFit& plan, const PlanFit& fit) {
    const std::string what = plan.name + ", " + counted(plan.cuttings, "cutting", "cuttings");
    if (!fit.fits)
        return what + ": no room, " + std::to_string(plan.cuttings - fit.free) + " more free positions are needed.";
    std::vector<std::string> places;
    for (const Placement& each : fit.places)
        places.push_back(fit.places.size() == 1 ? each.name : std::to_string(each.cuttings) + " in " + each.name);
    return what + ": " + listed(places) + ".";
}

std::string inWordsOf(std::span<const PlanToFit> plans, std::span<const PlanFit> fits) {
    if (fits.empty()) return "There is nothing to stick.";
    const auto fitting = std::ranges::count_if(fits, &PlanFit::fits);
    const int all = static_cast<int>(fits.size());
    if (fitting == 0) return "None of the plans fits into the free positions.";
    const auto first = std::ranges::find_if(fits, &PlanFit::fits);
    std::string words = fitting == all ? (all == 1 ? "It fits." : "All " + std::to_string(all) + " plans fit.")
                                       : std::to_string(fitting) + " of " + std::to_string(all) + " plans fit.";
    return all == 1 ? words : words + " Stick " + plans[first->plan].name + " first.";
}

}  // namespace

std::vector<FreeStation> freeStations(const Shelves& shelves, std::span<const BatchLine> lines) {
    std::unordered_map<StationId, int> held;
    for (const BatchLine& line : lines)
        if (!isClosed(line.batch, line.tally)) held[line.batch.station] += line.tally.undecided() + line.tally.rooted;
    std::vector<const Station*> stations;
    for (const Station& station : shelves.stations)
        if (!station.isRetired && station.hasLayout()) stations.push_back(&station);
    std::ranges::stable_sort(stations, {}, [](const Station* station) {
        return std::tuple(station->walkingOrder, std::string_view(station->name));
    });
    std::vector<FreeStation> free;
    for (const Station* station : stations) {
        const auto found = held.find(station->id);
        const int taken = found == held.end() ? 0 : found->second;
        free.push_back({.station = station->id,
                        .name = station->name,
                        .method = station->method,
                        .free = std::max(0, station->positions() - taken)});
    }
    return free;
}

WhatFits whatFits(std::span<const PlanToFit> plans, std::span<const FreeStation> stations) {
    std::vector<FreeStation> left(stations.begin(), stations.end());
    WhatFits answer;
    for (const std::size_t plan : firstToStickFirst(plans)) {
        answer.inOrder.push_back(fitOf(plans[plan], left));
        answer.inOrder.back().plan = plan;
        answer.inOrder.back().inWords = inWordsOf(plans[plan], answer.inOrder.back());
    }
    answer.inWords = inWordsOf(plans, answer.inOrder);
    return answer;
}

}  // namespace core
