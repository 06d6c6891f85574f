// SPDX-License-Identifier: MIT
// What "Worth it" says beside what core puts into words, the same on the screen and on paper: a headline, when things are paid for, and the
// figures of methods as a table.
#pragma once

#include <QString>
#include <vector>

#include "app/plot/chance_figure.h"
#include "app/plot/figure_table.h"
#include "core/money/pay_off.h"
#include "core/money/worth_it.h"

namespace report {

/// "Aerated water is worth it", "It can't be told yet".
[[nodiscard]] QString verdictHeadline(const core::WorthOfPair& pair);
/// "aerated water against media tray"
[[nodiscard]] QString pairText(const core::WorthOfPair& pair);
/// Those that a page about this pair shows, so that its pictures, figures and words are of the same batches: both of the pair, in the mix of
/// plants in which they are compared; without a pair that can be compared, all methods as they were stuck.
[[nodiscard]] std::vector<core::WorthOfMethod> methodsToShow(const core::Worth& worth, int pair);
/// One row each; `hasPlants` puts the plant first.
[[nodiscard]] plot::FigureTable worthTable(const std::vector<core::WorthOfMethod>& methods, bool hasPlants,
                                           double level, const std::string& currency);
[[nodiscard]] double sumOf(const std::vector<core::StoodEmpty>& things);
/// What it cost and nobody bore.
[[nodiscard]] plot::FigureTable stoodEmptyTable(const std::vector<core::StoodEmpty>& things,
                                                const core::Shelves& shelves);
/// The chance that one's own things are paid for, by number of batches, for plot::chanceFigure(). Contract: pair.breakEven.
[[nodiscard]] plot::ChanceCurve paidOffCurve(const core::WorthOfPair& pair, const std::vector<core::ChanceAfter>& curve,
                                             double level);

}  // namespace report
