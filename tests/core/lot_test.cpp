// SPDX-License-Identifier: MIT
#include "core/treatment/lot.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/treatment/lot_rules.h"
#include "tests/support/builders.h"

namespace {

using core::Lot;
using testing::ElementsAre;
using testing::IsEmpty;

core::Date lotDay(unsigned month, unsigned day = 1) {
    return {std::chrono::year{2026}, std::chrono::month{month}, std::chrono::day{day}};
}

Lot gelFrom(std::int64_t id, const std::string& name, core::Date from) {
    return {.id = {id}, .name = name, .treatment = support::weakGel, .usedFrom = from};
}

std::vector<std::string> lotSentences(const Lot& lot, const std::vector<Lot>& others = {}) {
    core::Shelves shelves = support::someShelves();
    shelves.lots = others;
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(lot, shelves, support::today()))
        sentences.push_back(refusal.sentence);
    return sentences;
}

TEST(LotInUse, IsTheLastThatWasBegunByThatDay) {
    std::vector<Lot> lots{gelFrom(2, "second", lotDay(4)), gelFrom(1, "first", lotDay(1))};
    lots.push_back({.id = {3}, .name = "bag", .medium = support::coirMix, .usedFrom = lotDay(2)});
    EXPECT_EQ(core::lotInUse(lots, support::weakGel, core::addDays(lotDay(1), -1)), nullptr);
    EXPECT_EQ(core::lotInUse(lots, support::weakGel, lotDay(1))->name, "first");
    EXPECT_EQ(core::lotInUse(lots, support::weakGel, lotDay(3, 31))->name, "first");
    EXPECT_EQ(core::lotInUse(lots, support::weakGel, lotDay(4))->name, "second");
    EXPECT_EQ(core::lotInUse(lots, support::coirMix, lotDay(5))->name, "bag");
    EXPECT_EQ(core::lotInUse(lots, support::nothing, lotDay(5)), nullptr);
    EXPECT_EQ(core::lotInUse(lots, core::TreatmentId{}, lotDay(5)), nullptr) << "what is not recorded has no lot";
    EXPECT_EQ(core::lotInUse(lots, core::MediumId{}, lotDay(5)), nullptr);
}

TEST(LotRules, PassALotOfATreatmentOrAMedium) {
    Lot lot = gelFrom(1, "12/7", lotDay(3));
    EXPECT_THAT(lotSentences(lot, {lot}), IsEmpty());
    lot.madeOn = lot.usedFrom;
    EXPECT_THAT(lotSentences(lot), IsEmpty());
    lot.treatment = {};
    lot.medium = support::coirMix;
    EXPECT_THAT(lotSentences(lot, {gelFrom(2, "12/7", lotDay(3))}), IsEmpty()) << "of another thing";
}

TEST(LotRules, RefuseNoneAndTwoOwnersAndOneThatIsGone) {
    Lot lot = gelFrom(1, "12/7", lotDay(3));
    lot.medium = support::coirMix;
    EXPECT_THAT(lotSentences(lot), ElementsAre("Lot of is a treatment and a medium; one treatment or one medium is "
                                               "allowed."));
    lot.treatment = {};
    lot.medium = {};
    EXPECT_THAT(lotSentences(lot), ElementsAre("Lot of is nothing; one treatment or one medium is allowed."));
    lot.medium = {4711};
    EXPECT_THAT(lotSentences(lot), ElementsAre("Lot of has the id 4711, which this logbook does not have; one that "
                                               "this logbook has is allowed."));
}

TEST(LotRules, RefuseANameOrADayThatIsTaken) {
    EXPECT_THAT(lotSentences(gelFrom(1, "12", lotDay(3)), {gelFrom(2, "12", lotDay(4))}),
                ElementsAre("Name is \"12\", which is taken; a name that is not taken is allowed."));
    EXPECT_THAT(lotSentences(gelFrom(1, "12", lotDay(3)), {gelFrom(2, "11", lotDay(3))}),
                ElementsAre("Used from is 2026-03-01, the day from which \"11\" is used; another day is allowed."));
    EXPECT_THAT(lotSentences(gelFrom(1, "", lotDay(3))),
                ElementsAre("Name is blank; text of 1 to 200 characters is allowed."));
}

TEST(LotRules, RefuseDaysThatCannotBe) {
    Lot lot = gelFrom(1, "12", core::addDays(support::today(), 1));
    EXPECT_THAT(lotSentences(lot), testing::SizeIs(1)) << "not in use yet";
    lot.usedFrom = lotDay(3);
    lot.madeOn = lotDay(3, 2);
    EXPECT_THAT(lotSentences(lot), ElementsAre("Made on is 2026-03-02; 2026-03-01 or earlier is allowed."));
    lot.madeOn = core::Date{std::chrono::year{1700} / 1 / 1};
    EXPECT_THAT(lotSentences(lot), testing::SizeIs(1));
}

}  // namespace
