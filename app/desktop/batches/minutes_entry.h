// SPDX-License-Identifier: MIT
// Minutes of work as they are typed, blank for none.
#pragma once

#include <QString>
#include <optional>

#include "core/result.h"

namespace desktop {

/// Nothing where it is blank; nothing with a refusal of the field "Minutes" where it is no number.
[[nodiscard]] std::optional<double> minutesFrom(const QString& typed, core::Refusals& faults);
[[nodiscard]] QString minutesShown(const std::optional<double>& minutes);

}  // namespace desktop
