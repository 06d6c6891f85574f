// SPDX-License-Identifier: MIT
// What one session stuck: which batches, where, how many, on which positions, under which codes; with room for a pencil. Hangs by the bench or
// goes into the folder.
#pragma once

#include <QDateTime>
#include <span>

#include "app/report/sheet.h"
#include "core/records.h"

namespace report {

/// `batches` and `mixes` are the session's.
[[nodiscard]] Sheet sessionSheet(const core::Session& session, std::span<const core::Batch> batches,
                                 const core::Shelves& shelves, const QDateTime& printedAt,
                                 std::span<const core::KeptMix> mixes = {});

}  // namespace report
