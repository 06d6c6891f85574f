// SPDX-License-Identifier: MIT
#include "core/money/price.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/money/price_rules.h"
#include "tests/support/builders.h"

namespace {

using core::Price;
using core::PriceBasis;
using core::PriceKind;
using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;

core::Date dayOf2026(unsigned month, unsigned day) {
    return {std::chrono::year{2026}, std::chrono::month{month}, std::chrono::day{day}};
}

Price pumpFrom(core::Date from) {
    return {.id = {1}, .what = "air pump", .from = from, .tenThousandths = 240'000, .lastsYears = 4};
}

std::vector<std::string> priceSentences(const Price& price, const std::vector<Price>& others = {}) {
    core::Shelves shelves = support::someShelves();
    shelves.prices = others;
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(price, shelves, support::today()))
        sentences.push_back(refusal.sentence);
    return sentences;
}

TEST(PriceWords, ReadBack) {
    for (const PriceKind kind : core::allPriceKinds) EXPECT_EQ(core::priceKindFrom(core::wordFor(kind)), kind);
    for (const PriceBasis basis : core::allPriceBases) EXPECT_EQ(core::priceBasisFrom(core::wordFor(basis)), basis);
    EXPECT_FALSE(core::priceKindFrom("rent"));
    EXPECT_FALSE(core::priceBasisFrom("moon"));
}

TEST(PriceDays, TheLaterOfOneNameTakesOver) {
    Price later = pumpFrom(dayOf2026(4, 1));
    later.what = "Air Pump";
    const std::vector<Price> all{pumpFrom(dayOf2026(1, 1)), later};
    EXPECT_EQ(core::lastDayOf(all[0], all), dayOf2026(3, 31));
    EXPECT_FALSE(core::lastDayOf(all[1], all));
    EXPECT_FALSE(core::holdsOn(core::addDays(dayOf2026(1, 1), -1), all[0], all));
    EXPECT_TRUE(core::holdsOn(dayOf2026(1, 1), all[0], all));
    EXPECT_TRUE(core::holdsOn(dayOf2026(3, 31), all[0], all));
    EXPECT_FALSE(core::holdsOn(dayOf2026(4, 1), all[0], all));
    EXPECT_TRUE(core::holdsOn(dayOf2026(12, 31), all[1], all));
}

TEST(PriceDays, ItsOwnLastDayCountsWhereItIsTheEarlier) {
    std::vector<Price> all{pumpFrom(dayOf2026(1, 1)), pumpFrom(dayOf2026(4, 1))};
    all[0].until = dayOf2026(2, 10);
    EXPECT_EQ(core::lastDayOf(all[0], all), dayOf2026(2, 10));
    all[0].until = dayOf2026(6, 1);
    EXPECT_EQ(core::lastDayOf(all[0], all), dayOf2026(3, 31));
}

TEST(PriceDays, AnotherOwnerKindBasisOrNameIsAnotherPrice) {
    const Price pump = pumpFrom(dayOf2026(1, 1));
    Price other = pump;
    other.method = support::aeratedWater;
    EXPECT_FALSE(core::isSamePriced(pump, other));
    other = pump;
    other.kind = PriceKind::Electricity;
    EXPECT_FALSE(core::isSamePriced(pump, other));
    other = pump;
    other.basis = PriceBasis::Session;
    EXPECT_FALSE(core::isSamePriced(pump, other));
    other = pump;
    other.what = "air stone";
    EXPECT_FALSE(core::isSamePriced(pump, other));
    other.kind = PriceKind::Tariff;
    Price tariff = pump;
    tariff.kind = PriceKind::Tariff;
    EXPECT_TRUE(core::isSamePriced(tariff, other)) << "there is one tariff at a time, whatever it is called";
}

TEST(Tidied, LeavesWhatItsKindAsksForAndNothingElse) {
    Price full = pumpFrom(dayOf2026(1, 1));
    full.lastsFor = 30;
    full.basis = PriceBasis::Cutting;
    full.watts = 5;
    full.hoursADay = 24;
    full.duty = 0.5;
    full.minutes = 3;
    full.note = "kept";
    for (const PriceKind kind : core::allPriceKinds) {
        full.kind = kind;
        const Price tidy = core::tidied(full);
        SCOPED_TRACE(core::wordFor(kind));
        EXPECT_EQ(tidy.tenThousandths != 0, core::hasAmount(kind));
        EXPECT_EQ(tidy.lastsYears.has_value(), kind == PriceKind::Lasting);
        EXPECT_EQ(tidy.lastsFor.has_value(), kind == PriceKind::Lasting || kind == PriceKind::UsedUp);
        EXPECT_EQ(tidy.watts != 0, kind == PriceKind::Electricity);
        EXPECT_EQ(tidy.duty != 1, kind == PriceKind::Electricity);
        EXPECT_EQ(tidy.minutes != 0, kind == PriceKind::WorkTime);
        EXPECT_EQ(tidy.basis == PriceBasis::Cutting, kind == PriceKind::UsedUp || kind == PriceKind::WorkTime);
        EXPECT_EQ(tidy.note, "kept");
        EXPECT_EQ(core::tidied(tidy), tidy);
    }
}

TEST(PriceRules, PassOneOfEveryKind) {
    Price price = pumpFrom(dayOf2026(1, 1));
    EXPECT_THAT(priceSentences(price), IsEmpty());
    price.lastsYears.reset();
    price.lastsFor = 30;
    EXPECT_THAT(priceSentences(price), IsEmpty());
    price.kind = PriceKind::UsedUp;
    price.medium = support::coirMix;
    EXPECT_THAT(priceSentences(price), IsEmpty());
    price.kind = PriceKind::Electricity;
    price.watts = 5;
    EXPECT_THAT(priceSentences(price), IsEmpty());
    price.kind = PriceKind::WorkTime;
    EXPECT_THAT(priceSentences(price), IsEmpty());
    price.medium = {};
    for (const PriceKind kind : {PriceKind::Tariff, PriceKind::HourOfWork, PriceKind::DaySooner}) {
        price.kind = kind;
        price.tenThousandths = 0;  // an hour may be worth nothing
        EXPECT_THAT(priceSentences(price), IsEmpty());
    }
}

TEST(PriceRules, RefuseABlankNameAndAnAmountThatCannotBe) {
    Price price = pumpFrom(dayOf2026(1, 1));
    price.what = " ";
    price.tenThousandths = -10'000;
    EXPECT_THAT(priceSentences(price), ElementsAre("Name is blank; text of 1 to 200 characters is allowed.",
                                                   "Amount is -1; 0 to 1000000000 is allowed."));
    price = pumpFrom(dayOf2026(1, 1));
    price.tenThousandths = core::mostTenThousandths + 1;
    EXPECT_THAT(priceSentences(price), testing::SizeIs(1));
}

TEST(PriceRules, RefuseOwnersThatAreTwoOrGoneOrOfTheWholeBench) {
    Price price = pumpFrom(dayOf2026(1, 1));
    price.method = support::aeratedWater;
    price.station = support::tubNorth;
    EXPECT_THAT(priceSentences(price),
                ElementsAre("Belongs to has 2 things; one method, station, medium or treatment is allowed, or none."));
    price.method = {};
    price.station = {4711};
    EXPECT_THAT(priceSentences(price), ElementsAre("Belongs to has the id 4711, which this logbook does not have; one "
                                                   "that this logbook has is allowed."));
    price.station = support::tubNorth;
    price.kind = PriceKind::Tariff;
    EXPECT_THAT(priceSentences(price),
                ElementsAre("Belongs to has 1 things; none is allowed, since it holds for the whole bench."));
    price.kind = PriceKind::WorkTime;
    price.basis = PriceBasis::Session;
    EXPECT_THAT(priceSentences(price), ElementsAre("Belongs to has one thing; none is allowed for the work of a "
                                                   "session, which is that of all that is stuck on the day."));
}

TEST(PriceRules, RefuseDaysThatCannotBe) {
    Price price = pumpFrom(dayOf2026(3, 1));
    price.until = dayOf2026(2, 1);
    EXPECT_THAT(priceSentences(price), ElementsAre("Until is 2026-02-01; 2026-03-01 or later is allowed."));
    price.until = dayOf2026(3, 1);
    EXPECT_THAT(priceSentences(price), IsEmpty()) << "one day";
    Price other = price;
    other.id = {2};
    EXPECT_THAT(priceSentences(price, {other}),
                ElementsAre("From is 2026-03-01, the day from which another price of \"air pump\" holds; another day "
                            "is allowed."));
    EXPECT_THAT(priceSentences(price, {price}), IsEmpty()) << "it may be on the shelf itself";
    price = pumpFrom(core::addDays(support::today(), 3650));
    EXPECT_THAT(priceSentences(price), IsEmpty());
    price.from = core::addDays(price.from, 1);
    EXPECT_THAT(priceSentences(price), testing::SizeIs(1));
    price.from = core::Date{std::chrono::year{2026} / 2 / 30};
    EXPECT_THAT(priceSentences(price), testing::SizeIs(1));
}

TEST(PriceRules, RefuseALifeThatIsNoneOrTwo) {
    Price price = pumpFrom(dayOf2026(1, 1));
    price.lastsFor = 30;
    EXPECT_THAT(priceSentences(price), ElementsAre("Lasts has both years and batches; one of the two is allowed."));
    price.lastsFor.reset();
    price.lastsYears.reset();
    EXPECT_THAT(priceSentences(price),
                ElementsAre("Lasts for years is not given; more than 0 and up to 100 is allowed."));
    for (const double years :
         {0.0, -1.0, 100.5, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        price.lastsYears = years;
        EXPECT_THAT(priceSentences(price), testing::SizeIs(1)) << years;
    }
}

TEST(PriceRules, RefuseFiguresThatItsKindCannotHave) {
    Price price = pumpFrom(dayOf2026(1, 1));
    price.kind = PriceKind::UsedUp;
    EXPECT_THAT(priceSentences(price),
                ElementsAre("A pack does for is not given; more than 0 and up to 1000000 is allowed."));
    price.lastsFor = 20;
    price.basis = PriceBasis::Care;
    EXPECT_THAT(priceSentences(price),
                ElementsAre("For each is care; cutting, batch or session is allowed for what is used up."));
    price.kind = PriceKind::Electricity;
    price.hoursADay = 24.5;
    price.duty = -0.1;
    EXPECT_THAT(priceSentences(price), ElementsAre("Power is 0; more than 0 and up to 100000 is allowed.",
                                                   "Hours a day is 24.5; 0 to 24 is allowed.",
                                                   "Share of the time is -0.1; 0 to 1 is allowed."));
    price.kind = PriceKind::WorkTime;
    price.minutes = std::numeric_limits<double>::quiet_NaN();
    EXPECT_THAT(priceSentences(price), testing::SizeIs(1));
    price.minutes = -1;
    EXPECT_THAT(priceSentences(price), ElementsAre("Minutes is -1; 0 to 10000 is allowed."));
}

}  // namespace
