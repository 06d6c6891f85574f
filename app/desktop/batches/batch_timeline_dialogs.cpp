// SPDX-License-Identifier: MIT
// The dialogs that a batch's timeline opens, for new events and for those to be corrected.
#include <QDialog>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/batch_timeline.h"
#include "app/desktop/batches/check_dialog.h"
#include "app/desktop/batches/expense_dialog.h"
#include "app/desktop/readings/care_dialog.h"
#include "app/desktop/readings/correct_readings_dialog.h"
#include "app/desktop/readings/reading_dialog.h"
#include "app/desktop/readings/reading_field.h"

namespace desktop {

void BatchTimeline::openDialog(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void BatchTimeline::recordCheck() {
    // One batch has one check a day: today's is amended.
    for (const core::Check& check : model_.view().record.checks)
        if (check.checkedOn == model_.today()) return editCheck(check.id);
    openDialog(new CheckDialog(
        CheckDraft::of(model_.view().record, model_.shelves(), nullptr, model_.today()), model_.today(),
        [this](const core::Check& check) { return model_.record(check); }, this));
}

void BatchTimeline::editCheck(core::CheckId id) {
    const core::Check* check = core::find(model_.view().record.checks, id);
    if (check == nullptr) return;
    openDialog(new CheckDialog(
        CheckDraft::of(model_.view().record, model_.shelves(), check, check->checkedOn), model_.today(),
        [this](const core::Check& kept) { return model_.change(kept); }, this));
}

void BatchTimeline::newReading() {
    openDialog(new ReadingDialog(context_, model_.view().record.batch.station, this));
}

void BatchTimeline::editReadings(const BatchEvent& event) {
    openDialog(new CorrectReadingsDialog(
        event.readings, model_.view().life.station, ReadingManner(model_.shelves()),
        [this](const db::StationVisit& visit) { return model_.keep(visit); }, this));
}

void BatchTimeline::newCare() {
    core::Care care;
    care.station = model_.view().record.batch.station;
    care.doneAt = model_.now();
    openDialog(new CareDialog(
        care, model_.view().life.station, model_.shelves().facts.units, model_.today(),
        [this](const core::Care& done) {
            return model_.keep(db::StationVisit{.station = done.station, .readings = {}, .care = {done}, .gone = {}});
        },
        this));
}

void BatchTimeline::editCare(core::CareId id) {
    const core::Care* care = core::find(model_.view().life.care, id);
    if (care == nullptr) return;
    openDialog(new CareDialog(
        *care, model_.view().life.station, model_.shelves().facts.units, model_.today(),
        [this](const core::Care& changed) {
            return model_.keep(
                db::StationVisit{.station = changed.station, .readings = {}, .care = {changed}, .gone = {}});
        },
        this));
}

void BatchTimeline::newExpense() {
    core::Expense expense;
    expense.batch = model_.view().record.batch.id;
    expense.spentOn = model_.today();
    openDialog(new ExpenseDialog(
        expense, model_.view().record.batch, model_.shelves().facts.currency, model_.today(),
        [this](const core::Expense& spent) { return model_.keep(spent); }, this));
}

void BatchTimeline::editExpense(core::ExpenseId id) {
    const core::Expense* expense = core::find(model_.view().life.expenses, id);
    if (expense == nullptr) return;
    openDialog(new ExpenseDialog(
        *expense, model_.view().record.batch, model_.shelves().facts.currency, model_.today(),
        [this](const core::Expense& changed) { return model_.keep(changed); }, this));
}

}  // namespace desktop
