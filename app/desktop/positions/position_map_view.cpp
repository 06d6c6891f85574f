// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_map_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <utility>

#include "app/desktop/look/look.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/plot/palette.h"

namespace desktop {

namespace {

// Wide enough for a wet finger also where the text is small.
constexpr int leastCellSide = 32;
constexpr int mostEms = 6;

}  // namespace

PositionMapView::PositionMapView(PositionMapModel& model, QWidget* parent) : QTableView(parent), map_(model) {
    setObjectName(QStringLiteral("positionMap"));
    setAccessibleName(tr("Map of positions"));
    setModel(&model);
    setLayoutDirection(Qt::LeftToRight);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setSelectionBehavior(QAbstractItemView::SelectItems);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setCornerButtonEnabled(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setFrameShape(QFrame::NoFrame);
    for (QHeaderView* header : {horizontalHeader(), verticalHeader()}) {
        header->setSectionResizeMode(QHeaderView::Fixed);
        header->setDefaultAlignment(Qt::AlignCenter);
        header->setMinimumSectionSize(1);
        header->setSectionsClickable(true);
        header->setHighlightSections(true);
    }
    connect(&model, &QAbstractItemModel::modelReset, this, [this] {
        anchor_ = {};
        fit();
        updateGeometry();
    });
    fit();
}

int PositionMapView::leastCell() const {
    return std::max(leastCellSide, fontMetrics().height() * 2);
}

int PositionMapView::frontHeight() const {
    return fontMetrics().height() * 3 / 2;
}

int PositionMapView::cellSize() const {
    return horizontalHeader()->defaultSectionSize();
}

QSize PositionMapView::bodySize(int cell) const {
    const core::Station& station = map_.station();
    const QRectF body = plot::bodyArea(station.rows, station.columns, cell, station.isStaggered);
    return {static_cast<int>(body.width()) + 1, static_cast<int>(body.height()) + 1 + frontHeight()};
}

void PositionMapView::fit() {
    const core::Station& station = map_.station();
    if (!station.hasLayout() || std::exchange(isFitting_, true)) return;
    const QSize room = maximumViewportSize();
    const QRectF one = plot::bodyArea(station.rows, station.columns, 1, station.isStaggered);
    const double fitting =
        std::min((room.width() - 1) / one.width(), (room.height() - 1 - frontHeight()) / one.height());
    const int cell =
        std::clamp(static_cast<int>(fitting), leastCell(), std::max(leastCell(), mostEms * fontMetrics().height()));
    horizontalHeader()->setDefaultSectionSize(cell);
    verticalHeader()->setDefaultSectionSize(cell);
    isFitting_ = false;
    viewport()->update();
}

QSize PositionMapView::sizeHint() const {
    const int cell = leastCell() * 5 / 4;
    return bodySize(cell) + QSize(verticalHeader()->sizeHint().width() + 4, cell);
}

QSize PositionMapView::minimumSizeHint() const {
    return {leastCell() * 5, leastCell() * 4};
}

void PositionMapView::updateGeometries() {
    QTableView::updateGeometries();
    // Room for the half step of staggered rows and for the word at the front.
    const QSize beyond = bodySize(cellSize()) - viewport()->size();
    horizontalScrollBar()->setRange(0, std::max(0, beyond.width()));
    verticalScrollBar()->setRange(0, std::max(0, beyond.height()));
}

QRect PositionMapView::visualRect(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    return plot::placeArea(index.row(), index.column(), cellSize(), map_.station().isStaggered)
        .toRect()
        .translated(-horizontalOffset(), -verticalOffset());
}

QModelIndex PositionMapView::indexAt(const QPoint& point) const {
    if (!map_.station().hasLayout()) return {};
    const int cell = cellSize(), y = point.y() + verticalOffset();
    if (y < 0) return {};
    const int row = y / cell;
    const int shift = map_.station().isStaggered && row % 2 == 1 ? cell / 2 : 0;
    const int x = point.x() + horizontalOffset() - shift;
    if (x < 0 || row >= map_.station().rows || x / cell >= map_.station().columns) return {};
    return map_.index(row, x / cell);
}

void PositionMapView::goTo(core::Position position) {
    move(position, false);
}

core::Position PositionMapView::current() const {
    return currentIndex().isValid() ? PositionMapModel::positionOf(currentIndex()) : core::Position{};
}

std::vector<core::Position> PositionMapView::selected() const {
    std::vector<core::Position> positions;
    for (const QModelIndex& index : selectionModel()->selectedIndexes())
        positions.push_back(PositionMapModel::positionOf(index));
    if (positions.empty() && currentIndex().isValid()) positions.push_back(current());
    std::ranges::sort(positions);
    return positions;
}

void PositionMapView::move(core::Position position, bool extends) {
    const QModelIndex to = map_.indexOf(position);
    if (!to.isValid()) return;
    if (!extends) anchor_ = position;
    const auto [top, bottom] = std::minmax(anchor_.row, position.row);
    const auto [left, right] = std::minmax(anchor_.column, position.column);
    // In this order: whoever hears of the new place finds the block that goes with it.
    selectionModel()->select(QItemSelection(map_.index(top, left), map_.index(bottom, right)),
                             QItemSelectionModel::ClearAndSelect);
    selectionModel()->setCurrentIndex(to, QItemSelectionModel::NoUpdate);
    scrollTo(to);
}

void PositionMapView::keyPressEvent(QKeyEvent* event) {
    const Qt::KeyboardModifiers with = event->modifiers() & ~Qt::KeypadModifier;
    if (!map_.station().hasLayout() || (with & ~Qt::ShiftModifier) != Qt::NoModifier)
        return QTableView::keyPressEvent(event);
    core::Position to = current();
    switch (event->key()) {
        case Qt::Key_Left:
            to.column = std::max(0, to.column - 1);
            break;
        case Qt::Key_Right:
            to.column = std::min(map_.station().columns - 1, to.column + 1);
            break;
        case Qt::Key_Up:
            to.row = std::max(0, to.row - 1);
            break;
        case Qt::Key_Down:
            to.row = std::min(map_.station().rows - 1, to.row + 1);
            break;
        case Qt::Key_Home:
            to.column = 0;
            break;
        case Qt::Key_End:
            to.column = map_.station().columns - 1;
            break;
        default:
            return QTableView::keyPressEvent(event);
    }
    move(to, with == Qt::ShiftModifier);
}

void PositionMapView::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && map_.station().hasLayout()) goTo({});
}

void PositionMapView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

void PositionMapView::resizeEvent(QResizeEvent* event) {
    fit();
    QTableView::resizeEvent(event);
}

void PositionMapView::keyboardSearch(const QString&) {}

void PositionMapView::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.fillRect(event->rect(), palette().color(QPalette::Window));
    const core::Station& station = map_.station();
    if (!station.hasLayout()) return;
    painter.setRenderHint(QPainter::Antialiasing);
    const plot::Palette& colours = plot::paletteFor(palette());
    const int cell = cellSize();
    const QRectF body = plot::bodyArea(station.rows, station.columns, cell, station.isStaggered)
                            .translated(-horizontalOffset(), -verticalOffset());
    plot::drawMapBody(painter, body, cell, colours);
    plot::drawFrontMark(painter, QRectF(body.left(), body.bottom(), body.width(), frontHeight()), colours);
    const int firstRow = std::max(0, (event->rect().top() + verticalOffset()) / cell);
    const int lastRow = std::min(station.rows - 1, (event->rect().bottom() + verticalOffset()) / cell);
    for (int row = firstRow; row <= lastRow; ++row)
        for (int column = 0; column < station.columns; ++column) {
            const QRect area = visualRect(map_.index(row, column));
            if (area.intersects(event->rect())) paintCell(painter, area, {row, column});
        }
}

void PositionMapView::paintCell(QPainter& painter, const QRect& cell, core::Position position) const {
    const QModelIndex index = map_.indexOf(position);
    const bool isCurrent = index == currentIndex();
    const plot::Palette& colours = plot::paletteFor(palette());
    if (selectionModel()->isSelected(index) && !isCurrent) painter.fillRect(cell, colours.look(0).box);
    plot::drawPlace(painter, cell, map_.placeAt(position), map_.isRound(), colours);
    if (!isCurrent) return;
    const double width = std::max(2.0, 0.07 * cell.height());
    painter.setPen(QPen(focusColour(palette()), width, hasFocus() ? Qt::SolidLine : Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(cell).adjusted(width / 2, width / 2, -width / 2, -width / 2));
}

}  // namespace desktop
