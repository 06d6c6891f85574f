// SPDX-License-Identifier: MIT
// What can be changed of a trial that is dealt: its name and words freely; how it is judged freely too until somebody has looked at one of its
// batches, and after that only with a reason, which its report prints.
#pragma once

#include "app/desktop/page.h"

class QDialog;

namespace desktop {

[[nodiscard]] QDialog* trialChangeForm(const PageContext& context, core::TrialId trial, QWidget* parent);

}  // namespace desktop
