// SPDX-License-Identifier: MIT
// The typeface of figures and paper, bundled so that they look the same everywhere: DejaVu Sans, whose digits are all
// equally wide.
#pragma once

#include <QFont>

namespace plot {

/// Needs a QGuiApplication.
[[nodiscard]] QFont figureFont(double pointSize);

}  // namespace plot
