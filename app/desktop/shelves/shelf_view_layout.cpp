// SPDX-License-Identifier: MIT
// The part of ShelfView that builds it.
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/shelf_model.h"
#include "app/desktop/shelves/shelf_view.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/table_columns.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

void ShelfView::build() {
    stack_ = new QStackedWidget;
    stack_->addWidget(makeTable());
    stack_->addWidget(makeEmpty());
    auto* middle = new QHBoxLayout;
    middle->addWidget(stack_, 1);
    middle->addWidget(makeButtons());
    fault_ = new FaultLabel;
    fault_->setObjectName(QStringLiteral("shelfFault"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeTop());
    layout->addLayout(middle, 3);
    layout->addWidget(fault_);
    if (shelf_.details) {
        details_ = shelf_.details(context_);
        layout->addWidget(details_->widgetOfDetails(), 2);
    }
    // The eye goes from the box at the top to the table and on to the buttons.
    const QList<QWidget*> inOrder{filter_,  columnsButton_, table_, start_,  emptyButton_, new_,
                                  another_, edit_,          merge_, retire_, remove_,      batches_};
    for (int number = 1; number < inOrder.size(); ++number) setTabOrder(inOrder[number - 1], inOrder[number]);
    if (details_ != nullptr) setTabOrder(batches_, details_->widgetOfDetails());
}

QWidget* ShelfView::makeTop() {
    auto* top = new QWidget;
    filter_ = new QLineEdit;
    filter_->setObjectName(QStringLiteral("shelfFilter"));
    filter_->setClearButtonEnabled(true);
    filter_->installEventFilter(this);
    connect(filter_, &QLineEdit::textChanged, this, [this](const QString& words) {
        const ShelfItem* current = model_->itemAt(table_->currentIndex().row());
        const std::int64_t id = current ? current->id : 0;
        model_->setFilter(words);
        const int row = model_->rowOf(id);
        if (model_->rowCount() > 0) chooseRow(*table_, std::max(0, row));
        showState();
        showCurrent();
    });
    auto* caption = new QLabel(tr("&Filter"));
    caption->setBuddy(filter_);
    counts_ = new QLabel;
    counts_->setObjectName(QStringLiteral("shelfCounts"));
    columnsButton_ = new QPushButton(tr("Co&lumns"));
    columnsButton_->setObjectName(QStringLiteral("shelfColumns"));
    columnsButton_->setToolTip(tr("Which columns, in which order, how wide (Shift+F10 in the table)"));
    connect(columnsButton_, &QPushButton::clicked, this,
            [this] { columns_->showMenu(columnsButton_->mapToGlobal(QPoint(0, columnsButton_->height()))); });
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(caption);
    row->addWidget(filter_, 1);
    row->addWidget(counts_);
    row->addWidget(columnsButton_);
    return top;
}

QWidget* ShelfView::makeTable() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("shelfTable"));
    table_->setAccessibleName(shelf_.title);
    table_->setModel(model_);
    for (std::size_t column = 0; column < shelf_.columns.size(); ++column)
        if (shelf_.columns[column].look == ShelfLook::PlantName)
            table_->setItemDelegateForColumn(static_cast<int>(column), new PlantNameDelegate(table_));
    giveTableManners(*table_);
    table_->horizontalHeader()->setSortIndicator(shelf_.sortedBy, Qt::AscendingOrder);
    table_->setSortingEnabled(true);
    columns_ = new TableColumns(*table_, usualWidths(), stretchedColumn(), context_.memory, "shelf_" + shelf_.word);
    table_->installEventFilter(this);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    connect(table_, &QTableView::doubleClicked, this, &ShelfView::edit);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ShelfView::showCurrent);
    return table_;
}

int ShelfView::stretchedColumn() const {
    if (shelf_.stretched) return *shelf_.stretched;
    const auto last = std::ranges::find_if(shelf_.columns.rbegin(), shelf_.columns.rend(),
                                           [](const ShelfColumn& column) { return column.look == ShelfLook::Words; });
    return last == shelf_.columns.rend() ? 0 : static_cast<int>(shelf_.columns.rend() - last) - 1;
}

std::vector<int> ShelfView::usualWidths() const {
    // What stands in a column now, as far as it is not much; at least its heading with the mark of sorting.
    const int most = fontMetrics().horizontalAdvance(QStringLiteral("Salvia rosmarinus \u2018Name of it\u2019"));
    std::vector<ShelfItem> items;
    if (context_.workspace.hasLogbook()) items = shelf_.items(context_.workspace.shelves(), context_.workspace.today());
    const core::Date longDay{std::chrono::year{2026}, std::chrono::month{12}, std::chrono::day{28}};
    std::vector<int> widths;
    for (int column = 0; column < model_->columnCount(); ++column) {
        int text = fontMetrics().horizontalAdvance(model_->headerData(column, Qt::Horizontal).toString());
        const auto own = static_cast<std::size_t>(column);
        if (own < shelf_.columns.size())
            for (const ShelfItem& item : items)
                text = std::max(text, fontMetrics().horizontalAdvance(item.cells[own].text.simplified()));
        else if (!shelf_.uses)
            for (const ShelfItem& item : items) text = std::max(text, fontMetrics().horizontalAdvance(item.state));
        else if (own > shelf_.columns.size())  // the number of batches needs no more than its heading
            text = std::max({text, fontMetrics().horizontalAdvance(plot::shortDateText(longDay)),
                             fontMetrics().horizontalAdvance(tr("no batches"))}) -
                   fontMetrics().height() / 2;
        // The one that takes what is left asks for little, so that the uses stay in sight.
        if (column == stretchedColumn() && (column > 0 || shelf_.stretched))
            text = std::min(text, fontMetrics().height() * 4);
        widths.push_back(std::min(text, most) + fontMetrics().height());
    }
    return widths;
}

QPushButton* ShelfView::button(const QString& name, const QString& text, const QString& tip,
                               void (ShelfView::*verb)()) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, verb);
    return made;
}

QWidget* ShelfView::makeButtons() {
    auto* column = new QWidget;
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(fontMetrics().height() / 2, 0, 0, 0);
    new_ = button(QStringLiteral("shelfNew"), shelf_.newText, tr("Insert"), &ShelfView::makeNew);
    another_ = button(QStringLiteral("shelfAnother"), shelf_.another ? shelf_.another->text : QString(),
                      shelf_.another ? shelf_.another->tip : QString(), &ShelfView::makeAnother);
    edit_ = button(QStringLiteral("shelfEdit"), tr("&Edit\u2026"), tr("F2 or Enter"), &ShelfView::edit);
    merge_ = button(QStringLiteral("shelfMerge"), tr("Mer&ge\u2026"), tr("Two spellings of one become one"),
                    &ShelfView::merge);
    retire_ = button(QStringLiteral("shelfRetire"), tr("&Retire"),
                     tr("Not offered any more; what names it stays as it is"), &ShelfView::retireOrTakeBack);
    remove_ = button(QStringLiteral("shelfRemove"), tr("Remo&ve"), tr("Delete; only while nothing uses it"),
                     &ShelfView::removeThing);
    batches_ = button(QStringLiteral("shelfBatches"), tr("Its &batches"), tr("The list of batches, only those of this"),
                      &ShelfView::showBatches);
    for (QPushButton* each : {new_, another_, edit_, merge_, retire_, remove_, batches_}) layout->addWidget(each);
    layout->addStretch(1);
    another_->setVisible(shelf_.another.has_value());
    merge_->setVisible(bool(shelf_.merge));
    retire_->setVisible(bool(shelf_.retire));
    batches_->setVisible(shelf_.place.has_value());
    return column;
}

QWidget* ShelfView::makeEmpty() {
    auto* empty = new QWidget;
    emptyTitle_ = largeLabel(QStringLiteral("shelfEmptyTitle"), 1.3);
    emptyTitle_->setAlignment(Qt::AlignCenter);
    emptyText_ = new QLabel;
    emptyText_->setObjectName(QStringLiteral("shelfEmptyText"));
    emptyText_->setAlignment(Qt::AlignCenter);
    emptyText_->setWordWrap(true);
    emptyButton_ = new QPushButton;
    emptyButton_->setObjectName(QStringLiteral("shelfEmptyButton"));
    connect(emptyButton_, &QPushButton::clicked, this, [this] {
        if (model_->total() == 0) return makeNew();
        filter_->clear();
        focusTable();
    });
    start_ = button(QStringLiteral("shelfStart"), shelf_.start ? shelf_.start->text : QString(),
                    shelf_.start ? shelf_.start->tip : QString(), &ShelfView::makeMany);
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(emptyTitle_);
    layout->addWidget(emptyText_);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(start_, 0, Qt::AlignHCenter);
    layout->addWidget(emptyButton_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

}  // namespace desktop
