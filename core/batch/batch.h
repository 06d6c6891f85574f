// SPDX-License-Identifier: MIT
// Like cuttings stuck together: one plant, one stock plant, one station, one treatment, one day.
#pragma once

#include <optional>
#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Batch {
    BatchId id{};
    std::string code;  // what people see; unique; see batch_code.h
    SessionId session{};
    Date stuckOn{};  // always its session's date
    PlantId plant{};
    StockPlantId stockPlant{};     // may be unset
    MethodId method{};             // the station's method on the day of sticking
    StationId station{};           // may be unset only in imported records
    MediumId medium{};             // may be unset
    TreatmentId treatment{};       // may be unset: not recorded
    CuttingKindId cuttingKind{};   // may be unset
    int stuck{};                   // >= 1
    std::string positions{};       // where they stand, as textOf() writes it; empty: not recorded
    TrialId trial{};               // may be unset
    std::string block;             // of the trial
    std::optional<Date> closedOn;  // closed by hand; a batch with nothing undecided is closed without it
    std::string closeReason;
    std::string note;
    std::string licence{};  // under which licence or permission a protected plant was stuck

    bool operator==(const Batch&) const = default;
};

}  // namespace core
