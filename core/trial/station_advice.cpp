// SPDX-License-Identifier: MIT
#include "core/trial/station_advice.h"

#include <algorithm>

#include "core/comparison/english.h"
#include "core/trial/trial_rules.h"

namespace core {

namespace {

constexpr int fewestStations = 2;  // of a method, so that stations can be told from methods

/// "media tray (1 station)"
std::string armWithStations(const TrialArm& arm, int stations, const Shelves& shelves) {
    return nameInWords(Factor::Method, nameOf(arm, Factor::Method, shelves)) + " (" +
           counted(stations, "station", "stations") + ")";
}

std::string adviceOnMethods(const Trial& design, const TrialLayout& layout, const Shelves& shelves) {
    std::vector<std::string> few;
    for (const TrialArm& arm : design.arms) {
        const auto stations = std::ranges::count(layout.stations, arm.method, &StationRoom::method);
        if (stations < fewestStations) few.push_back(armWithStations(arm, static_cast<int>(stations), shelves));
    }
    if (few.empty()) return {};
    const std::string two = std::to_string(fewestStations);
    return "With " + listed(few) +
           ", the answer is about these stations, not about the methods: whatever is the matter with one station looks "
           "like its method. At least " +
           two +
           " stations of each method would answer it; or cross over, so that each station has each method in turn.";
}

std::string adviceOnOneStation(const TrialLayout& layout) {
    if (layout.stations.size() != 1) return {};
    return "All arms stand at " + layout.stations.front().name +
           ", so the answer is about that station; a second one would show whether it holds elsewhere.";
}

std::string adviceOnCrossing(const Trial& design, const TrialLayout& layout) {
    const int arms = static_cast<int>(design.arms.size()), stations = static_cast<int>(layout.stations.size());
    if (arms < 2 || stations % arms == 0) return {};
    return "The " + counted(stations, "station", "stations") + " can't be shared evenly between " +
           counted(arms, "method", "methods") + " in a session: a multiple of " + std::to_string(arms) +
           " would give each method as many.";
}

}  // namespace

std::vector<std::string> stationAdvice(const Trial& design, const TrialLayout& layout, const Shelves& shelves) {
    std::vector<std::string> advice;
    const auto add = [&advice](std::string sentence) {
        if (!sentence.empty()) advice.push_back(std::move(sentence));
    };
    if (design.factor != Factor::Method)
        add(adviceOnOneStation(layout));
    else if (design.isCrossedOver)
        add(adviceOnCrossing(design, layout));
    else
        add(adviceOnMethods(design, layout, shelves));
    return advice;
}

}  // namespace core
