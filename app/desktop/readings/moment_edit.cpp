// SPDX-License-Identifier: MIT
#include "app/desktop/readings/moment_edit.h"

#include <QHBoxLayout>
#include <QLineEdit>

#include "app/desktop/readings/time_entry.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/local_time.h"

namespace desktop {

MomentEdit::MomentEdit(core::Date today, core::Moment moment, QWidget* parent)
    : QWidget(parent), start_(moment), day_(new DateEdit(today)), hour_(new QLineEdit) {
    day_->setDate(plot::localDay(moment));
    day_->line()->setObjectName(QStringLiteral("momentDay"));
    day_->line()->setAccessibleName(tr("Day"));
    hour_->setText(hourText(plot::localMinute(moment)));
    hour_->setObjectName(QStringLiteral("momentHour"));
    hour_->setAccessibleName(tr("Hour"));
    hour_->setToolTip(tr("9, 9:30 or 0930"));
    hour_->setMaxLength(5);
    hour_->setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("00:00")) + 2 * fontMetrics().height());
    startDay_ = day_->line()->text();
    startHour_ = hour_->text();
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(day_);
    row->addWidget(hour_);
    row->addStretch(1);
    day_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    setFocusProxy(day_);
}

bool MomentEdit::isTouched() const {
    return day_->line()->text() != startDay_ || hour_->text() != startHour_;
}

std::optional<core::Moment> MomentEdit::moment() const {
    if (!isTouched()) return start_;
    const std::optional<core::Date> day = day_->date();
    const std::optional<int> minute = minuteFrom(hour_->text());
    if (!day || !minute) return {};
    return plot::momentOf(*day, *minute);
}

QString MomentEdit::fault() const {
    if (!day_->date()) return day_->fault();
    if (!minuteFrom(hour_->text())) return tr("The hour is “%1”; 0:00 to 23:59 is allowed.").arg(hour_->text());
    return {};
}

}  // namespace desktop
