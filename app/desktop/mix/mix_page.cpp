// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QListWidget>
#include <QStackedWidget>

#include "app/desktop/memory.h"
#include "app/desktop/mix/mix_view.h"
#include "app/desktop/workspace.h"
#include "app/report/sheet.h"

namespace desktop {

namespace {

const QString questionChoice = QStringLiteral("mix/question");

core::DisplayUnits unitsOf(const Workspace& workspace) {
    return workspace.hasLogbook() ? workspace.shelves().facts.units : core::DisplayUnits{};
}

}  // namespace

MixPage::MixPage(const PageContext& context, QWidget* parent)
    : Page(parent),
      context_(context),
      questions_(mixQuestions()),
      list_(new QListWidget),
      stack_(new QStackedWidget),
      views_(questions_.size()),
      units_(unitsOf(context.workspace)) {
    setObjectName(QStringLiteral("mixPage"));
    list_->setObjectName(QStringLiteral("mixQuestions"));
    list_->setAccessibleName(tr("Questions"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const MixQuestion& question : questions_) list_->addItem(question.title);
    fitList();
    auto* layout = new QHBoxLayout(this);
    layout->addWidget(list_);
    layout->addWidget(stack_, 1);
    const QString last = context_.memory ? context_.memory->choice(questionChoice) : QString();
    int first = 0;
    for (std::size_t number = 0; number < questions_.size(); ++number)
        if (questions_[number].word == last) first = static_cast<int>(number);
    list_->setCurrentRow(first);
    showQuestion(first);
    connect(list_, &QListWidget::currentRowChanged, this, &MixPage::showQuestion);
    connect(list_, &QListWidget::itemActivated, this, [this] { viewInFront()->activated(); });
    connect(&context_.workspace, &Workspace::logbookChanged, this, &MixPage::followUnits);
    connect(&context_.workspace, &Workspace::logbookReplaced, this, &MixPage::writeAnew);
}

MixView* MixPage::makeView(int number) {
    auto* view = new MixView(context_, questions_[static_cast<std::size_t>(number)]);
    connect(view, &MixView::said, this, &Page::said);
    connect(view, &MixView::sheetChanged, this, &Page::sheetChanged);
    stack_->addWidget(view);
    views_[static_cast<std::size_t>(number)] = view;
    return view;
}

MixView* MixPage::viewInFront() const {
    return qobject_cast<MixView*>(stack_->currentWidget());
}

void MixPage::showQuestion(int number) {
    if (number < 0) return;
    MixView* view = views_[static_cast<std::size_t>(number)];
    if (view == nullptr) view = makeView(number);
    view->form().recall();
    stack_->setCurrentWidget(view);
    if (context_.memory) context_.memory->setChoice(questionChoice, questions_[static_cast<std::size_t>(number)].word);
    emit sheetChanged();
}

/// Figures stay the same figures when the grower's units change; what can't be read stays as it was typed.
void MixPage::followUnits() {
    const core::DisplayUnits now = unitsOf(context_.workspace);
    if (now == units_) return;
    units_ = now;
    const int front = list_->currentRow();
    for (std::size_t number = 0; number < views_.size(); ++number) {
        MixView* before = views_[number];
        if (before == nullptr) continue;
        const QMap<QString, QString> typed = before->form().kept();
        MixView* view = makeView(static_cast<int>(number));
        view->form().restore(typed);
        delete before;
    }
    showQuestion(front);
}

void MixPage::writeAnew() {
    followUnits();
    for (MixView* view : views_)
        if (view != nullptr) view->answerAnew();
}

void MixPage::activated() {
    viewInFront()->activated();
}

std::shared_ptr<const report::Sheet> MixPage::sheet() const {
    return viewInFront()->sheet();
}

void MixPage::changeEvent(QEvent* event) {
    Page::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitList();
}

void MixPage::fitList() {
    // High enough for a wet finger.
    for (int row = 0; row < list_->count(); ++row)
        list_->item(row)->setSizeHint(
            {fontMetrics().horizontalAdvance(list_->item(row)->text()), fontMetrics().height() * 2});
    list_->setFixedWidth(list_->sizeHintForColumn(0) + fontMetrics().height() * 2);
}

}  // namespace desktop
