// SPDX-License-Identifier: MIT
// A trial in the words that the window and the print-outs share.
#pragma once

#include <QString>
#include <QStringList>

#include "app/report/sheet.h"
#include "core/records.h"
#include "core/trial/trial_progress.h"

namespace report {

[[nodiscard]] QString factorWords(core::Factor factor);        // "kind of cutting"
[[nodiscard]] QString blockWords(core::BlockedBy blocks);      // "stock plant"
[[nodiscard]] QString stageWords(core::TrialStage stage);      // "being stuck"
[[nodiscard]] QString measureWords(const core::Trial& trial);  // "more rooted: 20 of 100 would matter"
/// "1 = aerated water"; the number is what stands on the map.
[[nodiscard]] QStringList armWords(const core::Trial& trial, const core::Shelves& shelves);
[[nodiscard]] QString armNumber(int arm);
/// What was planned, and when and how it was dealt. The question is not among them.
[[nodiscard]] std::vector<Fact> designFacts(const core::Trial& trial, const core::Shelves& shelves);
/// "14 March 2026: horizon day, 28 before, 35 after. Reason: a cold spring."
[[nodiscard]] QString changeWords(const core::TrialChange& change);
/// "Not before 14 April 2026, day 28 of the batch stuck last." or what it waits for.
[[nodiscard]] QString notBeforeWords(const core::TrialProgress& progress);

/// Counts so far by arm, or by block and arm.
[[nodiscard]] Table countsTable(const std::vector<core::ArmCounts>& arms, bool isByBlock);

}  // namespace report
