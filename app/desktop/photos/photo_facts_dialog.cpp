// SPDX-License-Identifier: MIT
#include "app/desktop/photos/photo_facts_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/widgets/date_edit.h"

namespace desktop {

PhotoFactsDialog::PhotoFactsDialog(const core::Photo& photo, core::Date stuckOn, core::Date today, Keep keep,
                                   QWidget* parent)
    : QDialog(parent),
      photo_(photo),
      keep_(std::move(keep)),
      day_(new DateEdit(today)),
      dayFault_(new FaultLabel),
      caption_(new QLineEdit(QString::fromStdString(photo.caption))) {
    setObjectName(QStringLiteral("photoFactsDialog"));
    setWindowTitle(tr("Caption and day of the photo"));
    day_->setDayZero(stuckOn);
    day_->setDate(photo.takenOn);
    day_->line()->setObjectName(QStringLiteral("photoDay"));
    caption_->setObjectName(QStringLiteral("photoCaption"));
    caption_->setMinimumWidth(fontMetrics().averageCharWidth() * 40);
    auto* captionFault = new FaultLabel;
    marks_.add(QStringLiteral("Taken on"), day_->line(), dayFault_);
    marks_.add(QStringLiteral("Caption"), caption_, captionFault);
    marks_.setRest(captionFault);
    auto* dayLabel = new QLabel(tr("&Taken on"));
    dayLabel->setBuddy(day_->line());
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Caption"), caption_);
    form->addRow(QString(), captionFault);
    form->addRow(dayLabel, day_);
    form->addRow(QString(), dayFault_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Save caption and day"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("savePhotoFacts"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &PhotoFactsDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
    caption_->setFocus();
}

void PhotoFactsDialog::agree() {
    marks_.clear();
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    core::Photo photo = photo_;
    photo.takenOn = *day_->date();
    photo.caption = caption_->text().trimmed().toStdString();
    const Outcome outcome = keep_(photo);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
