// SPDX-License-Identifier: MIT
// How a page of a drilling template is divided. Inside report only.
#pragma once

#include <QRectF>
#include <QSizeF>

#include "app/report/pdf.h"

namespace report {

// All in millimetres.
inline constexpr double templateMargin = 9;
inline constexpr double templateHead = 14;
inline constexpr double templateFoot = 30;
inline constexpr double templateOverlap = 7;  // of neighbouring sheets, on either side of their join
inline constexpr double templateRim = 1;      // around the lid, for its outline

[[nodiscard]] QSizeF millimetresOf(Paper paper);
/// Where on the page the lid is drawn.
[[nodiscard]] QRectF templateArea(Paper paper);

}  // namespace report
