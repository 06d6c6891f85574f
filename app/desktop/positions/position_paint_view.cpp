// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_paint_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>

#include "app/desktop/positions/position_map_model.h"

namespace desktop {

PositionPaintView::PositionPaintView(PositionMapModel& model, QWidget* parent) : PositionMapView(model, parent) {}

void PositionPaintView::keyPressEvent(QKeyEvent* event) {
    const bool isPlain = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (event->key() != Qt::Key_Space || !isPlain) return PositionMapView::keyPressEvent(event);
    if (currentIndex().isValid()) emit spacePressed();
}

void PositionPaintView::mousePressEvent(QMouseEvent* event) {
    const QModelIndex index = indexAt(event->position().toPoint());
    if (event->button() != Qt::LeftButton || !index.isValid()) return;
    const core::Position position = PositionMapModel::positionOf(index);
    if (event->modifiers() & Qt::ShiftModifier) return move(position, true);
    goTo(position);
    brush_ = event->position().toPoint();
    emit strokeBegun(position);
}

void PositionPaintView::mouseDoubleClickEvent(QMouseEvent* event) {
    mousePressEvent(event);  // two quick presses are two presses
}

void PositionPaintView::mouseMoveEvent(QMouseEvent* event) {
    if (!brush_ || !(event->buttons() & Qt::LeftButton)) return;
    // A quick hand skips cells; nothing under its way is left out.
    const QPoint from = *brush_, way = event->position().toPoint() - from;
    const int steps = std::max({1, std::abs(way.x()) * 3 / cellSize(), std::abs(way.y()) * 3 / cellSize()});
    for (int step = 1; step <= steps; ++step) {
        const QModelIndex index = indexAt(from + way * step / steps);
        if (index.isValid()) goOver(PositionMapModel::positionOf(index));
    }
    brush_ = event->position().toPoint();
}

void PositionPaintView::goOver(core::Position position) {
    if (position == current()) return;
    goTo(position);
    emit strokeWentOver(position);
}

void PositionPaintView::mouseReleaseEvent(QMouseEvent*) {
    brush_.reset();
}

}  // namespace desktop
