// SPDX-License-Identifier: MIT
// Every figure of one pair of arms as a table: differences, ratios, tests, speed, pooled over plants, spread. What the words on the page rest
// on; each row knows the page that says how it is worked out.
#pragma once

#include <QStringList>
#include <vector>

#include "app/plot/figure_table.h"
#include "app/report/methods/method_note.h"
#include "core/comparison/comparison.h"

namespace desktop {

struct PairFigures {
    plot::FigureTable table;
    QStringList pages;  // one for each row; resources/methods
};

/// Domain: 0 <= pair < comparison.pairs.size().
[[nodiscard]] PairFigures pairFigures(const core::Comparison& comparison, int pair);
/// The pages of all rows that have a figure.
[[nodiscard]] std::vector<report::MethodNote> notesOnPair(const core::Comparison& comparison, int pair);
/// "media tray against aerated water"
[[nodiscard]] QString pairName(const core::Comparison& comparison, int pair);

}  // namespace desktop
