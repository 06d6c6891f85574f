// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_timeline.h"

#include <QComboBox>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/batches/event_table_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/widgets/table_columns.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/report/mixing_card.h"

namespace desktop {

BatchTimeline::BatchTimeline(BatchPageModel& model, const PageContext& context, QWidget* parent)
    : QWidget(parent), model_(model), context_(context), events_(new EventTableModel(this)) {
    build();
}

void BatchTimeline::build() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("timeline"));
    table_->setAccessibleName(tr("Timeline"));
    table_->setModel(events_);
    giveTableManners(*table_);
    const auto wide = [this](int characters) { return fontMetrics().averageCharWidth() * characters; };
    new TableColumns(*table_, {wide(14), wide(6), wide(11), wide(40), wide(15), wide(12), wide(24)},
                     EventTableModel::What, context_.memory, QStringLiteral("timeline"));
    table_->installEventFilter(this);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    connect(table_, &QTableView::doubleClicked, this, &BatchTimeline::edit);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &BatchTimeline::showButtons);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeRow());
    layout->addWidget(table_, 1);
}

QWidget* BatchTimeline::makeRow() {
    only_ = new QComboBox;
    only_->setObjectName(QStringLiteral("timelineKind"));
    only_->addItem(tr("everything"), -1);
    const auto offer = [this](const QString& text, EventKind kind) { only_->addItem(text, static_cast<int>(kind)); };
    offer(tr("checks"), EventKind::Check);
    offer(tr("readings, one by one"), EventKind::Readings);
    offer(tr("care"), EventKind::Care);
    offer(tr("mixes"), EventKind::Mix);
    offer(tr("photos"), EventKind::Photo);
    offer(tr("expenses"), EventKind::Expense);
    offer(tr("potting on"), EventKind::Potted);
    connect(only_, &QComboBox::currentIndexChanged, this, &BatchTimeline::filter);
    caption_ = new QLabel(tr("&Timeline"));
    caption_->setBuddy(table_);
    auto* kindLabel = new QLabel(tr("Sho&w"));
    kindLabel->setBuddy(only_);
    additions_ = {
        makeButton(tr("Readin&g\u2026"), "newReading", tr("New reading of its station; Ctrl+E for all stations"),
                   &BatchTimeline::newReading),
        makeButton(tr("C&are\u2026"), "newCare", tr("What was done to its station"), &BatchTimeline::newCare),
        makeButton(tr("&Photo\u2026"), "newPhoto", tr("From files; or drop them on the page, or paste with Ctrl+V"),
                   &BatchTimeline::photosWanted),
        makeButton(tr("E&xpense\u2026"), "newExpense", tr("Money that went into this batch"),
                   &BatchTimeline::newExpense),
        makeButton(tr("Potte&d on\u2026"), "newPotting",
                   tr("How many rooted ones were potted on, and how many of those were lost since"),
                   &BatchTimeline::newPotting)};
    edit_ = makeButton(tr("Edit"), "editEvent", tr("Enter or F2"), &BatchTimeline::edit);
    remove_ = makeButton(tr("Delete"), "deleteEvent", tr("Delete"), &BatchTimeline::remove);
    auto* row = new QWidget;
    auto* layout = new WrappingRow(row);
    for (QWidget* widget : std::initializer_list<QWidget*>{caption_, kindLabel, only_}) layout->addWidget(widget);
    layout->pushToEnd();
    for (QPushButton* button : additions_) layout->addWidget(button);
    layout->addWidget(edit_);
    layout->addWidget(remove_);
    return row;
}

QPushButton* BatchTimeline::makeButton(const QString& text, const char* name, const QString& tip,
                                       void (BatchTimeline::*act)()) {
    auto* button = new QPushButton(text);
    button->setObjectName(QLatin1String(name));
    button->setToolTip(tip);
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

void BatchTimeline::show(bool isWritable) {
    isWritable_ = isWritable;
    for (QPushButton* button : additions_) button->setEnabled(isWritable);
    const bool hasStation = !model_.view().life.station.isEmpty();
    for (const std::size_t ofStation : {0U, 1U}) additions_[ofStation]->setEnabled(isWritable && hasStation);
    const BatchEvent* current = events_->eventAt(table_->currentIndex().row());
    const std::optional<BatchEvent> kept = current == nullptr ? std::nullopt : std::optional(*current);
    fill();
    const int row = kept ? events_->rowOf(*kept) : -1;
    if (row >= 0)
        chooseRow(*table_, row);
    else
        chooseNewest();
}

void BatchTimeline::fill() {
    const BatchView& view = model_.view();
    const int kind = only_->currentData().toInt();
    events_->show(eventsOf(view.record, view.session, view.life, view.mixes, model_.shelves(),
                           kind < 0 ? std::optional<EventKind>() : std::optional(static_cast<EventKind>(kind))),
                  view.record.batch.stuckOn);
    showButtons();
}

void BatchTimeline::filter() {
    if (!model_.hasBatch()) return;
    fill();
    chooseNewest();
}

void BatchTimeline::showButtons() {
    const BatchEvent* event = events_->eventAt(table_->currentIndex().row());
    const bool canBeEdited = event != nullptr && event->kind != EventKind::Closed;
    // What closed by itself opens by itself, when a check is changed.
    const bool canBeDeleted = event != nullptr && event->kind != EventKind::Stuck && event->id != 0;
    edit_->setEnabled(isWritable_ && canBeEdited);
    remove_->setEnabled(isWritable_ && canBeDeleted);
    remove_->setText(event != nullptr && event->kind == EventKind::Closed ? tr("Reopen") : tr("Delete"));
}

void BatchTimeline::chooseNewest() {
    if (events_->rowCount() > 0) chooseRow(*table_, events_->rowCount() - 1);
    showButtons();
}

void BatchTimeline::focusTable() {
    table_->setFocus(Qt::OtherFocusReason);
}

bool BatchTimeline::eventFilter(QObject* watched, QEvent* event) {
    if (watched != table_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_F2)
        edit();
    else if (key == Qt::Key_Delete)
        remove();
    else
        return QWidget::eventFilter(watched, event);
    return true;
}

void BatchTimeline::edit() {
    const BatchEvent* event = events_->eventAt(table_->currentIndex().row());
    if (event == nullptr || !isWritable_) return;
    switch (event->kind) {
        case EventKind::Stuck:
            emit sessionWanted();
            break;
        case EventKind::Check:
            editCheck({event->id});
            break;
        case EventKind::Readings:
            editReadings(*event);
            break;
        case EventKind::Care:
            editCare({event->id});
            break;
        case EventKind::Mix:
            printMix({event->id});
            break;
        case EventKind::Photo:
            emit photoFactsWanted({event->id});
            break;
        case EventKind::Expense:
            editExpense({event->id});
            break;
        case EventKind::Potted:
            editPotting({event->id});
            break;
        case EventKind::Closed:
            emit said(tr("A batch that is closed is reopened with \u201cReopen\u201d, then closed anew."));
            break;
    }
}

void BatchTimeline::remove() {
    const BatchEvent* event = events_->eventAt(table_->currentIndex().row());
    if (event == nullptr || !isWritable_) return;
    const plot::BatchLife& life = model_.view().life;
    switch (event->kind) {
        case EventKind::Check:
            tell(model_.remove(core::CheckId{event->id}));
            break;
        case EventKind::Readings:
            tell(model_.keep(
                {.station = model_.view().record.batch.station, .readings = {}, .care = {}, .gone = event->readings}));
            break;
        case EventKind::Care:
            if (const core::Care* care = core::find(life.care, core::CareId{event->id}))
                tell(model_.remove(core::Care(*care)));
            break;
        case EventKind::Mix:
            tell(model_.remove(core::KeptMixId{event->id}));
            break;
        case EventKind::Photo:
            emit photoDeletionWanted({event->id});
            break;
        case EventKind::Expense:
            if (const auto expense = expenseOf({event->id})) tell(model_.remove(*expense));
            break;
        case EventKind::Potted:
            if (const core::Potting* potting = core::find(life.pottings, core::PottingId{event->id}))
                tell(model_.remove(core::Potting(*potting)));
            break;
        case EventKind::Closed:
            if (event->id != 0) tell(model_.reopen());
            break;
        case EventKind::Stuck:
            emit said(tr("The day of sticking goes with its batch: \u201cDelete batch\u201d."));
            break;
    }
}

void BatchTimeline::printMix(core::KeptMixId id) {
    const core::KeptMix* mix = core::find(model_.view().mixes, id);
    if (mix == nullptr) return;
    const auto card = std::make_shared<report::Sheet>(
        report::mixingCard(*mix, plot::localDay(mix->madeAt), model_.shelves().facts, printedAt(context_.workspace)));
    connect(showPrintPreview(card, tr("Mixing card"), context_, this), &PrintPreview::said, this, &BatchTimeline::said);
}

void BatchTimeline::tell(const Outcome& outcome) {
    if (!outcome.isDone && !outcome.refusals.empty()) emit said(sentencesOf(outcome.refusals));
}

}  // namespace desktop
