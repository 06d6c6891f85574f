// SPDX-License-Identifier: MIT
// The invented place: its plants, stock plants, stations, media and treatments, and what is true of them without
// anybody there knowing.
#pragma once

#include <array>
#include <span>

#include "core/demo/demo_calendar.h"
#include "core/demo/id_source.h"
#include "core/records.h"

namespace core {

inline constexpr int aeratedWater = 0;  // index into the demo's methods, as in startingShelves()
inline constexpr int mediaTray = 1;
inline constexpr int stationsPerMethod = 2;

/// A plant and its nature. All figures are made up; they are nobody's measurements.
struct DemoPlant {
    const char* botanicalName;
    const char* cultivar;
    const char* commonName;
    bool isProtected;
    int usualDaysHigh;
    int share;  // of the work: 3 for the favourites, else 1
    const char* kindOfCutting;
    const char* treatment;             // the usual one
    const char* otherTreatment;        // tried now and then
    double oddsWithOther;              // odds of rooting with the other treatment, times those with the usual one
    std::array<double, 2> strike;      // share that can root, by method
    std::array<double, 2> medianDays;  // of those that root, by method
};

[[nodiscard]] std::span<const DemoPlant> demoPlants();

/// Plants are in the order of demoPlants(), each with two stock plants one after the other; stations are two tubs, then
/// two bench sections; trials are one a season.
[[nodiscard]] Shelves demoShelves(IdSource& ids, stats::SeededRandom& random);

}  // namespace core
