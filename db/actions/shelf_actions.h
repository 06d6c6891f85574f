// SPDX-License-Identifier: MIT
// Edits of the shelves: plants, stock plants, methods, stations, media, treatments, cutting kinds, loss causes, trials, and the facts of the
// logbook, check schedules. A name must not be blank or taken; nothing that is in use is deleted, it is retired.
#pragma once

#include "core/result.h"
#include "db/logbook.h"

namespace db {

// keep: adds when the id is unset, else changes. Each refuses a blank, taken or over-long name and figures out of range.
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Plant& plant);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::StockPlant& stockPlant);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Method& method);
// A station also a layout in which a batch that is recorded there would be outside, or stand on a blocked position.
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Station& station);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Medium& medium);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Treatment& treatment);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::CuttingKind& kind);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::LossCause& cause);
// A trial that is there by the rule of changeTrial() in trial_actions.h: without a reason nothing of how it is judged after its first check.
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Trial& trial);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::CheckSchedule& schedule);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::LogbookFacts& facts);

// remove: refuses while something uses it. A trial goes with what was dealt for it, as long as none of it is stuck.
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::PlantId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::StockPlantId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::MethodId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::StationId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::MediumId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::TreatmentId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::CuttingKindId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::LossCauseId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::TrialId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::CheckScheduleId id);

}  // namespace db
