// SPDX-License-Identifier: MIT
// A row's identity: a random positive 63-bit number, so that two copies of a logbook can be merged. One type for each thing, so
// that a plant's id can't be handed over as a station's. 0 means "not stored yet" or "none given".
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace core {

template <class Thing>
struct Id {
    std::int64_t value{};

    [[nodiscard]] bool isSet() const { return value != 0; }
    auto operator<=>(const Id&) const = default;
};

using PlantId = Id<struct Plant>;
using StockPlantId = Id<struct StockPlant>;
using MethodId = Id<struct Method>;
using StationId = Id<struct Station>;
using MediumId = Id<struct Medium>;
using TreatmentId = Id<struct Treatment>;
using CuttingKindId = Id<struct CuttingKind>;
using LossCauseId = Id<struct LossCause>;
using TrialId = Id<struct Trial>;
using SessionId = Id<struct Session>;
using BatchId = Id<struct Batch>;
using CheckId = Id<struct Check>;
using ReadingId = Id<struct Reading>;
using CareId = Id<struct Care>;
using PhotoId = Id<struct Photo>;
using ExpenseId = Id<struct Expense>;
using CheckScheduleId = Id<struct CheckSchedule>;
using PlanId = Id<struct Plan>;
using KeptMixId = Id<struct KeptMix>;
using OwnBandId = Id<struct OwnBand>;
using LoggerFormatId = Id<struct LoggerFormat>;
using PriceId = Id<struct Price>;
using LotId = Id<struct Lot>;
using PottingId = Id<struct Potting>;

}  // namespace core

template <class Thing>
struct std::hash<core::Id<Thing>> {
    std::size_t operator()(core::Id<Thing> id) const noexcept { return std::hash<std::int64_t>{}(id.value); }
};
