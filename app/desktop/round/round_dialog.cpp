// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_dialog.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"
#include "app/desktop/memory.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/round/round_buttons.h"
#include "app/desktop/round/round_head.h"
#include "app/desktop/round/round_model.h"
#include "app/desktop/round/round_view.h"
#include "app/desktop/round/unfinished_round.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/report/check_sheet.h"

namespace desktop {

namespace {

// Further away than any look that is waited for.
constexpr int farAwayDays = 36500;

}  // namespace

RoundDialog::RoundDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), model_(new RoundModel(context.workspace, this)) {
    setObjectName("roundDialog");
    setWindowTitle(tr("Round of checks"));
    build();
    connectParts();
    readChoice();
    showBatches();
    // Who opens a round on a day with nothing due wants to look all the same.
    if (model_->rowCount() == 0) head_->showAll();
    leftovers_->setVisible(!UnfinishedRound::of(context_.workspace).isBlank());
    view_->goToRow(0);
    resize(fontMetrics().averageCharWidth() * 190, fontMetrics().height() * 42);
}

RoundDialog::~RoundDialog() {
    // An editor that is still open commits when its view goes, which is after us.
    disconnect(model_, nullptr, this, nullptr);
    disconnect(view_, nullptr, this, nullptr);
    disconnect(view_->selectionModel(), nullptr, this, nullptr);
}

void RoundDialog::build() {
    head_ = new RoundHead(context_.workspace,
                          UnfinishedRound::of(context_.workspace).day.value_or(context_.workspace.today()),
                          model_->plainNumber(), this);
    view_ = new RoundView(model_, this);
    view_->setObjectName("roundTable");
    view_->setAccessibleName(tr("Batches of the round"));
    buttons_ = new RoundButtons(*model_, context_.workspace, this);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeLeftovers());
    layout->addWidget(head_);
    layout->addWidget(view_, 1);
    layout->addWidget(buttons_);
    layout->addWidget(makeFoot());
}

void RoundDialog::connectParts() {
    connect(model_, &RoundModel::entriesChanged, this, &RoundDialog::showCount);
    connect(model_, &RoundModel::dataChanged, this, &RoundDialog::showReason);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &RoundDialog::showRow);
    connect(view_, &RoundView::finished, this, &RoundDialog::save);
    connect(view_, &RoundView::endReached, this, [this] { save_->setFocus(Qt::OtherFocusReason); });
    connect(head_, &RoundHead::dayChanged, model_, &RoundModel::setCheckedOn);
    connect(head_, &RoundHead::showsAllChanged, this, &RoundDialog::showBatches);
    connect(head_, &RoundHead::plainNumberChosen, this, &RoundDialog::takeReading);
    connect(buttons_, &RoundButtons::aboutToAct, view_, &RoundView::commitOpenEditor);
    connect(buttons_, &RoundButtons::nothingNew, view_, &RoundView::passOver);
    connect(buttons_, &RoundButtons::refused, fault_, &FaultLabel::setFault);
    connect(new QShortcut(QKeySequence("Ctrl+Return"), this), &QShortcut::activated, this, &RoundDialog::save);
    connect(new QShortcut(QKeySequence("Ctrl+Enter"), this), &QShortcut::activated, this, &RoundDialog::save);
}

QWidget* RoundDialog::makeLeftovers() {
    leftovers_ = new QWidget(this);
    auto* words = new QLabel(tr("You began this round earlier and have not saved it yet."), leftovers_);
    auto* afresh = new QPushButton(tr("Start a&fresh"), leftovers_);
    afresh->setObjectName("roundAfresh");
    afresh->setAutoDefault(false);
    connect(afresh, &QPushButton::clicked, this, &RoundDialog::startAfresh);
    auto* layout = new QHBoxLayout(leftovers_);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(words, 1);
    layout->addWidget(afresh);
    return leftovers_;
}

QWidget* RoundDialog::makeFoot() {
    auto* foot = new QWidget(this);
    count_ = new QLabel(foot);
    count_->setObjectName("roundCount");
    count_->setWordWrap(true);
    fault_ = new FaultLabel(foot);
    fault_->setObjectName("roundFault");
    const auto makeButton = [foot](const QString& text, const QString& name, const QString& tip) {
        auto* button = new QPushButton(text, foot);
        button->setObjectName(name);
        button->setToolTip(tip);
        button->setAutoDefault(false);
        return button;
    };
    print_ = makeButton(tr("&Print check sheet…"), "roundPrint",
                        tr("These rows with boxes for a pencil, to take along where a computer can't go"));
    auto* leave = makeButton(tr("&Leave without saving"), "roundLeave",
                             tr("Esc; what was typed stands here again the next time"));
    save_ = makeButton(tr("&Save round"), "roundSave",
                       tr("Ctrl+Return, or Enter on the last row when every row has an entry"));
    save_->setIcon(icon("done"));
    save_->setDefault(true);
    connect(print_, &QPushButton::clicked, this, &RoundDialog::printCheckSheet);
    connect(save_, &QPushButton::clicked, this, &RoundDialog::save);
    connect(leave, &QPushButton::clicked, this, &RoundDialog::reject);

    auto* layout = new QVBoxLayout(foot);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(fault_);
    auto* last = new QHBoxLayout;
    last->addWidget(count_, 1);
    for (QPushButton* button : {print_, leave, save_}) last->addWidget(button);
    layout->addLayout(last);
    return foot;
}

void RoundDialog::readChoice() {
    const bool isBegun = !UnfinishedRound::of(context_.workspace).isBlank();
    if (context_.memory != nullptr && !isBegun)
        model_->setPlainNumber(context_.memory->choice(choice::plainNumber) == QStringLiteral("new")
                                   ? core::PlainNumber::New
                                   : core::PlainNumber::InAll);
    head_->setPlainNumber(model_->plainNumber());
}

void RoundDialog::takeReading(core::PlainNumber plain) {
    view_->commitOpenEditor();
    model_->setPlainNumber(plain);
    head_->setPlainNumber(plain);
    if (context_.memory == nullptr) return;
    context_.memory->setChoice(choice::plainNumber,
                               plain == core::PlainNumber::New ? QStringLiteral("new") : QStringLiteral("in all"));
}

void RoundDialog::showBatches() {
    view_->commitOpenEditor();
    const UnfinishedRound& begun = UnfinishedRound::of(context_.workspace);
    const core::Date today = context_.workspace.today();
    // What was typed for a batch that isn't due any more still stands there.
    const bool looksAhead = head_->showsAll() || !begun.isBlank();
    std::vector<core::DueBatch> batches;
    context_.workspace.attempt([&](db::Logbook&) {
        batches = core::dueOn(looksAhead ? core::addDays(today, farAwayDays) : today, context_.workspace.batchLines(),
                              context_.workspace.shelves());
    });
    std::erase_if(batches, [&](const core::DueBatch& due) {
        const bool isWanted = head_->showsAll() || due.dueOn <= today || !begun.typedFor(due.line.batch.id).isEmpty();
        return !isWanted || due.line.tally.undecided() == 0;
    });
    model_->show(std::move(batches));
    sizeColumns();
    showRow();
}

void RoundDialog::startAfresh() {
    view_->commitOpenEditor();
    model_->forget();
    head_->setDay(context_.workspace.today());
    leftovers_->hide();
    showBatches();
    view_->goToRow(0);
}

void RoundDialog::sizeColumns() {
    view_->horizontalHeader()->setResizeContentsPrecision(60);  // the rows in sight and a few more
    view_->resizeColumnsToContents();
    const QFontMetrics metrics = view_->fontMetrics();
    view_->setColumnWidth(RoundModel::Entry, metrics.horizontalAdvance(QStringLiteral("+12-3r-4d/notes")));
    for (int column = RoundModel::Rooted; column <= RoundModel::Withdrawn; ++column)
        view_->setColumnWidth(
            column, std::max(view_->columnWidth(column), metrics.horizontalAdvance(QStringLiteral("00 (+00)__"))));
    view_->hideWhatHasNoRoom();
}

void RoundDialog::showCount() {
    const RoundSums sums = model_->sums();
    const int entered = model_->enteredCount();
    save_->setEnabled(entered > 0 || model_->firstFault() >= 0);
    print_->setEnabled(model_->rowCount() > 0);
    if (model_->rowCount() == 0) return count_->setText(tr("No batch is due, and none is open."));
    QString words =
        entered == 0
            ? tr("Nothing entered yet of %1.").arg(plot::batchesText(model_->rowCount()))
            : tr("Not saved yet: %1 of %2.").arg(plot::countText(entered), plot::checksText(model_->rowCount()));
    if (sums.looks > 0)
        words = tr("%1 Of %2 looked at, %3 stay undecided.", "sentence before; 72 cuttings; number")
                    .arg(words, plot::cuttingsText(sums.cuttings), plot::countText(sums.undecided));
    count_->setText(words);
}

void RoundDialog::showRow() {
    buttons_->showRow(view_->currentIndex().isValid() ? view_->currentIndex().row() : -1);
    showReason();
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
    if (!head_->day()) return head_->focusDay();
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
    if (outcome.isDone) {
        UnfinishedRound::of(context_.workspace).forget();
        return accept();
    }
    view_->goToRow(model_->mark(outcome.refusals));
    fault_->setFault(outcome.refusals.empty() ? tr("Nothing is saved: see the message at the foot of the window.")
                                              : QString::fromStdString(outcome.refusals.front().sentence));
}

void RoundDialog::printCheckSheet() {
    view_->commitOpenEditor();
    std::vector<core::DueBatch> rows;
    for (int row = 0; row < model_->rowCount(); ++row) rows.push_back(model_->due(row));
    auto sheet = std::make_shared<report::Sheet>(
        report::checkSheet(rows, head_->day().value_or(context_.workspace.today()), context_.workspace.shelves(),
                           printedAt(context_.workspace)));
    const QString title = sheet->title;
    showPrintPreview(std::move(sheet), title, context_, this);
}

void RoundDialog::reject() {
    view_->commitOpenEditor();
    QDialog::reject();
}

}  // namespace desktop
