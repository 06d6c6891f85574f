// SPDX-License-Identifier: MIT
// What may have gone wrong with one batch, on paper: the verdict, the warning, each suspect with what speaks for it and against it, and what to
// change, check and write down.
#pragma once

#include <QDateTime>

#include "app/report/sheet.h"
#include "core/causes/suspects.h"

namespace report {

/// The likeliest twelve in full; the others in one line each.
[[nodiscard]] Sheet suspectsSheet(const core::Suspects& suspects, const QString& plant, const core::Shelves& shelves,
                                  const QDateTime& printedAt);

}  // namespace report
