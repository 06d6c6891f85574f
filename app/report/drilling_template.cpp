// SPDX-License-Identifier: MIT
#include "app/report/drilling_template.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/plot/unit_text.h"
#include "app/report/drilling_page.h"

namespace report {
namespace {

struct DrillingWords {
    Q_DECLARE_TR_FUNCTIONS(DrillingTemplate)
};

/// Part `index` of `parts` equal ones.
QRectF partOf(const QRectF& whole, int row, int rows, int column, int columns) {
    const double width = whole.width() / columns, height = whole.height() / rows;
    return {whole.left() + column * width, whole.top() + row * height, width, height};
}

/// How many pages it takes along one side.
int sheetsFor(double length, double room) {
    if (length <= room) return 1;
    return static_cast<int>(std::ceil(length / (room - 2 * templateOverlap)));
}

/// Without its unit.
QString figureOf(double millimetres, core::LengthUnit unit) {
    const double hundredths = std::round(core::shownLength(millimetres, unit) * 100);
    const int decimals = std::fmod(hundredths, 100) == 0 ? 0 : std::fmod(hundredths, 10) == 0 ? 1 : 2;
    return plot::decimalText(hundredths / 100, decimals);
}

}  // namespace

QString measureText(double millimetres, core::LengthUnit unit) {
    //: a length and its unit
    return DrillingWords::tr("%1 %2").arg(figureOf(millimetres, unit), plot::lengthUnitText(unit));
}

QSizeF millimetresOf(Paper paper) {
    return paper == Paper::Letter ? QSizeF(215.9, 279.4) : QSizeF(210, 297);
}

QRectF templateArea(Paper paper) {
    return QRectF(QPointF(0, 0), millimetresOf(paper))
        .adjusted(templateMargin, templateMargin + templateHead, -templateMargin, -templateMargin - templateFoot);
}

TemplateTiles tilesOf(const core::LidLayout& layout, Paper paper) {
    const QRectF area = templateArea(paper);
    const QRectF lid(0, 0, layout.across, layout.down);
    const QRectF whole = lid.adjusted(-templateRim, -templateRim, templateRim, templateRim);
    TemplateTiles all{.rows = sheetsFor(whole.height(), area.height()),
                      .columns = sheetsFor(whole.width(), area.width())};
    for (int row = 0; row < all.rows; ++row)
        for (int column = 0; column < all.columns; ++column) {
            const QRectF core = partOf(whole, row, all.rows, column, all.columns);
            const QRectF shown =
                core.adjusted(-templateOverlap, -templateOverlap, templateOverlap, templateOverlap) & whole;
            all.tiles.push_back(
                {.row = row, .column = column, .lid = shown, .core = core, .origin = area.topLeft() - shown.topLeft()});
        }
    return all;
}

QString lidSizeText(const core::Lid& lid, core::LengthUnit unit) {
    if (lid.isRound) return DrillingWords::tr("round, %1", "diameter").arg(measureText(lid.length, unit));
    //: length and width; the second has the unit
    return DrillingWords::tr("%1 × %2").arg(figureOf(lid.length, unit), measureText(lid.width, unit));
}

QString holesText(const core::Lid& lid, const core::LidLayout& layout, core::LengthUnit unit) {
    const int count = layout.count();
    const QString holes = count == 1 ? DrillingWords::tr("1 hole") : DrillingWords::tr("%n holes", nullptr, count);
    const QString size = measureText(lid.hole, unit);
    return layout.pattern == core::RowPattern::Square
               ? DrillingWords::tr("%1 of %2 in square rows", "51 holes, 44 mm").arg(holes, size)
               : DrillingWords::tr("%1 of %2 in staggered rows", "51 holes, 44 mm").arg(holes, size);
}

}  // namespace report
