// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/table_manners.h"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>
#include <utility>

namespace desktop {

namespace {

/// Lets rows grow with the text size, in whatever proportion they stand to it.
class RowHeights : public QObject {
  public:
    explicit RowHeights(QTableView& table) : QObject(&table), table_(table), em_(table.fontMetrics().height()) {
        table.verticalHeader()->setDefaultSectionSize(em_ * 8 / 5);
        table.installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::FontChange) grow();
        return QObject::eventFilter(watched, event);
    }

  private:
    void grow() {
        const int before = std::exchange(em_, table_.fontMetrics().height());
        if (before == em_) return;
        table_.verticalHeader()->setDefaultSectionSize(table_.verticalHeader()->defaultSectionSize() * em_ / before);
    }

    QTableView& table_;
    int em_;
};

}  // namespace

void giveTableManners(QTableView& table) {
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setTabKeyNavigation(false);
    table.setWordWrap(false);
    table.setShowGrid(false);
    table.setAlternatingRowColors(true);
    table.verticalHeader()->hide();
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setStretchLastSection(true);
    new RowHeights(table);
}

void chooseRow(QTableView& table, int row) {
    const QHeaderView& columns = *table.horizontalHeader();
    for (int place = 0; place < columns.count(); ++place) {
        const int column = columns.logicalIndex(place);
        if (!columns.isSectionHidden(column)) return table.setCurrentIndex(table.model()->index(row, column));
    }
}

}  // namespace desktop
