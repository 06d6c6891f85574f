// SPDX-License-Identifier: MIT
// A planned comparison: what is asked, what differs between its arms, when and how it is judged, what chance dealt to each arm, and what
// of all this was changed after the first check. Logbooks of before know a trial by its name, its horizon and its seed alone.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/comparison/factor.h"
#include "core/id.h"
#include "core/units/days.h"

namespace core {

/// Like cuttings that the arms share evenly.
enum class BlockedBy { Nothing, Plant, StockPlant, Session, StationSide };
/// What counts as an answer at the horizon.
enum class TrialMeasure { MoreRooted, AsGoodAs };

/// One arm; of its ids only the one that the factor asks for is set.
struct TrialArm {
    MethodId method{};
    TreatmentId treatment{};
    MediumId medium{};
    CuttingKindId cuttingKind{};

    bool operator==(const TrialArm&) const = default;
};

/// What was dealt: one batch to be stuck.
struct TrialBatch {
    int number{};   // from 1, in order of session, then station, block and arm
    int session{};  // of the trial, from 1
    StationId station{};
    std::string block{};        // empty where there are none
    PlantId plant{};            // unset: to be said when it is stuck
    StockPlantId stockPlant{};  // likewise
    int arm{};                  // of Trial::arms, from 0
    int stuck{};                // cuttings
    std::string positions{};    // as textOf() writes them; empty: the station's layout isn't described
    BatchId batch{};            // once it is stuck

    bool operator==(const TrialBatch&) const = default;
};

/// A change of how the trial is judged that was made when somebody had looked already; its report prints it.
struct TrialChange {
    Date changedOn{};
    std::string what{};  // "horizon day", "measure", "margin", "factor", "arms", "blinding"
    std::string was{};   // "28"; "not set"
    std::string became{};
    std::string reason{};

    bool operator==(const TrialChange&) const = default;
};

struct Trial {
    TrialId id{};
    std::string name;                             // unique
    std::optional<int> horizonDay;                // set before looking
    std::optional<std::uint32_t> allocationSeed;  // present when chance decided
    std::string note;
    std::string question{};          // in the grower's words
    std::optional<Factor> factor{};  // nothing: not planned, only named
    BlockedBy blockedBy{BlockedBy::Nothing};
    TrialMeasure measure{TrialMeasure::MoreRooted};
    std::optional<double>
        margin{};  // difference in share rooted that would matter, or by which less is still as good: in (0, 1)
    std::optional<int> perArm{};  // cuttings
    bool isBlinded{};             // arms are not named before the horizon
    bool isCrossedOver{};         // each station has each method in turn, session by session
    std::optional<Date> setOn{};  // when question, horizon and measure were set
    std::vector<TrialArm> arms{};
    std::vector<TrialBatch> batches{};
    std::vector<TrialChange> changes{};  // in order of day

    bool operator==(const Trial&) const = default;
};

/// In files and for people: "nothing", "plant", "stock plant", "session", "station side"; "more rooted", "as good as".
[[nodiscard]] std::string_view wordFor(BlockedBy blocks);
[[nodiscard]] std::optional<BlockedBy> blockedByFrom(std::string_view word);
[[nodiscard]] std::string_view wordFor(TrialMeasure measure);
[[nodiscard]] std::optional<TrialMeasure> trialMeasureFrom(std::string_view word);

}  // namespace core
