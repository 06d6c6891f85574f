// SPDX-License-Identifier: MIT
// The one invented example whose numbers stand on the pages of docs/statistics/methods: two plants, a tub, a tray and a mist bench, and a
// season of doses.
#pragma once

#include <vector>

#include "app/report/methods/method_note.h"
#include "core/causes/losses.h"
#include "core/comparison/batch_summary.h"
#include "core/comparison/comparison.h"
#include "core/comparison/turning_point.h"
#include "core/money/worth_it.h"

namespace examples {

[[nodiscard]] core::Shelves methodShelves();
/// Five batches in tubs, five in trays, three on the mist bench; two plants.
[[nodiscard]] std::vector<core::BatchRecord> methodSeason();
/// None, and four doses of IBA in gel, two or three batches each, all in trays.
[[nodiscard]] std::vector<core::BatchRecord> doseSeason();

[[nodiscard]] core::Comparison methodsCompared(core::RateInterval interval = core::RateInterval::Wilson);
[[nodiscard]] core::Comparison dosesCompared();
/// The last batch in a tub, beside the earlier ones.
[[nodiscard]] core::BatchSummary lastTub();

/// Twelve batches of hebe in tubs, the last five of which rooted worse; the spread is that of methodSeason().
[[nodiscard]] core::TurningPoint turnOfTheTubs();

/// methodSeason() in tubs that need a pump, and in trays on a heated bench: of both plants, or of hebe alone.
[[nodiscard]] core::Worth worthOfTubs(core::PlantId plant = {});
/// Four tubs and a tray, one of which dried out.
[[nodiscard]] core::Losses lossesOfTubs();

/// Every page once, with the numbers of the example: those of the figures, then the two of plans.
[[nodiscard]] std::vector<report::MethodNote> notesOfFigures();
[[nodiscard]] std::vector<report::MethodNote> notesOfPlans();
/// Those that only "Worth it" and "Losses" have.
[[nodiscard]] std::vector<report::MethodNote> notesOfMoneyAndLosses();

/// All notes that the figures of a comparison have.
[[nodiscard]] std::vector<report::MethodNote> everyNoteOn(const core::Comparison& comparison);

}  // namespace examples
