// SPDX-License-Identifier: MIT
#include "app/desktop/batches/potting_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"

namespace desktop {

PottingDialog::PottingDialog(core::Potting potting, core::BatchRecord record, std::vector<core::Potting> others,
                             core::Date today, Keep keep, QWidget* parent)
    : QDialog(parent),
      potting_(std::move(potting)),
      record_(std::move(record)),
      others_(std::move(others)),
      keep_(std::move(keep)),
      day_(new DateEdit(today)),
      dayFault_(new FaultLabel),
      potted_(new CountEdit(0, record_.batch.stuck)),
      lost_(new CountEdit(0, record_.batch.stuck)),
      note_(new QPlainTextEdit(QString::fromStdString(potting_.note))),
      inWords_(quietLabel(QStringLiteral("pottingInWords"))) {
    const QString code = QString::fromStdString(record_.batch.code);
    setObjectName(QStringLiteral("pottingDialog"));
    setWindowTitle(potting_.id.isSet() ? tr("Potted on: %1").arg(code) : tr("Newly potted on: %1").arg(code));
    day_->line()->setObjectName(QStringLiteral("pottingDay"));
    day_->setDayZero(record_.batch.stuckOn);
    day_->setDate(potting_.countedOn);
    potted_->setObjectName(QStringLiteral("pottingPotted"));
    lost_->setObjectName(QStringLiteral("pottingLost"));
    note_->setObjectName(QStringLiteral("pottingNote"));
    // All that has rooted is what is usually potted.
    potted_->setCount(potting_.id.isSet() ? potting_.potted : leftToPot(potting_.countedOn));
    lost_->setCount(potting_.lost);
    build();
    tell();
    potted_->setFocus();
    potted_->selectAll();
}

int PottingDialog::rootedOn(core::Date day) const {
    return core::tallyOf(record_.batch, record_.checks, day).rooted;
}

int PottingDialog::leftToPot(core::Date day) const {
    return std::max(0, rootedOn(day) - core::pottedTallyOf(others_).potted);
}

void PottingDialog::addCount(QFormLayout& form, const QString& label, CountEdit* edit, const char* field) {
    auto* fault = new FaultLabel;
    auto* caption = new QLabel(label);
    caption->setBuddy(edit);
    form.addRow(caption, edit);
    form.addRow(QString(), fault);
    marks_.add(QString::fromLatin1(field), edit, fault);
    connect(edit, &QLineEdit::textEdited, this, &PottingDialog::tell);
}

void PottingDialog::build() {
    auto* form = new QFormLayout(this);
    form->addRow(inWords_);
    auto* dayLabel = new QLabel(tr("&Day"));
    dayLabel->setBuddy(day_->line());
    form->addRow(dayLabel, day_);
    form->addRow(QString(), dayFault_);
    marks_.add(QStringLiteral("Counted on"), day_->line(), dayFault_);
    connect(day_, &DateEdit::dateChanged, this, &PottingDialog::tell);
    addCount(*form, tr("Newly &potted on"), potted_, "Potted");
    addCount(*form, tr("Newly &lost after potting"), lost_, "Lost after potting");
    note_->setTabChangesFocus(true);
    note_->setMaximumHeight(fontMetrics().height() * 4);
    form->addRow(tr("N&ote"), note_);
    auto* rest = new FaultLabel;
    marks_.setRest(rest);
    form->addRow(rest);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed =
        buttons->addButton(potting_.id.isSet() ? tr("Save count") : tr("Record count"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("savePotting"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &PottingDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 60);
}

/// What stands there now comes to.
void PottingDialog::tell() {
    const core::PottedTally before = core::pottedTallyOf(others_);
    const core::Date day = day_->date().value_or(potting_.countedOn);
    if (rootedOn(day) == 0) return inWords_->setText(tr("None has rooted by then, so none can be potted on."));
    const int potted = before.potted + potted_->count().value_or(0);
    const int lost = before.lost + lost_->count().value_or(0);
    inWords_->setText(
        tr("%1 rooted by then; with this count %2 potted on in all, of which %3 are usable.")
            .arg(plot::countText(rootedOn(day)), plot::countText(potted), plot::countText(std::max(0, potted - lost))));
}

void PottingDialog::agree() {
    marks_.clear();
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    core::Refusals faults;
    const auto read = [&faults](const CountEdit& edit, const char* field, const QString& label) {
        // Blank is none.
        if (!edit.count() && !edit.text().trimmed().isEmpty())
            faults.push_back({field, edit.text().toStdString(), {}, edit.fault(label).toStdString()});
        return edit.count().value_or(0);
    };
    core::Potting potting = potting_;
    potting.countedOn = *day_->date();
    potting.potted = read(*potted_, "Potted", tr("Newly potted on"));
    potting.lost = read(*lost_, "Lost after potting", tr("Newly lost after potting"));
    potting.note = note_->toPlainText().trimmed().toStdString();
    if (!marks_.show(faults)) return;
    const Outcome outcome = keep_(potting);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
