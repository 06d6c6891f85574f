// SPDX-License-Identifier: MIT
#include "app/desktop/batches/check_timeline.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/check_dialog.h"
#include "app/desktop/batches/check_table_model.h"
#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/table_manners.h"

namespace desktop {

CheckTimeline::CheckTimeline(BatchPageModel& model, QWidget* parent)
    : QWidget(parent), model_(model), checks_(new CheckTableModel(this)) {
    build();
}

void CheckTimeline::build() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("checkTable"));
    table_->setModel(checks_);
    giveTableManners(*table_);
    table_->installEventFilter(this);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    connect(table_, &QTableView::doubleClicked, this, &CheckTimeline::edit);
    caption_ = new QLabel;
    caption_->setBuddy(table_);
    edit_ = new QPushButton(tr("Edi&t check\u2026"));
    edit_->setObjectName(QStringLiteral("editCheck"));
    edit_->setToolTip(tr("Enter"));
    connect(edit_, &QPushButton::clicked, this, &CheckTimeline::edit);
    remove_ = new QPushButton(tr("Delete chec&k"));
    remove_->setObjectName(QStringLiteral("deleteCheck"));
    remove_->setToolTip(tr("Delete"));
    connect(remove_, &QPushButton::clicked, this, &CheckTimeline::remove);
    auto* row = new QHBoxLayout;
    row->addWidget(caption_, 1);
    row->addWidget(edit_);
    row->addWidget(remove_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(row);
    layout->addWidget(table_, 1);
}

void CheckTimeline::show(bool isWritable) {
    const core::Check* current = checks_->checkAt(table_->currentIndex().row());
    const core::CheckId kept = current == nullptr ? core::CheckId{} : current->id;
    checks_->show(model_.view().record, model_.shelves());
    table_->resizeColumnsToContents();
    for (int column = 0; column < CheckTableModel::Note; ++column)
        table_->setColumnWidth(column, table_->columnWidth(column) + fontMetrics().height() / 2);
    const int row = checks_->rowOf(kept);
    if (row >= 0)
        table_->selectRow(row);
    else
        chooseNewest();
    caption_->setText(checks_->rowCount() > 0 ? tr("Chec&ks")
                                              : tr("Chec&ks: none yet. Each look at this batch will be a row here."));
    isWritable_ = isWritable;
    edit_->setEnabled(isWritable && checks_->rowCount() > 0);
    remove_->setEnabled(isWritable && checks_->rowCount() > 0);
}

void CheckTimeline::chooseNewest() {
    if (checks_->rowCount() > 0) table_->selectRow(checks_->rowCount() - 1);
}

void CheckTimeline::focusTable() {
    table_->setFocus(Qt::OtherFocusReason);
}

void CheckTimeline::record() {
    for (int row = 0; row < checks_->rowCount(); ++row)
        if (checks_->checkAt(row)->checkedOn == model_.today()) {  // one batch has one check a day: today's is amended
            table_->selectRow(row);
            return edit();
        }
    auto* dialog = new CheckDialog(
        CheckDraft::of(model_.view().record, model_.shelves(), nullptr, model_.today()), model_.today(),
        [this](const core::Check& check) { return model_.record(check); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

bool CheckTimeline::eventFilter(QObject* watched, QEvent* event) {
    if (watched != table_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_F2)
        edit();
    else if (key == Qt::Key_Delete)
        remove();
    else
        return QWidget::eventFilter(watched, event);
    return true;
}

void CheckTimeline::edit() {
    const core::Check* check = checks_->checkAt(table_->currentIndex().row());
    if (check == nullptr || !isWritable_) return;
    auto* dialog = new CheckDialog(
        CheckDraft::of(model_.view().record, model_.shelves(), check, check->checkedOn), model_.today(),
        [this](const core::Check& kept) { return model_.change(kept); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void CheckTimeline::remove() {
    const core::Check* check = checks_->checkAt(table_->currentIndex().row());
    if (check == nullptr || !isWritable_) return;
    const Outcome outcome = model_.remove(check->id);
    if (!outcome.isDone) emit said(sentencesOf(outcome.refusals));
}

}  // namespace desktop
