// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trials_view.h"

#include <QDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/trials/trial_change_form.h"
#include "app/desktop/trials/trial_details.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/trials/trial_session_dialog.h"
#include "app/desktop/trials/trial_table_model.h"
#include "app/desktop/trials/trials_model.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/table_columns.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/report/sheet.h"
#include "core/trial/trial_rules.h"

namespace desktop {

TrialsView::TrialsView(const PageContext& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      model_(new TrialsModel(context.workspace, this)),
      rows_(new TrialTableModel(*model_, this)) {
    setObjectName(QStringLiteral("trialsView"));
    build();
    connect(model_, &TrialsModel::rowsChanged, this, &TrialsView::showRows);
    connect(model_, &TrialsModel::chosenChanged, this, &TrialsView::showChosen);
    showRows();
    showChosen();
}

void TrialsView::build() {
    auto* top = new QWidget;
    auto* over = new QHBoxLayout(top);
    over->setContentsMargins(0, 0, 0, 0);
    over->addWidget(makeTable(), 1);
    over->addWidget(makeButtons());
    details_ = new TrialDetails(*model_, context_);
    connect(details_, &TrialDetails::said, this, &TrialsView::said);
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(top);
    splitter->addWidget(details_);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 3);
    fault_ = new FaultLabel;
    fault_->setObjectName(QStringLiteral("trialFault"));
    auto* filled = new QWidget;
    auto* layout = new QVBoxLayout(filled);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(splitter, 1);
    layout->addWidget(fault_);
    stack_ = new QStackedWidget;
    stack_->addWidget(filled);
    stack_->addWidget(makeEmpty());
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(stack_);
}

QWidget* TrialsView::makeTable() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("trialTable"));
    table_->setAccessibleName(tr("Trials"));
    table_->setModel(rows_);
    giveTableManners(*table_);
    const auto room = [this](const QString& text) {
        return fontMetrics().horizontalAdvance(text) + fontMetrics().height();
    };
    std::vector<int> widths(TrialTableModel::ColumnCount);
    widths[TrialTableModel::Name] = room(QStringLiteral("aerated water or media tray"));
    widths[TrialTableModel::State] = room(tr("past its horizon"));
    widths[TrialTableModel::Arms] = room(QStringLiteral("aerated water, media tray"));
    widths[TrialTableModel::HowFar] =
        room(tr("%1 of %2", "batches stuck of those dealt").arg(24).arg(tr("24 batches")));
    widths[TrialTableModel::Due] = room(QStringLiteral("28/12/2026"));
    columns_ = new TableColumns(*table_, widths, TrialTableModel::Name, context_.memory, QStringLiteral("trials"));
    table_->installEventFilter(this);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    connect(table_, &QTableView::doubleClicked, this, &TrialsView::change);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (current().isSet()) model_->choose(current());
    });
    return table_;
}

QPushButton* TrialsView::button(const char* name, const QString& text, const QString& tip, void (TrialsView::*verb)()) {
    auto* made = new QPushButton(text);
    made->setObjectName(QLatin1String(name));
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, verb);
    return made;
}

QWidget* TrialsView::makeButtons() {
    auto* column = new QWidget;
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(fontMetrics().height() / 2, 0, 0, 0);
    new_ = button("trialNew", tr("&Plan a trial\u2026"), tr("Insert"), &TrialsView::planNew);
    stick_ = button("trialStick", tr("&Stick a session\u2026"), tr("Makes the batches of a session as they were dealt"),
                    &TrialsView::stick);
    change_ = button("trialChange", tr("&Change\u2026"), tr("F2 or Enter"), &TrialsView::change);
    again_ = button("trialDealAgain", tr("Deal &again\u2026"), tr("As long as nothing of it is stuck"),
                    &TrialsView::dealAgain);
    remove_ = button("trialRemove", tr("Remo&ve"), tr("Delete; as long as nothing of it is stuck; can be undone"),
                     &TrialsView::removeTrial);
    print_ = button("trialPrint", tr("Print &report\u2026"), {}, &TrialsView::print);
    printMap_ = button("trialPrintMap", tr("Print &map\u2026"), tr("Which cutting goes where, for the bench"),
                       &TrialsView::printMap);
    compare_ =
        button("trialCompare", tr("&Head to head"),
               tr("The page that compares its batches in every way: choose the trial there"), &TrialsView::compare);
    for (QPushButton* each : {new_, stick_, change_, again_, remove_, print_, printMap_, compare_})
        layout->addWidget(each);
    layout->addStretch(1);
    return column;
}

QWidget* TrialsView::makeEmpty() {
    auto* empty = new QWidget;
    QLabel* title = largeLabel(QStringLiteral("trialEmptyTitle"), 1.3);
    title->setText(tr("No trial is planned yet"));
    title->setAlignment(Qt::AlignCenter);
    title->setTextInteractionFlags(Qt::NoTextInteraction);
    auto* words = new QLabel(tr(
        "Say what is to be compared and what would matter to you. Chance then deals the cuttings to arms, stations and "
        "places, and the answer comes on a day that was set before anybody looked."));
    words->setAlignment(Qt::AlignCenter);
    words->setWordWrap(true);
    first_ = button("trialFirst", tr("&Plan a trial\u2026"), tr("Insert"), &TrialsView::planNew);
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(title);
    layout->addWidget(words);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(first_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

void TrialsView::activated() {
    if (stack_->currentIndex() == 1) return first_->setFocus(Qt::OtherFocusReason);
    table_->setFocus(Qt::OtherFocusReason);
}

std::shared_ptr<const report::Sheet> TrialsView::sheet() const {
    return model_->sheet();
}

void TrialsView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    model_->setWatched(true);
}

void TrialsView::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    model_->setWatched(false);
}

core::TrialId TrialsView::current() const {
    return rows_->trialAt(table_->currentIndex().row());
}

void TrialsView::showRows() {
    const bool hadFocus = table_->hasFocus() || first_->hasFocus();
    if (wanted_.isSet()) model_->choose(wanted_);
    wanted_ = {};
    const TrialRow* chosen = model_->chosen();
    rows_->readAgain();
    stack_->setCurrentIndex(rows_->rowCount() == 0 ? 1 : 0);
    if (chosen != nullptr) chooseRow(*table_, std::max(0, rows_->rowOf(chosen->trial.id)));
    if (hadFocus) activated();
}

void TrialsView::showChosen() {
    fault_->setFault({});
    const TrialRow* row = model_->chosen();
    const bool canWrite = context_.workspace.hasLogbook() && !context_.workspace.isReadOnly();
    const bool isOpen = canWrite && row != nullptr;
    for (QPushButton* each : {new_, first_}) each->setEnabled(canWrite);
    change_->setEnabled(isOpen);
    stick_->setEnabled(isOpen && sessionToStick(row->trial) > 0);
    again_->setEnabled(isOpen && row->trial.factor && !core::isStuck(row->trial));
    remove_->setEnabled(isOpen && row->progress.batchesStuck == 0);
    print_->setEnabled(row != nullptr && !model_->isWorking());
    printMap_->setEnabled(row != nullptr && !row->trial.batches.empty());
    compare_->setEnabled(model_->result() != nullptr);
    details_->show();
    emit sheetChanged();
}

void TrialsView::planNew() {
    if (new_->isEnabled()) openPlanning({});
}

void TrialsView::dealAgain() {
    if (again_->isEnabled()) openPlanning(current());
}

void TrialsView::openPlanning(core::TrialId trial) {
    auto* dialog = new TrialDialog(context_, trial, this);
    connect(dialog, &TrialDialog::said, this, &TrialsView::said);
    // The rows are there already when it is told; the table follows.
    connect(dialog, &TrialDialog::planned, this, [this](core::TrialId planned) {
        wanted_ = planned;
        showRows();
    });
    open(dialog);
}

void TrialsView::change() {
    if (change_->isEnabled() && current().isSet()) open(trialChangeForm(context_, current(), this));
}

void TrialsView::stick() {
    if (!stick_->isEnabled()) return;
    auto* dialog = new TrialSessionDialog(context_, current(), this);
    connect(dialog, &TrialSessionDialog::said, this, &TrialsView::said);
    open(dialog);
}

void TrialsView::open(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, this, &TrialsView::activated);
    dialog->open();
}

void TrialsView::removeTrial() {
    if (!remove_->isEnabled() || !current().isSet()) return;
    const Outcome outcome = model_->remove(current());
    fault_->setFault(sentencesOf(outcome.refusals));
}

void TrialsView::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, sheet->title, context_, this), &PrintPreview::said, this, &TrialsView::said);
}

void TrialsView::printMap() {
    const auto sheet = model_->mapSheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, sheet->title, context_, this), &PrintPreview::said, this, &TrialsView::said);
}

void TrialsView::compare() {
    emit placeWanted(placeOf(QStringLiteral("head_to_head")));
}

bool TrialsView::handleKey(int key) {
    switch (key) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_F2:
            change();
            return true;
        case Qt::Key_Insert:
            planNew();
            return true;
        case Qt::Key_Delete:
            removeTrial();
            return true;
        default:
            return false;
    }
}

bool TrialsView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress && handleKey(static_cast<QKeyEvent*>(event)->key()))
        return true;
    return QWidget::eventFilter(watched, event);
}

}  // namespace desktop
