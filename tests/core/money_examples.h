// SPDX-License-Identifier: MIT
// Prices, and logbooks with costs, that several tests share. docs/costs.md works the same cases out by hand; all of them are invented.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/money/costs_of_batches.h"
#include "core/money/worth_it.h"
#include "tests/support/builders.h"

namespace examples {

inline constexpr double farBelowACent = 1e-9;

/// Of the whole bench from 2026-01-01; a test sets the owner that it wants.
[[nodiscard]] core::Price lasting(const std::string& what, double amount, double years);
[[nodiscard]] core::Price usedUp(const std::string& what, double amount, double lastsFor, core::PriceBasis basis);
[[nodiscard]] core::Price electricity(const std::string& what, double watts, double hoursADay);
[[nodiscard]] core::Price tariff(double ofAKilowattHour);
[[nodiscard]] core::Price workTime(const std::string& what, double minutes, core::PriceBasis basis);
[[nodiscard]] core::Price hourOfWork(double amount);

[[nodiscard]] core::Price ownedBy(core::Price price, core::StationId station);
[[nodiscard]] core::Price ownedBy(core::Price price, core::MethodId method);
[[nodiscard]] core::Price ownedBy(core::Price price, core::TreatmentId treatment);
[[nodiscard]] core::Price ownedBy(core::Price price, core::MediumId medium);
[[nodiscard]] core::Price from(core::Date day, core::Price price);

/// 2026-03-02 and so many days later.
[[nodiscard]] core::Date dayAfterSticking(int days);

[[nodiscard]] core::CostsOfBatches costsOf(const core::Records& records, core::Date today = support::today());
/// worthIt() over costsOf(), which must not refuse.
[[nodiscard]] core::Worth worthOf(const core::Records& records, core::WorthQuestion question = {},
                                  core::Date today = support::today());

/// Batches at random over so many days before today, at stations of both methods.
[[nodiscard]] core::Records bigLogbook(int batches, int days, std::uint64_t seed);
/// Things, electricity, work and care of ten years.
void priceEverything(core::Records& records);

}  // namespace examples
