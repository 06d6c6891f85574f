// SPDX-License-Identifier: MIT
// What the batch cost: its share of what batches have in common takes all of them, so it is reckoned in the background.
#include "app/desktop/batches/batch_page_model.h"
#include "app/report/logbook_costs.h"

namespace desktop {

void BatchPageModel::askForCost() {
    const core::BatchId batch = batch_;
    const core::Date today = workspace_.today();
    costs_.ask(
        [batch, today](const db::Logbook& logbook, const std::stop_token& stop) {
            return report::wholeCostOf(report::costsOfLogbook(logbook, logbook.batchRecords(), today, stop), batch);
        },
        [this](std::optional<report::WholeCost> cost) { tellCost(std::move(cost)); }, [this] { tellCost({}); });
}

void BatchPageModel::tellCost(std::optional<report::WholeCost> cost) {
    view_->cost = std::move(cost);
    view_->isCostKnown = true;
    printed_.reset();
    describeCost();
    emit summaryChanged();
}

void BatchPageModel::describeCost() {
    view_->costs.clear();
    view_->costParts.clear();
    if (!view_->cost) return;
    const core::Tally tally = core::tallyOf(view_->record.batch, view_->record.checks);
    const std::string& currency = workspace_.shelves().facts.currency;
    view_->costs = report::costsInWords(view_->cost->cost, tally, core::isClosed(view_->record.batch, tally), currency);
    QString parts = report::costPartsInWords(view_->cost->cost);
    if (!parts.isEmpty()) parts = tr("In %1: %2", "EUR; parts of a cost").arg(QString::fromStdString(currency), parts);
    QStringList rest{parts};
    for (const std::string& sentence : view_->cost->missing) rest << QString::fromStdString(sentence);
    rest.removeAll(QString());
    view_->costParts = rest.join(QLatin1Char('\n'));
}

}  // namespace desktop
