// SPDX-License-Identifier: MIT
#include "app/plot/climate_text.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"

namespace plot {

namespace {

struct ClimateTextWords {
    Q_DECLARE_TR_FUNCTIONS(ClimateText)
};

/// The measured quantity in whose unit it is read.
core::Quantity unitQuantityOf(core::ClimateQuantity quantity) {
    if (const auto measured = core::measuredQuantityOf(quantity)) return *measured;
    return quantity == core::ClimateQuantity::DewPoint ? core::Quantity::AirTemperature
                                                       : core::Quantity::RelativeHumidity;
}

bool isOfAMeter(core::ClimateQuantity quantity) {
    return core::measuredQuantityOf(quantity) || quantity == core::ClimateQuantity::DewPoint;
}

}  // namespace

QString climateName(core::ClimateQuantity quantity) {
    switch (quantity) {
        case core::ClimateQuantity::VapourDeficit:
            return ClimateTextWords::tr("vapour pressure deficit");
        case core::ClimateQuantity::LeafDeficit:
            return ClimateTextWords::tr("vapour pressure deficit at the leaf");
        case core::ClimateQuantity::DewPoint:
            return ClimateTextWords::tr("dew point");
        case core::ClimateQuantity::DailyLight:
            return ClimateTextWords::tr("light of a day");
        case core::ClimateQuantity::OxygenSaturation:
            return ClimateTextWords::tr("oxygen saturation");
        default:
            return quantityName(*core::measuredQuantityOf(quantity));
    }
}

QString climateUnit(core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    switch (quantity) {
        case core::ClimateQuantity::VapourDeficit:
        case core::ClimateQuantity::LeafDeficit:
            return ClimateTextWords::tr("kPa");
        case core::ClimateQuantity::DailyLight:
            return ClimateTextWords::tr("mol/m\u00b2");
        default:
            return quantityUnit(unitQuantityOf(quantity), units);
    }
}

double shownClimate(double stored, core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    return isOfAMeter(quantity) ? core::shownValue(stored, unitQuantityOf(quantity), units) : stored;
}

double storedClimate(double shown, core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    return isOfAMeter(quantity) ? core::storedValue(shown, unitQuantityOf(quantity), units) : shown;
}

int climateDecimals(core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    switch (quantity) {
        case core::ClimateQuantity::VapourDeficit:
        case core::ClimateQuantity::LeafDeficit:
            return 2;
        case core::ClimateQuantity::DailyLight:
            return 1;
        default:
            return decimalsOf(unitQuantityOf(quantity), units);
    }
}

QString climateNumber(double stored, core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    return decimalText(shownClimate(stored, quantity, units), climateDecimals(quantity, units));
}

QString climateText(double stored, core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    if (const auto measured = core::measuredQuantityOf(quantity)) return quantityText(*measured, stored, units);
    return ClimateTextWords::tr("%1 %2").arg(climateNumber(stored, quantity, units), climateUnit(quantity, units));
}

QString stageName(core::Stage stage) {
    switch (stage) {
        case core::Stage::BeforeRoots:
            return ClimateTextWords::tr("before roots");
        case core::Stage::FirstRoots:
            return ClimateTextWords::tr("first roots");
        case core::Stage::FillingRoots:
            return ClimateTextWords::tr("filling roots");
        case core::Stage::Hardening:
            break;
    }
    return ClimateTextWords::tr("hardening");
}

QString bandNumbers(const core::Band& band, core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    const core::QuantityFacts& facts = core::factsOf(quantity);
    const QString low = climateNumber(band.low, quantity, units), high = climateNumber(band.high, quantity, units);
    // 90 to 100 % is said as it is; an end far above what is ever seen is none.
    const bool hasNoHigh = band.high >= facts.high && quantity != core::ClimateQuantity::RelativeHumidity;
    if (hasNoHigh) return ClimateTextWords::tr("%1 or more").arg(low);
    if (band.low <= facts.low) return ClimateTextWords::tr("up to %1").arg(high);
    return ClimateTextWords::tr("%1 to %2").arg(low, high);
}

QString bandText(const core::Band& band, core::ClimateQuantity quantity, const core::DisplayUnits& units) {
    const QString numbers = bandNumbers(band, quantity, units), unit = climateUnit(quantity, units);
    if (quantity == core::ClimateQuantity::SolutionPh) return ClimateTextWords::tr("pH %1").arg(numbers);
    if (band.high >= core::factsOf(quantity).high && quantity != core::ClimateQuantity::RelativeHumidity)
        return ClimateTextWords::tr("%1 or more").arg(climateText(band.low, quantity, units));
    return ClimateTextWords::tr("%1 %2").arg(numbers, unit);
}

QString ownerText(core::BandOwner owner) {
    switch (owner) {
        case core::BandOwner::Trade:
            return ClimateTextWords::tr("the trade's");
        case core::BandOwner::TradeForPlant:
            return ClimateTextWords::tr("the trade's for this plant");
        case core::BandOwner::Grower:
            return ClimateTextWords::tr("your own");
        case core::BandOwner::GrowerForPlant:
            break;
    }
    return ClimateTextWords::tr("your own for this plant");
}

QString bandSource(const core::StageBand& band) {
    const bool isOwn = band.owner == core::BandOwner::Grower || band.owner == core::BandOwner::GrowerForPlant;
    if (!isOwn) return QString::fromUtf8(band.band.source.data(), static_cast<qsizetype>(band.band.source.size()));
    const QString note = QString::fromStdString(band.note).simplified();
    return note.isEmpty() ? ownerText(band.owner) : ClimateTextWords::tr("%1: %2").arg(ownerText(band.owner), note);
}

QString agoText(core::Moment moment, core::Moment now) {
    using namespace std::chrono;
    const seconds age = now - moment;
    if (age < minutes{2}) return ClimateTextWords::tr("just now");
    if (age < hours{2})
        return ClimateTextWords::tr("%n minutes ago", nullptr, static_cast<int>(duration_cast<minutes>(age).count()));
    if (age < hours{48})
        return ClimateTextWords::tr("%n hours ago", nullptr, static_cast<int>(duration_cast<hours>(age).count()));
    return ClimateTextWords::tr("%1 ago", "a number of days")
        .arg(daysText(static_cast<int>(duration_cast<days>(age).count())));
}

}  // namespace plot
