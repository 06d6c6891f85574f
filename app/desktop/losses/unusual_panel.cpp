// SPDX-License-Identifier: MIT
#include "app/desktop/losses/unusual_panel.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/losses/unusual_table_model.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/report/losses_words.h"

namespace desktop {

UnusualPanel::UnusualPanel(QWidget* parent)
    : QWidget(parent),
      model_(new UnusualTableModel(this)),
      words_(new QLabel),
      table_(new QTableView),
      suspects_(new QPushButton(tr("&What may have gone wrong\u2026"))),
      batch_(new QPushButton(tr("Open &batch"))) {
    auto* title = new QLabel(tr("&Out of the ordinary"));
    title->setBuddy(table_);
    words_->setObjectName(QStringLiteral("unusualWords"));
    words_->setWordWrap(true);
    table_->setObjectName(QStringLiteral("unusualTable"));
    table_->setAccessibleName(tr("Batches out of the ordinary"));
    table_->setModel(model_);
    giveTableManners(*table_);
    table_->setItemDelegateForColumn(UnusualTableModel::Plant, new PlantNameDelegate(table_));
    table_->horizontalHeader()->setStretchLastSection(false);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    suspects_->setObjectName(QStringLiteral("unusualSuspects"));
    suspects_->setToolTip(tr("What speaks for and against each suspect (Enter)"));
    batch_->setObjectName(QStringLiteral("unusualBatch"));
    for (QPushButton* button : {suspects_, batch_}) button->setAutoDefault(true);  // Enter does what Space does
    connect(table_, &QTableView::activated, this,
            [this](const QModelIndex& index) { emit suspectsWanted(model_->batchAt(index.row())); });
    connect(suspects_, &QPushButton::clicked, this, [this] { emit suspectsWanted(current()); });
    connect(batch_, &QPushButton::clicked, this, [this] { emit batchWanted(current()); });
    auto* buttons = new QWidget;
    auto* row = new WrappingRow(buttons);
    row->addWidget(suspects_);
    row->addWidget(batch_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{title, words_, table_, buttons}) layout->addWidget(part);
}

core::BatchId UnusualPanel::current() const {
    return model_->batchAt(table_->currentIndex().row());
}

void UnusualPanel::show(const report::LossesAnswer& answer, const core::Shelves& shelves) {
    const core::BatchId before = current();
    model_->show(answer.unusual, shelves);
    const bool hasRows = !answer.unusual.empty();
    words_->setText(report::unusualText(answer, shelves.facts.falseAlarmRate));
    for (QWidget* part : std::initializer_list<QWidget*>{table_, suspects_, batch_}) part->setVisible(hasRows);
    if (!hasRows) return;
    int row = 0;
    for (int each = 0; each < model_->rowCount(); ++each)
        if (model_->batchAt(each) == before) row = each;
    chooseRow(*table_, row);
    fit();
}

void UnusualPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    // After the event: the table measures in the new text size only once it has it.
    if (event->type() == QEvent::FontChange)
        QMetaObject::invokeMethod(
            this, [this] { fit(); }, Qt::QueuedConnection);
}

void UnusualPanel::fit() {
    constexpr int mostShown = 6;
    table_->resizeColumnsToContents();
    table_->setFixedHeight(table_->verticalHeader()->defaultSectionSize() * std::min(mostShown, model_->rowCount()) +
                           table_->horizontalHeader()->sizeHint().height() + 2 * table_->frameWidth());
}

}  // namespace desktop
