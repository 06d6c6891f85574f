// SPDX-License-Identifier: MIT
// What the batches of a logbook have cost, read and reckoned in one go: long work with many batches, for a thread of its own in the window.
#pragma once

#include <stop_token>
#include <vector>

#include "core/money/costs_of_batches.h"
#include "db/logbook.h"

namespace report {

/// `batches` are all of the logbook: they share.
[[nodiscard]] core::CostsOfBatches costsOfLogbook(const db::Logbook& logbook,
                                                  const std::vector<core::BatchRecord>& batches, core::Date today,
                                                  const std::stop_token& stop = {});

}  // namespace report
