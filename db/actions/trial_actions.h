// SPDX-License-Identifier: MIT
// Edits of planned trials: dealt by chance, changed by the rule, dealt again, stuck. See session_actions.h for the manner. A trial is deleted by
// remove(logbook, trial) of shelf_actions.h: only while none of its batches is stuck.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/trial/allocate_trial.h"
#include "core/trial/trial_rules.h"
#include "db/actions/session_actions.h"

namespace db {

struct TrialWritten {
    Changes changes;
    core::Trial trial;  // as written, with its id, its seed, its day and what was dealt
};

/// A new trial with its arms, dealt from its allocationSeed (drawn when there is none); set on today. Refused when the design or the
/// layout is at fault, the stations are too small, or a place is no longer free. `made`: what its arms name and the logbook lacks, as in
/// SessionDraft; written in the same step.
[[nodiscard]] core::Result<TrialWritten> planTrial(Logbook& logbook, core::Trial trial, const core::TrialLayout& layout,
                                                   core::Date today, core::Shelves made = {});
/// Name, question, note; and horizon day, measure, margin, factor, arms, blinding: after the first check of one of its batches only with a
/// reason, which is written beside the change. What was dealt stays as it is.
[[nodiscard]] core::Result<Changes> changeTrial(Logbook& logbook, const core::Trial& trial, const std::string& reason,
                                                core::Date today);
/// Deals anew, perhaps with other arms, blocks or numbers; only while none of its batches is stuck.
[[nodiscard]] core::Result<TrialWritten> allocateAgain(Logbook& logbook, core::Trial trial,
                                                       const core::TrialLayout& layout, core::Date today);
/// New places for one session of which nothing is stuck, from what is free now; the numbers of each arm stay.
[[nodiscard]] core::Result<TrialWritten> placeAgain(Logbook& logbook, core::TrialId trial, int session);

struct TrialSessionDraft {
    core::TrialId trial{};
    core::Session session{};                    // id unset: new
    core::Shelves made{};                       // as in SessionDraft
    std::vector<core::PlannedBatch> batches{};  // of one session of the trial, as core::batchesToStick() gives them
};

/// Sticks what was dealt; each batch must be as dealt, else the refusal says what differs. Those left out can be stuck another time.
[[nodiscard]] core::Result<SessionWritten> stickTrialSession(Logbook& logbook, const TrialSessionDraft& draft,
                                                             core::Date today);

/// What is free at a station now.
[[nodiscard]] core::StationRoom roomAt(const Logbook& logbook, const core::Station& station);
/// Somebody has looked at one of its batches.
[[nodiscard]] bool wasChecked(const Logbook& logbook, core::TrialId trial);

}  // namespace db
