// SPDX-License-Identifier: MIT
#include "core/demo/demo_money.h"

#include <algorithm>
#include <cassert>
#include <tuple>

#include "core/demo/demo_shelves.h"

namespace core {

namespace {

constexpr std::int64_t whole = 10'000;  // ten-thousandths of the currency

template <class Thing>
auto idOf(const std::vector<Thing>& things, const char* name) {
    const auto found = std::ranges::find(things, name, &Thing::name);
    assert(found != things.end());
    return found->id;
}

class MoneyMaker {
  public:
    MoneyMaker(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random)
        : records_(records), shelves_(records.shelves), calendar_(calendar), ids_(ids), random_(random) {}

    void addPrices() {
        addWhatLasts();
        addWhatIsUsedUp();
        addPower();
        addWork();
        std::ranges::sort(shelves_.prices, [](const Price& a, const Price& b) {
            return std::tie(a.kind, a.what, a.from, a.id) < std::tie(b.kind, b.what, b.from, b.id);
        });
    }
    void addLots();
    void addSessionExpenses();
    void addPottings();

  private:
    /// From the first day of the first season, or of the second.
    Price& price(PriceKind kind, const char* what, bool isOfSecondSeason = false) {
        Price made{.id = ids_.next<PriceId>(), .kind = kind, .what = what};
        made.from = calendar_.dateOf(isOfSecondSeason ? DemoCalendar::secondSeason : 0);
        return shelves_.prices.emplace_back(std::move(made));
    }
    void lasting(const char* what, int method, std::int64_t amount, double years) {
        Price& made = price(PriceKind::Lasting, what);
        made.method = shelves_.methods[static_cast<std::size_t>(method)].id;
        made.tenThousandths = amount * whole;
        made.lastsYears = years;
    }
    Price& usedUp(const char* what, std::int64_t amount, double lastsFor, bool isOfSecondSeason = false) {
        Price& made = price(PriceKind::UsedUp, what, isOfSecondSeason);
        made.tenThousandths = amount * whole;
        made.lastsFor = lastsFor;
        made.basis = PriceBasis::Cutting;
        return made;
    }
    void drawing(const char* what, int method, double watts, double hoursADay, double duty) {
        Price& made = price(PriceKind::Electricity, what);
        made.method = shelves_.methods[static_cast<std::size_t>(method)].id;
        made.watts = watts;
        made.hoursADay = hoursADay;
        made.duty = duty;
    }
    Price& taking(const char* what, PriceBasis basis, double minutes) {
        Price& made = price(PriceKind::WorkTime, what);
        made.basis = basis;
        made.minutes = minutes;
        return made;
    }
    void lotOf(TreatmentId treatment, MediumId medium, const char* name, int usedFrom, int daysOld) {
        const Date day = calendar_.dateOf(usedFrom);
        shelves_.lots.push_back({.id = ids_.next<LotId>(),
                                 .name = name,
                                 .treatment = treatment,
                                 .medium = medium,
                                 .usedFrom = day,
                                 .madeOn = addDays(day, -daysOld)});
    }

    void addWhatLasts();
    void addWhatIsUsedUp();
    void addPower();
    void addWork();

    Records& records_;
    Shelves& shelves_;
    const DemoCalendar& calendar_;
    IdSource& ids_;
    stats::SeededRandom& random_;
};

/// Rockwool is in none of it: the collars of the tubs are of foam.
void MoneyMaker::addWhatLasts() {
    lasting("Tubs with lids", aeratedWater, 60, 8);
    lasting("Air pump", aeratedWater, 24, 4);
    lasting("Air stones", aeratedWater, 6, 1);
    lasting("Foam collars", aeratedWater, 12, 3);
    lasting("Trays", mediaTray, 20, 3);
    lasting("Dome", mediaTray, 30, 5);
    lasting("Lamp", mediaTray, 60, 5);
    lasting("Heating mat", mediaTray, 45, 6);
}

void MoneyMaker::addWhatIsUsedUp() {
    usedUp("Nutrient", 8, 2000).method = shelves_.methods[aeratedWater].id;
    usedUp("Coir and perlite", 12, 400).medium = idOf(shelves_.media, "Coir mix");
    usedUp("Coir and perlite", 14, 400, true).medium = idOf(shelves_.media, "Coir mix");
    usedUp("Bark, sand and perlite", 10, 400).medium = idOf(shelves_.media, "Bark and sand");
    usedUp("Perlite", 9, 300).medium = idOf(shelves_.media, "Perlite alone");
    usedUp("Jar of gel", 9, 300).treatment = idOf(shelves_.treatments, "IBA gel 1000");
    usedUp("Jar of gel", 11, 300).treatment = idOf(shelves_.treatments, "IBA gel 3000");
    usedUp("Tin of powder", 7, 500).treatment = idOf(shelves_.treatments, "IBA powder 3000");
    usedUp("Labels", 5, 100).basis = PriceBasis::Batch;
}

void MoneyMaker::addPower() {
    drawing("Air pump", aeratedWater, 5, 24, 1);
    drawing("Lamp", mediaTray, 36, 14, 1);
    drawing("Heating mat", mediaTray, 40, 24, 0.4);
    price(PriceKind::Tariff, "Electricity").tenThousandths = 2800;
    price(PriceKind::Tariff, "Electricity", true).tenThousandths = 3100;
}

void MoneyMaker::addWork() {
    taking("Laying out and clearing away", PriceBasis::Session, 20);
    taking("A look", PriceBasis::Check, 2);
    taking("Care of a station", PriceBasis::Care, 5);
    taking("Cutting and sticking", PriceBasis::Cutting, 0.5);
    taking("Putting into a collar", PriceBasis::Cutting, 0.25).method = shelves_.methods[aeratedWater].id;
    price(PriceKind::HourOfWork, "An hour").tenThousandths = 12 * whole;
    price(PriceKind::DaySooner, "A day sooner").tenThousandths = whole / 50;
}

/// The tin of powder was old when it was opened, and was never replaced.
void MoneyMaker::addLots() {
    const TreatmentId weak = idOf(shelves_.treatments, "IBA gel 1000");
    const TreatmentId strong = idOf(shelves_.treatments, "IBA gel 3000");
    constexpr int second = DemoCalendar::secondSeason;
    lotOf(weak, {}, "Jar 1", 0, 30);
    lotOf(weak, {}, "Jar 2", 120, 45);
    lotOf(weak, {}, "Jar 3", second + 20, 40);
    lotOf(strong, {}, "Jar A", 0, 60);
    lotOf(strong, {}, "Jar B", second, 50);
    lotOf(idOf(shelves_.treatments, "IBA powder 3000"), {}, "The old tin", 0, 900);
    lotOf({}, idOf(shelves_.media, "Coir mix"), "First bale", 0, 90);
    lotOf({}, idOf(shelves_.media, "Coir mix"), "Second bale", second, 60);
    std::ranges::sort(shelves_.lots, {}, [](const Lot& lot) { return std::pair(lot.usedFrom, lot.id); });
}

/// Now and then something was bought for a day's work, and once in a while somebody looked at the clock.
void MoneyMaker::addSessionExpenses() {
    constexpr std::size_t every = 6;
    for (std::size_t place = every / 2; place < records_.sessions.size(); place += every) {
        const Session& session = records_.sessions[place];
        Expense expense{.id = ids_.next<ExpenseId>(),
                        .batch = {},
                        .spentOn = session.date,
                        .what = "Blades and ties",
                        .hundredths = 240,
                        .session = session.id,
                        .minutes = {}};
        if (random_.below(2) == 0) expense.minutes = 15 + 5 * static_cast<double>(random_.below(10));
        records_.expenses.push_back(std::move(expense));
    }
}

/// Two batches in three were counted again: potted a week after their last look, and looked at once more three weeks later.
void MoneyMaker::addPottings() {
    constexpr int untilPotted = 7, untilCounted = 28;
    constexpr double lostAfterPotting = 0.06;
    for (const BatchRecord& record : records_.batches) {
        const Tally tally = tallyOf(record.batch, record.checks);
        if (tally.rooted == 0 || !tally.lastCheckedOn || random_.below(3) == 0) continue;
        const Date potted = addDays(*tally.lastCheckedOn, untilPotted);
        const Date counted = addDays(*tally.lastCheckedOn, untilCounted);
        if (potted > calendar_.today) continue;
        records_.pottings.push_back(
            {.id = ids_.next<PottingId>(), .batch = record.batch.id, .countedOn = potted, .potted = tally.rooted});
        int lost = 0;
        for (int plant = 0; plant < tally.rooted; ++plant) lost += random_.uniform() < lostAfterPotting ? 1 : 0;
        if (lost == 0 || counted > calendar_.today) continue;
        records_.pottings.push_back(
            {.id = ids_.next<PottingId>(), .batch = record.batch.id, .countedOn = counted, .lost = lost});
    }
    std::ranges::sort(records_.pottings, {},
                      [](const Potting& potting) { return std::pair(potting.countedOn, potting.id); });
}

}  // namespace

void addDemoMoney(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random) {
    MoneyMaker maker(records, calendar, ids, random);
    maker.addPrices();
    maker.addLots();
    maker.addSessionExpenses();
    maker.addPottings();
}

}  // namespace core
