// SPDX-License-Identifier: MIT
// What figures and print-outs draw on: a QPainter with a sense of scale (1 em = one line of text), a palette, and a memory of where
// each text and each hint went. For plot and report.
#pragma once

#include <QColor>
#include <QFont>
#include <QFontMetricsF>
#include <QImage>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <Qt>
#include <vector>

#include "app/plot/figure.h"
#include "app/plot/palette.h"

class QPainter;

namespace plot {

enum class Type { Plain, Bold, Small, Italic };

class Canvas {
  public:
    Canvas(QPainter& painter, const Palette& palette);

    [[nodiscard]] const Palette& palette() const { return palette_; }
    [[nodiscard]] double em() const { return em_; }
    /// For strokes that nothing below can do.
    [[nodiscard]] QPainter& painter() const { return painter_; }
    [[nodiscard]] double lineHeight(Type type) const;
    [[nodiscard]] double widthOf(const QString& text, Type type = Type::Plain) const;

    /// One line in `area`, elided where it is too wide; an elided text leaves a hint with the whole of it.
    void line(const QRectF& area, Qt::Alignment alignment, const QString& text, const QColor& color,
              Type type = Type::Plain);
    void plantName(const QRectF& area, const QString& name);
    [[nodiscard]] double plantNameWidth(const QString& name) const;
    /// Breaks lines to the area's width, at most `mostLines`, the last one elided. Returns the height it took.
    double paragraph(const QRectF& area, const QString& text, const QColor& color, Type type, int mostLines,
                     Qt::Alignment alignment = Qt::AlignLeft);
    [[nodiscard]] double paragraphHeight(double width, const QString& text, Type type, int mostLines) const;

    void stroke(const QPointF& from, const QPointF& to, const QColor& color, double widthInEms,
                Qt::PenStyle dash = Qt::SolidLine);
    void stroke(const QPainterPath& path, const QColor& color, double widthInEms, Qt::PenStyle dash = Qt::SolidLine);
    void fill(const QPainterPath& path, const QColor& color);
    void fill(const QRectF& area, const QColor& color);
    void image(const QRectF& area, const QImage& image);
    void marker(const QPointF& place, Marker marker, double sizeInEms, const QColor& color);
    /// A series' line and marker, as long as the area is wide: the key beside a name.
    void sample(const QRectF& area, const SeriesLook& look);

    /// A whole figure, a little smaller than the text around it.
    void figure(const Figure& figure, const QRectF& area);

    void hint(const QRectF& area, const QString& text);
    [[nodiscard]] Drawing takeDrawing() { return std::move(drawing_); }

  private:
    [[nodiscard]] const QFont& fontOf(Type type) const;
    [[nodiscard]] QFontMetricsF metricsOf(Type type) const;
    [[nodiscard]] std::vector<QString> brokenLines(double width, const QString& text, Type type, int mostLines) const;
    void drawRun(const QRectF& area, const QString& text, const QColor& color, Type type);

    QPainter& painter_;
    const Palette& palette_;
    QFont plain_, bold_, small_, italic_;
    double em_{};
    Drawing drawing_;
};

}  // namespace plot
