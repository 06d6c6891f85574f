// SPDX-License-Identifier: MIT
#include "app/plot/quantity_text.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace plot {

namespace {

QString ofQuantity(const char* text) {
    return QCoreApplication::translate("plot::Quantity", text);
}

}  // namespace

QString quantityName(core::Quantity quantity) {
    switch (quantity) {
        case core::Quantity::SolutionEc:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "solution EC"));
        case core::Quantity::SolutionPh:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "solution pH"));
        case core::Quantity::SolutionTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "solution temperature"));
        case core::Quantity::DissolvedOxygen:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "dissolved oxygen"));
        case core::Quantity::MediumTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "medium temperature"));
        case core::Quantity::AirTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "air temperature"));
        case core::Quantity::RelativeHumidity:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "relative humidity"));
        case core::Quantity::LeafTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "leaf temperature"));
        case core::Quantity::Light:
            break;
    }
    return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "light"));
}

QString quantityShortName(core::Quantity quantity) {
    switch (quantity) {
        case core::Quantity::SolutionEc:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "EC"));
        case core::Quantity::SolutionPh:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "pH"));
        case core::Quantity::SolutionTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "solution"));
        case core::Quantity::DissolvedOxygen:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "oxygen"));
        case core::Quantity::MediumTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "medium"));
        case core::Quantity::AirTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "air"));
        case core::Quantity::RelativeHumidity:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "humidity"));
        case core::Quantity::LeafTemperature:
            return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "leaf"));
        case core::Quantity::Light:
            break;
    }
    return ofQuantity(QT_TRANSLATE_NOOP("plot::Quantity", "light"));
}

QString quantityUnit(core::Quantity quantity, const core::DisplayUnits& units) {
    return QString::fromStdString(core::unitText(quantity, units));
}

int decimalsOf(core::Quantity quantity, const core::DisplayUnits& units) {
    switch (quantity) {
        case core::Quantity::SolutionEc:
            return units.ec == core::EcUnit::MilliSiemens ? 2 : 0;
        case core::Quantity::RelativeHumidity:
        case core::Quantity::Light:
            return 0;
        default:
            return 1;
    }
}

QString quantityText(core::Quantity quantity, double stored, const core::DisplayUnits& units) {
    const QString figure = decimalText(core::shownValue(stored, quantity, units), decimalsOf(quantity, units));
    const QString unit = quantityUnit(quantity, units);
    return unit.isEmpty() ? ofQuantity("pH %1").arg(figure) : ofQuantity("%1 %2").arg(figure, unit);
}

QString quantityRangeText(core::Quantity quantity, double low, double high, const core::DisplayUnits& units) {
    const int decimals = decimalsOf(quantity, units);
    return ofQuantity("%1 to %2")
        .arg(decimalText(core::shownValue(low, quantity, units), decimals), quantityText(quantity, high, units));
}

}  // namespace plot
