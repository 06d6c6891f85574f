// SPDX-License-Identifier: MIT
// What a session and its batches must obey before they are written down.
#pragma once

#include <span>
#include <string>

#include "core/batch/batch.h"
#include "core/batch/check.h"
#include "core/batch/session.h"
#include "core/records.h"
#include "core/refusal.h"
#include "core/result.h"

namespace core {

inline constexpr int mostStuck = 100'000;  // cuttings of one batch

/// Every fault of a batch, given the checks it has already (none for a new one): stuck from 1 to 100 000 and not fewer than are
/// accounted for; not stuck in the future or after its first check; closed no earlier than stuck or last checked; the things it
/// names exist in `shelves`; the stock plant is of its plant; the code is well formed (uniqueness is the logbook's to check).
[[nodiscard]] Refusals faultsIn(const Batch& batch, std::span<const Check> checks, const Shelves& shelves, Date today);

/// Every fault of a session: not in the future, not before 1800-01-01, worker and note not over-long.
[[nodiscard]] Refusals faultsIn(const Session& session, Date today);

}  // namespace core
