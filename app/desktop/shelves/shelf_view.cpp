// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelf_view.h"

#include <QDialog>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/merge_dialog.h"
#include "app/desktop/shelves/shelf_model.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/table_columns.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

ShelfView::ShelfView(const PageContext& context, const Shelf& shelf, QWidget* parent)
    : QWidget(parent), context_(context), shelf_(shelf), model_(new ShelfModel(shelf.columns, this, bool(shelf.uses))) {
    setObjectName(shelf_.word);
    build();
    showCurrent();
}

void ShelfView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (isStale_) read();
}

void ShelfView::refresh() {
    isStale_ = true;
    if (isVisible()) read();
}

void ShelfView::read() {
    isStale_ = false;
    const ShelfItem* current = model_->itemAt(table_->currentIndex().row());
    std::int64_t toShow = current ? current->id : 0;
    std::vector<std::int64_t> before;
    for (const ShelfItem& item : model_->items()) before.push_back(item.id);
    if (context_.workspace.hasLogbook()) {
        std::vector<ShelfItem> items = shelf_.items(context_.workspace.shelves(), context_.workspace.today());
        // What was just made comes to the front.
        for (const ShelfItem& item : items)
            if (hasRead_ && items.size() == before.size() + 1 && std::ranges::find(before, item.id) == before.end())
                toShow = item.id;
        ShelfUses uses;
        if (shelf_.uses) context_.workspace.attempt([&](db::Logbook&) { uses = shelf_.uses(context_.workspace); });
        model_->show(std::move(items), std::move(uses));
        if (before.empty() && model_->total() > 0) columns_->startWith(usualWidths());
        hasRead_ = true;
    } else {
        model_->show({}, {});
        hasRead_ = false;
    }
    if (!showThing(toShow) && model_->rowCount() > 0) chooseRow(*table_, 0);
    showState();
    showCurrent();
}

bool ShelfView::showThing(std::int64_t id) {
    if (isStale_) read();
    if (model_->rowOf(id) < 0 && std::ranges::find(model_->items(), id, &ShelfItem::id) != model_->items().end())
        filter_->clear();
    const int row = model_->rowOf(id);
    if (row < 0) return false;
    chooseRow(*table_, row);
    table_->scrollTo(model_->index(row, 0));
    return true;
}

void ShelfView::focusTable() {
    if (stack_->currentIndex() == 1)
        return (start_->isVisibleTo(this) ? start_ : emptyButton_)->setFocus(Qt::OtherFocusReason);
    if (!table_->currentIndex().isValid() && model_->rowCount() > 0) chooseRow(*table_, 0);
    table_->setFocus(Qt::OtherFocusReason);
}

void ShelfView::focusFilter() {
    filter_->setFocus(Qt::ShortcutFocusReason);
    filter_->selectAll();
}

void ShelfView::showState() {
    const int shown = model_->rowCount();
    const int total = model_->total();
    counts_->setText(shown == total ? plot::countText(total)
                                    : tr("%1 of %2", "12 of 340").arg(plot::countText(shown), plot::countText(total)));
    stack_->setCurrentIndex(shown == 0 ? 1 : 0);
    const bool isFiltered = total > 0;
    emptyTitle_->setText(isFiltered ? tr("Nothing here has \u201c%1\u201d").arg(filter_->text().simplified())
                                    : tr("Nothing on this shelf yet"));
    emptyText_->setText(isFiltered ? tr("The filter looks in all columns.") : shelf_.purpose);
    emptyButton_->setText(isFiltered ? tr("Clear filter") : shelf_.newText);
    emptyButton_->setEnabled(isFiltered || !context_.workspace.isReadOnly());
    start_->setVisible(shelf_.start && !isFiltered);
    start_->setEnabled(!context_.workspace.isReadOnly());
}

void ShelfView::showCurrent() {
    fault_->setFault({});
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (details_ != nullptr) details_->showThing(item != nullptr ? item->id : 0);
    const bool canWrite = !context_.workspace.isReadOnly();
    new_->setEnabled(canWrite);
    for (QPushButton* each : {another_, edit_, retire_, remove_}) each->setEnabled(item != nullptr && canWrite);
    merge_->setEnabled(item != nullptr && canWrite && model_->total() > 1);
    batches_->setEnabled(item != nullptr && model_->useOf(item->id).batches > 0);
    retire_->setText(item && item->isRetired ? tr("&Take back into use") : tr("&Retire"));
}

void ShelfView::makeNew() {
    if (new_->isEnabled()) openForm(0);
}

void ShelfView::makeAnother() {
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (!item || !shelf_.another || !another_->isEnabled()) return;
    fault_->setFault({});
    come(shelf_.another->dialog(context_, item->id, this));
}

void ShelfView::makeMany() {
    if (shelf_.start && new_->isEnabled()) come(shelf_.start->dialog(context_, 0, this));
}

void ShelfView::edit() {
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (item && edit_->isEnabled()) openForm(item->id);
}

void ShelfView::openForm(std::int64_t id) {
    fault_->setFault({});
    come(shelf_.form(context_, id, this));
}

/// Opens it, and takes the focus back when it is gone.
void ShelfView::come(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, this, &ShelfView::focusTable);
    dialog->open();
}

void ShelfView::merge() {
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (!item || !merge_->isEnabled()) return;
    std::vector<MergeDialog::Candidate> others;
    const auto candidate = [this](const ShelfItem& each) {
        // Labels of stock plants are told apart by their plant.
        const QString name = shelf_.kind == ShelfKind::StockPlants
                                 ? tr("%1, %2", "label, plant").arg(each.name, each.cells[1].text)
                                 : each.name;
        return MergeDialog::Candidate{.id = each.id, .name = name, .batches = model_->useOf(each.id).batches};
    };
    for (const ShelfItem& each : model_->items())
        if (each.id != item->id) others.push_back(candidate(each));
    auto* dialog = new MergeDialog(context_, shelf_, candidate(*item), std::move(others), this);
    connect(dialog, &MergeDialog::merged, this, &ShelfView::showThing);
    come(dialog);
}

void ShelfView::change(const Shelf::Edit& edit) {
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (!item || !edit || context_.workspace.isReadOnly()) return;
    const std::int64_t id = item->id;
    const Outcome outcome = context_.workspace.run([&](db::Logbook& logbook) { return edit(logbook, id); });
    fault_->setFault(sentencesOf(outcome.refusals));
}

void ShelfView::retireOrTakeBack() {
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (item) change(item->isRetired ? shelf_.takeBack : shelf_.retire);
}

void ShelfView::removeThing() {
    change(shelf_.remove);
}

void ShelfView::showBatches() {
    const ShelfItem* item = model_->itemAt(table_->currentIndex().row());
    if (item && shelf_.place) emit placeWanted({.page = {}, .kind = *shelf_.place, .id = item->id});
}

bool ShelfView::handleKey(int key, bool isShifted) {
    switch (key) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_F2:
            edit();
            return true;
        case Qt::Key_Insert:
            isShifted ? makeAnother() : makeNew();
            return true;
        case Qt::Key_Delete:
            removeThing();
            return true;
        default:
            return false;
    }
}

bool ShelfView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (watched == table_ && handleKey(key->key(), key->modifiers().testFlag(Qt::ShiftModifier))) return true;
    const bool leadsOn = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter || key->key() == Qt::Key_Down;
    if (watched == filter_ && leadsOn) {
        focusTable();
        return true;
    }
    if (key->key() == Qt::Key_Escape && !filter_->text().isEmpty()) {
        filter_->clear();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace desktop
