// SPDX-License-Identifier: MIT
#include "app/desktop/losses/suspects_dialog.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSplitter>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/desktop/losses/suspect_details.h"
#include "app/desktop/losses/suspects_model.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/desktop/workspace.h"
#include "app/report/losses_words.h"
#include "app/report/sheet.h"

namespace desktop {

SuspectsDialog::SuspectsDialog(core::BatchId batch, const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), batch_(batch), model_(new SuspectsModel(batch, context.workspace, this)) {
    setObjectName(QStringLiteral("suspectsDialog"));
    setWindowTitle(tr("What may have gone wrong"));
    title_ = largeLabel(QStringLiteral("suspectsTitle"), 1.3);
    plant_ = new QLabel;
    plant_->setTextFormat(Qt::RichText);
    state_ = quietLabel(QStringLiteral("suspectsState"));
    inWords_ = answerLabel(QStringLiteral("suspectsInWords"));
    inWords_->setTextFormat(Qt::PlainText);  // it may hold a note
    warning_ = cautionLabel(QStringLiteral("suspectsWarning"));
    against_ = quietLabel(QStringLiteral("suspectsAgainst"));
    nextTime_ = quietLabel(QStringLiteral("suspectsNextTime"));
    auto* names = new QHBoxLayout;
    names->addWidget(title_);
    names->addWidget(plant_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(names);
    for (QWidget* part : std::initializer_list<QWidget*>{state_, inWords_, warning_, against_}) layout->addWidget(part);
    layout->addWidget(suspects_ = makeSuspects(), 1);
    layout->addWidget(nextTime_);
    layout->addWidget(makeButtons());
    connect(model_, &SuspectsModel::viewChanged, this, &SuspectsDialog::showView);
    resize(fontMetrics().height() * 70, fontMetrics().height() * 45);
    model_->ask();
    list_->setFocus();
}

QWidget* SuspectsDialog::makeSuspects() {
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("suspectList"));
    list_->setAccessibleName(tr("Suspects, likeliest first"));
    list_->setWordWrap(true);
    list_->setSpacing(fontMetrics().height() / 8);
    list_->setAlternatingRowColors(true);
    connect(list_, &QListWidget::currentRowChanged, this, &SuspectsDialog::showChosen);
    auto* caption = new QLabel(tr("&Suspects, likeliest first"));
    caption->setBuddy(list_);
    details_ = new QTextBrowser;
    details_->setObjectName(QStringLiteral("suspectDetails"));
    details_->setAccessibleName(tr("The chosen suspect"));
    details_->setTabChangesFocus(true);
    details_->setOpenLinks(false);
    auto* left = new QWidget;
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(caption);
    column->addWidget(list_, 1);
    auto* both = new QSplitter(Qt::Horizontal);
    both->setChildrenCollapsible(false);
    both->addWidget(left);
    both->addWidget(details_);
    both->setStretchFactor(0, 2);
    both->setStretchFactor(1, 3);
    return both;
}

QPushButton* SuspectsDialog::addButton(const QString& name, const QString& text, void (SuspectsDialog::*act)()) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(true);  // Enter does what Space does
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

QWidget* SuspectsDialog::makeButtons() {
    trial_ = addButton(QStringLiteral("suspectTrial"), tr("Plan a &trial of this\u2026"), &SuspectsDialog::planTrial);
    trial_->setToolTip(tr("The trial that would tell, filled in; it is kept when you save it"));
    open_ = addButton(QStringLiteral("suspectsBatch"), tr("Open &batch"), &SuspectsDialog::openBatch);
    print_ = addButton(QStringLiteral("suspectsPrint"), tr("&Print preview\u2026"), &SuspectsDialog::print);
    print_->setShortcut(QKeySequence(QKeySequence::Print));
    print_->setToolTip(QKeySequence(QKeySequence::Print).toString(QKeySequence::NativeText));
    close_ = addButton(QStringLiteral("suspectsClose"), tr("&Close"), &SuspectsDialog::reject);
    auto* bar = new QWidget;
    auto* row = new WrappingRow(bar);
    row->addWidget(trial_);
    row->pushToEnd();
    for (QPushButton* button : {open_, print_, close_}) row->addWidget(button);
    return bar;
}

void SuspectsDialog::showView() {
    const SuspectsView& view = model_->view();
    title_->setText(view.code);
    plant_->setText(plantNameAsHtml(view.plant));
    state_->setText(view.isWorking ? tr("Looking at what this batch shares with others \u2026") : view.fault);
    state_->setVisible(!state_->text().isEmpty());
    const core::Suspects* found = view.suspects.get();
    inWords_->setText(found == nullptr ? QString() : QString::fromStdString(found->inWords));
    warning_->setText(found == nullptr ? QString() : QString::fromStdString(found->warning));
    against_->setText(found == nullptr ? QString() : report::againstText(*found));
    for (QLabel* label : {inWords_, warning_, against_}) label->setVisible(!label->text().isEmpty());
    QStringList sentences;
    if (found != nullptr)
        for (const std::string& sentence : found->recordNextTime) sentences << QString::fromStdString(sentence);
    nextTime_->setText(tr("Write down next time: %1").arg(sentences.join(u' ')));
    nextTime_->setVisible(!sentences.isEmpty());
    open_->setEnabled(view.fault.isEmpty());
    print_->setEnabled(found != nullptr && !view.isWorking);
    showList();
}

/// The name, with its kind where it doesn't say so itself, and the odds below it.
QString SuspectsDialog::textOf(const core::Suspect& suspect) {
    const QString name = QString::fromStdString(suspect.name), kind = report::kindText(suspect.kind);
    const QString called = name.startsWith(kind) ? name : tr("%1 (%2)", "suspect, its kind").arg(name, kind);
    return tr("%1\n%2", "suspect, odds in words").arg(called, QString::fromStdString(suspect.oddsInWords));
}

void SuspectsDialog::showList() {
    const QListWidgetItem* before = list_->currentItem();
    const QString name = before == nullptr ? QString() : before->data(Qt::UserRole).toString();
    const QSignalBlocker quiet(list_);
    list_->clear();
    const core::Suspects* found = model_->view().suspects.get();
    int row = 0;
    for (std::size_t i = 0; found != nullptr && i < found->suspects.size(); ++i) {
        const core::Suspect& suspect = found->suspects[i];
        auto* item = new QListWidgetItem(textOf(suspect));
        item->setData(Qt::UserRole, QString::fromStdString(suspect.name));
        list_->addItem(item);
        if (item->data(Qt::UserRole).toString() == name) row = static_cast<int>(i);
    }
    if (list_->count() > 0) list_->setCurrentRow(row);
    showChosen();
}

const core::Suspect* SuspectsDialog::chosen() const {
    const core::Suspects* found = model_->view().suspects.get();
    const int row = list_->currentRow();
    if (found == nullptr || row < 0 || row >= static_cast<int>(found->suspects.size())) return nullptr;
    return &found->suspects[static_cast<std::size_t>(row)];
}

void SuspectsDialog::showChosen() {
    const core::Suspect* suspect = chosen();
    const bool isEmpty = model_->view().suspects != nullptr && model_->view().suspects->suspects.empty();
    details_->setHtml(suspect != nullptr ? suspectAsHtml(*suspect)
                      : isEmpty          ? tr("Nothing on record of this batch could be a suspect.").toHtmlEscaped()
                                         : QString());
    const bool isOffered = suspect != nullptr && suspect->trial.has_value();
    trial_->setEnabled(isOffered && !model_->view().isWorking && !context_.workspace.isReadOnly());
}

void SuspectsDialog::planTrial() {
    const core::Suspect* suspect = chosen();
    if (suspect == nullptr || !suspect->trial) return;
    TrialDialog* dialog = TrialDialog::proposing(context_, *suspect->trial, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &TrialDialog::said, this, &SuspectsDialog::said);
    dialog->open();
}

void SuspectsDialog::openBatch() {
    emit batchWanted(batch_);
    accept();
}

void SuspectsDialog::leaveOutBatch() {
    open_->hide();
}

void SuspectsDialog::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, sheet->title, context_, this), &PrintPreview::said, this, &SuspectsDialog::said);
}

SuspectsDialog* showSuspects(core::BatchId batch, const PageContext& context, QWidget* parent) {
    auto* dialog = new SuspectsDialog(batch, context, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

}  // namespace desktop
