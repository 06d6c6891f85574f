// SPDX-License-Identifier: MIT
#include "app/desktop/losses/losses_page.h"

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/desktop/losses/losses_parts.h"
#include "app/desktop/losses/suspects_dialog.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/registry.h"
#include "app/desktop/widgets/chooser.h"
#include "app/desktop/workspace.h"
#include "app/report/sheet.h"

namespace desktop {

LossesPage::LossesPage(const PageContext& context, QWidget* parent)
    : Page(parent), context_(context), model_(new LossesModel(context.workspace, this)) {
    setObjectName(QStringLiteral("lossesPage"));
    state_ = quietLabel(QStringLiteral("lossesState"));
    parts_ = new LossesParts(*model_, context_);
    stack_ = new QStackedWidget;
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeChoosers());
    layout->addWidget(state_);
    stack_->addWidget(parts_);
    stack_->addWidget(makeEmpty());
    layout->addWidget(stack_, 1);
    connect(parts_, &LossesParts::said, this, &Page::said);
    connect(parts_, &LossesParts::batchWanted, this, &Page::batchWanted);
    connect(parts_, &LossesParts::suspectsWanted, this, &LossesPage::openSuspects);
    connect(model_, &LossesModel::choicesChanged, this, &LossesPage::showChoices);
    connect(model_, &LossesModel::viewChanged, this, &LossesPage::showView);
    connect(model_, &LossesModel::viewChanged, this, &Page::sheetChanged);
    connect(model_, &LossesModel::chartChanged, parts_, &LossesParts::showChart);
    connect(model_, &LossesModel::chartChanged, this, &Page::sheetChanged);
    showView();
}

QWidget* LossesPage::makeChoosers() {
    auto* bar = new QWidget;
    auto* row = new WrappingRow(bar);
    constexpr int letters = 20;
    span_ = addChooser(*row, QStringLiteral("lossesSpan"), tr("&Time"), letters);
    plant_ = addChooser(*row, QStringLiteral("lossesPlant"), tr("&Plant"), letters);
    method_ = addChooser(*row, QStringLiteral("lossesMethod"), tr("&Method"), letters);
    connect(span_, &QComboBox::activated, model_, &LossesModel::chooseSpan);
    connect(plant_, &QComboBox::activated, model_, &LossesModel::choosePlant);
    connect(method_, &QComboBox::activated, model_, &LossesModel::chooseMethod);
    return bar;
}

QWidget* LossesPage::makeEmpty() {
    auto* empty = new QWidget;
    emptyTitle_ = largeLabel(QStringLiteral("lossesEmptyTitle"), 1.3);
    emptyTitle_->setAlignment(Qt::AlignCenter);
    emptyTitle_->setTextInteractionFlags(Qt::NoTextInteraction);
    emptyText_ = new QLabel;
    emptyText_->setObjectName(QStringLiteral("lossesEmptyText"));
    emptyText_->setAlignment(Qt::AlignCenter);
    emptyText_->setWordWrap(true);
    emptyButton_ = new QPushButton(tr("New session"));
    emptyButton_->setObjectName(QStringLiteral("lossesNewSession"));
    connect(emptyButton_, &QPushButton::clicked, this, [this] { emit taskWanted(task::session); });
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(emptyTitle_);
    layout->addWidget(emptyText_);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(emptyButton_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

void LossesPage::showChoices() {
    const LossesView& view = model_->view();
    fillChooser(*span_, view.spans, view.span);
    fillChooser(*plant_, view.plants, view.plant);
    fillChooser(*method_, view.methods, view.method);
}

void LossesPage::showView() {
    const LossesView& view = model_->view();
    state_->setText(view.isWorking ? tr("Looking through the records \u2026") : QString());
    state_->setVisible(view.isWorking);
    if (view.isWorking && view.answer != nullptr) return;  // what stood there stays until the answer is there
    if (view.answer == nullptr) return showEmpty();
    parts_->showAnswer();
    stack_->setCurrentIndex(0);
}

void LossesPage::showEmpty() {
    const LossesView& view = model_->view();
    const bool isBlank = view.isWorking || !view.fault.isEmpty();
    emptyTitle_->setText(isBlank ? view.fault : tr("No batches yet"));
    emptyText_->setText(isBlank ? QString()
                                : tr("This page shows what cuttings were lost to, when and where, and which batches "
                                     "did so much worse than your earlier ones that luck alone would seldom do it."));
    emptyButton_->setVisible(!isBlank && context_.workspace.hasLogbook());
    emptyButton_->setEnabled(!context_.workspace.isReadOnly());
    stack_->setCurrentIndex(1);
}

void LossesPage::activated() {
    span_->setFocus();
}

std::shared_ptr<const report::Sheet> LossesPage::sheet() const {
    return model_->sheet();
}

void LossesPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    model_->setWatched(true);
}

void LossesPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    model_->setWatched(false);
}

void LossesPage::openSuspects(core::BatchId batch) {
    if (!batch.isSet()) return;
    SuspectsDialog* dialog = showSuspects(batch, context_, this);
    connect(dialog, &SuspectsDialog::said, this, &Page::said);
    connect(dialog, &SuspectsDialog::batchWanted, this, &Page::batchWanted);
}

}  // namespace desktop
