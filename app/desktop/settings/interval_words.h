// SPDX-License-Identifier: MIT
// Intervals and levels in one plain sentence each, for somebody who has to choose one.
#pragma once

#include <QString>

#include "app/report/methods/method_note.h"
#include "core/comparison/rate_interval.h"

namespace desktop {

[[nodiscard]] QString intervalWords(core::RateInterval interval);
[[nodiscard]] QString levelWords(double level);
/// What it makes of 18 rooted of 24: "18 of 24 gives 55 to 88 %."
[[nodiscard]] QString intervalExample(core::RateInterval interval, double level);
/// "How is this worked out?", with those numbers in.
[[nodiscard]] report::MethodNote intervalExampleNote(core::RateInterval interval, double level);

}  // namespace desktop
