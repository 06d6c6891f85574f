// SPDX-License-Identifier: MIT
// A trial that would show whether a suspect is one: enough to open the dialog of a new trial filled in.
#pragma once

#include <optional>
#include <string>

#include "core/records.h"

namespace core {

/// `trial` has its name, question, factor, measure, margin, horizon and two arms: first what was done, then what would be changed. Ids of the
/// trial and of the thing to be added are unset. Where the second arm is on no shelf yet, its ids are unset and one of the three below holds
/// what is to be added first; its new id then goes into the arm. At most one of them is set.
struct TrialProposal {
    Trial trial{};
    PlantId plant{};  // of the batch
    std::optional<Method> methodToAdd{};
    std::optional<Treatment> treatmentToAdd{};
    std::optional<Medium> mediumToAdd{};
    std::string inWords{};  // "Stick some in \"aerated water\" and some in \"aerated water, warmed\" on the same day."

    [[nodiscard]] bool isReady() const { return !methodToAdd && !treatmentToAdd && !mediumToAdd; }
    bool operator==(const TrialProposal&) const = default;
};

/// The batch's method against the same with one thing changed: "warmed" makes "aerated water, warmed". Nothing where its method is on no
/// shelf. A method of that name that is in use already becomes the second arm.
[[nodiscard]] std::optional<TrialProposal> proposeChangedMethod(const Batch& batch, const Shelves& shelves,
                                                                int horizonDay, const std::string& change);
/// The batch's treatment, or medium, against the same from a fresh lot.
[[nodiscard]] std::optional<TrialProposal> proposeNewHormone(const Batch& batch, const Shelves& shelves,
                                                             int horizonDay);
[[nodiscard]] std::optional<TrialProposal> proposeNewMedium(const Batch& batch, const Shelves& shelves, int horizonDay);

}  // namespace core
