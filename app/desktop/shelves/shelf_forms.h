// SPDX-License-Identifier: MIT
// One form for each kind of thing on the shelves. An id of 0: a new one. What an edit leaves alone stays as it is.
#pragma once

#include <cstdint>

#include "app/desktop/page.h"

class QDialog;

namespace desktop {

[[nodiscard]] QDialog* plantForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* stockPlantForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* methodForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* stationForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* mediumForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* treatmentForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* cuttingKindForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* lossCauseForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* trialForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* checkScheduleForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* priceForm(const PageContext& context, std::int64_t id, QWidget* parent);
/// A new price with all that the one with this id has, from today on: what is left to type is the amount.
[[nodiscard]] QDialog* laterPriceForm(const PageContext& context, std::int64_t id, QWidget* parent);
[[nodiscard]] QDialog* lotForm(const PageContext& context, std::int64_t id, QWidget* parent);

}  // namespace desktop
