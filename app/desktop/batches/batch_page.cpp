// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_page.h"

#include <QClipboard>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_dialog.h"
#include "app/desktop/batches/batch_facts.h"
#include "app/desktop/batches/batch_figures.h"
#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/batch_timeline.h"
#include "app/desktop/batches/close_dialog.h"
#include "app/desktop/batches/session_facts_dialog.h"
#include "app/desktop/losses/suspects_dialog.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/photos/photo_wall.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/wrapping_row.h"

namespace desktop {

BatchPage::BatchPage(const PageContext& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      model_(new BatchPageModel(context.workspace, this)),
      facts_(new BatchFacts(*model_)),
      figures_(new BatchFigures(*model_, context_)),
      timeline_(new BatchTimeline(*model_, context_)) {
    setObjectName(QStringLiteral("batchPage"));
    setAcceptDrops(true);
    build();
    connect(model_, &BatchPageModel::viewChanged, this, &BatchPage::showView);
    connect(model_, &BatchPageModel::summaryChanged, this, &BatchPage::showSummary);
    connect(model_, &BatchPageModel::gone, this, &BatchPage::backWanted);
    connect(figures_, &BatchFigures::said, this, &BatchPage::said);
    connectTimeline();
    const auto onKey = [this](const QKeySequence& key, auto act) {
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    onKey(QKeySequence(Qt::Key_Escape), [this] { emit backWanted(); });
    onKey(QKeySequence(QKeySequence::Paste), [this] { paste(); });
}

void BatchPage::connectTimeline() {
    connect(timeline_, &BatchTimeline::said, this, &BatchPage::said);
    connect(timeline_, &BatchTimeline::sessionWanted, this, &BatchPage::editSession);
    connect(timeline_, &BatchTimeline::photosWanted, this, [this] { figures_->photos()->pickFiles(); });
    connect(timeline_, &BatchTimeline::photoFactsWanted, this,
            [this](core::PhotoId photo) { figures_->photos()->editFacts(photo); });
    connect(timeline_, &BatchTimeline::photoDeletionWanted, this,
            [this](core::PhotoId photo) { figures_->photos()->remove(photo); });
}

void BatchPage::paste() {
    // In a field that takes text the paste never gets here: it is the field's own.
    if (const QMimeData* copied = QGuiApplication::clipboard()->mimeData()) figures_->photos()->add(*copied);
}

void BatchPage::dragEnterEvent(QDragEnterEvent* event) {
    if (!context_.workspace.isReadOnly() && PhotoWall::holdsPhotos(*event->mimeData())) event->acceptProposedAction();
}

void BatchPage::dropEvent(QDropEvent* event) {
    figures_->photos()->add(*event->mimeData());
    event->acceptProposedAction();
}

bool BatchPage::show(core::BatchId batch) {
    figures_->start();
    if (!model_->show(batch)) return false;
    timeline_->chooseNewest();
    return true;
}

void BatchPage::clear() {
    model_->clear();
}

void BatchPage::focusChecks() {
    timeline_->focusTable();
}

std::shared_ptr<const report::Sheet> BatchPage::sheet() const {
    return model_->sheet();
}

void BatchPage::build() {
    auto* right = new QSplitter(Qt::Vertical);
    right->addWidget(figures_);
    right->addWidget(timeline_);
    right->setStretchFactor(0, 3);
    right->setStretchFactor(1, 2);
    right->setChildrenCollapsible(false);
    auto* body = new QSplitter(Qt::Horizontal);
    body->addWidget(facts_);
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
    auto* back = new QPushButton(tr("\u2190 All batches"));
    back->setObjectName(QStringLiteral("backToBatches"));
    back->setToolTip(tr("Esc"));
    connect(back, &QPushButton::clicked, this, &BatchPage::backWanted);

    auto* head = new QWidget;
    auto* names = new QHBoxLayout;
    names->addWidget(back);
    names->addSpacing(fontMetrics().height() / 2);
    names->addWidget(code_);
    names->addWidget(plant_);
    names->addWidget(state_, 1);
    auto* buttons = new WrappingRow;
    buttons->addWidget(makeEdit(tr("Record &check\u2026"), QStringLiteral("recordCheck"), &BatchPage::recordCheck));
    buttons->addWidget(makeEdit(tr("Edit &batch\u2026"), QStringLiteral("editBatch"), &BatchPage::editBatch));
    buttons->addWidget(makeEdit(tr("Edit sess&ion\u2026"), QStringLiteral("editSession"), &BatchPage::editSession));
    buttons->addWidget(closing_ = makeEdit(QString(), QStringLiteral("closeOrReopen"), &BatchPage::closeOrReopen));
    buttons->addWidget(makeEdit(tr("De&lete batch"), QStringLiteral("deleteBatch"), &BatchPage::deleteBatch));
    buttons->pushToEnd();
    suspects_ =
        makeButton(tr("W&hat may have gone wrong\u2026"), QStringLiteral("batchSuspects"), &BatchPage::openSuspects);
    suspects_->setToolTip(tr("What speaks for and against each suspect, going by all that is on record"));
    buttons->addWidget(suspects_);
    buttons->addWidget(print_ = makeButton(tr("Print preview\u2026"), QStringLiteral("printBatch"), &BatchPage::print));
    auto* layout = new QVBoxLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(names);
    layout->addLayout(buttons);
    return head;
}

void BatchPage::showView() {
    const BatchView& view = model_->view();
    const bool isWritable = !context_.workspace.isReadOnly();
    for (QPushButton* edit : edits_) edit->setEnabled(isWritable);
    timeline_->show(isWritable);
    figures_->showPhotos(isWritable);
    figures_->showMap(isWritable);
    code_->setText(view.code);
    plant_->setText(plantNameAsHtml(view.plant));
    state_->setText(view.state);
    closing_->setVisible(view.isClosedByHand || view.hasUndecided);
    closing_->setText(view.isClosedByHand ? tr("Re&open") : tr("Cl&ose\u2026"));
    showSummary();
}

void BatchPage::showSummary() {
    facts_->show(!context_.workspace.isReadOnly());
    figures_->showPictures();
    print_->setEnabled(model_->view().summary != nullptr && model_->view().isCostKnown);
    emit sheetChanged();
}

void BatchPage::recordCheck() {
    timeline_->recordCheck();
}

void BatchPage::editBatch() {
    auto* dialog = new BatchDialog(
        model_->view().record.batch, model_->shelves(),
        [this](const core::Batch& batch) { return model_->change(batch); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void BatchPage::editSession() {
    auto* dialog = new SessionFactsDialog(*model_, this);
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
        model_->view().record, model_->shelves(), model_->today(),
        [this](core::Date on, const QString& reason) { return model_->close(on, reason); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void BatchPage::deleteBatch() {
    const Outcome outcome = model_->remove();
    if (!outcome.isDone) emit said(sentencesOf(outcome.refusals));
}

void BatchPage::openSuspects() {
    SuspectsDialog* dialog = showSuspects(model_->view().record.batch.id, context_, this);
    dialog->leaveOutBatch();
    connect(dialog, &SuspectsDialog::said, this, &BatchPage::said);
}

void BatchPage::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, model_->view().code, context_, this), &PrintPreview::said, this, &BatchPage::said);
}

}  // namespace desktop
