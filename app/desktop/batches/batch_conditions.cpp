// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_conditions.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>
#include <memory>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/plot/station_charts.h"
#include "app/report/climate_sheet.h"

namespace desktop {

BatchConditions::BatchConditions(BatchPageModel& model, const PageContext& context, QWidget* parent)
    : QWidget(parent),
      model_(model),
      context_(context),
      rows_(new FigureTableModel(this)),
      words_(new QLabel),
      table_(new QTableView),
      method_(quietLabel(QStringLiteral("conditionsMethod"))),
      reading_(context.workspace, this) {
    setObjectName(QStringLiteral("batchConditions"));
    words_->setObjectName(QStringLiteral("conditionsWords"));
    words_->setWordWrap(true);
    table_->setObjectName(QStringLiteral("conditionsTable"));
    table_->setAccessibleName(tr("What this batch lived through"));
    table_->setModel(rows_);
    giveTableManners(*table_);
    table_->horizontalHeader()->setStretchLastSection(false);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    method_->setWordWrap(true);
    method_->setText(report::livedMethod());
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(words_);
    layout->addWidget(table_, 1);
    layout->addWidget(method_);
    fill({});
}

void BatchConditions::forget() {
    reading_.stop();
    isAsked_ = false;
    if (isVisible()) ask();
}

void BatchConditions::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!isAsked_) ask();
}

void BatchConditions::ask() {
    if (!model_.hasBatch() || !context_.workspace.hasLogbook()) return;
    isAsked_ = true;
    auto record = std::make_shared<const core::BatchRecord>(model_.view().record);
    auto shelves = std::make_shared<const core::Shelves>(model_.shelves());
    reading_.ask([record, shelves, today = model_.today(), now = model_.now()](
                     const db::Logbook& logbook,
                     const std::stop_token&) { return plot::livedThroughOf(logbook, *record, *shelves, today, now); },
                 [this](const std::vector<core::LivedQuantity>& lived) { fill(lived); });
}

void BatchConditions::fill(const std::vector<core::LivedQuantity>& lived) {
    const core::DisplayUnits units =
        context_.workspace.hasLogbook() ? context_.workspace.shelves().facts.units : core::DisplayUnits{};
    report::Table table = report::livedTable(lived, units);
    rows_->show({.title = {}, .headings = table.headings, .rows = std::move(table.rows)});
    const QString station = model_.hasBatch() ? model_.view().life.station : QString();
    words_->setText(!lived.empty()      ? tr("At %1, from the day of sticking on.").arg(station)
                    : station.isEmpty() ? tr("The batch has no station on record, so no readings belong to it.")
                                        : tr("Nothing was read at %1 while this batch stood there.").arg(station));
    table_->setVisible(!lived.empty());
    method_->setVisible(!lived.empty());
    table_->resizeColumnsToContents();
}

}  // namespace desktop
