// SPDX-License-Identifier: MIT
// A small bench for tests of suspects: batches of hebe that do as usual, and some that share something and do poorly. All invented.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/causes/suspects.h"
#include "tests/support/builders.h"

namespace examples {

inline constexpr int fewRooted = 5;
inline constexpr int usuallyRooted = 16;

/// Looked at on day 35, the horizon of hebe; the rest of 24 stays unrooted.
[[nodiscard]] support::BatchBuilder hebeRooted(int rooted, int stuckAfterDays, core::StationId station);

struct SuspectBench {
    core::Shelves shelves{support::someShelves()};
    std::vector<core::BatchRecord> batches{};
    std::vector<core::Care> care{};
    std::string worker{};  // of every session that a batch names
    std::unordered_map<core::StationId, core::MeasuredValues> measured{};
    std::optional<double> correlation{};  // within batches; unset: learnt from them

    /// Every two hours, from one day after stickingDay() up to another.
    void read(core::StationId station, core::Quantity quantity, double value, int fromDay, int toDay);
    /// Of the batch added first.
    [[nodiscard]] core::Suspects suspects() const;
};

/// The batch asked about and `others` stuck in the north tub within three weeks, all with few rooted; ten in the south tub at the same time and
/// six in the north tub long before, all as usual.
[[nodiscard]] SuspectBench poorInNorthTub(int others = 3);

/// The same with a solution of 15 C in the north tub since then, and of 21 C in the other, and before.
[[nodiscard]] SuspectBench coldNorthTub();

[[nodiscard]] const core::Suspect* suspectNamed(const core::Suspects& found, const std::string& part);

}  // namespace examples
