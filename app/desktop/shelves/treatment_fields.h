// SPDX-License-Identifier: MIT
// The fields of a treatment, for its form on the shelf and for the one that a session opens on the spot.
#pragma once

#include <functional>

#include "core/result.h"
#include "core/treatment/treatment.h"

namespace desktop {

class ThingForm;

struct TreatmentRead {
    core::Treatment treatment;
    core::Refusals faults;  // what could not be read
};

/// Adds them to `form`; the answer reads them.
[[nodiscard]] std::function<TreatmentRead()> addTreatmentFields(ThingForm& form, const core::Treatment& treatment);

/// Refusals about one auxin belong under the field of all auxins.
[[nodiscard]] core::Refusals underAuxins(core::Refusals refusals);

}  // namespace desktop
