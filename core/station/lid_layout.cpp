// SPDX-License-Identifier: MIT
#include "core/station/lid_layout.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "core/units/figure_text.h"

namespace core {

namespace {

constexpr double slack = 1e-9;         // of a step: rounding takes no hole that just fits
constexpr double finestLength = 1e-6;  // mm
constexpr double rowsPerPitch = std::numbers::sqrt3 / 2;

/// A measure of a lid, and what it may be, in millimetres.
struct Measure {
    const char* field;
    double value;
    double least;
    double most;
};

std::vector<Measure> measuresOf(const Lid& lid) {
    constexpr double leastLid = 20, mostLid = 3000, leastHole = 3, mostHole = 500, leastRest = 1, mostRest = 1000;
    std::vector<Measure> measures{{lid.isRound ? "Diameter" : "Length", lid.length, leastLid, mostLid}};
    if (!lid.isRound) measures.push_back({"Width", lid.width, leastLid, mostLid});
    measures.push_back({"Hole", lid.hole, leastHole, mostHole});
    measures.push_back({"Web", lid.web, leastRest, mostRest});
    measures.push_back({"Edge", lid.edge, leastRest, mostRest});
    return measures;
}

/// Not a number falls out of every range.
bool isAllowed(const Measure& measure) {
    return measure.value >= measure.least && measure.value <= measure.most;
}

std::string shownText(double millimetres, LengthUnit unit) {
    constexpr double finest = 1000;
    return figureText(std::round(shownLength(millimetres, unit) * finest) / finest);
}

Refusal faultOf(const Measure& measure, LengthUnit unit) {
    const std::string sign = ' ' + std::string(wordFor(unit));
    const std::string value = shownText(measure.value, unit) + sign;
    const std::string allowed = shownText(measure.least, unit) + " to " + shownText(measure.most, unit) + sign;
    return {measure.field, value, allowed,
            std::string(measure.field) + " is " + value + "; " + allowed + " is allowed."};
}

int stepsIn(double room, double step) {
    return static_cast<int>(std::floor(room / step + slack));
}

double rowStepOf(const Lid& lid, RowPattern pattern) {
    return (lid.hole + lid.web) * (pattern == RowPattern::Square ? 1 : rowsPerPitch);
}

bool canBeNamed(const LidLayout& layout) {
    return layout.rows <= mostRows && layout.columns <= mostColumns;
}

/// Rows and columns are counted also where there are too many to be named; then there are no holes.
LidLayout onRectangle(const Lid& lid, RowPattern pattern, bool isTurned) {
    LidLayout layout{.pattern = pattern,
                     .isTurned = isTurned,
                     .across = isTurned ? lid.width : lid.length,
                     .down = isTurned ? lid.length : lid.width};
    const double pitch = lid.hole + lid.web, rowStep = rowStepOf(lid, pattern), taken = 2 * lid.edge + lid.hole;
    const double roomAcross = layout.across - taken + finestLength, roomDown = layout.down - taken + finestLength;
    if (roomAcross < 0 || roomDown < 0) return layout;
    const bool isStaggered = pattern == RowPattern::Staggered;
    const int inFirst = stepsIn(roomAcross, pitch) + 1;
    const int inSecond = isStaggered ? stepsIn(roomAcross - pitch / 2, pitch) + 1 : inFirst;  // none: -1 + 1
    layout.rows = stepsIn(roomDown, rowStep) + 1;
    layout.columns = inFirst;
    if (!canBeNamed(layout)) return layout;
    const bool reachesOver = isStaggered && layout.rows > 1 && inSecond == inFirst;
    const double left = (layout.across - (inFirst - 1 + (reachesOver ? 0.5 : 0)) * pitch) / 2;
    const double back = (layout.down - (layout.rows - 1) * rowStep) / 2;
    for (int row = 0; row < layout.rows; ++row) {
        const bool isShifted = isStaggered && row % 2 == 1;
        for (int column = 0; column < (isShifted ? inSecond : inFirst); ++column)
            layout.holes.push_back({.position = {row, column},
                                    .across = left + (column + (isShifted ? 0.5 : 0)) * pitch,
                                    .down = back + row * rowStep});
    }
    return layout;
}

/// A place of the endless grid, in steps from the middle of a round lid.
struct GridPlace {
    int row{};
    double across{};
};

/// Where the grid lies on the middle of the lid, in steps.
struct GridPhase {
    double across{};
    double down{};
};

std::vector<GridPlace> placesOn(const Lid& lid, RowPattern pattern, const GridPhase& phase) {
    const double pitch = lid.hole + lid.web, rowStep = rowStepOf(lid, pattern);
    const double reach = lid.length / 2 - lid.edge - lid.hole / 2 + finestLength;
    std::vector<GridPlace> places;
    if (reach < 0) return places;
    const int last = stepsIn(reach, rowStep) + 1;
    for (int row = -last; row <= last; ++row) {
        const double down = (row + phase.down) * rowStep;
        if (std::abs(down) > reach) continue;
        const double half = std::sqrt(reach * reach - down * down) / pitch;
        const bool isShifted = pattern == RowPattern::Staggered && row % 2 != 0;
        const double shift = phase.across + (isShifted ? 0.5 : 0);
        for (double step = std::ceil(-half - shift); step + shift <= half; ++step)
            places.push_back({.row = row, .across = step + shift});
    }
    return places;
}

/// Rows and columns counted from the first that has a hole; every second row stands half a step to the right, as the station's do.
LidLayout numbered(const Lid& lid, RowPattern pattern, const std::vector<GridPlace>& places, const GridPhase& phase) {
    LidLayout layout{.pattern = pattern, .across = lid.length, .down = lid.length};
    if (places.empty()) return layout;
    const int first = places.front().row;
    const auto columnAt = [&](const GridPlace& place) {
        return place.across - (pattern == RowPattern::Staggered && (place.row - first) % 2 != 0 ? 0.5 : 0);
    };
    const auto [least, most] = std::ranges::minmax(places, {}, columnAt);
    layout.rows = places.back().row - first + 1;
    layout.columns = static_cast<int>(std::lround(columnAt(most) - columnAt(least))) + 1;
    if (!canBeNamed(layout)) return layout;
    for (const GridPlace& place : places)
        layout.holes.push_back(
            {.position = {place.row - first, static_cast<int>(std::lround(columnAt(place) - columnAt(least)))},
             .across = lid.length / 2 + place.across * (lid.hole + lid.web),
             .down = lid.length / 2 + (place.row + phase.down) * rowStepOf(lid, pattern)});
    return layout;
}

LidLayout onCircle(const Lid& lid, RowPattern pattern) {
    // The middle of the lid on a hole, between two of them, between four or three.
    const GridPhase betweenMost = pattern == RowPattern::Square ? GridPhase{0.5, 0.5} : GridPhase{0.5, 1.0 / 3};
    std::vector<GridPlace> best;
    GridPhase bestPhase;
    for (const GridPhase& phase : {GridPhase{0, 0}, GridPhase{0.5, 0}, betweenMost}) {
        std::vector<GridPlace> places = placesOn(lid, pattern, phase);
        if (places.size() <= best.size()) continue;
        best = std::move(places);
        bestPhase = phase;
    }
    return numbered(lid, pattern, best, bestPhase);
}

std::vector<LidLayout> layoutsOf(const Lid& lid, RowPattern pattern) {
    if (lid.isRound) return {onCircle(lid, pattern)};
    return {onRectangle(lid, pattern, false), onRectangle(lid, pattern, true)};
}

bool isMeasured(const Lid& lid) {
    return std::ranges::all_of(measuresOf(lid), isAllowed);
}

/// "600 x 400 mm"
std::string sizeText(const Lid& lid, LengthUnit unit) {
    const std::string sign = ' ' + std::string(wordFor(unit));
    return lid.isRound ? shownText(lid.length, unit) + sign
                       : shownText(lid.length, unit) + " \u00d7 " + shownText(lid.width, unit) + sign;
}

Refusal noneFits(const Lid& lid, LengthUnit unit) {
    const std::string hole = shownText(lid.hole, unit) + ' ' + std::string(wordFor(unit));
    const double room = (lid.isRound ? lid.length : std::min(lid.length, lid.width)) - 2 * lid.edge;
    const std::string allowed = room < measuresOf({}).back().least
                                    ? "a narrower edge or a larger lid"
                                    : "up to " + shownText(room, unit) + ' ' + std::string(wordFor(unit));
    return {"Hole", hole, allowed,
            "Hole is " + hole + ", which does not fit on a lid of " + sizeText(lid, unit) + " with that edge; " +
                allowed + " is allowed."};
}

}  // namespace

Refusals faultsIn(const Lid& lid, LengthUnit unit) {
    Refusals faults;
    for (const Measure& measure : measuresOf(lid))
        if (!isAllowed(measure)) faults.push_back(faultOf(measure, unit));
    if (!faults.empty() || bestLayout(lid).count() > 0) return faults;
    const bool isTooMany = std::ranges::any_of(layoutsOf(lid, RowPattern::Square),
                                               [](const LidLayout& layout) { return !canBeNamed(layout); });
    if (!isTooMany) return {noneFits(lid, unit)};
    const std::string web = shownText(lid.web, unit) + ' ' + std::string(wordFor(unit));
    const std::string rows = "as much as leaves no more than " + std::to_string(mostRows) + " rows, a letter each,";
    return {{"Web", web, rows, "Web is " + web + "; " + rows + " is allowed."}};
}

LidLayout layoutOf(const Lid& lid, RowPattern pattern) {
    LidLayout best{.pattern = pattern, .across = lid.length, .down = lid.isRound ? lid.length : lid.width};
    if (!isMeasured(lid)) return best;
    for (LidLayout& layout : layoutsOf(lid, pattern))
        if (layout.count() > best.count()) best = std::move(layout);
    return best;
}

LidLayout bestLayout(const Lid& lid) {
    LidLayout square = layoutOf(lid, RowPattern::Square), staggered = layoutOf(lid, RowPattern::Staggered);
    return staggered.count() > square.count() ? staggered : square;
}

Result<double> squarePitch(double perSquareMetre) {
    constexpr double most = 100'000, millimetresAMetre = 1000;
    if (perSquareMetre > 0 && perSquareMetre <= most) return millimetresAMetre / std::sqrt(perSquareMetre);
    const std::string value = figureText(perSquareMetre), allowed = "more than 0 and up to 100000";
    return refused({{"Number on a square metre", value, allowed,
                     "Number on a square metre is " + value + "; " + allowed + " is allowed."}});
}

void describeAs(const LidLayout& layout, Station& station) {
    std::set<Position> drilled;
    for (const LidHole& hole : layout.holes) drilled.insert(hole.position);
    std::vector<Position> missing;
    for (int row = 0; row < layout.rows; ++row)
        for (int column = 0; column < layout.columns; ++column)
            if (!drilled.contains({row, column})) missing.push_back({row, column});
    station.rows = layout.rows;
    station.columns = layout.columns;
    station.isStaggered = layout.pattern == RowPattern::Staggered;
    station.blocked = textOf(std::move(missing));
}

}  // namespace core
