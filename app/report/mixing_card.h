// SPDX-License-Identifier: MIT
// A mix on one page, to lie beside the scale: what to measure out, what rounding does to it, how it was worked out, what to mind.
#pragma once

#include <QDateTime>

#include "app/report/mix_answer.h"
#include "app/report/sheet.h"
#include "core/records.h"

namespace report {

[[nodiscard]] Sheet mixingCard(const MixAnswer& answer, core::Date day, const core::LogbookFacts& facts,
                               const QDateTime& printedAt);
/// The same of a mix that was kept: as it was then, whatever the calculators say now.
[[nodiscard]] Sheet mixingCard(const core::KeptMix& mix, core::Date day, const core::LogbookFacts& facts,
                               const QDateTime& printedAt);

}  // namespace report
