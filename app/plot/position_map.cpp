// SPDX-License-Identifier: MIT
#include "app/plot/position_map.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"
#include "app/plot/palette.h"

namespace plot {
namespace {

struct MapWords {
    Q_DECLARE_TR_FUNCTIONS(PositionMap)
};

// Shares of a cell.
constexpr double kShape = 0.8;
constexpr double kDimmedShape = 0.56;
constexpr double kFreeShape = 0.3;
constexpr double kLetter = 0.42;
constexpr double kLetterAboveDay = 0.36;
constexpr double kDay = 0.28;
constexpr double kPen = 0.05;
constexpr double kThinPen = 0.03;
constexpr double kCutCorner = 0.3;

QPainterPath shapeIn(const QRectF& cell, double share, bool isRound) {
    const double side = share * std::min(cell.width(), cell.height());
    const QRectF area(cell.center().x() - side / 2, cell.center().y() - side / 2, side, side);
    QPainterPath path;
    if (isRound)
        path.addEllipse(area);
    else
        path.addRoundedRect(area, side * 0.12, side * 0.12);
    return path;
}

void strokeShape(QPainter& painter, const QPainterPath& path, const QColor& color, double width,
                 Qt::PenStyle style = Qt::SolidLine) {
    painter.strokePath(path, QPen(color, width, style, Qt::FlatCap, Qt::RoundJoin));
}

void drawWord(QPainter& painter, const QRectF& area, const QString& word, double height, const QColor& color,
              bool isBold) {
    QFont font = painter.font();
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(height))));
    font.setBold(isBold);
    painter.save();
    painter.setFont(font);
    painter.setPen(color);
    painter.drawText(area, Qt::AlignCenter | Qt::TextDontClip, word);
    painter.restore();
}

/// The letter, and below it the day where there is one.
void drawLetter(QPainter& painter, const QRectF& cell, const MapPlace& place, const QColor& color) {
    const double step = cell.height();
    if (place.day.isEmpty()) return drawWord(painter, cell, place.letter, kLetter * step, color, true);
    drawWord(painter, cell.translated(0, -0.13 * step), place.letter, kLetterAboveDay * step, color, true);
    drawWord(painter, cell.translated(0, 0.17 * step), place.day, kDay * step, color, false);
}

void drawCross(QPainter& painter, const QRectF& cell, const QPainterPath& shape, const QColor& color, double share) {
    painter.save();
    painter.setClipPath(shape, Qt::IntersectClip);
    const double half = share / 2 * cell.height();
    painter.setPen(QPen(color, 1.6 * kPen * cell.height()));
    for (const double slope : {-1.0, 1.0})
        painter.drawLine(cell.center() + QPointF(-half, -slope * half), cell.center() + QPointF(half, slope * half));
    painter.restore();
}

void drawBlocked(QPainter& painter, const QRectF& cell, bool isRound, const Palette& palette) {
    const QPainterPath shape = shapeIn(cell, kShape, isRound);
    painter.fillPath(shape, palette.grid);
    strokeShape(painter, shape, palette.axis, kThinPen * cell.height());
    const double half = 0.2 * cell.height();
    painter.fillRect(QRectF(cell.center().x() - half, cell.center().y() - half / 4, 2 * half, half / 2), palette.axis);
}

void drawDimmed(QPainter& painter, const QRectF& cell, const MapPlace& place, bool isRound, const Palette& palette) {
    const QPainterPath shape = shapeIn(cell, kDimmedShape, isRound);
    strokeShape(painter, shape, palette.axis, kThinPen * cell.height());
    if (place.state == PlaceState::Lost) drawCross(painter, cell, shape, palette.axis, kDimmedShape);
    if (place.state != PlaceState::Undecided && place.state != PlaceState::Lost)
        drawWord(painter, cell, place.letter, kLetterAboveDay * cell.height(), palette.quietText, false);
}

void drawLost(QPainter& painter, const QRectF& cell, const MapPlace& place, const QPainterPath& shape,
              const Palette& palette) {
    const SeriesLook& look = palette.look(1);
    painter.fillPath(shape, palette.paper);
    drawCross(painter, cell, shape, look.line, kShape);
    // The arms of the cross stop short of its letter.
    painter.fillPath(shapeIn(cell, place.day.isEmpty() ? 0.44 : 0.56, true), palette.paper);
    strokeShape(painter, shape, look.line, kPen * cell.height());
    drawLetter(painter, cell, place, look.text);
}

void drawWithdrawn(QPainter& painter, const QRectF& cell, const MapPlace& place, const QPainterPath& shape,
                   const Palette& palette) {
    const SeriesLook& look = palette.look(0);
    painter.fillPath(shape, palette.paper);
    painter.save();
    painter.setClipPath(shape, Qt::IntersectClip);
    painter.fillRect(QRectF(cell.left(), cell.top(), cell.width() / 2, cell.height()), look.box);
    painter.restore();
    strokeShape(painter, shape, look.line, kPen * cell.height());
    drawLetter(painter, cell, place, palette.text);
}

class MapFigure : public Figure {
  public:
    MapFigure(PositionMap map, QString sentence, QString method, FigureTable table)
        : map_(std::move(map)), sentence_(std::move(sentence)), method_(std::move(method)), table_(std::move(table)) {}

    [[nodiscard]] QString sentence() const override { return sentence_; }
    [[nodiscard]] QString method() const override { return method_; }
    [[nodiscard]] FigureTable table() const override { return table_; }
    [[nodiscard]] QSizeF sizeInEms() const override {
        return {std::max(40.0, 2.4 * (map_.columns + 2)), std::max(20.0, 2.4 * (map_.rows + 2) + 4)};
    }

  private:
    void draw(Canvas& canvas, const QRectF& area) const override;

    PositionMap map_;
    QString sentence_, method_;
    FigureTable table_;
};

void MapFigure::draw(Canvas& canvas, const QRectF& area) const {
    if (map_.rows < 1 || map_.columns < 1)
        return drawEmptyPicture(canvas, area, MapWords::tr("No positions are described here."));
    const double em = canvas.em(), edge = 1.5 * em;
    const QRectF one = bodyArea(map_.rows, map_.columns, 1, map_.isStaggered);
    const double step =
        std::min({(area.width() - edge) / one.width(), (area.height() - 2 * edge) / one.height(), 3.2 * em});
    if (step <= 0) return;
    const QPointF corner = area.topLeft() + QPointF(edge, edge);
    const QRectF body = bodyArea(map_.rows, map_.columns, step, map_.isStaggered).translated(corner);
    drawMapBody(canvas.painter(), body, step, canvas.palette());
    for (int column = 0; column < map_.columns; ++column)
        canvas.line({corner.x() + column * step, area.top(), step, edge}, Qt::AlignCenter, columnNumber(column),
                    canvas.palette().quietText, Type::Small);
    for (int row = 0; row < map_.rows; ++row) {
        canvas.line({area.left(), corner.y() + row * step, edge, step}, Qt::AlignCenter, rowLetter(row),
                    canvas.palette().quietText, Type::Small);
        for (int column = 0; column < map_.columns; ++column)
            drawPlace(canvas.painter(), placeArea(row, column, step, map_.isStaggered).translated(corner),
                      map_.places[static_cast<std::size_t>(row * map_.columns + column)], map_.isRound,
                      canvas.palette());
    }
    drawFrontMark(canvas.painter(), {body.left(), body.bottom(), body.width(), edge}, canvas.palette());
}

}  // namespace

QRectF placeArea(int row, int column, double step, bool isStaggered) {
    const double shift = isStaggered && row % 2 == 1 ? step / 2 : 0;
    return {column * step + shift, row * step, step, step};
}

QRectF bodyArea(int rows, int columns, double step, bool isStaggered) {
    return {0, 0, (columns + (isStaggered && rows > 1 ? 0.5 : 0)) * step, rows * step};
}

void drawMapBody(QPainter& painter, const QRectF& body, double step, const Palette& palette) {
    const double cut = kCutCorner * step;
    QPainterPath path(body.topLeft() + QPointF(cut, 0));
    for (const QPointF& corner :
         {body.topRight(), body.bottomRight(), body.bottomLeft(), body.topLeft() + QPointF(0, cut)})
        path.lineTo(corner);
    path.closeSubpath();
    painter.fillPath(path, palette.margin);
    strokeShape(painter, path, palette.axis, kThinPen * step);
    QPainterPath mark(body.topLeft());
    mark.lineTo(body.topLeft() + QPointF(cut * 0.8, 0));
    mark.lineTo(body.topLeft() + QPointF(0, cut * 0.8));
    mark.closeSubpath();
    painter.fillPath(mark, palette.text);
}

void drawPlace(QPainter& painter, const QRectF& cell, const MapPlace& place, bool isRound, const Palette& palette) {
    const double step = cell.height();
    const QPainterPath shape = shapeIn(cell, kShape, isRound);
    if (place.state == PlaceState::Blocked) return drawBlocked(painter, cell, isRound, palette);
    if (place.state == PlaceState::Free)
        return strokeShape(painter, shapeIn(cell, kFreeShape, isRound), palette.axis, kThinPen * step);
    if (place.isDimmed) return drawDimmed(painter, cell, place, isRound, palette);
    switch (place.state) {
        case PlaceState::Rooted:
            painter.fillPath(shape, palette.look(2).line);
            return drawLetter(painter, cell, place, palette.paper);
        case PlaceState::Lost:
            return drawLost(painter, cell, place, shape, palette);
        case PlaceState::Withdrawn:
            return drawWithdrawn(painter, cell, place, shape, palette);
        case PlaceState::Undecided:
        case PlaceState::Free:
        case PlaceState::Blocked:
            break;
    }
    painter.fillPath(shape, palette.paper);
    strokeShape(painter, shape, palette.text, kPen * step);
    if (!place.letter.isEmpty()) drawLetter(painter, cell, place, palette.text);
}

void drawFrontMark(QPainter& painter, const QRectF& area, const Palette& palette) {
    drawWord(painter, area, QStringLiteral("\u25B2 ") + frontWord(), 0.7 * area.height(), palette.quietText, false);
}

QString frontWord() {
    return MapWords::tr("front", "the edge of a lid or tray that the grower stands at");
}

QString rowLetter(int row) {
    return QString(QLatin1Char(static_cast<char>('A' + row)));
}

QString columnNumber(int column) {
    return QString::number(column + 1);
}

std::shared_ptr<const Figure> positionMapFigure(PositionMap map, QString sentence, QString method, FigureTable table) {
    return std::make_shared<MapFigure>(std::move(map), std::move(sentence), std::move(method), std::move(table));
}

}  // namespace plot
