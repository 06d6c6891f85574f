// SPDX-License-Identifier: MIT
// What readings, care, photos and expenses must obey: the thing they belong to is there, not in the future, not before 1800, a
// figure that can be, texts that can be stored.
#pragma once

#include "core/batch/photo.h"
#include "core/care/care.h"
#include "core/climate/reading.h"
#include "core/money/expense.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

[[nodiscard]] Refusals faultsIn(const Reading& reading, const Shelves& shelves, Moment now);
[[nodiscard]] Refusals faultsIn(const Care& care, const Shelves& shelves, Moment now);
/// `batch` is the one it names.
[[nodiscard]] Refusals faultsIn(const Photo& photo, const ImageBytes& image, const Batch& batch, Date today);
/// Whether its batch or session is there is the caller's to know.
[[nodiscard]] Refusals faultsIn(const Expense& expense, Date today);

}  // namespace core
