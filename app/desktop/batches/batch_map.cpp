// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_map.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/positions/position_look_dialog.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_map_panel.h"

namespace desktop {

BatchMap::BatchMap(BatchPageModel& model, const PageContext& context, QWidget* parent)
    : QWidget(parent),
      model_(model),
      context_(context),
      positions_(new PositionMapModel(context.workspace, this)),
      look_(new QPushButton(tr("Look hole by hole\u2026"))) {
    setObjectName(QStringLiteral("batchMap"));
    look_->setObjectName(QStringLiteral("lookHoleByHole"));
    connect(look_, &QPushButton::clicked, this,
            [this] { lookHoleByHole(context_, model_.view().record.batch.id, this); });
    auto* row = new QHBoxLayout;
    row->addWidget(look_);
    row->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(row);
    layout->addWidget(new PositionMapPanel(*positions_, this), 1);
}

bool BatchMap::show(bool isWritable) {
    look_->setEnabled(isWritable);
    isFilled_ = false;
    const core::Station* station = core::find(model_.shelves().stations, model_.view().record.batch.station);
    const bool hasMap = station != nullptr && station->hasLayout();
    if (hasMap && isVisible()) fill();
    return hasMap;
}

void BatchMap::showEvent(QShowEvent* event) {
    // Reading all that stands at a station takes its time: only for who looks.
    if (!isFilled_ && model_.hasBatch()) fill();
    QWidget::showEvent(event);
}

void BatchMap::fill() {
    const core::Batch& batch = model_.view().record.batch;
    const core::Station* station = core::find(model_.shelves().stations, batch.station);
    if (station == nullptr) return;
    positions_->show(*station, openBatchesAt(context_.workspace, station->id, batch.id), batch.id);
    isFilled_ = true;
}

}  // namespace desktop
