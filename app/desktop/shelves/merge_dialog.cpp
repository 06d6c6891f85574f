// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/merge_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/mnemonic.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/likeness.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

MergeDialog::MergeDialog(const PageContext& context, const Shelf& shelf, Candidate one, std::vector<Candidate> others,
                         QWidget* parent)
    : QDialog(parent),
      context_(context),
      shelf_(shelf),
      one_(std::move(one)),
      others_(std::move(others)),
      other_(new QComboBox),
      oneStays_(new QRadioButton),
      otherStays_(new QRadioButton),
      words_(answerLabel(QStringLiteral("mergeWords"))),
      fault_(new FaultLabel) {
    setObjectName(QStringLiteral("mergeDialog"));
    setWindowTitle(tr("Two spellings of one"));
    std::ranges::stable_sort(others_, {},
                             [this](const Candidate& candidate) { return lettersApart(candidate.name, one_.name); });
    build();
    showChoice();
}

void MergeDialog::build() {
    other_->setObjectName(QStringLiteral("mergeOther"));
    for (const Candidate& candidate : others_)
        other_->addItem(tr("%1 (%2)", "name, 3 batches").arg(candidate.name, plot::batchesText(candidate.batches)));
    oneStays_->setObjectName(QStringLiteral("mergeOneStays"));
    otherStays_->setObjectName(QStringLiteral("mergeOtherStays"));
    auto* form = new QFormLayout;
    auto* one = new QLabel(tr("\u201c%1\u201d").arg(one_.name));
    one->setTextFormat(Qt::PlainText);
    form->addRow(tr("One spelling"), one);
    form->addRow(tr("The &other"), other_);
    form->addRow(tr("What stays"), oneStays_);
    form->addRow(QString(), otherStays_);

    // Before the buttons are made: else Tab leaves out the first of them.
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("&Merge"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("mergeAgree"));
    agreed->setDefault(true);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(words_);
    layout->addWidget(quietLabelSaying(tr("It is done at once; Undo takes it back.")));
    layout->addWidget(fault_);
    layout->addStretch(1);
    layout->addWidget(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 70);

    connect(other_, &QComboBox::currentIndexChanged, this, &MergeDialog::showChoice);
    connect(oneStays_, &QRadioButton::toggled, this, &MergeDialog::showChoice);
    connect(buttons, &QDialogButtonBox::accepted, this, &MergeDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    // The one that more records know is likely the one meant.
    (other().batches > one_.batches ? otherStays_ : oneStays_)->setChecked(true);
}

const MergeDialog::Candidate& MergeDialog::other() const {
    return others_[static_cast<std::size_t>(std::max(0, other_->currentIndex()))];
}

const MergeDialog::Candidate& MergeDialog::stays() const {
    return oneStays_->isChecked() ? one_ : other();
}

const MergeDialog::Candidate& MergeDialog::goes() const {
    return oneStays_->isChecked() ? other() : one_;
}

void MergeDialog::showChoice() {
    fault_->setFault({});
    oneStays_->setText(asMenuText(tr("%1 stays").arg(one_.name)));
    otherStays_->setText(asMenuText(tr("%1 stays").arg(other().name)));
    QStringList sentences;
    if (goes().batches == 0)
        sentences << tr("No batch has \u201c%1\u201d; it goes from the shelf, and \u201c%2\u201d keeps its %3.",
                        "names, 12 batches")
                         .arg(goes().name, stays().name, plot::batchesText(stays().batches));
    else
        sentences << tr("%1 with \u201c%2\u201d will have \u201c%3\u201d, which has %4 of its own now; \u201c%2\u201d "
                        "goes from the shelf.",
                        "3 batches, names, 12 batches")
                         .arg(plot::batchesText(goes().batches), goes().name, stays().name,
                              plot::batchesText(stays().batches));
    if (!shelf_.comesAlong.isEmpty()) sentences << shelf_.comesAlong;
    words_->setText(sentences.join(u' '));
}

void MergeDialog::agree() {
    const std::int64_t staying = stays().id;
    const Outcome outcome =
        context_.workspace.run([&](db::Logbook& logbook) { return shelf_.merge(logbook, goes().id, staying); });
    fault_->setFault(sentencesOf(outcome.refusals));
    if (!outcome.isDone) return;
    accept();
    emit merged(staying);
}

}  // namespace desktop
