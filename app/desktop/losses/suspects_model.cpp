// SPDX-License-Identifier: MIT
#include "app/desktop/losses/suspects_model.h"

#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/report/losses_records.h"
#include "app/report/suspects_sheet.h"

namespace desktop {

SuspectsModel::SuspectsModel(core::BatchId batch, Workspace& workspace, QObject* parent)
    : QObject(parent), batch_(batch), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &SuspectsModel::ask);
    connect(&workspace_, &Workspace::logbookReplaced, this, &SuspectsModel::ask);
}

void SuspectsModel::ask() {
    reading_.stop();
    view_.fault.clear();
    if (!workspace_.hasLogbook()) return fail(tr("No logbook is open."));
    readNames();
    view_.isWorking = true;
    emit viewChanged();
    reading_.ask(
        [batch = batch_](const db::Logbook& logbook, const std::stop_token& stop) -> Answer {
            auto suspects = report::suspectsOf(logbook, batch, stop);
            return suspects ? std::make_shared<const core::Suspects>(std::move(*suspects)) : nullptr;
        },
        [this](const Answer& answer) { tell(answer); }, [this] { fail(tr("The records could not be read.")); });
}

void SuspectsModel::readNames() {
    const auto lines = workspace_.batchLinesOf({batch_});
    if (lines.empty()) return;
    view_.code = QString::fromStdString(lines.front().batch.code);
    const core::Plant* plant = core::find(workspace_.shelves().plants, lines.front().batch.plant);
    view_.plant = plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant));
}

void SuspectsModel::tell(const Answer& answer) {
    if (answer == nullptr) return fail(tr("This batch is not in the logbook any more."));
    view_.isWorking = false;
    view_.suspects = answer;
    emit viewChanged();
}

void SuspectsModel::fail(const QString& fault) {
    view_.isWorking = false;
    view_.suspects.reset();
    view_.fault = fault;
    emit viewChanged();
}

std::shared_ptr<const report::Sheet> SuspectsModel::sheet() const {
    if (view_.suspects == nullptr || view_.isWorking) return nullptr;
    return std::make_shared<const report::Sheet>(
        report::suspectsSheet(*view_.suspects, view_.plant, workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
