// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/count_edit.h"

#include "core/units/number_entry.h"

namespace desktop {

CountEdit::CountEdit(int least, int most, QWidget* parent) : QLineEdit(parent), least_(least), most_(most) {
    setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    setInputMethodHints(Qt::ImhDigitsOnly);
    setMaxLength(20);
    setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) + 2 * fontMetrics().height());
}

void CountEdit::setRange(int least, int most) {
    least_ = least;
    most_ = most;
}

void CountEdit::setCount(std::optional<int> count) {
    setText(count ? QString::number(*count) : QString());
}

std::optional<int> CountEdit::count() const {
    const std::optional<int> typed = core::countFrom(text().toStdString());
    return typed && *typed >= least_ && *typed <= most_ ? typed : std::nullopt;
}

QString CountEdit::fault(const QString& field) const {
    if (count()) return {};
    if (text().trimmed().isEmpty()) return tr("%1 is blank; %2 to %3 is allowed.").arg(field).arg(least_).arg(most_);
    return tr("%1 is “%2”; a whole number from %3 to %4 is allowed.").arg(field, text()).arg(least_).arg(most_);
}

}  // namespace desktop
