// SPDX-License-Identifier: MIT
// The fields that several questions on feed share: the water, the feed at full strength, its parts. Inside mix only.
#pragma once

#include <vector>

#include "app/desktop/mix/mix_form.h"
#include "core/mixing/nutrient_dose.h"

namespace desktop {

void addWaterEc(MixForm& form);
void addFullEc(MixForm& form, bool mayBeBlank = false);
/// Name, full dose in a litre or gallon, g or mL.
void addFeedParts(MixForm& form);
[[nodiscard]] std::vector<core::FeedPart> feedPartsOf(const MixForm& form);
/// Not a number where it can't be read.
[[nodiscard]] double figureOf(const QString& typed);

}  // namespace desktop
