// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_mark_view.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>

#include "app/desktop/names/mnemonic.h"
#include "app/desktop/positions/position_look_model.h"
#include "app/desktop/positions/position_map_model.h"

namespace desktop {

PositionMarkView::PositionMarkView(PositionLookModel& model, QWidget* parent)
    : PositionPaintView(model.map(), parent), model_(model) {
    connect(this, &PositionPaintView::strokeBegun, this, &PositionMarkView::cycle);
    connect(this, &PositionPaintView::strokeWentOver, this,
            [this](core::Position position) { model_.mark({position}, last_, true); });
    connect(this, &PositionPaintView::spacePressed, this, [this] { apply(last_); });
}

bool PositionMarkView::event(QEvent* event) {
    // Letters are commands here; nobody else may take them.
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool isPlain = (key->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
        if (isPlain && !key->text().isEmpty() && key->text().front().isPrint()) key->accept();
    }
    return PositionPaintView::event(event);
}

void PositionMarkView::keyPressEvent(QKeyEvent* event) {
    const Qt::KeyboardModifiers with = event->modifiers() & ~Qt::KeypadModifier;
    const int key = event->key();
    if (with == Qt::ControlModifier) {
        if (key == Qt::Key_Left && goToUndecided(Way::Left)) return;
        if (key == Qt::Key_Right && goToUndecided(Way::Right)) return;
        if (key == Qt::Key_Up && goToUndecided(Way::Up)) return;
        if (key == Qt::Key_Down && goToUndecided(Way::Down)) return;
        return PositionPaintView::keyPressEvent(event);
    }
    if ((with & ~Qt::ShiftModifier) != Qt::NoModifier || key == Qt::Key_Escape)
        return PositionPaintView::keyPressEvent(event);
    if (key == Qt::Key_Return || key == Qt::Key_Enter) return emit finished();
    if (key == Qt::Key_Menu || (key == Qt::Key_F10 && with == Qt::ShiftModifier))
        return popUp(viewport()->mapToGlobal(visualRect(currentIndex()).center()), selected());
    if (event->text() == QStringLiteral("/")) return emit jumpWanted();
    const QChar letter = event->text().isEmpty() ? QChar() : event->text().front();
    if (const auto mark = markFor(map().keys(), letter)) return apply(*mark);
    PositionPaintView::keyPressEvent(event);
}

void PositionMarkView::apply(const Mark& mark) {
    last_ = mark;
    model_.mark(selected(), mark);
    stepOn();
}

std::vector<core::Position> PositionMarkView::walk() const {
    const core::Station& station = map().station();
    std::vector<core::Position> way;
    for (int row = 0; row < station.rows; ++row)
        for (int step = 0; step < station.columns; ++step)
            way.push_back({row, isSnake_ && row % 2 == 1 ? station.columns - 1 - step : step});
    return way;
}

void PositionMarkView::stepOn() {
    const std::vector<core::Position> way = walk(), block = selected();
    // After the last of the block, in the order of the walk.
    auto from = way.begin();
    for (auto place = way.begin(); place != way.end(); ++place)
        if (std::ranges::binary_search(block, *place)) from = place;
    const auto next = std::find_if(from == way.end() ? from : from + 1, way.end(),
                                   [this](core::Position position) { return model_.look().canMark(position); });
    goTo(next == way.end() ? current() : *next);
}

void PositionMarkView::goToStart() {
    const std::vector<core::Position> way = walk();
    const auto isOpen = [this](core::Position position) {
        return model_.look().canMark(position) && !model_.look().markAt(position).outcome;
    };
    auto first = std::ranges::find_if(way, isOpen);
    if (first == way.end())
        first = std::ranges::find_if(way, [this](core::Position p) { return model_.look().canMark(p); });
    if (first != way.end()) goTo(*first);
}

bool PositionMarkView::goToUndecided(Way way) {
    const core::Station& station = map().station();
    const bool isDownwards = way == Way::Up || way == Way::Down;
    std::vector<core::Position> order;
    for (const core::Position position : core::usablePositions(station))
        if (model_.look().canMark(position) && !model_.look().markAt(position).outcome) order.push_back(position);
    const auto rank = [isDownwards](core::Position position) {
        return isDownwards ? std::pair(position.column, position.row) : std::pair(position.row, position.column);
    };
    std::ranges::sort(order, {}, rank);
    if (way == Way::Left || way == Way::Up) {
        const auto before = std::ranges::lower_bound(order, rank(current()), {}, rank);
        if (before != order.begin()) goTo(*std::prev(before));
    } else {
        const auto after = std::ranges::upper_bound(order, rank(current()), {}, rank);
        if (after != order.end()) goTo(*after);
    }
    return true;
}

void PositionMarkView::cycle(core::Position position) {
    if (!model_.look().canMark(position)) return;
    const Mark now = model_.look().markAt(position);
    last_ = {};
    if (!now.outcome) last_.outcome = core::Outcome::Rooted;
    if (now.outcome == core::Outcome::Rooted) last_.outcome = core::Outcome::Lost;
    model_.mark({position}, last_);
}

void PositionMarkView::contextMenuEvent(QContextMenuEvent* event) {
    const QModelIndex index = indexAt(viewport()->mapFromGlobal(event->globalPos()));
    if (!index.isValid()) return;
    const core::Position position = PositionMapModel::positionOf(index);
    if (!std::ranges::binary_search(selected(), position)) goTo(position);
    popUp(event->globalPos(), selected());
}

void PositionMarkView::popUp(const QPoint& globalPlace, const std::vector<core::Position>& positions) {
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("markMenu"));
    menu->setAttribute(Qt::WA_DeleteOnClose);
    for (const MarkKey& key : map().keys()) {
        const QString words = key.letter.isNull() ? key.name : tr("%1\t%2", "state, key").arg(key.name).arg(key.letter);
        connect(menu->addAction(asMenuText(words)), &QAction::triggered, this, [this, positions, mark = key.mark] {
            last_ = mark;
            model_.mark(positions, mark);
        });
    }
    menu->popup(globalPlace);
}

}  // namespace desktop
