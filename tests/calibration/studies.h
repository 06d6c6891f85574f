// SPDX-License-Identifier: MIT
// What is simulated: kinds of season, and what is judged in each.
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "tests/calibration/tally.h"

namespace calibration {

inline constexpr std::array<double, 4> correlations{0, 0.05, 0.1, 0.2};
inline constexpr int mostTrays = 6;
inline constexpr int seasonsOfFiguresForOne =
    20;  // where figures alone are judged, for one season through the whole program
inline constexpr int seasonsAsideForOne = 8;               // likewise, for what is looked at beside
inline constexpr const char* asItComes = ", as it comes";  // after a thing judged in such seasons
inline constexpr const char* logitNormal = ", logit-normal";

struct Study {
    int seasonsForOne{1};
    double cost{};  // of a season, in some unit common to all
    std::function<void(int season, stats::SeededRandom& random, Tally& tally)> judge;
};

[[nodiscard]] std::vector<Study> allStudies();

/// Arms that differ in the size and number of their trays; each counts as a number of trays in its cells.
struct Lopsided {
    const char* name{};
    int asTrays{};
    std::array<int, 2> trays{};
    std::array<std::array<int, 2>, 2> sizes{};  // fewest and most of each arm
};
inline constexpr std::array<Lopsided, 4> lopsided{{
    {"3 trays of 5 to 8 against 6 of 25 to 30", 101, {3, 6}, {{{5, 8}, {25, 30}}}},
    {"3 trays of 25 to 30 against 6 of 5 to 8", 102, {3, 6}, {{{25, 30}, {5, 8}}}},
    {"4 trays of 5 to 8 against 4 of 25 to 30", 103, {4, 4}, {{{5, 8}, {25, 30}}}},
    {"3 trays against 6, all of 5 to 30", 104, {3, 6}, {{{5, 30}, {5, 30}}}},
}};

}  // namespace calibration
