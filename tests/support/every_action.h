// SPDX-License-Identifier: MIT
// Each thing that a user can do to a logbook, with a generator of likely and of foolish values. A verb that is new in db/actions gets its
// line in Action; forgetting its generator doesn't compile.
#pragma once

#include <filesystem>
#include <random>
#include <string>

#include "core/result.h"
#include "db/logbook.h"

namespace support {

enum class Action {
    StickSession,
    ChangeBatch,
    ChangeSession,
    DeleteBatch,
    CloseBatch,
    ReopenBatch,
    RecordChecks,
    ChangeCheck,
    DeleteCheck,
    AddRecords,
    KeepPlant,
    KeepStockPlant,
    KeepMethod,
    KeepStation,
    KeepMedium,
    KeepTreatment,
    KeepCuttingKind,
    KeepLossCause,
    KeepTrial,
    KeepFacts,
    RemovePlant,
    RemoveStockPlant,
    RemoveMethod,
    RemoveStation,
    RemoveMedium,
    RemoveTreatment,
    RemoveCuttingKind,
    RemoveLossCause,
    RemoveTrial,
    KeepCheckSchedule,
    RemoveCheckSchedule,
    RecordReadings,
    ChangeReading,
    DeleteReading,
    RecordCare,
    ChangeCare,
    DeleteCare,
    AddPhotos,
    ChangePhoto,
    DeletePhoto,
    KeepExpense,
    DeleteExpense,
    MergePlants,
    MergeStockPlants,
    MergeStations,
    MergeMedia,
    MergeTreatments,
    MergeCuttingKinds,
    MergeLossCauses,
    KeepVisit,
    RecordLook,
    PlanTrial,
    ChangeTrial,
    AllocateAgain,
    PlaceAgain,
    StickTrialSession,
    KeepPlan,
    RemovePlan,
    KeepMix,
    KeepMixWithCare,
    RemoveMix,
    SetOwnBand,
    RemoveOwnBand,
    AddLoggerDays,
    RemoveLoggerDays,
    KeepLoggerFormat,
    RemoveLoggerFormat,
    KeepPrice,
    RemovePrice,
    KeepLot,
    RemoveLot,
    KeepPotting,
    DeletePotting
};

inline constexpr int actions = static_cast<int>(Action::DeletePotting) + 1;

using Chance = std::mt19937;  // its numbers are the same on every machine

/// Below `count`.
[[nodiscard]] int pick(Chance& chance, int count);

/// Does it with values that chance makes: mostly sound, sometimes such as must be refused.
[[nodiscard]] core::Result<db::Changes> perform(db::Logbook& logbook, Action action, Chance& chance, core::Date today);

/// A logbook with a small invented season, for tests that need some of everything.
[[nodiscard]] db::Logbook sampleLogbook(const std::filesystem::path& file, core::Date today, int batches = 12);
/// The clock of tests: every look is a second later.
[[nodiscard]] db::OpenOptions testOptions(const std::string& author = "AB");

}  // namespace support
