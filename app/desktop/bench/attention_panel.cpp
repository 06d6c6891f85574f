// SPDX-License-Identifier: MIT
#include "app/desktop/bench/attention_panel.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/desktop/bench/attention_model.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/plot/number_text.h"

namespace desktop {

AttentionPanel::AttentionPanel(QWidget* parent)
    : QWidget(parent), model_(new AttentionModel(this)), table_(new QTableView(this)), state_(new QLabel(this)) {
    table_->setObjectName("benchAttention");
    table_->setModel(model_);
    giveTableManners(*table_);
    table_->setAccessibleName(tr("Out of the ordinary"));
    table_->horizontalHeader()->setStretchLastSection(true);
    state_->setObjectName("benchAttentionState");
    state_->setWordWrap(true);
    auto* label = new QLabel(tr("&Out of the ordinary"), this);
    label->setBuddy(table_);
    connect(table_, &QTableView::activated, this, &AttentionPanel::lead);
    suspects_ = new QPushButton(tr("&What may have gone wrong\u2026"), this);
    suspects_->setObjectName("benchSuspects");
    suspects_->setToolTip(tr("What speaks for and against each suspect, of the batch chosen above"));
    suspects_->setAutoDefault(true);  // Enter does what Space does
    connect(suspects_, &QPushButton::clicked, this, [this] { emit suspectsWanted(currentBatch()); });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &AttentionPanel::followCurrent);
    auto* foot = new QHBoxLayout;
    foot->addWidget(suspects_, 0, Qt::AlignTop);
    foot->addWidget(state_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(label);
    layout->addWidget(table_, 1);
    layout->addLayout(foot);
}

core::BatchId AttentionPanel::currentBatch() const {
    const QModelIndex index = table_->currentIndex();
    return index.isValid() ? model_->rowAt(index).batch : core::BatchId{};
}

void AttentionPanel::followCurrent() {
    suspects_->setEnabled(currentBatch().isSet());
}

void AttentionPanel::show(std::vector<AttentionRow> rows, bool isLooking, double falseAlarmRate) {
    const bool hasRows = !rows.empty();
    const bool hasBatches = std::ranges::any_of(rows, [](const AttentionRow& row) { return row.batch.isSet(); });
    model_->show(std::move(rows));
    table_->setVisible(hasRows);
    suspects_->setVisible(hasBatches);
    if (hasRows) chooseRow(*table_, 0);
    followCurrent();
    state_->setVisible(isLooking || hasBatches || !hasRows);
    state_->setText(isLooking ? tr("Comparing open batches with your earlier ones…")
                    : hasBatches
                        ? tr("So few in an open batch would come less than once in %1 batches by luck.")
                              .arg(plot::countText(static_cast<int>(std::floor(1 / falseAlarmRate + 1e-9))))
                        : tr("Nothing: no open batch does much worse than your earlier ones, and no reading of "
                             "the last two weeks is outside its band."));
    fitColumns();
}

void AttentionPanel::fitColumns() {
    table_->resizeColumnToContents(AttentionModel::Subject);
    constexpr int mostShown = 5;
    const int rowHeight = table_->verticalHeader()->defaultSectionSize();
    table_->setFixedHeight(rowHeight * std::min(mostShown, model_->rowCount()) +
                           table_->horizontalHeader()->sizeHint().height() + 2 * table_->frameWidth());
    setMaximumHeight(sizeHint().height());
}

void AttentionPanel::lead(const QModelIndex& index) {
    if (!index.isValid()) return;
    const AttentionRow& row = model_->rowAt(index);
    if (row.batch.isSet())
        emit batchWanted(row.batch);
    else
        emit stationWanted(row.station);
}

}  // namespace desktop
