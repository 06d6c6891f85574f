// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_facts.h"

#include <QEvent>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/note_edit.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"

namespace desktop {

BatchFacts::BatchFacts(BatchPageModel& model, QWidget* parent)
    : QScrollArea(parent),
      model_(model),
      inWords_(answerLabel(QStringLiteral("batchInWords"))),
      cautions_(cautionLabel(QStringLiteral("batchCautions"))),
      facts_(new QFormLayout),
      costs_(quietLabel(QStringLiteral("batchCosts"))) {
    auto* noteFault = new FaultLabel;
    note_ = new NoteEdit(noteFault, [this](const QString& note) { return model_.keepNote(note); });
    note_->setObjectName(QStringLiteral("batchNote"));
    auto* noteLabel = new QLabel(tr("&Note"));
    noteLabel->setBuddy(note_);
    facts_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->addWidget(inWords_);
    layout->addWidget(cautions_);
    layout->addLayout(facts_);
    layout->addWidget(costs_);
    layout->addWidget(noteLabel);
    layout->addWidget(note_);
    layout->addWidget(noteFault);
    layout->addStretch();
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidget(content);
    fitWidth();
}

void BatchFacts::fitWidth() {
    setMinimumWidth(fontMetrics().averageCharWidth() * 40);
}

void BatchFacts::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitWidth();
}

void BatchFacts::addFact(const QString& name, const QString& text, const QString& objectName) {
    auto* value = new QLabel(text);
    value->setObjectName(objectName);
    value->setTextFormat(Qt::PlainText);
    value->setWordWrap(true);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    facts_->addRow(quietLabelSaying(name), value);
}

void BatchFacts::show(bool isWritable) {
    const BatchView& view = model_.view();
    while (facts_->rowCount() > 0) facts_->removeRow(0);
    addFact(tr("Strike rate"), view.strikeRate);
    if (view.summary) {
        addFact(tr("Lost"), view.losses);
        addFact(tr("Your own past"), view.past, QStringLiteral("ownPast"));
    }
    for (const NamedText& fact : view.facts) addFact(fact.name, fact.text);
    if (!view.costs.isEmpty()) addFact(tr("Cost"), view.costs, QStringLiteral("batchCost"));
    costs_->setText(view.costParts);
    costs_->setVisible(!view.costParts.isEmpty());
    inWords_->setText(view.summary ? QString::fromStdString(view.summary->inWords) : QString());
    showCautions(*cautions_, view.summary ? view.summary->cautions : std::vector<std::string>());
    note_->setReadOnly(!isWritable);
    note_->setNote(QString::fromStdString(view.record.batch.note), view.record.batch.id.value);
}

}  // namespace desktop
