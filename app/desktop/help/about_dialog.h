// SPDX-License-Identifier: MIT
// Version, licence, and where the formulas come from.
#pragma once

class QWidget;

namespace desktop {

void showAbout(QWidget* window);

}  // namespace desktop
