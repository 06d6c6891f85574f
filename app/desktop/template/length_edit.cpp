// SPDX-License-Identifier: MIT
#include "app/desktop/template/length_edit.h"

#include <QLocale>
#include <cmath>

#include "app/plot/unit_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"

namespace desktop {

LengthEdit::LengthEdit(core::LengthUnit unit, QWidget* parent) : QLineEdit(parent), unit_(unit) {
    setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    setMaxLength(20);
    setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) + 2 * fontMetrics().height());
}

void LengthEdit::setMillimetres(double millimetres) {
    constexpr double finest = 1000;
    const QString text =
        QString::fromStdString(core::figureText(std::round(core::shownLength(millimetres, unit_) * finest) / finest));
    setText(QString(text).replace(u'.', QLocale().decimalPoint()));
}

std::optional<double> LengthEdit::millimetres() const {
    const std::optional<double> typed = core::numberFrom(text().toStdString());
    return typed ? std::optional(core::storedLength(*typed, unit_)) : std::nullopt;
}

QString LengthEdit::fault(const QString& field) const {
    if (millimetres()) return {};
    const QString unit = plot::lengthUnitText(unit_);
    if (text().trimmed().isEmpty()) return tr("%1 is blank; a length in %2 is allowed.").arg(field, unit);
    return tr("%1 is \u201c%2\u201d; a length in %3 is allowed.").arg(field, text(), unit);
}

}  // namespace desktop
