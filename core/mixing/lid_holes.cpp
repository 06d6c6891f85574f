// SPDX-License-Identifier: MIT
#include "core/mixing/lid_holes.h"

#include <cmath>

namespace core {

namespace {

constexpr double rowsOfPitch = 0.8660254037844386;  // sqrt(3) / 2

/// "(600 - 2 x 20 - 44) / 64 = 8.06, so 9"
std::string holesAlong(double side, double step, const std::string& stepText, int holes, const LidHoles& answer) {
    const auto shown = [&](double length) { return briefText(shownLength(length, answer.unit)); };
    const double spare = side - 2 * answer.lid.edge - answer.lid.hole;
    return "(" + shown(side) + " - 2 x " + shown(answer.lid.edge) + " - " + shown(answer.lid.hole) + ") / " + stepText +
           " = " + briefText(spare / step, 3) + ", so " + std::to_string(holes);
}

std::string pitchText(const LidHoles& answer) {
    return "(" + briefText(shownLength(answer.lid.hole, answer.unit)) + " + " +
           briefText(shownLength(answer.lid.web, answer.unit)) + ")";
}

Working squareWorking(const LidHoles& answer) {
    const double pitch = answer.lid.hole + answer.lid.web;
    const LidLayout& layout = answer.square;
    return {.formula = "square rows: holes along a side = (side - 2 x edge - hole) / (hole + web), rounded down, + 1",
            .withNumbers = holesAlong(layout.across, pitch, pitchText(answer), layout.columns, answer) + "; " +
                           holesAlong(layout.down, pitch, pitchText(answer), layout.rows, answer) + "; " +
                           std::to_string(layout.columns) + " x " + std::to_string(layout.rows) + " = " +
                           std::to_string(layout.count()),
            .source = "geometry"};
}

Working staggeredWorking(const LidHoles& answer) {
    const double pitch = answer.lid.hole + answer.lid.web;
    const LidLayout& layout = answer.staggered;
    return {
        .formula =
            "staggered rows: the same along a row, every second row shifted by half; rows = (side - 2 x edge - "
            "hole) / (0.866 x (hole + web)), rounded down, + 1",
        .withNumbers =
            holesAlong(layout.across, pitch, pitchText(answer), layout.columns, answer) + " in the longest row; " +
            holesAlong(layout.down, rowsOfPitch * pitch, "(0.866 x " + pitchText(answer) + ")", layout.rows, answer) +
            " rows; together " + std::to_string(layout.count()),
        .source = "geometry"};
}

Working roundWorking(const LidHoles& answer) {
    return {.formula = "round lid: the best of the grids of (hole + web) that lie evenly about its middle",
            .withNumbers = "square " + std::to_string(answer.square.count()) + ", staggered " +
                           std::to_string(answer.staggered.count()),
            .source = "geometry; not the densest packing there is"};
}

}  // namespace

Result<LidHoles> lidHoles(const Lid& lid, LengthUnit unit) {
    if (Refusals faults = faultsIn(lid, unit); !faults.empty()) return refused(std::move(faults));
    LidHoles answer{.lid = lid, .unit = unit};
    answer.square = layoutOf(lid, RowPattern::Square);
    answer.staggered = layoutOf(lid, RowPattern::Staggered);
    if (lid.isRound) {
        answer.notes.workings = {roundWorking(answer)};
    } else {
        if (answer.square.count() > 0) answer.notes.workings.push_back(squareWorking(answer));
        if (answer.staggered.count() > 0) answer.notes.workings.push_back(staggeredWorking(answer));
    }
    answer.notes.remarks.push_back(
        "Collars of 44 mm (1 3/4 in) are the usual ones (common practice, no source); leaves want room, too.");
    answer.notes.cautions = {CautionTopic::DrillingAndHotGlue, CautionTopic::Advice};
    return answer;
}

}  // namespace core
