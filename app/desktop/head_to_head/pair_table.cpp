// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/pair_table.h"

#include <QContextMenuEvent>
#include <QHeaderView>
#include <QMenu>
#include <QScrollBar>
#include <algorithm>
#include <utility>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/widgets/table_manners.h"

namespace desktop {

PairTable::PairTable(QWidget* parent) : QTableView(parent), model_(new FigureTableModel(this)) {
    setModel(model_);
    giveTableManners(*this);
    horizontalHeader()->setStretchLastSection(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    copyOnRequest(*this, [this](const QString& sentence) { emit said(sentence); });
    connect(this, &QAbstractItemView::activated, this, &PairTable::explain);  // Enter and double-click
}

void PairTable::show(PairFigures figures, std::vector<report::MethodNote> notes) {
    pages_ = std::move(figures.pages);
    notes_ = std::move(notes);
    model_->show(std::move(figures.table));
    fitToRows(*this);
}

void PairTable::contextMenuEvent(QContextMenuEvent* event) {
    const bool isByKey = event->reason() == QContextMenuEvent::Keyboard;
    const QModelIndex row = isByKey ? currentIndex() : indexAt(viewport()->mapFrom(this, event->pos()));
    if (!row.isValid()) return;
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    QAction* how = menu->addAction(tr("How is this &worked out?"), this, [this, row] { explain(row); });
    how->setObjectName(QStringLiteral("pairWorkedOut"));
    menu->addAction(tr("&Copy row"), this, [this] {
        if (copyRows(*this) > 0) emit said(tr("Copied the row."));
    });
    menu->popup(isByKey ? viewport()->mapToGlobal(visualRect(row).center()) : event->globalPos());
}

void PairTable::explain(const QModelIndex& row) {
    const QString page = pages_.value(row.row());
    const bool isThere = std::any_of(notes_.begin(), notes_.end(),
                                     [&page](const report::MethodNote& note) { return note.page == page; });
    if (isThere)
        showMethods(notes_, page, this);
    else
        emit said(tr("There is no such figure here yet, so there is nothing to work out."));
}

void fitToRows(QTableView& table) {
    int height = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth();
    for (int row = 0; row < table.model()->rowCount(); ++row) height += table.rowHeight(row);
    table.resizeColumnsToContents();
    int width = 0;
    for (int column = 0; column < table.model()->columnCount(); ++column) width += table.columnWidth(column);
    if (width > table.viewport()->width()) height += table.horizontalScrollBar()->sizeHint().height();
    table.setFixedHeight(height);
}

}  // namespace desktop
