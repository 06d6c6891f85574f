// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/money_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/desktop/mix/mix_field.h"
#include "app/plot/money_text.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

struct PriceWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::Price)
};

bool isWhole(double figure) {
    return figure == std::floor(figure) && figure < 1e6;
}

QString yearsText(double years) {
    if (years == 1) return PriceWords::tr("1 year");
    if (isWhole(years)) return PriceWords::tr("%n years", nullptr, static_cast<int>(years));
    return PriceWords::tr("%1 years", "not a whole number").arg(typedText(years));
}

QString sessionsText(double sessions) {
    if (sessions == 1) return PriceWords::tr("1 session");
    return PriceWords::tr("%n sessions", nullptr, static_cast<int>(sessions));
}

QString packText(double lastsFor, core::PriceBasis basis) {
    if (!isWhole(lastsFor)) {
        const QString figure = typedText(lastsFor);
        if (basis == core::PriceBasis::Cutting) return PriceWords::tr("for %1 cuttings").arg(figure);
        if (basis == core::PriceBasis::Session) return PriceWords::tr("for %1 sessions").arg(figure);
        return PriceWords::tr("for %1 batches").arg(figure);
    }
    const int count = static_cast<int>(lastsFor);
    const QString many = basis == core::PriceBasis::Cutting   ? plot::cuttingsText(count)
                         : basis == core::PriceBasis::Session ? sessionsText(lastsFor)
                                                              : plot::batchesText(count);
    return PriceWords::tr("for %1", "200 cuttings").arg(many);
}

QString workText(double minutes, core::PriceBasis basis) {
    const QString figure = typedText(minutes);
    switch (basis) {
        case core::PriceBasis::Cutting:
            return PriceWords::tr("%1 min a cutting").arg(figure);
        case core::PriceBasis::Batch:
            return PriceWords::tr("%1 min a batch").arg(figure);
        case core::PriceBasis::Session:
            return PriceWords::tr("%1 min a session").arg(figure);
        case core::PriceBasis::Check:
            return PriceWords::tr("%1 min a check").arg(figure);
        case core::PriceBasis::Care:
            return PriceWords::tr("%1 min each care").arg(figure);
    }
    return {};
}

QString powerText(const core::Price& price) {
    const QString watts = PriceWords::tr("%1 W, %2 h a day").arg(typedText(price.watts), typedText(price.hoursADay));
    if (price.duty == 1) return watts;
    return PriceWords::tr("%1 W, %2 of %3 h a day", "5 W, 50 % of 24 h a day")
        .arg(typedText(price.watts), plot::shareText(price.duty), typedText(price.hoursADay));
}

template <class Thing, class ThingId>
QString nameOfOwner(const std::vector<Thing>& things, ThingId id, const QString& pattern) {
    const Thing* thing = core::find(things, id);
    return thing == nullptr ? PriceWords::tr("something that is gone")
                            : pattern.arg(QString::fromStdString(thing->name));
}

template <class Thing, class ThingId>
void addOwners(std::vector<PriceOwner>& owners, const std::vector<Thing>& things, ThingId PriceOwner::*member,
               ThingId now, const QString& pattern) {
    for (const Thing& thing : things) {
        if (thing.isRetired && thing.id != now) continue;
        PriceOwner owner;
        owner.*member = thing.id;
        owner.text = pattern.arg(QString::fromStdString(thing.name));
        owners.push_back(std::move(owner));
    }
}

// The name stands first: typing its first letters chooses it.
QString ofMethod() {
    return PriceWords::tr("%1 (method)");
}
QString ofStation() {
    return PriceWords::tr("%1 (station)");
}
QString ofMedium() {
    return PriceWords::tr("%1 (medium)");
}
QString ofTreatment() {
    return PriceWords::tr("%1 (treatment)");
}

}  // namespace

QString priceKindText(core::PriceKind kind) {
    switch (kind) {
        case core::PriceKind::Lasting:
            return PriceWords::tr("lasting thing");
        case core::PriceKind::UsedUp:
            return PriceWords::tr("used up");
        case core::PriceKind::Electricity:
            return PriceWords::tr("electricity");
        case core::PriceKind::Tariff:
            return PriceWords::tr("tariff");
        case core::PriceKind::WorkTime:
            return PriceWords::tr("minutes of work");
        case core::PriceKind::HourOfWork:
            return PriceWords::tr("an hour of work");
        case core::PriceKind::DaySooner:
            return PriceWords::tr("a day sooner");
    }
    return {};
}

QString priceAmountText(const core::Price& price, const std::string& currency) {
    const QString amount = plot::priceText(price.tenThousandths, currency);
    switch (price.kind) {
        case core::PriceKind::Electricity:
        case core::PriceKind::WorkTime:
            return {};
        case core::PriceKind::Tariff:
            return PriceWords::tr("%1 a kWh", "0.31 EUR").arg(amount);
        case core::PriceKind::HourOfWork:
            return PriceWords::tr("%1 an hour", "12.00 EUR").arg(amount);
        case core::PriceKind::DaySooner:
            return PriceWords::tr("%1 a day", "0.05 EUR").arg(amount);
        default:
            return amount;
    }
}

QString priceLifeText(const core::Price& price) {
    switch (price.kind) {
        case core::PriceKind::Lasting:
            return price.lastsFor ? packText(*price.lastsFor, core::PriceBasis::Batch)
                                  : yearsText(price.lastsYears.value_or(0));
        case core::PriceKind::UsedUp:
            return packText(price.lastsFor.value_or(0), price.basis);
        case core::PriceKind::Electricity:
            return powerText(price);
        case core::PriceKind::WorkTime:
            return workText(price.minutes, price.basis);
        default:
            return {};
    }
}

void PriceOwner::give(core::Price& price) const {
    price.method = method;
    price.station = station;
    price.medium = medium;
    price.treatment = treatment;
}

bool PriceOwner::isOwnerOf(const core::Price& price) const {
    return price.method == method && price.station == station && price.medium == medium && price.treatment == treatment;
}

QString priceOwnerName(const core::Price& price, const core::Shelves& shelves) {
    const QString plain = QStringLiteral("%1");
    if (price.method.isSet()) return nameOfOwner(shelves.methods, price.method, plain);
    if (price.station.isSet()) return nameOfOwner(shelves.stations, price.station, plain);
    if (price.medium.isSet()) return nameOfOwner(shelves.media, price.medium, plain);
    if (price.treatment.isSet()) return nameOfOwner(shelves.treatments, price.treatment, plain);
    return priceOwnerText(price, shelves);
}

QString priceOwnerText(const core::Price& price, const core::Shelves& shelves) {
    if (price.method.isSet()) return nameOfOwner(shelves.methods, price.method, ofMethod());
    if (price.station.isSet()) return nameOfOwner(shelves.stations, price.station, ofStation());
    if (price.medium.isSet()) return nameOfOwner(shelves.media, price.medium, ofMedium());
    if (price.treatment.isSet()) return nameOfOwner(shelves.treatments, price.treatment, ofTreatment());
    return PriceWords::tr("the whole bench");
}

std::vector<PriceOwner> priceOwners(const core::Shelves& shelves, const core::Price& price) {
    std::vector<PriceOwner> owners(1);
    owners.front().text = PriceWords::tr("the whole bench");
    addOwners(owners, shelves.methods, &PriceOwner::method, price.method, ofMethod());
    addOwners(owners, shelves.stations, &PriceOwner::station, price.station, ofStation());
    addOwners(owners, shelves.media, &PriceOwner::medium, price.medium, ofMedium());
    addOwners(owners, shelves.treatments, &PriceOwner::treatment, price.treatment, ofTreatment());
    return owners;
}

bool isNamedByItsKind(core::PriceKind kind) {
    return kind == core::PriceKind::Tariff || kind == core::PriceKind::HourOfWork || kind == core::PriceKind::DaySooner;
}

QString usualNameOf(core::PriceKind kind) {
    switch (kind) {
        case core::PriceKind::Tariff:
            return PriceWords::tr("electricity tariff");
        case core::PriceKind::HourOfWork:
            return PriceWords::tr("an hour of work");
        case core::PriceKind::DaySooner:
            return PriceWords::tr("a day sooner");
        default:
            return {};
    }
}

}  // namespace desktop
