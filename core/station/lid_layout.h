// SPDX-License-Identifier: MIT
// Where the holes of a lid go: as many as fit with at least so much left between hole and hole and between hole and edge, in square or in
// staggered rows. Rows run from left to right with A1 at the back left, as on the map of a station; where more fit with the rows along its
// width, the lid lies turned.
#pragma once

#include <string>
#include <vector>

#include "core/result.h"
#include "core/station/position.h"
#include "core/station/station.h"
#include "core/units/display_units.h"

namespace core {

enum class RowPattern { Square, Staggered };

/// All in millimetres.
struct Lid {
    bool isRound{};
    double length{};  // of a round lid its diameter
    double width{};   // of a round lid not used
    double hole{};    // diameter
    double web{};     // least from the edge of one hole to that of the next
    double edge{};    // least from the edge of the lid to that of a hole

    bool operator==(const Lid&) const = default;
};

struct LidHole {
    Position position{};
    double across{};  // of its centre, millimetres from the left and the back edge of the lid as it lies
    double down{};

    bool operator==(const LidHole&) const = default;
};

struct LidLayout {
    RowPattern pattern{RowPattern::Square};
    bool isTurned{};  // its rows run along the width
    double across{};  // the lid as it lies
    double down{};
    int rows{};
    int columns{};                 // of the longest row
    std::vector<LidHole> holes{};  // row by row

    [[nodiscard]] int count() const { return static_cast<int>(holes.size()); }
    bool operator==(const LidLayout&) const = default;
};

/// Of the measures, worded in the grower's unit; where those are well, of what comes of them: no hole fits, or more rows than have letters.
[[nodiscard]] Refusals faultsIn(const Lid& lid, LengthUnit unit = LengthUnit::Millimetres);

/// The direction that holds more, the lid's length across where both hold as many. In the middle of the lid. No holes where none fits.
///
/// Source of the rectangle: rows and columns a pitch (hole + web) apart, staggered rows sqrt(3)/2 of it; geometry. Of the round lid the best
/// of the grids that lie evenly about its middle (on a hole, between two, between three); not the densest packing there is.
[[nodiscard]] LidLayout layoutOf(const Lid& lid, RowPattern pattern);
/// The pattern that holds more, square where both hold as many.
[[nodiscard]] LidLayout bestLayout(const Lid& lid);

/// Millimetres from centre to centre in square rows that give each so much room: 1000 / sqrt(number on a square metre). Above 0 to 100000.
[[nodiscard]] Result<double> squarePitch(double perSquareMetre);

/// Rows, columns and pattern as the station has them; places of its grid without a hole are blocked.
void describeAs(const LidLayout& layout, Station& station);

}  // namespace core
