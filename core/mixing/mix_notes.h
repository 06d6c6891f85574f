// SPDX-License-Identifier: MIT
// What stands under every answer of the calculators: how it was worked out, what to know about it, what to mind.
#pragma once

#include <string>
#include <vector>

#include "core/mixing/measured_amount.h"
#include "core/mixing/trade_cautions.h"
#include "core/working.h"

namespace core {

struct MixNotes {
    std::vector<Working> workings{};
    std::vector<std::string> remarks{};    // whole sentences, for people
    std::vector<CautionTopic> cautions{};  // the last is always Advice

    bool operator==(const MixNotes&) const = default;
};

inline void noteCoarseness(MixNotes& notes, const MeasuredAmount& amount, const std::string& ofWhat) {
    if (std::optional<std::string> remark = coarsenessOf(amount, ofWhat)) notes.remarks.push_back(std::move(*remark));
}

}  // namespace core
