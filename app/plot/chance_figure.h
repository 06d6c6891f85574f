// SPDX-License-Identifier: MIT
// Number against chance: how many to stick for enough plants, how many per arm for a difference to be found. The number
// that is answered stands out by a mark, its drop lines and its label.
#pragma once

#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/plot/figure.h"

namespace plot {

struct ChanceOfNumber {
    int number{};
    double chance{};  // 0 to 1
};

struct ChanceCurve {
    QString sentence;  // the title
    QString method;
    QString numberCaption;               // along the axis: "cuttings stuck"
    QString chanceCaption;               // above it: "chance of 24 or more usable plants"
    std::vector<ChanceOfNumber> points;  // by number, rising
    std::optional<double> wanted;        // the chance asked for
    std::optional<int> answer;           // the number that has it; one of the points
    QString nothing;                     // why there is no curve, where there are no points
};

[[nodiscard]] std::shared_ptr<const Figure> chanceFigure(ChanceCurve curve);

}  // namespace plot
