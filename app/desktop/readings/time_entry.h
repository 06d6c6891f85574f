// SPDX-License-Identifier: MIT
// Reads an hour as a person at the bench types it: 9, 9:30, 9.30, 0930. Anything else gives nothing.
#pragma once

#include <QString>
#include <optional>

namespace desktop {

/// Minutes since midnight.
[[nodiscard]] std::optional<int> minuteFrom(const QString& typed);
/// "9:30": what minuteFrom() reads.
[[nodiscard]] QString hourText(int minute);

}  // namespace desktop
