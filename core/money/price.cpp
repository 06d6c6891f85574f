// SPDX-License-Identifier: MIT
#include "core/money/price.h"

#include <algorithm>
#include <utility>

namespace core {

namespace {

constexpr std::array<std::pair<PriceKind, std::string_view>, allPriceKinds.size()> kindWords{
    {{PriceKind::Lasting, "lasting"},
     {PriceKind::UsedUp, "used up"},
     {PriceKind::Electricity, "electricity"},
     {PriceKind::Tariff, "tariff"},
     {PriceKind::WorkTime, "work time"},
     {PriceKind::HourOfWork, "hour of work"},
     {PriceKind::DaySooner, "day sooner"}}};

constexpr std::array<std::pair<PriceBasis, std::string_view>, allPriceBases.size()> basisWords{
    {{PriceBasis::Cutting, "cutting"},
     {PriceBasis::Batch, "batch"},
     {PriceBasis::Session, "session"},
     {PriceBasis::Check, "check"},
     {PriceBasis::Care, "care"}}};

char loweredLetter(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool isSameName(std::string_view one, std::string_view other) {
    return std::ranges::equal(one, other, {}, loweredLetter, loweredLetter);
}

/// A bench has one tariff at a time, and one worth of an hour and of a day, whatever the grower calls them.
bool isOneOfItsKind(PriceKind kind) {
    return kind == PriceKind::Tariff || kind == PriceKind::HourOfWork || kind == PriceKind::DaySooner;
}

}  // namespace

std::string_view wordFor(PriceKind kind) {
    return std::ranges::find(kindWords, kind, &std::pair<PriceKind, std::string_view>::first)->second;
}

std::optional<PriceKind> priceKindFrom(std::string_view word) {
    const auto* const found = std::ranges::find(kindWords, word, &std::pair<PriceKind, std::string_view>::second);
    if (found == kindWords.end()) return {};
    return found->first;
}

std::string_view wordFor(PriceBasis basis) {
    return std::ranges::find(basisWords, basis, &std::pair<PriceBasis, std::string_view>::first)->second;
}

std::optional<PriceBasis> priceBasisFrom(std::string_view word) {
    const auto* const found = std::ranges::find(basisWords, word, &std::pair<PriceBasis, std::string_view>::second);
    if (found == basisWords.end()) return {};
    return found->first;
}

bool hasAmount(PriceKind kind) {
    return kind != PriceKind::WorkTime && kind != PriceKind::Electricity;
}

Price tidied(Price price) {
    const Price fresh;
    const bool isPack = price.kind == PriceKind::UsedUp;
    const bool isWorkTime = price.kind == PriceKind::WorkTime;
    const bool drawsPower = price.kind == PriceKind::Electricity;
    if (!hasAmount(price.kind)) price.tenThousandths = fresh.tenThousandths;
    if (price.kind != PriceKind::Lasting) price.lastsYears = fresh.lastsYears;
    if (price.kind != PriceKind::Lasting && !isPack) price.lastsFor = fresh.lastsFor;
    if (!isPack && !isWorkTime) price.basis = fresh.basis;
    if (!isWorkTime) price.minutes = fresh.minutes;
    if (!drawsPower) {
        price.watts = fresh.watts;
        price.hoursADay = fresh.hoursADay;
        price.duty = fresh.duty;
    }
    return price;
}

bool isSamePriced(const Price& one, const Price& other) {
    if (one.kind != other.kind) return false;
    if (isOneOfItsKind(one.kind)) return true;
    return one.method == other.method && one.station == other.station && one.medium == other.medium &&
           one.treatment == other.treatment && one.basis == other.basis && isSameName(one.what, other.what);
}

std::optional<Date> lastDayOf(const Price& price, std::span<const Price> all) {
    std::optional<Date> last = price.until;
    for (const Price& other : all) {
        if (other.from <= price.from || !isSamePriced(price, other)) continue;
        const Date dayBefore = addDays(other.from, -1);
        if (!last || dayBefore < *last) last = dayBefore;
    }
    return last;
}

bool holdsOn(Date day, const Price& price, std::span<const Price> all) {
    if (day < price.from) return false;
    const std::optional<Date> last = lastDayOf(price, all);
    return !last || day <= *last;
}

}  // namespace core
