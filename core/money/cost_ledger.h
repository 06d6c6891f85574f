// SPDX-License-Identifier: MIT
// What is written down while the costs of batches are worked out. For core/money/costs_of_batches.h only.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/money/costs_of_batches.h"
#include "core/money/standing.h"

namespace core {

class CostLedger {
  public:
    explicit CostLedger(std::span<const BatchRecord> batches);

    /// A batch is named by its place in Spending.
    void charge(std::size_t batch, CostPart part, const std::string& what, double amount);
    void chargeOwnThing(std::size_t batch, const std::string& what, double amount);
    void noteEmpty(const Price& price, CostPart part, int days, double amount);
    /// "No tariff holds on 2026-03-02, so the electricity of air pump isn't in it." `days` rise; none: nothing is missing.
    /// `batches` are those that it concerns.
    void noteMissing(const std::string& whatHolds, const std::string& whatIsNotIn, std::span<const int> days,
                     std::span<const std::size_t> batches);
    void note(const std::string& sentence);
    /// Lines in order, parts summed.
    [[nodiscard]] CostsOfBatches close() &&;

  private:
    CostsOfBatches costs_;
};

}  // namespace core
