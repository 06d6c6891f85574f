// SPDX-License-Identifier: MIT
// A lid at true scale, to lay on it and drill through: hole circles with centre crosses and names, on as many sheets as it takes, with marks
// to join them, and a line of 100 mm on each to check the printer by.
#pragma once

#include <QDateTime>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <vector>

#include "app/report/pdf.h"
#include "core/station/lid_layout.h"

class QPagedPaintDevice;

namespace report {

struct DrillingTemplate {
    core::Lid lid{};
    core::LidLayout layout{};
    core::LengthUnit unit{};
    QString station{};  // may be empty
    QDateTime printedAt{};
};

/// What one sheet shows of the lid. All lengths in millimetres.
struct TemplateTile {
    int row{};
    int column{};
    QRectF lid{};      // the part that is printed, the strip that overlaps its neighbours included
    QRectF core{};     // the part within the joins
    QPointF origin{};  // where the lid's back left corner would lie, from the corner of the page
};

/// Row by row from the back left, as few as hold the lid.
struct TemplateTiles {
    int rows{};
    int columns{};
    std::vector<TemplateTile> tiles{};
};

[[nodiscard]] TemplateTiles tilesOf(const core::LidLayout& layout, Paper paper);

inline constexpr double controlLineLength = 100;  // mm

/// As many decimals as it has, up to a hundredth: "44 mm", "44.45 mm", "1.75 in".
[[nodiscard]] QString measureText(double millimetres, core::LengthUnit unit);
/// "51 holes of 44 mm in staggered rows"
[[nodiscard]] QString holesText(const core::Lid& lid, const core::LidLayout& layout, core::LengthUnit unit);
/// "600 × 400 mm", "round, 290 mm"
[[nodiscard]] QString lidSizeText(const core::Lid& lid, core::LengthUnit unit);

/// On the whole page of that paper, whatever its margins. Black on white.
void printTo(const DrillingTemplate& drilling, QPagedPaintDevice& device, Paper paper);
/// Whole or not at all. Throws db::LogbookError when the file can't be written.
void writePdf(const DrillingTemplate& drilling, const QString& file, Paper paper);

}  // namespace report
