// SPDX-License-Identifier: MIT
#include "app/desktop/settings/facts_by_locale.h"

#include "core/shelf_rules.h"

namespace desktop {

core::LogbookFacts factsByLocale(const QLocale& locale) {
    core::LogbookFacts facts;
    if (locale.measurementSystem() == QLocale::ImperialUSSystem) {
        facts.paper = "Letter";
        facts.units.temperature = core::TemperatureUnit::Fahrenheit;
        facts.units.volume = core::VolumeUnit::UsGallons;
        facts.units.length = core::LengthUnit::Inches;
    }
    // A language without a country has no currency.
    core::LogbookFacts withCurrency = facts;
    withCurrency.name = "any";
    withCurrency.currency = locale.currencySymbol(QLocale::CurrencyIsoCode).toStdString();
    if (core::faultsIn(withCurrency).empty()) facts.currency = withCurrency.currency;
    return facts;
}

}  // namespace desktop
