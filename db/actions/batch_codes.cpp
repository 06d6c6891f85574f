// SPDX-License-Identifier: MIT
#include "db/actions/batch_codes.h"

#include "core/batch/batch_code.h"
#include "core/units/entered_text.h"

namespace db {

std::optional<std::string> BatchCodes::next(int year) {
    constexpr int highestNumber = 9999;
    if (year != lastYear_) {
        lastNumber_ = logbook_.lastBatchNumber(year);
        lastYear_ = year;
    }
    while (lastNumber_ < highestNumber) {
        std::string code = core::batchCode(year, ++lastNumber_);
        if (!taken_.contains(code) && !logbook_.batchWithCode(code).isSet()) return code;
    }
    return std::nullopt;
}

std::optional<core::Refusal> BatchCodes::take(const std::string& code, core::BatchId owner) {
    const core::BatchId there = logbook_.batchWithCode(code);
    const bool isFree = !there.isSet() || there == owner;
    if (taken_.insert(code).second && isFree) return std::nullopt;
    const std::string value = core::quotable(code);
    return core::Refusal{
        .field = "Code",
        .value = value,
        .allowed = "a code that no other batch has",
        .sentence = "Code is " + value + ", which another batch has; a code that no other batch has is allowed."};
}

core::Refusal noCodeLeft(int year) {
    const std::string of = std::to_string(year);
    return {.field = "Code",
            .value = "none",
            .allowed = "a code of your own",
            .sentence = "Code is not given, and all 9999 codes of " + of + " are used; a code of your own is allowed."};
}

}  // namespace db
