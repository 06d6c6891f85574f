// SPDX-License-Identifier: MIT
#include "app/desktop/settings/root_length_edit.h"

#include <cmath>

#include "app/plot/number_text.h"
#include "app/plot/unit_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr int shortestRoot = 1;    // mm
constexpr int longestRoot = 1000;  // mm

}  // namespace

RootLengthEdit::RootLengthEdit(QWidget* parent) : QLineEdit(parent) {
    setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    setMaxLength(20);
    setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) + 2 * fontMetrics().height());
}

void RootLengthEdit::setLength(int millimetres, core::LengthUnit unit) {
    unit_ = unit;
    setText(plot::amountText(core::shownLength(millimetres, unit)));
}

std::optional<int> RootLengthEdit::millimetres() const {
    const std::optional<double> typed = core::numberFrom(text().toStdString());
    if (!typed || std::abs(*typed) > longestRoot) return {};
    const int rounded = static_cast<int>(std::lround(core::storedLength(*typed, unit_)));
    return rounded >= shortestRoot && rounded <= longestRoot ? std::optional(rounded) : std::nullopt;
}

QString RootLengthEdit::fault() const {
    if (millimetres()) return {};
    return tr("The root length is \u201c%1\u201d; %2 to %3 is allowed.")
        .arg(text(), plot::amountText(core::shownLength(shortestRoot, unit_)), plot::lengthText(longestRoot, unit_));
}

}  // namespace desktop
