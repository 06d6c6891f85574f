// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_view.h"

#include <QBoxLayout>
#include <QEvent>
#include <QPushButton>
#include <QScrollArea>

#include "app/desktop/mix/keep_mix_dialogs.h"
#include "app/desktop/mix/mix_answer_view.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/template/drilling_dialog.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/desktop/workspace.h"
#include "app/report/mixing_card.h"

namespace desktop {

namespace {

constexpr int formBesideAnswerFrom = 95;  // average letters of width

}  // namespace

MixView::MixView(const PageContext& context, MixQuestion question, QWidget* parent)
    : QWidget(parent),
      context_(context),
      question_(std::move(question)),
      form_(new MixForm(context, question_.word)),
      view_(new MixAnswerView),
      sides_(new QBoxLayout(QBoxLayout::LeftToRight)) {
    setObjectName(QStringLiteral("mixView_%1").arg(question_.word));
    question_.build(*form_);
    QLabel* asks = quietLabel(QStringLiteral("mixAsks"));
    asks->setText(question_.asks);
    auto* formSide = new QVBoxLayout;
    formSide->addWidget(form_);
    formSide->addStretch(1);
    sides_->setContentsMargins(0, 0, 0, 0);
    sides_->setSpacing(fontMetrics().height() * 2);
    sides_->addLayout(formSide, 2);
    sides_->addWidget(view_, 3);
    auto* content = new QWidget;
    content->setLayout(sides_);
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("mixScroll"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(asks);
    layout->addWidget(scroll, 1);
    layout->addWidget(makeButtons());
    connect(form_, &MixForm::changed, this, &MixView::answerNow);
    form_->recall();
    answerNow();
}

QWidget* MixView::makeButtons() {
    auto* foot = new QWidget(this);
    auto* row = new WrappingRow(foot);
    const auto add = [&](const QString& text, const char* name, auto(MixView::*does)()) {
        auto* button = new QPushButton(text, foot);
        button->setObjectName(QString::fromLatin1(name));
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, does);
        return button;
    };
    print_ = add(tr("Print the mi&xing card…"), "mixPrint", &MixView::printCard);
    withSession_ = add(tr("&Keep with a session…"), "mixKeepSession", &MixView::keepWithSession);
    withCare_ = add(tr("Write into a station's ca&re…"), "mixKeepCare", &MixView::keepWithCare);
    template_ = add(tr("Drilling te&mplate…"), "mixTemplate", &MixView::openTemplate);
    return foot;
}

void MixView::activated() {
    form_->recall();
    form_->begin();
}

void MixView::answerNow() {
    reply_ = question_.reply(*form_);
    form_->mark(reply_.faults);
    const QStringList missing = form_->missing();
    if (reply_.answer)
        view_->show(reply_);
    else if (!reply_.faults.empty())
        view_->showHint(tr("The answer stands here once what is marked is mended."));
    else if (!missing.isEmpty())
        view_->showHint(
            tr("The answer stands here. Still to fill in: %1.").arg(missing.join(tr(", ", "between names of fields"))));
    else
        view_->showHint(tr("The answer stands here."));
    print_->setEnabled(reply_.answer.has_value());
    const bool canBeKept =
        reply_.answer && reply_.answer->kind && context_.workspace.hasLogbook() && !context_.workspace.isReadOnly();
    withSession_->setEnabled(canBeKept);
    withCare_->setEnabled(canBeKept);
    template_->setVisible(reply_.lid.has_value());
    emit sheetChanged();
}

std::shared_ptr<const report::Sheet> MixView::sheet() const {
    if (!reply_.answer || !context_.workspace.hasLogbook()) return nullptr;
    return std::make_shared<report::Sheet>(report::mixingCard(
        *reply_.answer, context_.workspace.today(), context_.workspace.shelves().facts, printedAt(context_.workspace)));
}

void MixView::printCard() {
    if (const auto card = sheet())
        connect(showPrintPreview(card, tr("Mixing card"), context_, this), &PrintPreview::said, this, &MixView::said);
}

void MixView::openTemplate() {
    if (!reply_.lid) return;
    auto* dialog = new DrillingDialog(context_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->begin(reply_.lid->lid);
    connect(dialog, &DrillingDialog::said, this, &MixView::said);
    dialog->open();
}

void MixView::keepWithSession() {
    if (context_.workspace.logbook().sessions().empty()) {
        emit said(tr("There is no session yet to keep it with: Ctrl+N begins one."));
        return;
    }
    auto* dialog = new KeepWithSessionDialog(context_, report::keptMix(*reply_.answer), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MixView::keepWithCare() {
    if (context_.workspace.shelves().stations.empty()) {
        emit said(tr("There is no station yet: Ctrl+T adds one."));
        return;
    }
    auto* dialog = new KeepWithCareDialog(context_, report::keptMix(*reply_.answer), reply_.answer->litres, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MixView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void MixView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) arrange();
}

void MixView::arrange() {
    const bool isWide = width() >= fontMetrics().averageCharWidth() * formBesideAnswerFrom;
    sides_->setDirection(isWide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

}  // namespace desktop
