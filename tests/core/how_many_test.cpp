// SPDX-License-Identifier: MIT
#include "core/planning/how_many.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <iostream>

#include "stats/numeric/seeded_random.h"
#include "stats/planning/predictive_count.h"

namespace {

using core::HowMany;
using core::HowManyQuestion;
using testing::HasSubstr;

std::vector<core::BatchCount> threeBatches() {
    return {{.code = "B1", .rooted = 12, .assessed = 20},
            {.code = "B2", .rooted = 15, .assessed = 20},
            {.code = "B3", .rooted = 9, .assessed = 20}};
}

HowMany howMany(const HowManyQuestion& question, const core::PastRecords& records) {
    auto answer = core::howManyToStick(question, records);
    EXPECT_TRUE(answer.has_value());
    return *answer;
}

TEST(HowMany, IsTheSmallestNumberThatHasTheAssurance) {
    const core::PastRecords records = core::pastRecordsOf(threeBatches());
    const HowManyQuestion question{.wanted = 24, .assurance = 0.9, .pottedLive = 0.95, .traySize = 20};
    const HowMany answer = howMany(question, records);
    ASSERT_TRUE(answer.stick);
    EXPECT_GE(*answer.achieved, 0.9);
    EXPECT_LT(stats::assuranceOfCount(24, *answer.stick - 1, records.past, 20, 0.95), 0.9);
    EXPECT_EQ(answer.trays, (*answer.stick + 19) / 20);
    EXPECT_EQ(answer.withATrayMore, *answer.stick + 20);
    EXPECT_GT(answer.chanceWithATrayMore, *answer.achieved);
    EXPECT_NEAR(answer.expectedPlants, *answer.stick * 0.95 * records.meanRate, 1e-9);
}

TEST(HowMany, IsTheBetaBinomialPredictiveOfPlainCountsInAThousandRandomCases) {
    stats::SeededRandom random(20260301);
    std::cout << "[ seed 20260301 ]\n";
    for (int run = 0; run < 1000; ++run) {
        const int trials = 5 + static_cast<int>(random.below(60));
        const core::BatchCount past{
            .code = {}, .rooted = 2 + random.binomial(trials - 2, 0.3 + 0.6 * random.uniform()), .assessed = trials};
        const HowManyQuestion question{.wanted = 1 + static_cast<int>(random.below(15)),
                                       .assurance = 0.5 + 0.45 * random.uniform()};
        const auto want = stats::countForPastRecords(question.wanted, past.rooted, past.assessed, question.assurance);
        if (!want.count || *want.count > 300) continue;
        const HowMany answer = howMany(question, core::plainRecordsOf({&past, 1}));
        ASSERT_EQ(answer.stick, want.count) << run;
        ASSERT_NEAR(*answer.achieved, *want.achieved, 1e-9) << run;
    }
}

TEST(HowMany, DrawsACurveThatRisesThroughItsAnswer) {
    const HowMany answer = howMany({.wanted = 24}, core::pastRecordsOf(threeBatches()));
    ASSERT_GE(answer.curve.size(), 20U);
    EXPECT_LE(answer.curve.size(), 120U);
    EXPECT_EQ(answer.curve.front().stuck, 24);
    for (std::size_t i = 1; i < answer.curve.size(); ++i) {
        EXPECT_GT(answer.curve[i].stuck, answer.curve[i - 1].stuck);
        EXPECT_GE(answer.curve[i].chance, answer.curve[i - 1].chance - 1e-12);
    }
    const auto at = std::ranges::find(answer.curve, *answer.stick, &core::StuckChance::stuck);
    ASSERT_NE(at, answer.curve.end());
    EXPECT_NEAR(at->chance, *answer.achieved, 1e-6);
    const auto more = std::ranges::find(answer.curve, answer.withATrayMore, &core::StuckChance::stuck);
    ASSERT_NE(more, answer.curve.end());
    EXPECT_EQ(more->chance, answer.chanceWithATrayMore);
}

TEST(HowMany, AsksForMoreWhenLessLivesOrFewerRootInTimeOrMoreShareATray) {
    const core::PastRecords records = core::pastRecordsOf(threeBatches());
    const int plain = *howMany({.wanted = 24}, records).stick;
    EXPECT_GT(*howMany({.wanted = 24, .pottedLive = 0.8}, records).stick, plain);
    EXPECT_GT(*howMany({.wanted = 24, .rootedInTime = 0.9}, records).stick, plain);
    EXPECT_EQ(*howMany({.wanted = 24, .pottedLive = 0.8, .rootedInTime = 0.9}, records).stick,
              *howMany({.wanted = 24, .pottedLive = 0.72}, records).stick);
    EXPECT_GT(*howMany({.wanted = 24, .traySize = 60}, records).stick,
              *howMany({.wanted = 24, .traySize = 5}, records).stick);
}

TEST(HowMany, SaysWhatMayComeOfItBesideWhatIsToBeExpected) {
    const core::PastRecords records = core::pastRecordsOf(threeBatches());
    const HowMany answer = howMany({.wanted = 24, .pottedLive = 0.9}, records);
    ASSERT_TRUE(answer.expectedRange);
    const stats::CountRange range = *answer.expectedRange;
    EXPECT_EQ(range, stats::rangeForPastBatches(*answer.stick, records.past, 20, 0.95, 0.9));
    EXPECT_LT(range.low, answer.expectedPlants);
    EXPECT_GT(range.high, answer.expectedPlants);
    EXPECT_THAT(answer.answerInWords,
                HasSubstr(" is what to expect, anything from " + std::to_string(range.low) + " to " +
                          std::to_string(range.high) + " may come of it (95 % prediction interval)."));
    const HowMany lessSure = howMany({.wanted = 24, .pottedLive = 0.9, .level = 0.8}, records);
    EXPECT_GT(lessSure.expectedRange->low, range.low);
    EXPECT_THAT(lessSure.answerInWords, HasSubstr("(80 % prediction interval)"));
    EXPECT_FALSE(core::howManyToStick({.wanted = 24, .level = 1}, records).has_value());
}

TEST(HowMany, SaysItInWords) {
    const HowMany answer = howMany({.wanted = 24, .pottedLive = 0.9}, core::pastRecordsOf(threeBatches()));
    EXPECT_THAT(answer.answerInWords, HasSubstr("Stick " + std::to_string(*answer.stick) + " for 24 plants"));
    EXPECT_THAT(answer.answerInWords, HasSubstr("90 in 100"));
    EXPECT_THAT(answer.answerInWords, HasSubstr("90 of 100 live on after potting"));
    EXPECT_THAT(answer.trayMoreInWords, HasSubstr("One tray of 20 more, " + std::to_string(*answer.stick + 20)));
    EXPECT_THAT(
        answer.recordsInWords,
        HasSubstr(
            "36 of 60 rooted, in 3 batches; 36 to 79 of 100 fits (95 % interval, with the spread between batches)."));
    EXPECT_EQ(answer.warning, "");
    EXPECT_THAT(howMany({.wanted = 1}, core::pastRecordsOf(threeBatches())).answerInWords, HasSubstr("for 1 plant:"));
}

TEST(HowMany, SaysWhenThereIsNoNumber) {
    const std::vector<core::BatchCount> none{{.code = "B1", .rooted = 0, .assessed = 60}};
    const HowMany answer = howMany({.wanted = 200, .assurance = 0.99}, core::pastRecordsOf(none));
    EXPECT_FALSE(answer.stick);
    EXPECT_TRUE(answer.curve.empty());
    EXPECT_THAT(answer.answerInWords, HasSubstr("Even 20000 cuttings would not give 200 plants"));
    EXPECT_NE(answer.warning, "");
}

TEST(HowMany, WarnsWhereNothingIsKnown) {
    const HowMany answer = howMany({.wanted = 10, .assurance = 0.8}, core::pastRecordsOf({}));
    EXPECT_THAT(answer.warning, HasSubstr("Nothing is known"));
}

TEST(HowMany, RefusesEachWrongFigureBySentence) {
    const auto faults =
        core::faultsIn({.wanted = 0, .assurance = 1, .pottedLive = 0, .rootedInTime = 1.5, .traySize = 0});
    ASSERT_EQ(faults.size(), 5U);
    EXPECT_EQ(faults[0].sentence, "Wanted is 0; 1 to 10000 is allowed.");
    EXPECT_THAT(faults[1].sentence, HasSubstr("Assurance is 1;"));
    EXPECT_THAT(faults[2].sentence, HasSubstr("Live after potting is 0; more than 0 and up to 1 is allowed."));
    EXPECT_FALSE(core::howManyToStick({.wanted = -3}, core::pastRecordsOf({})).has_value());
}

}  // namespace
