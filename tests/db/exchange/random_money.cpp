// SPDX-License-Identifier: MIT
#include "tests/db/exchange/random_money.h"

#include <array>

namespace support {

namespace {

constexpr core::Date firstPricedDay{std::chrono::year{2024}, std::chrono::January, std::chrono::day{1}};

}  // namespace

std::string RandomMoney::text() {
    constexpr std::array awkward = {"=1+1", "'quoted", "a,b;c", "says \"no\"", "Pumpe für Wanne", "two\nlines", ""};
    return awkward[static_cast<std::size_t>(below(awkward.size()))];
}

void RandomMoney::writePrices(core::Shelves& shelves) {
    for (int number = 0; number < 20; ++number) {
        core::Price price{.id = {++id_},
                          .kind = core::allPriceKinds[static_cast<std::size_t>(below(core::allPriceKinds.size()))],
                          .what = "thing, number " + std::to_string(below(4))};
        const bool isOfTheBench = price.kind == core::PriceKind::Tariff || price.kind == core::PriceKind::HourOfWork ||
                                  price.kind == core::PriceKind::DaySooner;
        const int owner = isOfTheBench ? 9 : below(7);
        if (owner == 0) price.method = someId(shelves.methods);
        if (owner == 1) price.station = someId(shelves.stations);
        if (owner == 2) price.medium = someId(shelves.media);
        if (owner == 3) price.treatment = someId(shelves.treatments);
        price.from = core::addDays(firstPricedDay, 40 * number + below(40));  // no two from one day
        if (below(4) == 0) price.until = core::addDays(price.from, below(90));
        if (core::hasAmount(price.kind)) price.tenThousandths = below(100'000'000);
        if (price.kind == core::PriceKind::Lasting && below(2) == 0)
            price.lastsYears = 0.1 + below(100) / 3.0;
        else if (price.kind == core::PriceKind::Lasting || price.kind == core::PriceKind::UsedUp)
            price.lastsFor = 1.0 + below(500);
        if (price.kind == core::PriceKind::UsedUp)
            price.basis = core::allPriceBases[static_cast<std::size_t>(below(3))];
        if (price.kind == core::PriceKind::WorkTime) {
            price.basis = below(2) == 0 ? core::PriceBasis::Check : core::PriceBasis::Cutting;
            price.minutes = below(100) / 7.0;
        }
        if (price.kind == core::PriceKind::Electricity) {
            price.watts = 0.5 + below(100);
            price.hoursADay = below(25);
            price.duty = below(11) / 10.0;
        }
        price.note = text();
        shelves.prices.push_back(std::move(price));
    }
}

template <class Thing>
void RandomMoney::writeLotsOf(const std::vector<Thing>& things, decltype(Thing::id) core::Lot::*owner,
                              core::Shelves& shelves) {
    for (const Thing& thing : things)
        for (int number = below(4); number > 0; --number) {
            core::Lot lot{.id = {++id_},
                          .name = "lot, number " + std::to_string(number),
                          .usedFrom = core::addDays(firstPricedDay, 30 * number + below(30)),
                          .note = text()};
            lot.*owner = thing.id;
            if (below(2) == 0) lot.madeOn = core::addDays(lot.usedFrom, -below(60));
            shelves.lots.push_back(std::move(lot));
        }
}

void RandomMoney::write(core::Records& records) {
    writePrices(records.shelves);
    writeLotsOf(records.shelves.treatments, &core::Lot::treatment, records.shelves);
    writeLotsOf(records.shelves.media, &core::Lot::medium, records.shelves);
    for (const core::BatchRecord& record : records.batches) {
        const core::Tally tally = core::tallyOf(record.batch, record.checks);
        if (tally.rooted == 0) continue;
        // The loss may stand before the potting of the same day.
        core::Potting potting{.id = {++id_},
                              .batch = record.batch.id,
                              .countedOn = *tally.lastCheckedOn,
                              .potted = 1 + below(tally.rooted),
                              .note = text()};
        if (below(2) == 0)
            records.pottings.push_back({.id = {++id_},
                                        .batch = record.batch.id,
                                        .countedOn = potting.countedOn,
                                        .lost = 1 + below(potting.potted)});
        records.pottings.push_back(std::move(potting));
    }
    for (const core::Session& session : records.sessions)
        for (int count = below(3); count > 0; --count) {
            records.expenses.push_back({.id = {++id_},
                                        .batch = {},
                                        .spentOn = session.date,
                                        .what = "thing, number " + std::to_string(count),
                                        .hundredths = below(10'000),
                                        .session = session.id});
            if (below(2) == 0) records.expenses.back().minutes = 1 + below(500) / 3.0;
        }
}

}  // namespace support
