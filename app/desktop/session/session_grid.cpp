// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_grid.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <array>

#include "app/desktop/session/session_cell_delegate.h"
#include "app/desktop/session/session_model.h"

namespace desktop {

namespace {

using Widths = std::array<int, sessionColumns>;

/// By what usually stands in them; but each has room for its heading, and what the others have more than theirs makes up for it.
Widths widthsIn(int whole, const Widths& headings) {
    // plant, stock plant, kind, treatment, station, method, medium, stuck, positions, note
    constexpr Widths shares{20, 10, 9, 11, 11, 11, 11, 6, 9, 9};
    std::array<bool, sessionColumns> isTight{};
    while (true) {
        int room = whole, shared = 0;
        for (std::size_t column = 0; column < sessionColumns; ++column)
            isTight[column] ? room -= headings[column] : shared += shares[column];
        Widths widths = headings;
        for (std::size_t column = 0; column < sessionColumns; ++column)
            if (!isTight[column]) widths[column] = room * shares[column] / shared;
        const auto before = isTight;
        for (std::size_t column = 0; column < sessionColumns; ++column)
            isTight[column] = isTight[column] || widths[column] < headings[column];
        if (isTight == before) return widths;
    }
}

Widths headingWidths(const QTableView& grid) {
    Widths widths{};
    for (int column = 0; column < sessionColumns; ++column)
        widths[static_cast<std::size_t>(column)] =
            grid.fontMetrics().horizontalAdvance(grid.model()->headerData(column, Qt::Horizontal).toString()) +
            grid.fontMetrics().height();
    return widths;
}

bool isAt(const QModelIndex& cell, SessionColumn column) {
    return cell.column() == static_cast<int>(column);
}

}  // namespace

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

QString SessionGrid::keysText() {
    return tr(
        "Enter goes on, from Stuck to the next row, and in a copied row from a plant that stays to its station. "
        "Tab and the arrows reach every cell. Enter takes the name that is marked; Esc turns it down. "
        "The key \" copies the cell above. "
        "A row marked + is only offered: it isn't saved until you type or press Enter in it.");
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
        const QModelIndex here = currentIndex();
        const bool keepsPlant = model_.grid()->row(here.row()).isOffered && isAt(here, SessionColumn::Plant);
        model_.grid()->accept(here.row());
        // Where the plant stays, so does what belongs to it.
        if (keepsPlant)
            setCurrentIndex(here.siblingAtColumn(static_cast<int>(SessionColumn::Station)));
        else
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
    if (hint == QAbstractItemDelegate::SubmitModelCache) goOn();
    if (hint == QAbstractItemDelegate::EditNextItem) goRight();
    if (hint == QAbstractItemDelegate::EditPreviousItem) goBack();
}

void SessionGrid::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    shareWidth();
}

void SessionGrid::goOn() {
    // Positions fill themselves and notes are rare, so a row ends with its count.
    if (isAt(currentIndex(), SessionColumn::Count)) return goToNextRow();
    goRight();
}

void SessionGrid::goRight() {
    QModelIndex next = currentIndex();
    do {
        if (next.column() + 1 == sessionColumns) return goToNextRow();
        next = next.siblingAtColumn(next.column() + 1);
    } while ((next.flags() & Qt::ItemIsEditable) == 0);
    setCurrentIndex(next);
}

void SessionGrid::goToNextRow() {
    const int row = currentIndex().row() + 1;
    if (row == model()->rowCount()) model_.grid()->offerRow();
    int column = 0;
    while (column + 1 < sessionColumns && (model()->index(row, column).flags() & Qt::ItemIsEditable) == 0) ++column;
    setCurrentIndex(model()->index(row, column));
}

void SessionGrid::goBack() {
    const QModelIndex here = currentIndex();
    int column = here.column() - 1;
    while (column >= 0 && (model()->index(here.row(), column).flags() & Qt::ItemIsEditable) == 0) --column;
    if (column >= 0) setCurrentIndex(model()->index(here.row(), column));
}

void SessionGrid::shareWidth() {
    const Widths widths = widthsIn(viewport()->width(), headingWidths(*this));
    for (int column = 0; column < sessionColumns; ++column)
        setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
}

}  // namespace desktop
