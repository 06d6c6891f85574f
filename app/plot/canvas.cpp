// SPDX-License-Identifier: MIT
#include "app/plot/canvas.h"

#include <QPainter>
#include <QPen>
#include <QTextLayout>
#include <QTextOption>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plot/plant_name.h"

namespace plot {
namespace {

constexpr double kSmallScale = 0.9;

QPainterPath polygonPath(std::initializer_list<QPointF> corners) {
    QPainterPath path;
    path.addPolygon(QPolygonF(QList<QPointF>(corners)));
    path.closeSubpath();
    return path;
}

// Dashes in pen widths; Qt's own dots and dashes run into each other on thin lines.
QList<qreal> dashPattern(Qt::PenStyle dash) {
    switch (dash) {
        case Qt::DashLine:
            return {5, 3};
        case Qt::DotLine:
            return {1.4, 2.2};
        case Qt::DashDotLine:
            return {6, 2.4, 1.4, 2.4};
        case Qt::DashDotDotLine:
            return {6, 2.2, 1.4, 2.2, 1.4, 2.2};
        default:
            return {};
    }
}

}  // namespace

Canvas::Canvas(QPainter& painter, const Palette& palette)
    : painter_(painter), palette_(palette), plain_(painter.font()), bold_(plain_), small_(plain_), italic_(plain_) {
    bold_.setBold(true);
    italic_.setItalic(true);
    if (plain_.pointSizeF() > 0)
        small_.setPointSizeF(kSmallScale * plain_.pointSizeF());
    else
        small_.setPixelSize(std::max(1, static_cast<int>(std::lround(kSmallScale * plain_.pixelSize()))));
    em_ = metricsOf(Type::Plain).height();
}

const QFont& Canvas::fontOf(Type type) const {
    switch (type) {
        case Type::Plain:
            return plain_;
        case Type::Bold:
            return bold_;
        case Type::Small:
            return small_;
        case Type::Italic:
            return italic_;
    }
    return plain_;
}

// With the device: print is 4 to 12 times too small otherwise.
QFontMetricsF Canvas::metricsOf(Type type) const {
    return {fontOf(type), painter_.device()};
}

double Canvas::lineHeight(Type type) const {
    return metricsOf(type).height();
}

double Canvas::widthOf(const QString& text, Type type) const {
    return metricsOf(type).horizontalAdvance(text);
}

void Canvas::drawRun(const QRectF& area, const QString& text, const QColor& color, Type type) {
    painter_.setFont(fontOf(type));
    painter_.setPen(color);
    painter_.drawText(QPointF(area.left(), area.top() + metricsOf(type).ascent()), text);
    drawing_.texts.push_back({area, text});
}

void Canvas::line(const QRectF& area, Qt::Alignment alignment, const QString& text, const QColor& color, Type type) {
    const QFontMetricsF metrics = metricsOf(type);
    // A hair of slack: a column is often exactly as wide as its widest text.
    const bool fits = metrics.horizontalAdvance(text) <= area.width() + 0.05 * em_;
    const QString shown = fits ? text : metrics.elidedText(text, Qt::ElideRight, area.width());
    if (!fits) hint(area, text);
    if (shown.isEmpty()) return;
    const double width = metrics.horizontalAdvance(shown), height = metrics.height();
    double left = area.left();
    if (alignment & Qt::AlignRight) left = area.right() - width;
    if (alignment & Qt::AlignHCenter) left = area.center().x() - width / 2;
    double top = area.center().y() - height / 2;
    if (alignment & Qt::AlignTop) top = area.top();
    if (alignment & Qt::AlignBottom) top = area.bottom() - height;
    drawRun({left, top, width, height}, shown, color, type);
}

double Canvas::plantNameWidth(const QString& name) const {
    double width = 0;
    for (const NamePart& part : partsOfPlantName(name))
        width += widthOf(part.text, part.isItalic ? Type::Italic : Type::Plain);
    return width;
}

void Canvas::plantName(const QRectF& area, const QString& name) {
    double left = area.left();
    if (plantNameWidth(name) > area.width() + 0.05 * em_) hint(area, name);
    for (const NamePart& part : partsOfPlantName(name)) {
        const Type type = part.isItalic ? Type::Italic : Type::Plain;
        const double room = area.right() - left, width = widthOf(part.text, type);
        const QRectF place(left, area.top(), std::min(room, width), area.height());
        line(place, Qt::AlignLeft | Qt::AlignVCenter, part.text, palette_.text, type);
        left += width;
        if (width > room) return;
    }
}

std::vector<QString> Canvas::brokenLines(double width, const QString& text, Type type, int mostLines) const {
    std::vector<QString> lines;
    QTextLayout layout(text, fontOf(type), painter_.device());
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine textLine = layout.createLine(); textLine.isValid(); textLine = layout.createLine()) {
        textLine.setLineWidth(width);
        const bool isLastAllowed = std::ssize(lines) + 1 == mostLines;
        const QString rest = text.mid(textLine.textStart());
        if (isLastAllowed && textLine.textStart() + textLine.textLength() < text.size()) {
            lines.push_back(metricsOf(type).elidedText(rest, Qt::ElideRight, width));
            break;
        }
        lines.push_back(rest.left(textLine.textLength()).trimmed());
    }
    layout.endLayout();
    return lines;
}

double Canvas::paragraphHeight(double width, const QString& text, Type type, int mostLines) const {
    if (text.isEmpty()) return 0;
    return static_cast<double>(brokenLines(width, text, type, mostLines).size()) * lineHeight(type);
}

double Canvas::paragraph(const QRectF& area, const QString& text, const QColor& color, Type type, int mostLines,
                         Qt::Alignment alignment) {
    if (text.isEmpty()) return 0;
    const double height = lineHeight(type);
    double top = area.top();
    for (const QString& words : brokenLines(area.width(), text, type, mostLines)) {
        line({area.left(), top, area.width(), height}, alignment | Qt::AlignTop, words, color, type);
        top += height;
        if (words.endsWith(u'…')) hint({area.left(), area.top(), area.width(), top - area.top()}, text);
    }
    return top - area.top();
}

void Canvas::stroke(const QPainterPath& path, const QColor& color, double widthInEms, Qt::PenStyle dash) {
    QPen pen(color, widthInEms * em_, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (dash != Qt::SolidLine) pen.setDashPattern(dashPattern(dash));
    painter_.strokePath(path, pen);
}

void Canvas::stroke(const QPointF& from, const QPointF& to, const QColor& color, double widthInEms, Qt::PenStyle dash) {
    QPainterPath path(from);
    path.lineTo(to);
    stroke(path, color, widthInEms, dash);
}

void Canvas::fill(const QPainterPath& path, const QColor& color) {
    painter_.fillPath(path, color);
}

void Canvas::fill(const QRectF& area, const QColor& color) {
    painter_.fillRect(area, color);
}

void Canvas::image(const QRectF& area, const QImage& image) {
    painter_.save();
    painter_.setRenderHint(QPainter::SmoothPixmapTransform);
    painter_.drawImage(area, image);
    painter_.restore();
}

void Canvas::marker(const QPointF& place, Marker marker, double sizeInEms, const QColor& color) {
    const double half = sizeInEms * em_ / 2;
    const auto corner = [&](double right, double down) { return place + QPointF(right * half, down * half); };
    QPainterPath disc;
    disc.addEllipse(place, half, half);
    switch (marker) {
        case Marker::Disc:
            fill(disc, color);
            break;
        case Marker::Square:
            fill(QRectF(corner(-0.9, -0.9), corner(0.9, 0.9)), color);
            break;
        case Marker::Triangle:
            fill(polygonPath({corner(0, -1.15), corner(1.05, 0.8), corner(-1.05, 0.8)}), color);
            break;
        case Marker::Diamond:
            fill(polygonPath({corner(0, -1.25), corner(1.25, 0), corner(0, 1.25), corner(-1.25, 0)}), color);
            break;
        case Marker::Cross:
            stroke(corner(-0.9, -0.9), corner(0.9, 0.9), color, 0.3 * sizeInEms);
            stroke(corner(-0.9, 0.9), corner(0.9, -0.9), color, 0.3 * sizeInEms);
            break;
        case Marker::Ring:
            fill(disc, palette_.paper);
            stroke(disc, color, 0.25 * sizeInEms);
            break;
    }
}

void Canvas::sample(const QRectF& area, const SeriesLook& look) {
    stroke({area.left(), area.center().y()}, {area.right(), area.center().y()}, look.line, 0.12, look.dash);
    marker(area.center(), look.marker, 0.5, look.line);
}

void Canvas::figure(const Figure& figure, const QRectF& area) {
    painter_.setFont(small_);
    const Drawing drawing = figure.paint(painter_, area, palette_);
    drawing_.texts.insert(drawing_.texts.end(), drawing.texts.begin(), drawing.texts.end());
}

void Canvas::hint(const QRectF& area, const QString& text) {
    drawing_.hints.push_back({area, text});
}

}  // namespace plot
