// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plans_view.h"

#include <QDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/plan/plan_answer_view.h"
#include "app/desktop/plan/plan_form.h"
#include "app/desktop/plan/plan_table_model.h"
#include "app/desktop/plan/plans_model.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/table_columns.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/whole_file.h"
#include "app/report/calendar_file.h"
#include "app/report/sheet.h"
#include "db/actions/plan_actions.h"

namespace desktop {

PlansView::PlansView(const PageContext& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      model_(new PlansModel(context.workspace, this)),
      rows_(new PlanTableModel(*model_, this)) {
    setObjectName(QStringLiteral("plansView"));
    build();
    connect(model_, &PlansModel::plansChanged, this, &PlansView::showPlans);
    showPlans();
}

void PlansView::build() {
    auto* top = new QWidget;
    auto* over = new QHBoxLayout(top);
    over->setContentsMargins(0, 0, 0, 0);
    over->addWidget(makeTable(), 1);
    over->addWidget(makeButtons());
    answer_ = new PlanAnswerView(context_);
    connect(answer_, &PlanAnswerView::said, this, &PlansView::said);
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(top);
    splitter->addWidget(answer_);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 2);
    fits_ = new QLabel;
    fits_->setObjectName(QStringLiteral("planFits"));
    fits_->setWordWrap(true);
    fault_ = new FaultLabel;
    fault_->setObjectName(QStringLiteral("planFault"));
    auto* filled = new QWidget;
    auto* layout = new QVBoxLayout(filled);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(fits_);
    layout->addWidget(splitter, 1);
    layout->addWidget(fault_);
    stack_ = new QStackedWidget;
    stack_->addWidget(filled);
    stack_->addWidget(makeEmpty());
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(stack_);
}

QWidget* PlansView::makeTable() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("planTable"));
    table_->setAccessibleName(tr("Plans"));
    table_->setModel(rows_);
    table_->setItemDelegateForColumn(PlanTableModel::Plant, new PlantNameDelegate(table_));
    giveTableManners(*table_);
    const auto room = [this](const QString& text) {
        return fontMetrics().horizontalAdvance(text) + fontMetrics().height();
    };
    std::vector<int> widths;
    for (int column = 0; column < PlanTableModel::ColumnCount; ++column)
        widths.push_back(room(rows_->headerData(column, Qt::Horizontal).toString()));
    widths[PlanTableModel::Plant] = room(QStringLiteral("Salvia rosmarinus"));
    widths[PlanTableModel::Method] = room(tr("not decided"));
    widths[PlanTableModel::Sure] = room(QStringLiteral("90 in 100"));
    for (const int column : {PlanTableModel::NeededBy, PlanTableModel::StickBy})
        widths[static_cast<std::size_t>(column)] = room(QStringLiteral("28/12/2026"));
    widths[PlanTableModel::Room] = room(tr("does not fit")) + fontMetrics().height();
    columns_ = new TableColumns(*table_, widths, PlanTableModel::Plant, context_.memory, QStringLiteral("plans"));
    table_->installEventFilter(this);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    connect(table_, &QTableView::doubleClicked, this, &PlansView::change);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &PlansView::showCurrent);
    return table_;
}

QPushButton* PlansView::button(const char* name, const QString& text, const QString& tip, void (PlansView::*verb)()) {
    auto* made = new QPushButton(text);
    made->setObjectName(QLatin1String(name));
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, verb);
    return made;
}

QWidget* PlansView::makeButtons() {
    auto* column = new QWidget;
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(fontMetrics().height() / 2, 0, 0, 0);
    new_ = button("planNew", tr("&New plan\u2026"), tr("Insert"), &PlansView::makeNew);
    change_ = button("planChange", tr("&Edit\u2026"), tr("F2 or Enter"), &PlansView::change);
    remove_ = button("planRemove", tr("Remo&ve"), tr("Delete; can be undone"), &PlansView::removePlan);
    calendar_ =
        button("planCalendar", tr("Days for a &calendar\u2026"),
               tr("All days of all plans as a file that a phone or calendar takes in"), &PlansView::saveCalendar);
    print_ = button("planPrint", tr("Pri&nt preview\u2026"), {}, &PlansView::print);
    for (QPushButton* each : {new_, change_, remove_, calendar_, print_}) layout->addWidget(each);
    layout->addStretch(1);
    return column;
}

QWidget* PlansView::makeEmpty() {
    auto* empty = new QWidget;
    QLabel* title = largeLabel(QStringLiteral("planEmptyTitle"), 1.3);
    title->setText(tr("Nothing is planned yet"));
    title->setAlignment(Qt::AlignCenter);
    title->setTextInteractionFlags(Qt::NoTextInteraction);
    auto* words = new QLabel(
        tr("Say which plant, how many and by when. The records of this logbook then say how many cuttings to stick "
           "and on which day, and whether there is room for them."));
    words->setAlignment(Qt::AlignCenter);
    words->setWordWrap(true);
    first_ = button("planFirst", tr("&New plan\u2026"), tr("Insert"), &PlansView::makeNew);
    first_->installEventFilter(this);
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(title);
    layout->addWidget(words);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(first_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

void PlansView::activated() {
    if (stack_->currentIndex() == 1) return first_->setFocus(Qt::OtherFocusReason);
    table_->setFocus(Qt::OtherFocusReason);
    if (!table_->currentIndex().isValid() && rows_->rowCount() > 0) chooseRow(*table_, 0);
}

std::shared_ptr<const report::Sheet> PlansView::sheet() const {
    return model_->sheet();
}

void PlansView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    model_->setWatched(true);
}

void PlansView::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    model_->setWatched(false);
}

core::PlanId PlansView::currentPlan() const {
    return rows_->planAt(table_->currentIndex().row());
}

void PlansView::showPlans() {
    const bool isEmpty = model_->plans().answers.empty();
    const bool isFirstAnswer = isEmpty && model_->isWorking();
    const bool hadFocus = table_->hasFocus() || first_->hasFocus();
    rows_->readAgain();
    stack_->setCurrentIndex(isEmpty && !isFirstAnswer ? 1 : 0);
    fits_->setText(isFirstAnswer ? tr("Working it out") : QString::fromStdString(model_->plans().fits.inWords));
    const int row = std::max(0, rows_->rowOf(shown_));
    if (!isEmpty) chooseRow(*table_, row);
    showCurrent();
    if (hadFocus) activated();
    emit sheetChanged();
}

void PlansView::showCurrent() {
    fault_->setFault({});
    const bool canWrite = context_.workspace.hasLogbook() && !context_.workspace.isReadOnly();
    const core::PlanId plan = currentPlan();
    for (QPushButton* each : {new_, first_}) each->setEnabled(canWrite);
    for (QPushButton* each : {change_, remove_}) each->setEnabled(canWrite && plan.isSet());
    for (QPushButton* each : {calendar_, print_}) each->setEnabled(plan.isSet() && !model_->isWorking());
    const auto row = static_cast<std::size_t>(std::max(0, table_->currentIndex().row()));
    if (!plan.isSet()) return answer_->clear();
    shown_ = plan;
    answer_->show(model_->plans().answers[row], model_->plans().fitOf(row));
}

void PlansView::makeNew() {
    if (new_->isEnabled()) openForm({});
}

void PlansView::change() {
    if (change_->isEnabled()) openForm(currentPlan());
}

void PlansView::openForm(core::PlanId plan) {
    QDialog* form = planForm(context_, *model_, plan, this);
    form->setAttribute(Qt::WA_DeleteOnClose);
    const std::vector<core::Plan> before = context_.workspace.shelves().plans;
    connect(form, &QDialog::accepted, this, [this, before] {
        // What was just made comes to the front as soon as its answer is there.
        for (const core::Plan& each : context_.workspace.shelves().plans)
            if (std::ranges::find(before, each.id, &core::Plan::id) == before.end()) shown_ = each.id;
    });
    connect(form, &QDialog::finished, this, &PlansView::activated);
    form->open();
}

void PlansView::removePlan() {
    const core::PlanId plan = currentPlan();
    if (!plan.isSet() || !remove_->isEnabled()) return;
    const Outcome outcome = context_.workspace.run([plan](db::Logbook& logbook) { return db::remove(logbook, plan); });
    fault_->setFault(sentencesOf(outcome.refusals));
}

void PlansView::saveCalendar() {
    std::vector<report::CalendarDay> days;
    for (const core::PlanAnswer& answer : model_->plans().answers) {
        if (!answer.when || !*answer.when) continue;
        const std::string key = "plan-" + std::to_string(answer.plan.id.value);
        for (report::CalendarDay& day : report::calendarOf((*answer.when)->days, key)) days.push_back(std::move(day));
    }
    if (days.empty()) return fault_->setFault(tr("No plan has a day: none says by when its plants are needed."));
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString file = context_.prompts.pickFileToSave(this, {.title = tr("Save days for a calendar"),
                                                                .place = folder + QStringLiteral("/plan.ics"),
                                                                .filter = tr("Calendar files (*.ics)"),
                                                                .suffix = QStringLiteral("ics")});
    if (file.isEmpty()) return;
    const std::string name = context_.workspace.shelves().facts.name;
    const std::string text = report::calendarFile(name, days, context_.workspace.clock()());
    const bool isSaved =
        context_.workspace.attemptWithout([&] { plot::writeWholeFile(file, QByteArray::fromStdString(text)); });
    if (isSaved) emit said(tr("Saved %1.").arg(QFileInfo(file).fileName()));
}

void PlansView::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, sheet->title, context_, this), &PrintPreview::said, this, &PlansView::said);
}

bool PlansView::handleKey(int key) {
    switch (key) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_F2:
            stack_->currentIndex() == 1 ? makeNew() : change();
            return true;
        case Qt::Key_Insert:
            makeNew();
            return true;
        case Qt::Key_Delete:
            removePlan();
            return true;
        default:
            return false;
    }
}

bool PlansView::eventFilter(QObject* watched, QEvent* event) {
    const bool isOurs = watched == table_ || watched == first_;
    if (isOurs && event->type() == QEvent::KeyPress && handleKey(static_cast<QKeyEvent*>(event)->key())) return true;
    return QWidget::eventFilter(watched, event);
}

}  // namespace desktop
