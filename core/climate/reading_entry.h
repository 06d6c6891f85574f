// SPDX-License-Identifier: MIT
// A reading as a person types it, in the grower's unit: kept, asked about, or refused. An EC ten times wrong kills the batch, so a
// figure that looks like a slip is asked about with the figure that was probably meant.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/climate/bands.h"
#include "core/climate/quantity.h"
#include "core/units/display_units.h"

namespace core {

struct ReadingEntry {
    std::optional<double> stored{};  // nothing: left blank, or it can't be kept
    std::string fault{};             // why it can't be kept: no figure, or none that a meter shows
    std::string question{};          // it can be kept, on second thoughts

    bool operator==(const ReadingEntry&) const = default;
};

/// `band` is where cuttings do well, as bandWhileRooting() has it; `last` is what was read there before, as stored. Asked about is what lies
/// outside the band, or eight times and more above or below the last reading (common practice, no source).
[[nodiscard]] ReadingEntry readingEntryFrom(std::string_view typed, Quantity quantity, const DisplayUnits& units,
                                            const std::optional<Band>& band, std::optional<double> last = {});

/// What is read where nothing was read before: of a method with a solution, as a new logbook's "aerated water", EC, pH and temperature
/// of it; of any other the climate around the cuttings. The grower may always read more (common practice, no source).
[[nodiscard]] std::vector<Quantity> usualQuantities(std::string_view method);

}  // namespace core
