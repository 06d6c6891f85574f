// SPDX-License-Identifier: MIT
// All that is known of one suspect, as rich text with headings: for it, against it, what can't be told apart from it, what to change, what to
// try, what to check.
#pragma once

#include <QString>

#include "core/causes/suspects.h"

namespace desktop {

[[nodiscard]] QString suspectAsHtml(const core::Suspect& suspect);

}  // namespace desktop
