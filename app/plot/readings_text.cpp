// SPDX-License-Identifier: MIT
#include "app/plot/readings_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"

namespace plot {
namespace {

struct ReadingsText {
    Q_DECLARE_TR_FUNCTIONS(ReadingsText)
};

// "pH" stands in the figure's own text already.
QString withName(core::Quantity quantity, const QString& figure) {
    if (quantity == core::Quantity::SolutionPh) return figure;
    return ReadingsText::tr("%1 %2", "a quantity and its figure").arg(quantityShortName(quantity), figure);
}

}  // namespace

QString careText(core::CareKind kind) {
    switch (kind) {
        case core::CareKind::ToppedUp:
            return ReadingsText::tr("topped up");
        case core::CareKind::SolutionChanged:
            return ReadingsText::tr("solution changed");
        case core::CareKind::Vented:
            return ReadingsText::tr("vented");
        case core::CareKind::Misted:
            return ReadingsText::tr("misted");
        case core::CareKind::Sprayed:
            return ReadingsText::tr("sprayed");
        case core::CareKind::PumpOn:
            return ReadingsText::tr("pump on");
        case core::CareKind::PumpOff:
            return ReadingsText::tr("pump off");
        case core::CareKind::Other:
            return ReadingsText::tr("other", "care that has no name of its own");
    }
    return {};
}

QString volumeUnitText(core::VolumeUnit unit) {
    return unit == core::VolumeUnit::Litres ? ReadingsText::tr("L", "litres") : ReadingsText::tr("gal", "US gallons");
}

QString volumeText(double litres, core::VolumeUnit unit) {
    return ReadingsText::tr("%1 %2", "a volume and its unit")
        .arg(amountText(core::shownVolume(litres, unit)), volumeUnitText(unit));
}

QString careWithVolume(const core::Care& care, const core::DisplayUnits& units) {
    const QString what = careText(care.kind);
    if (!care.litres) return what;
    return ReadingsText::tr("%1, %2", "care, volume").arg(what, volumeText(*care.litres, units.volume));
}

QString careInWords(const core::Care& care, const core::DisplayUnits& units) {
    const QString words = careWithVolume(care, units), note = QString::fromStdString(care.note).simplified();
    return note.isEmpty() ? words : ReadingsText::tr("%1: %2", "care, note").arg(words, note);
}

QString readingNumber(double stored, core::Quantity quantity, const core::DisplayUnits& units) {
    return decimalText(core::shownValue(stored, quantity, units), decimalsOf(quantity, units));
}

QString readingsInWords(const std::vector<core::Reading>& readings, const core::DisplayUnits& units) {
    QStringList parts;
    for (const core::Quantity quantity : core::allQuantities) {
        std::vector<double> values;
        for (const core::Reading& reading : readings)
            if (reading.quantity == quantity) values.push_back(reading.value);
        if (values.empty()) continue;
        const auto [low, high] = std::minmax_element(values.begin(), values.end());
        QString part = withName(quantity, *low < *high ? quantityRangeText(quantity, *low, *high, units)
                                                       : quantityText(quantity, *low, units));
        if (values.size() > 1)
            part = ReadingsText::tr("%1 (%2 readings)").arg(part, countText(static_cast<int>(values.size())));
        parts << part;
    }
    return parts.join(ReadingsText::tr(", ", "between the readings of a day"));
}

}  // namespace plot
