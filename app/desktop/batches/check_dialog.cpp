// SPDX-License-Identifier: MIT
#include "app/desktop/batches/check_dialog.h"

#include <QButtonGroup>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "app/desktop/widgets/date_edit.h"

namespace desktop {

CheckDialog::CheckDialog(CheckDraft draft, core::Date today, Keep keep, QWidget* parent)
    : QDialog(parent), draft_(std::move(draft)), today_(today), keep_(std::move(keep)) {
    const QString code = QString::fromStdString(draft_.record.batch.code);
    setObjectName(QStringLiteral("checkDialog"));
    setWindowTitle(draft_.check.id.isSet() ? tr("Check of %1").arg(code) : tr("New check of %1").arg(code));
    build();
    showDraft();
}

void CheckDialog::build() {
    day_ = new DateEdit(today_);
    day_->line()->setObjectName(QStringLiteral("checkDay"));
    day_->setDayZero(draft_.record.batch.stuckOn);
    day_->setDate(draft_.check.checkedOn);
    connect(day_, &DateEdit::dateChanged, this, [this] {
        if (const auto day = day_->date()) draft_.check.checkedOn = *day;
        showDraft();
    });
    auto* dayLabel = new QLabel(tr("&Checked on"));
    dayLabel->setBuddy(day_->line());
    dayFault_ = new FaultLabel;
    marks_.add(QStringLiteral("Checked on"), day_->line(), dayFault_);

    auto* isNew = new QRadioButton(tr("&new since the check before"));
    auto* isInAll = new QRadioButton(tr("in &all"));
    isInAll->setObjectName(QStringLiteral("countsInAll"));
    isNew->setChecked(true);
    way_ = new QButtonGroup(this);
    way_->addButton(isNew, static_cast<int>(CountsAre::New));
    way_->addButton(isInAll, static_cast<int>(CountsAre::InAll));
    connect(way_, &QButtonGroup::idClicked, this, [this](int way) {
        draft_.say(static_cast<CountsAre>(way));
        for (std::size_t i = 0; i < widgets_.size(); ++i) widgets_[i].line->setText(draft_.fields[i].typed);
        showDraft();
    });

    note_ = new QLineEdit(QString::fromStdString(draft_.check.note));
    note_->setObjectName(QStringLiteral("checkNote"));
    auto* noteLabel = new QLabel(tr("N&ote"));
    noteLabel->setBuddy(note_);
    inWords_ = new QLabel;
    inWords_->setObjectName(QStringLiteral("checkInWords"));
    inWords_->setWordWrap(true);
    restFault_ = new FaultLabel;
    marks_.setRest(restFault_);

    auto* days = new QHBoxLayout;
    days->addWidget(dayLabel);
    days->addWidget(day_);
    days->addStretch();
    auto* ways = new QHBoxLayout;
    ways->addWidget(new QLabel(tr("Counts are")));
    ways->addWidget(isNew);
    ways->addWidget(isInAll);
    ways->addStretch();
    auto* notes = new QHBoxLayout;
    notes->addWidget(noteLabel);
    notes->addWidget(note_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(days);
    layout->addWidget(dayFault_);
    layout->addLayout(ways);
    layout->addLayout(makeCounts());
    layout->addWidget(countFault_);
    layout->addLayout(notes);
    layout->addWidget(restFault_);
    layout->addWidget(inWords_);
    layout->addStretch();
    // Only now: before the fields are laid out Tab would leave out the first of them.
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(draft_.check.id.isSet() ? tr("Save check") : tr("Record check"),
                                      QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveCheck"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &CheckDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    widgets_.front().line->setFocus();
}

QGridLayout* CheckDialog::makeCounts() {
    countFault_ = new FaultLabel;
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(fontMetrics().height() / 2);
    for (std::size_t field = 0; field < draft_.fields.size(); ++field) addCount(*grid, static_cast<int>(field), field);
    marks_.add(QStringLiteral("Lost"), widgets_.back().line, countFault_);
    grid->setColumnStretch(2, 1);
    grid->setColumnStretch(5, 1);
    return grid;
}

void CheckDialog::addCount(QGridLayout& grid, int place, std::size_t field) {
    auto* line = new QLineEdit(draft_.fields[field].typed);
    line->setObjectName(QStringLiteral("count%1").arg(place));
    line->setAlignment(Qt::AlignRight);
    line->setMaxLength(10);
    line->setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("00000000")));
    auto* label = new QLabel(draft_.fields[field].name);
    label->setBuddy(line);
    auto* other = new QLabel;
    connect(line, &QLineEdit::textEdited, this, [this, field](const QString& typed) {
        draft_.fields[field].typed = typed;
        showDraft();
    });
    // Rooted and withdrawn side by side, then the causes of loss in two columns.
    const int row = place / 2;
    const int column = place % 2 * 3;
    grid.addWidget(label, row, column);
    grid.addWidget(line, row, column + 1);
    grid.addWidget(other, row, column + 2);
    marks_.add(draft_.fields[field].name, line, countFault_);
    widgets_.push_back({line, other});
}

void CheckDialog::showDraft() {
    bool isClean = day_->date().has_value();
    QString fault;
    for (std::size_t i = 0; i < widgets_.size(); ++i) {
        widgets_[i].other->setText(draft_.otherWay(draft_.fields[i]));
        const QString here = draft_.fault(draft_.fields[i]);
        if (fault.isEmpty()) fault = here;
        isClean = isClean && here.isEmpty();
    }
    marks_.clear();
    countFault_->setFault(fault);
    inWords_->setText(isClean ? draft_.inWords() : QString());
}

void CheckDialog::agree() {
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    for (std::size_t i = 0; i < widgets_.size(); ++i)
        if (!draft_.fault(draft_.fields[i]).isEmpty()) return widgets_[i].line->setFocus();
    draft_.check.note = note_->text().trimmed().toStdString();
    const Outcome outcome = keep_(draft_.result());
    if (outcome.isDone) return accept();
    core::Refusals refusals = outcome.refusals;
    const std::string prefix = draft_.record.batch.code + ": ";  // of a round's refusals
    for (core::Refusal& refusal : refusals)
        if (refusal.field.starts_with(prefix)) refusal.field.erase(0, prefix.size());
    marks_.show(refusals);
}

}  // namespace desktop
