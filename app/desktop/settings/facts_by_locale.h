// SPDX-License-Identifier: MIT
// What a new logbook's units, currency and paper likely are, by the place that the computer is set to. All of it can be changed.
#pragma once

#include <QLocale>

#include "core/records.h"

namespace desktop {

[[nodiscard]] core::LogbookFacts factsByLocale(const QLocale& locale);

}  // namespace desktop
