// SPDX-License-Identifier: MIT
// A small logbook as values, for print-outs. Invented.
#pragma once

#include <QDateTime>

#include "core/comparison/batch_summary.h"
#include "core/records.h"

namespace examples {

/// One plant of each list, ids set; grower "E. Marsh".
[[nodiscard]] core::Shelves smallShelves();
/// 24 cuttings stuck on 14 March 2026 and checked `checks` times, a week apart for the first four, then daily.
[[nodiscard]] core::BatchRecord batchChecked(int checks);
[[nodiscard]] core::Session session();
[[nodiscard]] QDateTime printedAt();

}  // namespace examples
