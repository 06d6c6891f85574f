// SPDX-License-Identifier: MIT
// What a batch cost, its share of what batches have in common included: in all, in parts, and for each cutting that rooted.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "core/batch/tally.h"
#include "core/money/costs_of_batches.h"

namespace report {

struct WholeCost {
    core::CostOfBatch cost{};
    std::vector<std::string> missing{};  // sentences: what is not in it though it was there

    bool operator==(const WholeCost&) const = default;
};

/// Nothing where no price and no expense is in the logbook, or there is no such batch.
[[nodiscard]] std::optional<WholeCost> wholeCostOf(const core::CostsOfBatches& costs, core::BatchId batch);

/// "12.50 EUR in all, 0.69 EUR for each of 18 rooted so far"
[[nodiscard]] QString costsInWords(const core::CostOfBatch& cost, const core::Tally& tally, bool isClosed,
                                   const std::string& currency);
/// "used up 1.10, work 11.40"; empty where it cost nothing.
[[nodiscard]] QString costPartsInWords(const core::CostOfBatch& cost);

}  // namespace report
