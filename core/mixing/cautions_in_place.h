// SPDX-License-Identifier: MIT
// Which of the trade's cautions belong where the hand is. The same lists go onto paper. Where there is anything to mind, the last of them is
// always CautionTopic::Advice: label, local rules and licensed people come first.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/care/care.h"
#include "core/mixing/trade_cautions.h"
#include "core/records.h"

namespace core {

/// Cuttings stuck: hormone, edible plants that got some, protected and irritant plants.
[[nodiscard]] std::vector<CautionTopic> cautionsOnSticking(std::span<const Batch> batches, const Shelves& shelves);
[[nodiscard]] std::vector<CautionTopic> cautionsOnTreatment(const Treatment& treatment);
[[nodiscard]] std::vector<CautionTopic> cautionsOnPlant(const Plant& plant);
/// A mother plant that cuttings are taken of.
[[nodiscard]] std::vector<CautionTopic> cautionsOnStockPlant();
[[nodiscard]] std::vector<CautionTopic> cautionsOnMedium();
/// Lamps and domes wherever it stands; water and electricity where the method has a solution.
[[nodiscard]] std::vector<CautionTopic> cautionsOnStation(std::string_view method);
/// A lid that is drilled.
[[nodiscard]] std::vector<CautionTopic> cautionsOnDrilling();
[[nodiscard]] std::vector<CautionTopic> cautionsOnCare(CareKind kind);
/// Plants that go elsewhere, or are labelled for it.
[[nodiscard]] std::vector<CautionTopic> cautionsOnLeaving(std::span<const Batch> batches, const Shelves& shelves);

/// Figs, and spurges and aroids as far as the reference table has their family (common practice, no source). Of others nothing is known.
[[nodiscard]] bool isKnownIrritant(const Plant& plant);

}  // namespace core
