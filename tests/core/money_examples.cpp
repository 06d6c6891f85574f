// SPDX-License-Identifier: MIT
#include "tests/core/money_examples.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "stats/numeric/seeded_random.h"

namespace examples {

namespace {

core::Price priced(core::PriceKind kind, const std::string& what, double amount) {
    using namespace std::chrono_literals;
    core::Price price;
    price.kind = kind;
    price.what = what;
    price.from = 2026y / 1 / 1;
    price.tenThousandths = std::llround(amount * 10'000);
    return price;
}

}  // namespace

core::Price lasting(const std::string& what, double amount, double years) {
    core::Price price = priced(core::PriceKind::Lasting, what, amount);
    price.lastsYears = years;
    return price;
}

core::Price usedUp(const std::string& what, double amount, double lastsFor, core::PriceBasis basis) {
    core::Price price = priced(core::PriceKind::UsedUp, what, amount);
    price.lastsFor = lastsFor;
    price.basis = basis;
    return price;
}

core::Price electricity(const std::string& what, double watts, double hoursADay) {
    core::Price price = priced(core::PriceKind::Electricity, what, 0);
    price.watts = watts;
    price.hoursADay = hoursADay;
    return price;
}

core::Price tariff(double ofAKilowattHour) {
    return priced(core::PriceKind::Tariff, "tariff", ofAKilowattHour);
}

core::Price workTime(const std::string& what, double minutes, core::PriceBasis basis) {
    core::Price price = priced(core::PriceKind::WorkTime, what, 0);
    price.minutes = minutes;
    price.basis = basis;
    return price;
}

core::Price hourOfWork(double amount) {
    return priced(core::PriceKind::HourOfWork, "hour", amount);
}

core::Price ownedBy(core::Price price, core::StationId station) {
    price.station = station;
    return price;
}

core::Price ownedBy(core::Price price, core::MethodId method) {
    price.method = method;
    return price;
}

core::Price ownedBy(core::Price price, core::TreatmentId treatment) {
    price.treatment = treatment;
    return price;
}

core::Price ownedBy(core::Price price, core::MediumId medium) {
    price.medium = medium;
    return price;
}

core::Price from(core::Date day, core::Price price) {
    price.from = day;
    return price;
}

core::Date dayAfterSticking(int days) {
    return core::addDays(support::stickingDay(), days);
}

core::CostsOfBatches costsOf(const core::Records& records, core::Date today) {
    return core::costsOfBatches({.shelves = records.shelves,
                                 .batches = records.batches,
                                 .sessions = records.sessions,
                                 .care = records.care,
                                 .expenses = records.expenses,
                                 .today = today});
}

core::Worth worthOf(const core::Records& records, core::WorthQuestion question, core::Date today) {
    if (!question.horizonDay) question.horizonDay = 28;
    question.bootstrapReplicates = std::min(question.bootstrapReplicates, 100);
    const core::CostsOfBatches costs = costsOf(records, today);
    auto result = core::worthIt(question, {.shelves = records.shelves,
                                           .batches = records.batches,
                                           .pottings = records.pottings,
                                           .costs = costs,
                                           .today = today});
    EXPECT_TRUE(result.has_value());
    return result.value_or(core::Worth{});
}

core::Records bigLogbook(int batches, int days, std::uint64_t seed) {
    stats::SeededRandom random(seed);
    std::vector<core::BatchRecord> records;
    const std::array stations{support::tubNorth, support::tubSouth, support::benchWest, support::benchEast};
    for (int i = 0; i < batches; ++i) {
        const int stuck = 10 + static_cast<int>(random.below(40));
        auto batch = support::aBatch()
                         .stuck(stuck)
                         .at(stations[random.below(4)])
                         .stuckOn(core::addDays(support::stickingDay(),
                                                -static_cast<int>(random.below(static_cast<std::uint64_t>(days)))));
        for (int look = 1; look <= 4; ++look) batch.looked(7 * look, {.rooted = stuck / 5});
        records.push_back(batch.looked(35, {.lost = stuck - 4 * (stuck / 5)}));
    }
    return support::recordsOf(std::move(records));
}

void priceEverything(core::Records& records) {
    std::vector<core::Price>& prices = records.shelves.prices;
    for (const core::StationId station :
         {support::tubNorth, support::tubSouth, support::benchWest, support::benchEast}) {
        prices.push_back(ownedBy(lasting("tub or tray", 73, 2), station));
        prices.push_back(ownedBy(electricity("pump or mat", 5, 24), station));
    }
    for (const char* what : {"lamp", "shelf", "greenhouse", "tools"}) prices.push_back(lasting(what, 500, 10));
    for (int year = 0; year < 10; ++year) prices.push_back(from(dayAfterSticking(-365 * year), tariff(0.3)));
    prices.push_back(hourOfWork(12));
    prices.push_back(workTime("a look", 2, core::PriceBasis::Check));
    prices.push_back(workTime("sticking", 30, core::PriceBasis::Session));
    prices.push_back(workTime("care", 5, core::PriceBasis::Care));
    prices.push_back(usedUp("labels", 5, 100, core::PriceBasis::Cutting));
    for (core::Price& price : prices)
        if (price.kind != core::PriceKind::Tariff) price.from = dayAfterSticking(-4000);
    for (int day = 0; day < 3650; ++day)
        records.care.push_back({.station = support::tubNorth, .doneAt = std::chrono::sys_days(dayAfterSticking(-day))});
}

}  // namespace examples
