// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_dialog.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStringList>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"
#include "app/desktop/prompts.h"
#include "app/desktop/round/round_model.h"
#include "app/desktop/round/round_view.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

// Further away than any look that is waited for.
constexpr int farAwayDays = 36500;

}  // namespace

RoundDialog::RoundDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), model_(new RoundModel(context.workspace, this)) {
    setObjectName("roundDialog");
    setWindowTitle(tr("Round of checks"));
    view_ = new RoundView(model_, this);
    view_->setObjectName("roundTable");
    view_->setAccessibleName(tr("Batches of the round"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeHead());
    layout->addWidget(view_, 1);
    layout->addWidget(makeFoot());

    connect(model_, &RoundModel::entriesChanged, this, &RoundDialog::showCount);
    connect(model_, &RoundModel::dataChanged, this, &RoundDialog::showReason);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &RoundDialog::showReason);
    connect(view_, &RoundView::finished, this, &RoundDialog::save);
    connect(view_, &RoundView::endReached, this, [this] { save_->setFocus(Qt::OtherFocusReason); });
    connect(new QShortcut(QKeySequence("Ctrl+Return"), this), &QShortcut::activated, this, &RoundDialog::save);
    connect(new QShortcut(QKeySequence("Ctrl+Enter"), this), &QShortcut::activated, this, &RoundDialog::save);

    readLines();
    // Who opens a round on a day with nothing due wants to look all the same.
    if (core::dueOn(context_.workspace.today(), lines_, context_.workspace.shelves()).empty()) all_->setChecked(true);
    showBatches();
    view_->goToRow(0);
    resize(fontMetrics().averageCharWidth() * 190, fontMetrics().height() * 38);
}

RoundDialog::~RoundDialog() {
    // An editor that is still open commits when its view goes, which is after us.
    disconnect(model_, nullptr, this, nullptr);
    disconnect(view_, nullptr, this, nullptr);
    disconnect(view_->selectionModel(), nullptr, this, nullptr);
}

QWidget* RoundDialog::makeHead() {
    auto* head = new QWidget(this);
    day_ = new DateEdit(context_.workspace.today(), head);
    day_->setDate(context_.workspace.today());
    day_->line()->setObjectName("roundDay");
    auto* dayLabel = new QLabel(tr("&Day of the round"), head);
    dayLabel->setBuddy(day_->line());
    dayFault_ = new FaultLabel(head);
    all_ = new QCheckBox(tr("&Also batches that are not due yet"), head);
    all_->setObjectName("roundAll");
    auto* grammar = new QLabel(grammarText(), head);
    grammar->setObjectName("roundGrammar");
    grammar->setWordWrap(true);

    connect(day_, &DateEdit::dateChanged, this, &RoundDialog::takeDay);
    connect(all_, &QCheckBox::toggled, this, &RoundDialog::showBatches);

    auto* layout = new QGridLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(dayLabel, 0, 0);
    layout->addWidget(day_, 0, 1);
    layout->addWidget(all_, 0, 2);
    layout->addWidget(dayFault_, 1, 0, 1, 3);
    layout->addWidget(grammar, 2, 0, 1, 4);
    layout->setColumnStretch(3, 1);
    return head;
}

QWidget* RoundDialog::makeFoot() {
    auto* foot = new QWidget(this);
    count_ = new QLabel(foot);
    count_->setObjectName("roundCount");
    fault_ = new FaultLabel(foot);
    fault_->setObjectName("roundFault");
    save_ = new QPushButton(icon("done"), tr("&Save round"), foot);
    save_->setObjectName("roundSave");
    save_->setToolTip(tr("Ctrl+Return, or Enter on the last row when every row has an entry"));
    save_->setDefault(true);
    auto* cancel = new QPushButton(tr("&Leave without saving"), foot);
    cancel->setObjectName("roundLeave");
    cancel->setAutoDefault(false);
    connect(save_, &QPushButton::clicked, this, &RoundDialog::save);
    connect(cancel, &QPushButton::clicked, this, &RoundDialog::reject);

    auto* layout = new QGridLayout(foot);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(fault_, 0, 0, 1, 3);
    layout->addWidget(count_, 1, 0);
    layout->addWidget(cancel, 1, 1);
    layout->addWidget(save_, 1, 2);
    layout->setColumnStretch(0, 1);
    return foot;
}

QString RoundDialog::grammarText() const {
    QStringList causes;
    for (const core::LossCause& cause : context_.workspace.shelves().lossCauses)
        if (cause.key != '\0' && !cause.isRetired)
            causes << tr("%1\u00a0%2").arg(QLatin1Char(cause.key)).arg(QString::fromStdString(cause.name));
    // No-break spaces and word joiners keep a key and what it means on one line.
    return tr("12\u00a0rooted\u00a0in\u00a0all · +3\u00a0three\u00a0more\u00a0rooted · -2\u00a0two\u00a0lost, with a "
              "letter for the cause (%1) · "
              "w2\u00a0two\u00a0withdrawn · *\u00a0nothing\u00a0new · .\u00a0close\u00a0the\u00a0batch · "
              "/\u2060words\u00a0a\u00a0note. "
              "Together: 12-1r/\u2060second\u00a0flush. Enter goes down; a blank row stays due.")
        .arg(causes.join(", "));
}

void RoundDialog::readLines() {
    context_.workspace.attempt([this](db::Logbook& logbook) { lines_ = logbook.batchLines(); });
}

void RoundDialog::showBatches() {
    const core::Date today = context_.workspace.today();
    const core::Date until = all_->isChecked() ? core::addDays(today, farAwayDays) : today;
    std::vector<core::DueBatch> batches = core::dueOn(until, lines_, context_.workspace.shelves());
    std::erase_if(batches, [](const core::DueBatch& due) { return due.line.tally.undecided() == 0; });
    model_->show(std::move(batches));
    sizeColumns();
}

void RoundDialog::takeDay() {
    dayFault_->setFault(day_->fault());
    if (const std::optional<core::Date> day = day_->date()) model_->setCheckedOn(*day);
}

void RoundDialog::sizeColumns() {
    view_->resizeColumnsToContents();
    const QFontMetrics metrics = view_->fontMetrics();
    view_->setColumnWidth(RoundModel::Entry, metrics.horizontalAdvance(QStringLiteral("+12-3r-4d/notes")));
}

void RoundDialog::showCount() {
    const int entered = model_->enteredCount();
    save_->setEnabled(entered > 0 || model_->firstFault() >= 0);
    if (model_->rowCount() == 0)
        count_->setText(tr("No batch is due, and none is open."));
    else if (entered == 0)
        count_->setText(tr("Nothing entered yet of %1.").arg(plot::batchesText(model_->rowCount())));
    else
        count_->setText(
            tr("Not saved yet: %1 of %2.").arg(plot::countText(entered), plot::checksText(model_->rowCount())));
}

void RoundDialog::showReason() {
    // The row has room for the beginning of a sentence only.
    const QModelIndex meaning = view_->currentIndex().siblingAtColumn(RoundModel::Meaning);
    const bool isFault = meaning.data(RoundModel::isFaultRole).toBool();
    fault_->setFault(isFault ? tr("%1: %2").arg(meaning.siblingAtColumn(RoundModel::Code).data().toString(),
                                                meaning.data().toString())
                             : QString());
}

void RoundDialog::save() {
    view_->commitOpenEditor();
    if (!day_->date()) return day_->line()->setFocus();
    if (const int row = model_->firstFault(); row >= 0) {
        view_->goToRow(row);
        showReason();
        fault_->setFault(tr("Nothing is saved yet. %1").arg(fault_->fault()));
        return;
    }
    if (model_->enteredCount() == 0) return;
    const core::Date today = context_.workspace.today();
    const Outcome outcome = context_.workspace.run(
        [&](db::Logbook& logbook) { return db::recordChecks(logbook, model_->drafts(), today); });
    if (outcome.isDone) return accept();
    view_->goToRow(model_->mark(outcome.refusals));
    fault_->setFault(outcome.refusals.empty() ? tr("Nothing is saved: see the message at the foot of the window.")
                                              : QString::fromStdString(outcome.refusals.front().sentence));
}

void RoundDialog::reject() {
    view_->commitOpenEditor();
    const int entered = model_->enteredCount();
    if (entered > 0 &&
        !context_.prompts.confirm(
            this,
            {.title = tr("Leave the round"),
             .sentence = tr("%1 of this round are not saved and will be forgotten.").arg(plot::checksText(entered)),
             .verb = tr("Forget them")}))
        return;
    QDialog::reject();
}

}  // namespace desktop
