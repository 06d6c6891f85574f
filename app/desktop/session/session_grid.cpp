// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_grid.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <array>

#include "app/desktop/session/session_cell_delegate.h"
#include "app/desktop/session/session_model.h"

namespace desktop {

SessionGrid::SessionGrid(SessionModel& model, QWidget* parent) : QTableView(parent), model_(model) {
    setObjectName(QStringLiteral("sessionGrid"));
    setAccessibleName(tr("Batches of this session"));
    setModel(model.grid());
    setItemDelegate(new SessionCellDelegate(model, this));
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::SelectedClicked | QAbstractItemView::DoubleClicked);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setWordWrap(false);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 7 / 4);
}

void SessionGrid::goTo(int row, int column) {
    setCurrentIndex(model()->index(row, column));
    scrollTo(currentIndex());
    setFocus(Qt::OtherFocusReason);
}

void SessionGrid::removeCurrentRow() {
    if (!currentIndex().isValid()) return;
    const int row = currentIndex().row();
    const int column = currentIndex().column();
    model_.grid()->remove(row);
    goTo(std::min(row, model()->rowCount() - 1), column);
}

void SessionGrid::keyPressEvent(QKeyEvent* event) {
    // What a cell's editor leaves over reaches us too; the delegate deals with it.
    if (state() == EditingState) return QTableView::keyPressEvent(event);
    const bool isPlain = (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0;
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isPlain && isEnter && currentIndex().isValid()) {
        model_.grid()->accept(currentIndex().row());
        goOn();
    } else if (isPlain && event->text() == QStringLiteral("\"")) {
        if (model_.grid()->copyFromAbove(currentIndex())) goOn();
    } else if (event->key() == Qt::Key_Delete && (event->modifiers() & Qt::ControlModifier) != 0) {
        removeCurrentRow();
    } else if (event->key() == Qt::Key_Delete && isPlain) {
        model()->setData(currentIndex(), QString());
    } else {
        return QTableView::keyPressEvent(event);
    }
    event->accept();
}

void SessionGrid::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    QTableView::closeEditor(editor, QAbstractItemDelegate::NoHint);
    if (hint == QAbstractItemDelegate::SubmitModelCache || hint == QAbstractItemDelegate::EditNextItem) goOn();
    if (hint == QAbstractItemDelegate::EditPreviousItem) goBack();
}

void SessionGrid::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    shareWidth();
}

void SessionGrid::goOn() {
    QModelIndex next = currentIndex();
    do {
        if (next.column() + 1 < sessionColumns) {
            next = model()->index(next.row(), next.column() + 1);
        } else {
            if (next.row() + 1 == model()->rowCount()) model_.grid()->offerRow();
            next = model()->index(next.row() + 1, 0);
        }
    } while ((next.flags() & Qt::ItemIsEditable) == 0);
    setCurrentIndex(next);
}

void SessionGrid::goBack() {
    const QModelIndex here = currentIndex();
    int column = here.column() - 1;
    while (column >= 0 && (model()->index(here.row(), column).flags() & Qt::ItemIsEditable) == 0) --column;
    if (column >= 0) setCurrentIndex(model()->index(here.row(), column));
}

void SessionGrid::shareWidth() {
    // By what usually stands in them: plant, stock plant, kind, treatment, station, method, medium, stuck, note.
    constexpr std::array shares{21, 11, 12, 12, 12, 12, 11, 6, 11};
    int whole = 0;
    for (const int share : shares) whole += share;
    int left = viewport()->width();
    for (int column = 0; column + 1 < sessionColumns; ++column) {
        const int width = viewport()->width() * shares[static_cast<std::size_t>(column)] / whole;
        setColumnWidth(column, width);
        left -= width;
    }
    setColumnWidth(sessionColumns - 1, left);
}

}  // namespace desktop
