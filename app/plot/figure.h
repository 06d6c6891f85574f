// SPDX-License-Identifier: MIT
// A figure is a value that can paint itself: the same picture on the screen, in PDF, SVG and PNG. On top stands its
// title, a sentence that says what it shows; below that, in grey, the method. A figure without anything to show says so
// instead of drawing empty axes.
//
//     const std::shared_ptr<const plot::Figure> figure = plot::rootedByDayFigure(comparison);
//     painter.setFont(plot::figureFont(9));
//     figure->paint(painter, page, plot::Palette::onPaper());
#pragma once

#include <QRectF>
#include <QSizeF>
#include <QString>
#include <vector>

#include "app/plot/figure_table.h"

class QPainter;

namespace plot {

class Canvas;
struct Palette;

struct DrawnText {
    QRectF area;
    QString text;
};

/// The figures behind a place in the picture, for a tooltip.
struct Hint {
    QRectF area;
    QString text;
};

/// Where everything went, in the painter's coordinates.
struct Drawing {
    std::vector<DrawnText> texts;
    std::vector<Hint> hints;
};

class Figure {
  public:
    Figure() = default;
    Figure(const Figure&) = delete;
    Figure& operator=(const Figure&) = delete;
    virtual ~Figure() = default;

    /// Fills `area`. The painter's font sets the scale of everything; 1 em below is its line height.
    Drawing paint(QPainter& painter, const QRectF& area, const Palette& palette) const;

    [[nodiscard]] virtual QString sentence() const = 0;
    [[nodiscard]] virtual QString method() const = 0;
    [[nodiscard]] virtual FigureTable table() const = 0;
    /// At which it looks its best. Smaller is fine down to 40 em by 20 em: parts are then left out, with a word about
    /// it.
    [[nodiscard]] virtual QSizeF sizeInEms() const = 0;

  private:
    virtual void draw(Canvas& canvas, const QRectF& area) const = 0;
};

}  // namespace plot
