// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/date_edit.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>

#include "app/desktop/names/mnemonic.h"

namespace desktop {

DateEdit::DateEdit(core::Date today, QWidget* parent)
    : QWidget(parent), today_(today), line_(new QLineEdit(this)), day_(new QLabel(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(line_);
    layout->addWidget(day_);
    setFocusProxy(line_);
    line_->setMaxLength(20);
    line_->setMinimumWidth(line_->fontMetrics().horizontalAdvance(QStringLiteral("0000-00-00")) +
                           3 * line_->fontMetrics().averageCharWidth());
    line_->setToolTip(tr("14, 14.3, -3 (days ago), t (today) or 2026-03-14"));
    line_->installEventFilter(this);
    day_->hide();
    connect(line_, &QLineEdit::textChanged, this, [this] {
        showDay();
        emit dateChanged();
    });
    connect(line_, &QLineEdit::editingFinished, this, &DateEdit::writeBack);
}

void DateEdit::setDate(std::optional<core::Date> date) {
    line_->setText(date ? QString::fromStdString(core::isoText(*date)) : QString());
}

std::optional<core::Date> DateEdit::date() const {
    return dateFrom(line_->text(), today_, locale(), lean_);
}

QString DateEdit::fault() const {
    if (date()) return {};
    if (line_->text().trimmed().isEmpty()) return tr("The day is blank; %1 is allowed.").arg(allowed());
    return tr("“%1” is no day; %2 is allowed.").arg(line_->text(), allowed());
}

QString DateEdit::allowed() const {
    return lean_ == DayLean::Back ? tr("14, 14.3, -3, t or 2026-03-14") : tr("14, 14.3, +21, t or 2026-03-14");
}

void DateEdit::lookAhead() {
    lean_ = DayLean::Ahead;
    line_->setToolTip(tr("14, 14.3, +21 (in 21 days), t (today) or 2026-03-14"));
}

void DateEdit::setDayZero(std::optional<core::Date> stuckOn) {
    dayZero_ = stuckOn;
    showDay();
}

void DateEdit::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!line_->accessibleName().isEmpty()) return;
    // A screen reader comes to the field within, and takes a label for it only from among its own siblings.
    for (const QLabel* label : window()->findChildren<QLabel*>())
        if (label->buddy() == this || label->buddy() == line_) line_->setAccessibleName(withoutMnemonic(label->text()));
}

bool DateEdit::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && date()) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            setDate(core::addDays(*date(), key == Qt::Key_Up ? 1 : -1));
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void DateEdit::showDay() {
    const std::optional<core::Date> shown = date();
    day_->setVisible(dayZero_ && shown);
    if (dayZero_ && shown) day_->setText(tr("Day %1").arg(core::daysBetween(*dayZero_, *shown)));
}

void DateEdit::writeBack() {
    if (const std::optional<core::Date> understood = date()) setDate(understood);
}

}  // namespace desktop
