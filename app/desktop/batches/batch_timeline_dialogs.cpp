// SPDX-License-Identifier: MIT
// The dialogs that a batch's timeline opens, for new events and for those to be corrected.
#include <QDialog>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/batch_timeline.h"
#include "app/desktop/batches/check_dialog.h"
#include "app/desktop/batches/expense_dialog.h"
#include "app/desktop/batches/potting_dialog.h"
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
        expense, ExpenseOwner::batch(model_.view().record.batch), model_.shelves().facts.currency, model_.today(),
        [this](const core::Expense& spent) { return model_.keep(spent); }, this));
}

std::optional<core::Expense> BatchTimeline::expenseOf(core::ExpenseId id) const {
    const plot::BatchLife& life = model_.view().life;
    for (const std::vector<core::Expense>* expenses : {&life.expenses, &life.sharedExpenses})
        if (const core::Expense* found = core::find(*expenses, id)) return *found;
    return {};
}

void BatchTimeline::editExpense(core::ExpenseId id) {
    const std::optional<core::Expense> expense = expenseOf(id);
    if (!expense) return;
    const ExpenseOwner owner = expense->session.isSet()
                                   ? ExpenseOwner::session(model_.view().session, model_.batchesOfSession())
                                   : ExpenseOwner::batch(model_.view().record.batch);
    openDialog(new ExpenseDialog(
        *expense, owner, model_.shelves().facts.currency, model_.today(),
        [this](const core::Expense& changed) { return model_.keep(changed); }, this));
}

void BatchTimeline::newPotting() {
    core::Potting potting;
    potting.batch = model_.view().record.batch.id;
    potting.countedOn = model_.today();
    openDialog(new PottingDialog(
        potting, model_.view().record, model_.view().life.pottings, model_.today(),
        [this](const core::Potting& counted) { return model_.keep(counted); }, this));
}

void BatchTimeline::editPotting(core::PottingId id) {
    std::vector<core::Potting> others = model_.view().life.pottings;
    const core::Potting* found = core::find(others, id);
    if (found == nullptr) return;
    const core::Potting potting = *found;
    std::erase_if(others, [id](const core::Potting& other) { return other.id == id; });
    openDialog(new PottingDialog(
        potting, model_.view().record, std::move(others), model_.today(),
        [this](const core::Potting& counted) { return model_.keep(counted); }, this));
}

}  // namespace desktop
