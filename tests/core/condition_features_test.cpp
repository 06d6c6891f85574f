// SPDX-License-Identifier: MIT
// Conditions of the first days beside everything else on record.
#include "core/comparison/condition_features.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "core/comparison/goes_with.h"
#include "tests/support/builders.h"

namespace {

using core::Moment;
using std::chrono::hours;
using support::aBatch;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

Moment midnightUtc(core::Date day) {
    return Moment{std::chrono::sys_days{day}};
}

/// Batches a month apart, and of each station its temperatures, a reading a day for the first fourteen days of each batch.
struct Records {
    std::vector<core::BatchRecord> batches;
    std::unordered_map<core::StationId, core::MeasuredValues> measured;

    void add(core::StationId station, int rooted, std::optional<double> celsius) {
        const core::Date day = core::addDays(support::stickingDay(), 30 * static_cast<int>(batches.size()) - 3000);
        batches.push_back(
            aBatch().at(station).stuckOn(day).stuck(20).looked(28, {.rooted = rooted, .lost = 20 - rooted}));
        if (!celsius) return;
        for (int after = 0; after <= 14; ++after)
            measured[station][core::Quantity::SolutionTemperature].push_back(
                {.at = midnightUtc(core::addDays(day, after)), .value = *celsius});
    }

    [[nodiscard]] core::ConditionsOnRecord conditions() const {
        core::ConditionsOnRecord conditions{.climates = {}, .dayStart = midnightUtc};
        for (const auto& [station, values] : measured)
            conditions.climates.emplace(station, core::climateFrom(values, support::someShelves().facts));
        return conditions;
    }
    [[nodiscard]] std::vector<const core::BatchRecord*> pointers() const {
        std::vector<const core::BatchRecord*> all;
        for (const core::BatchRecord& record : batches) all.push_back(&record);
        return all;
    }
    [[nodiscard]] core::GoesWith goesWith() const {
        return core::goesWithRooting(support::someShelves(), pointers(), 28, 0.95, conditions());
    }
};

/// The warmer the tub, the more rooted; trays without a thermometer beside them.
Records warmerIsBetter(int tubs, int trays) {
    Records records;
    for (int i = 0; i < tubs; ++i) records.add(support::tubNorth, 6 + 3 * (i % 4), 18.0 + 2 * (i % 4));
    for (int i = 0; i < trays; ++i) records.add(support::benchWest, 9 + i % 3, {});
    return records;
}

const core::Association* named(const core::GoesWith& answer, const char* part) {
    const auto found = std::ranges::find_if(answer.associations, [part](const core::Association& each) {
        return each.name.find(part) != std::string::npos;
    });
    return found == answer.associations.end() ? nullptr : &*found;
}

TEST(ConditionFeatures, AreMeansOfTheFirstDaysAboutTheMiddleOfThoseOnRecord) {
    const Records records = warmerIsBetter(4, 2);
    const auto features =
        core::conditionFeaturesOf(records.conditions(), support::someShelves(), records.pointers(), 28);
    ASSERT_FALSE(features.empty());
    const core::ConditionFeature& warmth = features.front();
    EXPECT_EQ(warmth.name, "solution temperature");
    EXPECT_THAT(warmth.feature.name, HasSubstr("of the first 14 days, each C warmer"));
    EXPECT_THAT(warmth.feature.values, ElementsAre(-3, -1, 1, 3, 0, 0));
    EXPECT_THAT(warmth.notOnRecord, ElementsAre(0, 0, 0, 0, 1, 1));
    EXPECT_EQ(warmth.onRecord, 4);
}

TEST(ConditionFeatures, GoNoFurtherThanTheHorizon) {
    const Records records = warmerIsBetter(4, 0);
    const auto features =
        core::conditionFeaturesOf(records.conditions(), support::someShelves(), records.pointers(), 9);
    EXPECT_THAT(features.front().feature.name, HasSubstr("of the first 9 days"));
    EXPECT_TRUE(core::conditionFeaturesOf({}, support::someShelves(), records.pointers(), 28).empty());
}

TEST(ConditionFeatures, MeasureTimeOutsideByTheBandBeforeRootsWhateverRooted) {
    Records records;
    records.add(support::tubNorth, 20, 23);
    records.add(support::tubNorth, 0, 30);
    const auto features =
        core::conditionFeaturesOf(records.conditions(), support::someShelves(), records.pointers(), 28);
    const auto outside =
        std::ranges::find(features, "time outside the bands before roots", &core::ConditionFeature::name);
    ASSERT_NE(outside, features.end());
    EXPECT_THAT(outside->feature.values, ElementsAre(-5, 5));  // none and all of it, in tenths about the middle
}

TEST(GoesWithConditions, FindWhatWentWithRootingWithinThoseOnRecord) {
    const core::GoesWith answer = warmerIsBetter(16, 8).goesWith();
    ASSERT_TRUE(answer.whyNot.empty()) << answer.whyNot;
    const core::Association* warmth = named(answer, "solution temperature of the first 14 days");
    ASSERT_NE(warmth, nullptr);
    EXPECT_GT(warmth->oddsRatio, 1.2);
    EXPECT_LT(warmth->holmP.value(), 0.01);
    EXPECT_EQ(warmth->batches, 16);
    // That there is no thermometer at the trays is what the method says already.
    EXPECT_EQ(named(answer, "not on record"), nullptr);
}

TEST(GoesWithConditions, MarkBatchesWithoutThem) {
    Records records = warmerIsBetter(16, 8);
    for (int i = 0; i < 6; ++i) records.add(support::tubSouth, 10, {});
    const core::GoesWith answer = records.goesWith();
    const core::Association* missing = named(answer, "solution temperature not on record, against on record");
    ASSERT_NE(missing, nullptr);
    EXPECT_EQ(missing->batches, 14);
    EXPECT_GT(named(answer, "each C warmer")->oddsRatio, 1.2);
}

TEST(GoesWithConditions, NameWhatTooFewBatchesHave) {
    const core::GoesWith answer = warmerIsBetter(8, 8).goesWith();
    EXPECT_EQ(named(answer, "solution temperature"), nullptr);
    EXPECT_THAT(answer.leftOut, testing::Contains(HasSubstr("solution temperature: on record of 8 of 16 batches")));
}

TEST(GoesWithConditions, ChangeNothingWhereNothingWasRead) {
    const Records records = warmerIsBetter(0, 8);
    const core::GoesWith with = records.goesWith(),
                         without = core::goesWithRooting(support::someShelves(), records.pointers(), 28, 0.95);
    EXPECT_THAT(with.leftOut, IsEmpty());
    EXPECT_EQ(with.inWords, without.inWords);
}

}  // namespace
