// SPDX-License-Identifier: MIT
// Gives new batches their codes, and finds codes that are taken. For use within one action.
#pragma once

#include <optional>
#include <set>
#include <string>

#include "core/refusal.h"
#include "db/logbook.h"

namespace db {

class BatchCodes {
  public:
    explicit BatchCodes(const Logbook& logbook) : logbook_(logbook) {}

    /// The next free one of the year, or nothing when its 9999 are used up.
    [[nodiscard]] std::optional<std::string> next(int year);
    /// A refusal when another batch has it, in the logbook or in this action.
    [[nodiscard]] std::optional<core::Refusal> take(const std::string& code, core::BatchId owner);

  private:
    const Logbook& logbook_;
    std::set<std::string> taken_;
    int lastYear_ = 0;
    int lastNumber_ = 0;
};

[[nodiscard]] core::Refusal noCodeLeft(int year);

}  // namespace db
