// SPDX-License-Identifier: MIT
#include "core/planning/past_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using core::PastRecords;
using support::aBatch;
using testing::HasSubstr;

core::Shelves shelvesWith(std::string botanicalName, std::optional<int> limit = 35) {
    core::Shelves shelves = support::someShelves();
    for (core::Plant& plant : shelves.plants) {
        if (plant.id != support::hebe) continue;
        plant.botanicalName = std::move(botanicalName);
        plant.cultivar.clear();
        plant.usualRootingDaysHigh = limit;
        break;
    }
    return shelves;
}

PastRecords pastOf(const core::Shelves& shelves, const std::vector<core::BatchRecord>& batches,
                   core::MethodId method = {}) {
    return core::pastRecordsOf(support::hebe, method, shelves, batches);
}

TEST(PastRecords, CountBatchesThatWereWatchedToTheHorizonOrToTheEnd) {
    const core::Shelves shelves = shelvesWith("Hebe albicans");
    const std::vector<core::BatchRecord> batches{
        aBatch().stuck(20).looked(14, {.rooted = 5}).looked(35, {.rooted = 7}).build(),
        aBatch().stuck(10).looked(14, {.rooted = 6, .lost = 4}).build(),  // decided, if early
        aBatch().stuck(20).looked(14, {.rooted = 9}).build(),             // too young: only the quick are known
        aBatch().stuck(20).build(),
        aBatch().stuck(20).looked(14, {.rooted = 9, .lost = 8}).build(),   // three of twenty still open
        aBatch().stuck(20).looked(14, {.rooted = 10, .lost = 8}).build(),  // two: they are left out, the batch counts
        aBatch().of(support::deutzia).stuck(20).looked(40, {.rooted = 20}).build()};
    const PastRecords records = pastOf(shelves, batches);
    EXPECT_EQ(records.horizonDay, 35);
    ASSERT_EQ(records.batches.size(), 3U);
    EXPECT_EQ(records.rooted, 28);
    EXPECT_EQ(records.assessed, 48);
    EXPECT_EQ(records.leftOut, 62);
    ASSERT_EQ(records.past.batches.size(), 3U);
    EXPECT_EQ(records.past.batches[0].successes, 12);
    EXPECT_EQ(records.past.batches[0].trials, 20);
}

TEST(PastRecords, KeepToTheMethodThatIsAskedFor) {
    const core::Shelves shelves = shelvesWith("Hebe albicans");
    const std::vector<core::BatchRecord> batches{
        aBatch().at(support::tubNorth).stuck(20).looked(35, {.rooted = 5}).build(),
        aBatch().at(support::benchWest).stuck(20).looked(35, {.rooted = 15}).build()};
    EXPECT_EQ(pastOf(shelves, batches).rooted, 20);
    EXPECT_EQ(pastOf(shelves, batches, support::mediaTray).rooted, 15);
    EXPECT_EQ(pastOf(shelves, batches, support::aeratedWater).rooted, 5);
}

TEST(PastRecords, TurnTheReferenceBandIntoABetaPriorOfItsMiddle) {
    // 80 to 90 of 100: the middle is 0.85, and a band so narrow is held down to the weight of ten cuttings.
    const PastRecords narrow = pastOf(shelvesWith("Lavandula angustifolia"), {});
    ASSERT_TRUE(narrow.band);
    EXPECT_DOUBLE_EQ(narrow.band->low, 0.8);
    EXPECT_DOUBLE_EQ(narrow.band->high, 0.9);
    EXPECT_NEAR(narrow.past.prior.successes, 8.5, 1e-12);
    EXPECT_NEAR(narrow.past.prior.failures, 1.5, 1e-12);
    EXPECT_NEAR(narrow.meanRate, 0.85, 1e-9);
    EXPECT_EQ(narrow.ownWeight, 0);
    // 48 to 100: the middle is 0.74; the band, 3.29 standard deviations wide, is worth 0.74 * 0.26 / (0.52 / 3.29)^2 - 1 cuttings.
    const PastRecords wide = pastOf(shelvesWith("Salvia rosmarinus"), {});
    const double worth = 0.74 * 0.26 / ((0.52 / 3.29) * (0.52 / 3.29)) - 1;
    EXPECT_NEAR(wide.past.prior.successes, 0.74 * worth, 1e-12);
    EXPECT_NEAR(wide.past.prior.failures, 0.26 * worth, 1e-12);
}

TEST(PastRecords, HaveJeffreyssPriorWhereThereIsNoBand) {
    for (const char* name : {"Hebe albicans", "Mentha spicata", "Lavandula stoechas"}) {  // the last has one end only
        const PastRecords records = pastOf(shelvesWith(name), {});
        EXPECT_FALSE(records.band) << name;
        EXPECT_EQ(records.past.prior.successes, 0.5) << name;
        EXPECT_EQ(records.past.prior.failures, 0.5) << name;
    }
}

TEST(PastRecords, LetTheBandFadeAsOwnRecordsGrow) {
    const core::Shelves shelves = shelvesWith("Lavandula angustifolia");
    std::vector<core::BatchRecord> batches;
    double before = 0;
    for (int count = 1; count <= 12; ++count) {
        batches.push_back(aBatch().stuck(20).looked(35, {.rooted = 6 + count % 3}).build());
        const PastRecords records = pastOf(shelves, batches);
        EXPECT_GT(records.ownWeight, before);
        before = records.ownWeight;
        // The mean lies between the band's middle and the records'.
        EXPECT_LT(records.meanRate, 0.85);
        EXPECT_GT(records.meanRate, static_cast<double>(records.rooted) / records.assessed);
    }
    EXPECT_GT(before, 0.8);
    // Weighed as counted: effective cuttings against the band's ten.
    const PastRecords records = pastOf(shelves, batches);
    const double effective = 240 / (1 + 19 * records.correlation);
    EXPECT_NEAR(records.ownWeight, effective / (effective + 10), 1e-9);
}

TEST(PastRecords, AreCountedAtTheReferencesUpperDayWhereThePlantHasNoLimit) {
    EXPECT_EQ(pastOf(shelvesWith("Laurus nobilis", {}), {}).horizonDay, 180);
    EXPECT_EQ(pastOf(shelvesWith("Mentha spicata", {}), {}).horizonDay, 28);  // 14 days: the logbook's is later
    EXPECT_EQ(pastOf(shelvesWith("Hebe albicans", {}), {}).horizonDay, 28);
    EXPECT_EQ(pastOf(shelvesWith("Laurus nobilis", 90), {}).horizonDay, 90);
}

TEST(PastRecords, SayWhatTheyRestOn) {
    const std::string none = core::restsOnInWords(pastOf(shelvesWith("Hebe albicans"), {}));
    EXPECT_THAT(none, HasSubstr("No batch of Hebe albicans was watched to the end yet."));
    EXPECT_THAT(none, HasSubstr("no strike rate for it"));
    const std::string band = core::restsOnInWords(pastOf(shelvesWith("Lavandula angustifolia"), {}));
    EXPECT_THAT(band, HasSubstr("80 to 90 of 100 (KREM), and all of this rests on it."));
    EXPECT_THAT(band, HasSubstr("taken as usual"));
    const std::vector<core::BatchRecord> batches{aBatch().stuck(20).looked(35, {.rooted = 6}).build(),
                                                 aBatch().stuck(20).looked(35, {.rooted = 9}).build(),
                                                 aBatch().stuck(21).build()};
    const std::string own = core::restsOnInWords(pastOf(shelvesWith("Lavandula angustifolia"), batches));
    EXPECT_THAT(own, HasSubstr("15 of 40 rooted by day 35, in 2 batches of your own; "));
    EXPECT_THAT(own, HasSubstr(" of 100 fits (95 % interval, with the spread between batches)."));
    EXPECT_THAT(own, HasSubstr("% of the say"));
    EXPECT_THAT(own, HasSubstr("learnt from the records"));
    EXPECT_THAT(own, HasSubstr("21 cuttings are left out"));
}

TEST(PastRecords, HaveJeffreyssIntervalWhereLuckIsOwnAndAWiderOneWhereBatchesDiffer) {
    // scipy.stats.beta.ppf([0.025, 0.975], 18.5, 12.5), SciPy 1.10.1.
    const std::vector<core::BatchCount> counts{{.code = {}, .rooted = 12, .assessed = 20},
                                               {.code = {}, .rooted = 6, .assessed = 10}};
    const auto plain = core::plainRecordsOf(counts).ownLimits;
    ASSERT_TRUE(plain);
    EXPECT_NEAR(plain->low, 0.4222002690337061, 5e-4);
    EXPECT_NEAR(plain->high, 0.7595140843854613, 5e-4);
    const auto inTrays = core::pastRecordsOf(counts).ownLimits;
    ASSERT_TRUE(inTrays);
    EXPECT_LT(inTrays->low, plain->low);
    EXPECT_GT(inTrays->high, plain->high);
    EXPECT_FALSE(core::pastRecordsOf(std::vector<core::BatchCount>{}).ownLimits);
}

TEST(PastRecords, OfPlainCountsAreJeffreyssPosteriorWhereLuckIsOwn) {
    const std::vector<core::BatchCount> counts{{.code = {}, .rooted = 12, .assessed = 20},
                                               {.code = {}, .rooted = 6, .assessed = 10}};
    const PastRecords plain = core::plainRecordsOf(counts);
    EXPECT_NEAR(plain.meanRate, 18.5 / 31, 1e-9);
    EXPECT_EQ(plain.correlation, 0);
    EXPECT_NEAR(plain.ownWeight, 30.0 / 31, 1e-12);
    const PastRecords inTrays = core::pastRecordsOf(counts);
    EXPECT_GT(inTrays.correlation, 0);
    EXPECT_LT(inTrays.ownWeight, plain.ownWeight);
}

TEST(UsualTraySize, IsThatOfOwnBatchesElseOfStations) {
    const core::Shelves shelves = shelvesWith("Hebe albicans");
    EXPECT_EQ(core::usualTraySize(pastOf(shelves, {aBatch().stuck(14).looked(35, {.rooted = 6}).build()}), shelves),
              14);
    core::Shelves bare = shelves;
    bare.stations.clear();
    EXPECT_EQ(core::usualTraySize(pastOf(bare, {}), bare), 20);
    bare.stations = {
        {.id = support::benchWest, .name = "A", .method = support::mediaTray, .rows = 5, .columns = 8, .note = {}},
        {.id = support::tubNorth, .name = "B", .method = support::aeratedWater, .rows = 3, .columns = 4, .note = {}}};
    EXPECT_EQ(core::usualTraySize(pastOf(bare, {}, support::mediaTray), bare), 40);
    EXPECT_EQ(core::usualTraySize(pastOf(bare, {}, support::aeratedWater), bare), 12);
}

}  // namespace
