// SPDX-License-Identifier: MIT
// The form of one plan: plant, how many, how sure, by when. While one types it says what that leads to.
#pragma once

#include "app/desktop/page.h"

class QDialog;

namespace desktop {

class PlansModel;

/// An unset id: a new one, begun like the last.
[[nodiscard]] QDialog* planForm(const PageContext& context, PlansModel& model, core::PlanId id, QWidget* parent);

}  // namespace desktop
