// SPDX-License-Identifier: MIT
// Each answer of core's calculators in words, in the grower's units.
#pragma once

#include "app/report/mix_answer.h"
#include "core/mixing/auxin_mix.h"
#include "core/mixing/elements.h"
#include "core/mixing/lid_holes.h"
#include "core/mixing/medium_mix.h"
#include "core/mixing/nutrient_dose.h"
#include "core/mixing/ph_shift.h"
#include "core/mixing/titration.h"
#include "core/mixing/tub.h"

namespace report {

[[nodiscard]] MixAnswer answerOf(const core::NutrientDose& dose, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::LearntNutrient& learnt, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::SolutionElements& solution, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::DilutedTub& tub, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::ToppedUpTub& tub, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::PhShift& shift, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::TitratedDose& dose, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::WorkingSolution& solution, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::WeighedPowder& weighed, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::ThinnedTalc& thinned, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::DipNeeded& needed, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::CountedAuxin& counted, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::MixedMedium& mixed, const core::DisplayUnits& units = {});
[[nodiscard]] MixAnswer answerOf(const core::LidHoles& holes, const core::DisplayUnits& units = {});

/// How strong a solution plants want at each stage; and between which strengths of auxin the trade stays.
[[nodiscard]] Table stageTable(const core::DisplayUnits& units);
[[nodiscard]] Table auxinRangeTable();

}  // namespace report
