// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_page.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_dialog.h"
#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/check_timeline.h"
#include "app/desktop/batches/close_dialog.h"
#include "app/desktop/batches/session_facts_dialog.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/plot/rooted_by_day_figure.h"
#include "app/plot/strike_chart_figure.h"
#include "app/report/methods/notes.h"

namespace desktop {

BatchPage::BatchPage(const PageContext& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      model_(new BatchPageModel(context.workspace, this)),
      checks_(new CheckTimeline(*model_)) {
    setObjectName(QStringLiteral("batchPage"));
    build();
    connect(checks_, &CheckTimeline::said, this, &BatchPage::said);
    connect(model_, &BatchPageModel::viewChanged, this, &BatchPage::showView);
    connect(model_, &BatchPageModel::summaryChanged, this, &BatchPage::showSummary);
    connect(model_, &BatchPageModel::gone, this, &BatchPage::backWanted);
    for (const QKeySequence& keys : {QKeySequence(Qt::Key_Escape), QKeySequence(Qt::ALT | Qt::Key_Left)}) {
        auto* back = new QShortcut(keys, this);
        back->setContext(Qt::WidgetWithChildrenShortcut);
        connect(back, &QShortcut::activated, this, &BatchPage::backWanted);
    }
}

bool BatchPage::show(core::BatchId batch) {
    for (FigurePanel* figure : {curve_, chart_}) figure->showTable(false);
    if (!model_->show(batch)) return false;
    checks_->chooseNewest();
    return true;
}

void BatchPage::clear() {
    model_->clear();
}

void BatchPage::focusChecks() {
    checks_->focusTable();
}

std::shared_ptr<const report::Sheet> BatchPage::sheet() const {
    return model_->sheet();
}

void BatchPage::build() {
    curve_ = new FigurePanel(QStringLiteral("batchCurve"), context_);
    chart_ = new FigurePanel(QStringLiteral("batchChart"), context_);
    for (FigurePanel* figure : {curve_, chart_}) connect(figure, &FigurePanel::said, this, &BatchPage::said);
    figures_ = new QTabWidget;
    figures_->setObjectName(QStringLiteral("batchFigures"));
    figures_->setDocumentMode(true);
    figures_->addTab(curve_, tr("Rooted by &day"));
    figures_->addTab(chart_, tr("Beside &other batches"));
    auto* right = new QSplitter(Qt::Vertical);
    right->addWidget(figures_);
    right->addWidget(checks_);
    right->setStretchFactor(0, 3);
    right->setStretchFactor(1, 2);
    right->setChildrenCollapsible(false);
    auto* body = new QSplitter(Qt::Horizontal);
    body->addWidget(makeFacts());
    body->addWidget(right);
    body->setStretchFactor(0, 0);
    body->setStretchFactor(1, 1);
    body->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeHead());
    layout->addWidget(body, 1);
}

QPushButton* BatchPage::makeButton(const QString& text, const QString& name, void (BatchPage::*act)()) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

QPushButton* BatchPage::makeEdit(const QString& text, const QString& name, void (BatchPage::*act)()) {
    edits_.push_back(makeButton(text, name, act));
    return edits_.back();
}

QWidget* BatchPage::makeHead() {
    code_ = largeLabel(QStringLiteral("batchTitle"), 1.4);
    plant_ = new QLabel;
    plant_->setTextFormat(Qt::RichText);
    state_ = quietLabel(QStringLiteral("batchState"));
    state_->setWordWrap(false);
    auto* back = new QPushButton(tr("\u2190 All &batches"));
    back->setObjectName(QStringLiteral("backToBatches"));
    back->setToolTip(tr("Esc or Alt+Left"));
    connect(back, &QPushButton::clicked, this, &BatchPage::backWanted);

    auto* head = new QWidget;
    auto* names = new QHBoxLayout;
    names->addWidget(back);
    names->addSpacing(fontMetrics().height() / 2);
    names->addWidget(code_);
    names->addWidget(plant_);
    names->addWidget(state_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(makeEdit(tr("Record &check\u2026"), QStringLiteral("recordCheck"), &BatchPage::recordCheck));
    buttons->addWidget(makeEdit(tr("Edit b&atch\u2026"), QStringLiteral("editBatch"), &BatchPage::editBatch));
    buttons->addWidget(makeEdit(tr("Edit sess&ion\u2026"), QStringLiteral("editSession"), &BatchPage::editSession));
    buttons->addWidget(closing_ = makeEdit(QString(), QStringLiteral("closeOrReopen"), &BatchPage::closeOrReopen));
    buttons->addWidget(makeEdit(tr("De&lete batch"), QStringLiteral("deleteBatch"), &BatchPage::deleteBatch));
    buttons->addStretch();
    buttons->addWidget(print_ =
                           makeButton(tr("&Print preview\u2026"), QStringLiteral("printBatch"), &BatchPage::print));
    auto* layout = new QVBoxLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(names);
    layout->addLayout(buttons);
    return head;
}

QWidget* BatchPage::makeFacts() {
    inWords_ = answerLabel(QStringLiteral("batchInWords"));
    cautions_ = cautionLabel(QStringLiteral("batchCautions"));
    facts_ = new QFormLayout;
    facts_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->addWidget(inWords_);
    layout->addWidget(cautions_);
    layout->addLayout(facts_);
    layout->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(content);
    scroll->setMinimumWidth(fontMetrics().averageCharWidth() * 46);
    return scroll;
}

void BatchPage::showView() {
    const BatchView& view = model_->view();
    const bool isWritable = !context_.workspace.isReadOnly();
    for (QPushButton* edit : edits_) edit->setEnabled(isWritable);
    checks_->show(isWritable);
    code_->setText(view.code);
    plant_->setText(plantNameAsHtml(view.plant));
    state_->setText(view.state);
    closing_->setVisible(view.isClosedByHand || view.hasUndecided);
    closing_->setText(view.isClosedByHand ? tr("Re&open") : tr("Cl&ose\u2026"));
    showSummary();
}

void BatchPage::showSummary() {
    const BatchView& view = model_->view();
    while (facts_->rowCount() > 0) facts_->removeRow(0);
    const auto addFact = [this](const QString& name, const QString& text) {
        auto* value = new QLabel(text);
        value->setTextFormat(Qt::PlainText);
        value->setWordWrap(true);
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        facts_->addRow(quietLabelSaying(name), value);
    };
    addFact(tr("Strike rate"), view.strikeRate);
    if (view.summary) {
        addFact(tr("Lost"), view.losses);
        addFact(tr("Your own past"), view.past);
    }
    for (const NamedText& fact : view.facts) addFact(fact.name, fact.text);
    inWords_->setText(view.summary ? QString::fromStdString(view.summary->inWords) : QString());
    showCautions(*cautions_, view.summary ? view.summary->cautions : std::vector<std::string>());
    curve_->setFileName(view.code);
    chart_->setFileName(tr("%1 beside other batches", "a file's name").arg(view.code));
    if (view.summary) {
        curve_->setFigure(plot::rootedByDayFigure(*view.summary, view.code), report::notesOnBatch(*view.summary));
        chart_->setFigure(plot::strikeChartFigure(view.summary->chart, view.code),
                          report::notesOnChart(view.summary->chart));
    } else {
        curve_->setFigure(nullptr);
        chart_->setFigure(nullptr);
    }
    print_->setEnabled(view.summary != nullptr);
    emit sheetChanged();
}

void BatchPage::recordCheck() {
    checks_->record();
}

void BatchPage::editBatch() {
    auto* dialog = new BatchDialog(
        model_->view().record.batch, model_->shelves(),
        [this](const core::Batch& batch) { return model_->change(batch); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void BatchPage::editSession() {
    auto* dialog = new SessionFactsDialog(
        model_->view().session, model_->batchesOfSession(), model_->today(),
        [this](const core::Session& session) { return model_->change(session); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void BatchPage::closeOrReopen() {
    if (model_->view().isClosedByHand) {
        const Outcome outcome = model_->reopen();
        if (!outcome.isDone) emit said(sentencesOf(outcome.refusals));
        return;
    }
    auto* dialog = new CloseDialog(
        model_->view().record, model_->today(),
        [this](core::Date on, const QString& reason) { return model_->close(on, reason); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void BatchPage::deleteBatch() {
    const Outcome outcome = model_->remove();
    if (!outcome.isDone) emit said(sentencesOf(outcome.refusals));
}

void BatchPage::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, model_->view().code, context_, this), &PrintPreview::said, this, &BatchPage::said);
}

}  // namespace desktop
