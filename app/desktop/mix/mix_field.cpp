// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_field.h"

#include <QLocale>

#include "app/plot/quantity_text.h"
#include "app/plot/unit_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"
#include "core/working.h"

namespace desktop {

namespace {

constexpr auto ecQuantity = core::Quantity::SolutionEc;
constexpr double milligramsPerPercent = 10'000;
constexpr QChar asTyped = u'"';  // before what was no number

std::optional<double> auxinFrom(QString text) {
    text = text.trimmed();
    const bool isPercent = text.endsWith(u'%');
    if (isPercent) text.chop(1);
    const std::optional<double> typed = core::numberFrom(text.toStdString());
    if (!typed) return {};
    return isPercent ? *typed * milligramsPerPercent : *typed;
}

}  // namespace

QString typedText(double figure) {
    constexpr int digits = 10;
    return QString::fromStdString(core::briefText(figure, digits)).replace(u'.', QLocale().decimalPoint());
}

MixField::MixField(Kind kind, const core::DisplayUnits& units, QWidget* parent)
    : QLineEdit(parent), kind_(kind), units_(units) {
    setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    setMaxLength(20);
    setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000")) + fontMetrics().height());
    setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) + 2 * fontMetrics().height());
}

std::optional<double> MixField::stored() const {
    if (kind_ == Kind::Auxin) return auxinFrom(text());
    if (kind_ == Kind::Count) {
        const std::optional<int> count = core::countFrom(text().toStdString());
        return count ? std::optional<double>(*count) : std::nullopt;
    }
    const std::optional<double> typed = core::numberFrom(text().toStdString());
    if (!typed) return {};
    switch (kind_) {
        case Kind::Volume:
            return core::storedVolume(*typed, units_.volume);
        case Kind::PerVolume:
            return core::shownVolume(*typed, units_.volume);
        case Kind::Ec:
            return core::storedValue(*typed, ecQuantity, units_);
        case Kind::Length:
            return core::storedLength(*typed, units_.length);
        default:
            return typed;
    }
}

void MixField::setStored(double value) {
    if (kind_ == Kind::Volume) value = core::shownVolume(value, units_.volume);
    if (kind_ == Kind::PerVolume) value = core::storedVolume(value, units_.volume);
    if (kind_ == Kind::Ec) value = core::shownValue(value, ecQuantity, units_);
    if (kind_ == Kind::Length) value = core::shownLength(value, units_.length);
    setText(typedText(value));
}

QString MixField::fault(const QString& field) const {
    if (isBlank() || stored()) return {};
    if (kind_ == Kind::Count) return tr("%1 is \u201c%2\u201d; a whole number is allowed.").arg(field, text());
    if (kind_ == Kind::Auxin)
        return tr("%1 is \u201c%2\u201d; mg/L such as 3000 are allowed, or per cent such as 0.3%.").arg(field, text());
    if (unit().isEmpty()) return tr("%1 is \u201c%2\u201d; a number is allowed, such as 1.2.").arg(field, text());
    return tr("%1 is \u201c%2\u201d; a number in %3 is allowed, such as 1.2.").arg(field, text(), unit());
}

QString MixField::unit() const {
    switch (kind_) {
        case Kind::Volume:
            return QString::fromUtf8(core::wordFor(units_.volume));
        case Kind::Ec:
            return plot::quantityUnit(ecQuantity, units_);
        case Kind::Length:
            return plot::lengthUnitText(units_.length);
        case Kind::Auxin:
            return tr("mg/L", "milligrams per litre");
        default:
            return {};
    }
}

QString MixField::kept() const {
    const std::optional<double> value = stored();
    if (value) return QString::fromStdString(core::figureText(*value));
    return isBlank() ? QString() : asTyped + text();
}

void MixField::restore(const QString& kept) {
    if (kept.startsWith(asTyped))
        setText(kept.mid(1));
    else if (const std::optional<double> value = core::numberFrom(kept.toStdString()))
        setStored(*value);
    else
        clear();
}

}  // namespace desktop
