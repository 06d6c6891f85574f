// SPDX-License-Identifier: MIT
#include "core/money/price_rules.h"

#include <array>

#include "core/batch/day_rules.h"
#include "core/field_faults.h"

namespace core {

namespace {

void judgeOwner(const Price& price, const Shelves& shelves, Refusals& faults) {
    const std::array<bool, 4> isSet{price.method.isSet(), price.station.isSet(), price.medium.isSet(),
                                    price.treatment.isSet()};
    const auto owners = std::ranges::count(isSet, true);
    const bool canHaveOwner =
        price.kind != PriceKind::Tariff && price.kind != PriceKind::HourOfWork && price.kind != PriceKind::DaySooner;
    if (owners > (canHaveOwner ? 1 : 0))
        faults.push_back({"Belongs to", std::to_string(owners) + " things",
                          canHaveOwner ? "one thing, or none" : "none",
                          "Belongs to has " + std::to_string(owners) + " things; " +
                              (canHaveOwner ? "one method, station, medium or treatment is allowed, or none."
                                            : "none is allowed, since it holds for the whole bench.")});
    if (price.method.isSet() && find(shelves.methods, price.method) == nullptr)
        faults.push_back(missingRefusal("Belongs to", price.method.value));
    if (price.station.isSet() && find(shelves.stations, price.station) == nullptr)
        faults.push_back(missingRefusal("Belongs to", price.station.value));
    if (price.medium.isSet() && find(shelves.media, price.medium) == nullptr)
        faults.push_back(missingRefusal("Belongs to", price.medium.value));
    if (price.treatment.isSet() && find(shelves.treatments, price.treatment) == nullptr)
        faults.push_back(missingRefusal("Belongs to", price.treatment.value));
}

void judgeDays(const Price& price, const Shelves& shelves, Date today, Refusals& faults) {
    collect(faults, faultInDay("From", price.from, addDays(today, longestDays)));
    if (price.until && *price.until < price.from)
        faults.push_back({"Until", isoText(*price.until), isoText(price.from) + " or later",
                          "Until is " + isoText(*price.until) + "; " + isoText(price.from) + " or later is allowed."});
    for (const Price& other : shelves.prices)
        if (other.id != price.id && other.from == price.from && isSamePriced(other, price))
            faults.push_back({"From", isoText(price.from), "another day",
                              "From is " + isoText(price.from) + ", the day from which another price of " +
                                  quotable(price.what) + " holds; another day is allowed."});
}

std::optional<Refusal> faultInPositive(const std::string& field, std::optional<double> value, int most) {
    const std::string allowed = "more than 0 and up to " + std::to_string(most);
    if (!value) return Refusal{field, "", allowed, field + " is not given; " + allowed + " is allowed."};
    if (*value > 0 && *value <= most) return {};
    return outOfRange(field, figureText(*value), allowed);
}

void judgeLife(const Price& price, Refusals& faults) {
    constexpr int longestYears = 100;
    constexpr int mostBatches = 100'000;
    if (price.lastsYears && price.lastsFor) {
        faults.push_back({"Lasts", "years and batches", "one of the two",
                          "Lasts has both years and batches; one of the two is allowed."});
        return;
    }
    if (price.lastsFor) return collect(faults, faultInPositive("Lasts for batches", price.lastsFor, mostBatches));
    collect(faults, faultInPositive("Lasts for years", price.lastsYears, longestYears));
}

void judgeBasis(const Price& price, Refusals& faults) {
    const bool isOfAnEvent = price.basis == PriceBasis::Check || price.basis == PriceBasis::Care;
    if (price.kind == PriceKind::UsedUp && isOfAnEvent)
        faults.push_back({"For each", std::string(wordFor(price.basis)), "cutting, batch or session",
                          "For each is " + std::string(wordFor(price.basis)) +
                              "; cutting, batch or session is allowed for what is used up."});
    const bool isOfASession = price.basis == PriceBasis::Session;
    const bool hasOwner =
        price.method.isSet() || price.station.isSet() || price.medium.isSet() || price.treatment.isSet();
    if (price.kind == PriceKind::WorkTime && isOfASession && hasOwner)
        faults.push_back({"Belongs to", "one thing", "none",
                          "Belongs to has one thing; none is allowed for the work of a session, which is that of all "
                          "that is stuck on the day."});
}

}  // namespace

Refusals faultsIn(const Price& price, const Shelves& shelves, Date today) {
    constexpr int mostOfAPack = 1'000'000;
    Refusals faults;
    collect(faults, faultInName("Name", price.what));
    judgeOwner(price, shelves, faults);
    judgeDays(price, shelves, today, faults);
    if (price.tenThousandths < 0 || price.tenThousandths > mostTenThousandths)
        faults.push_back(
            outOfRange("Amount", figureText(static_cast<double>(price.tenThousandths) / 10'000), "0 to 1000000000"));
    judgeBasis(price, faults);
    if (price.kind == PriceKind::Lasting) judgeLife(price, faults);
    if (price.kind == PriceKind::UsedUp)
        collect(faults, faultInPositive("A pack does for", price.lastsFor, mostOfAPack));
    if (price.kind == PriceKind::Electricity) {
        collect(faults, faultInPositive("Power", price.watts, 100'000));
        collect(faults, faultInFigure("Hours a day", price.hoursADay, 0, 24, "0 to 24"));
        collect(faults, faultInFigure("Share of the time", price.duty, 0, 1, "0 to 1"));
    }
    if (price.kind == PriceKind::WorkTime)
        collect(faults, faultInFigure("Minutes", price.minutes, 0, 10'000, "0 to 10000"));
    collect(faults, faultInNote("Note", price.note));
    return faults;
}

}  // namespace core
