// SPDX-License-Identifier: MIT
// A trial while it is planned: the design, where it is to be dealt to, and what it begins with. No widgets, and nothing is written.
#pragma once

#include <optional>
#include <vector>

#include "core/causes/trial_proposal.h"
#include "core/result.h"
#include "core/trial/allocate_trial.h"
#include "core/trial/trial_rules.h"

namespace desktop {

class Workspace;

struct TrialDraft {
    core::Trial trial{};  // id unset: new
    core::TrialLayout layout{};
    std::optional<double> expected{};  // share rooted of the first arm, where somebody knows better than the records

    /// Over how many batches an arm's cuttings are spread, on average.
    [[nodiscard]] double batchesPerArm() const;
    [[nodiscard]] std::vector<core::PlantId> plants() const;
};

/// A new one, begun like the trial planned last; or, to be dealt again, what that one was dealt from.
[[nodiscard]] TrialDraft draftOf(const core::Trial& trial, const std::vector<core::StationRoom>& rooms);
[[nodiscard]] TrialDraft freshDraft(const core::Shelves& shelves, const std::vector<core::StationRoom>& rooms);

/// What a proposal asks for, laid out where there is room for it, so that it can be saved as it is. An arm that is a way to root which no
/// station has yet is crossed over with the other at that one's stations. Its plant is the block; what is to be added must be on `shelves`.
[[nodiscard]] TrialDraft draftOf(const core::TrialProposal& proposal, const core::Shelves& shelves,
                                 const std::vector<core::StationRoom>& rooms);
/// Gives what is to be added an id, puts it among `made` and into the arm that waits for it.
void makeReady(core::TrialProposal& proposal, core::Shelves& made);

/// What is free at each station that is in use, in walking order.
[[nodiscard]] std::vector<core::StationRoom> roomsNow(Workspace& workspace);
/// Stations at which a design can stand: those of its methods, or where arms stand side by side all of one method.
[[nodiscard]] std::vector<core::StationId> usualStations(const core::Trial& design,
                                                         const std::vector<core::StationRoom>& rooms);

/// "aerated water or media tray", with a number where that is taken.
[[nodiscard]] std::string proposedName(const core::Trial& trial, const core::Shelves& shelves);
/// Of what the arm is.
[[nodiscard]] std::int64_t idOf(const core::TrialArm& arm);
/// Everything of a factor that can be an arm: not retired, or an arm already.
[[nodiscard]] std::vector<core::TrialArm> armsToChooseFrom(core::Factor factor, const core::Trial& trial,
                                                           const core::Shelves& shelves);

/// Every reason why it can't be planned, each under the field of the form that it belongs to.
[[nodiscard]] core::Refusals faultsIn(const TrialDraft& draft, const core::Shelves& shelves);
/// Any refusal about a trial, put under the form's field: "Arms", "Stations", "Blocks" ...
[[nodiscard]] core::Refusals underFormFields(core::Refusals refusals);

}  // namespace desktop
