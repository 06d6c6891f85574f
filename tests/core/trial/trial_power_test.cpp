// SPDX-License-Identifier: MIT
#include "core/trial/trial_power.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/comparison/rate_interval.h"
#include "stats/planning/exact_power.h"
#include "stats/planning/non_inferiority_power.h"
#include "stats/planning/sample_size.h"
#include "stats/two_proportions/boschloo_test.h"
#include "tests/support/builders.h"

namespace {

using core::TrialMeasure;
using core::TrialPowerQuestion;

double binomialChance(int trials, int successes, double rate) {
    return std::exp(std::lgamma(trials + 1.0) - std::lgamma(successes + 1.0) - std::lgamma(trials - successes + 1.0)) *
           std::pow(rate, successes) * std::pow(1 - rate, trials - successes);
}

/// Over every table of both arms, each judged by the test itself.
double enumeratedTrialPower(int perArm, double rate1, double rate2) {
    double power = 0;
    for (int first = 0; first <= perArm; ++first)
        for (int second = 0; second <= perArm; ++second)
            if (stats::boschlooTest({first, perArm, second, perArm}).central <= 0.05 * (1 + 1e-9))
                power += binomialChance(perArm, first, rate1) * binomialChance(perArm, second, rate2);
    return power;
}

TEST(TrialPower, IsThatOfEveryTableJudgedByTheTestItself) {
    const TrialPowerQuestion question{.expected = 0.3, .margin = 0.6, .batchesPerArm = 100};
    const core::TrialPower power = core::trialPower(question).value();
    ASSERT_TRUE(power.perArmFor80);
    EXPECT_LE(*power.perArmFor80, 16);
    EXPECT_NEAR(core::powerOf(question, *power.perArmFor80), enumeratedTrialPower(*power.perArmFor80, 0.3, 0.9), 1e-9);
    EXPECT_LT(enumeratedTrialPower(*power.perArmFor80 - 1, 0.3, 0.9), 0.8) << "one fewer would not do";
}

TEST(TrialPower, AnswersWithTheNumberOfIndependentCuttingsWhereBatchesShareNoLuck) {
    const core::TrialPower power = core::trialPower({.expected = 0.5, .margin = 0.25, .batchesPerArm = 3}).value();
    EXPECT_EQ(power.perArmFor80, 60);  // the reference case power-boschloo-central-60-0.5-0.75
    EXPECT_EQ(power.perArmFor90, stats::sampleSize({.rate1 = 0.5, .rate2 = 0.75, .power = 0.9}).independentPerArm);
    EXPECT_TRUE(power.warning.empty());
    EXPECT_NE(power.answerInWords.find("stick 60 per arm"), std::string::npos) << power.answerInWords;
}

TEST(TrialPower, TakesTheLuckThatABatchSharesOffTheCuttings) {
    const TrialPowerQuestion question{.expected = 0.5, .margin = 0.25, .correlation = 0.1, .batchesPerArm = 12};
    const core::TrialPower power = core::trialPower(question).value();
    ASSERT_TRUE(power.perArmFor80);
    // Kish's design effect of batches of that size, by hand.
    const double size = *power.perArmFor80 / 12.0, worth = *power.perArmFor80 / (1 + (size - 1) * 0.1);
    EXPECT_GE(worth, 60 - 1e-9);
    EXPECT_LT(worth, 61);
    EXPECT_GE(core::powerOf(question, *power.perArmFor80), 0.8);
    EXPECT_LT(core::powerOf(question, *power.perArmFor80 - 2), 0.8);
}

TEST(TrialPower, SaysThatMoreCuttingsInTheSameFewBatchesWillNotDo) {
    TrialPowerQuestion question{.expected = 0.5, .margin = 0.25, .correlation = 0.2, .batchesPerArm = 2};
    const core::TrialPower power = core::trialPower(question).value();
    EXPECT_FALSE(power.perArmFor80);
    ASSERT_TRUE(power.batchesFor80);
    EXPECT_GT(*power.batchesFor80, 2);
    EXPECT_LT(core::powerOf(question, 500), 0.8) << "ten tubs' worth of luck is two tubs' worth";
    question.batchesPerArm = *power.batchesFor80;
    EXPECT_TRUE(core::trialPower(question).value().perArmFor80);
    EXPECT_NE(power.answerInWords.find("share too much luck"), std::string::npos) << power.answerInWords;
    EXPECT_NE(power.warning.find("no verdict"), std::string::npos) << power.warning;
}

TEST(TrialPower, AsksForMoreWhereSeveralPairsAreJudged) {
    const core::TrialPower two =
        core::trialPower({.expected = 0.4, .margin = 0.3, .arms = 2, .batchesPerArm = 4}).value();
    const core::TrialPower four =
        core::trialPower({.expected = 0.4, .margin = 0.3, .arms = 4, .batchesPerArm = 4}).value();
    EXPECT_GT(*four.perArmFor80, *two.perArmFor80);
}

TEST(TrialPower, OfAsGoodAsIsThatOfTheTestAgainstTheMargin) {
    const TrialPowerQuestion question{
        .measure = TrialMeasure::AsGoodAs, .expected = 0.8, .margin = 0.2, .batchesPerArm = 5};
    const core::TrialPower power = core::trialPower(question).value();
    EXPECT_EQ(power.expectedOther, 0.8);
    ASSERT_TRUE(power.perArmFor80);
    EXPECT_NEAR(core::powerOf(question, *power.perArmFor80),
                stats::nonInferiorityPower({*power.perArmFor80, *power.perArmFor80, 0.8, 0.8}, 0.2, 0.95), 1e-12);
    EXPECT_NE(power.answerInWords.find("as good within 20 of 100"), std::string::npos) << power.answerInWords;
}

TEST(TrialPower, DrawsACurveThatHoldsTheAnswers) {
    const core::TrialPower power =
        core::trialPower({.expected = 0.6, .margin = 0.25, .correlation = 0.05, .batchesPerArm = 8}).value();
    ASSERT_TRUE(power.perArmFor80 && power.perArmFor90);
    int answers = 0, before = 0;
    for (const core::PowerOfNumber& point : power.curve) {
        EXPECT_GT(point.perArm, before);
        before = point.perArm;
        answers += point.perArm == *power.perArmFor80 || point.perArm == *power.perArmFor90 ? 1 : 0;
        EXPECT_EQ(point.power, core::powerOf(power.question, point.perArm));
    }
    EXPECT_EQ(answers, 2);
    EXPECT_LT(power.curve.front().power, 0.2);
    EXPECT_GE(power.curve.back().power, 0.9);
}

TEST(TrialPower, LooksBelowWhereThereIsNoRoomAbove) {
    EXPECT_NEAR(core::trialPower({.expected = 0.9, .margin = 0.3, .batchesPerArm = 4}).value().expectedOther, 0.6,
                1e-12);
}

TEST(TrialPower, RefusesWhatCannotBe) {
    const auto sentence = [](const TrialPowerQuestion& question) {
        const auto power = core::trialPower(question);
        return power ? std::string() : power.error().front().sentence;
    };
    EXPECT_NE(sentence({.expected = 1.2, .margin = 0.2}).find("Expected is 120"), std::string::npos);
    EXPECT_NE(sentence({.expected = 0.5, .margin = 0}).find("Margin is 0"), std::string::npos);
    EXPECT_NE(sentence({.expected = 0.5, .margin = 0.7}).find("Margin is 70"), std::string::npos);
    EXPECT_FALSE(sentence({.expected = 0.5, .margin = 0.2, .arms = 1}).empty());
    EXPECT_FALSE(sentence({.expected = 0.5, .margin = 0.2, .batchesPerArm = 0}).empty());
}

TEST(ExpectedRate, IsThatOfTheFirstArmsOwnBatchesOrAHalf) {
    const core::Records records =
        support::recordsOf({support::aBatch().looked(14, {.rooted = 12}).looked(28, {.rooted = 6, .lost = 6}),
                            support::aBatch().at(support::benchWest).looked(28, {.rooted = 2, .lost = 22}),
                            support::aBatch().of(support::deutzia).looked(28, {.rooted = 24})});
    core::Trial design;
    design.factor = core::Factor::Method;
    design.horizonDay = 28;
    design.arms = {{.method = support::aeratedWater}, {.method = support::mediaTray}};
    const auto expected = [&](std::span<const core::PlantId> plants) {
        return core::expectedRateOf(design, plants, records.shelves, records.batches, {});
    };
    const std::vector<core::PlantId> hebe{support::hebe};
    EXPECT_EQ(expected(hebe).batches, 1);
    EXPECT_GT(expected(hebe).rate, 0.5);
    EXPECT_NE(expected(hebe).inWords.find("18 of 24"), std::string::npos) << expected(hebe).inWords;
    const core::Limits ofOne = core::rateLimits(core::RateInterval::Wilson, 18, 24, 0.95);
    ASSERT_TRUE(expected(hebe).limits);
    EXPECT_EQ(expected(hebe).limits->low, ofOne.low);
    EXPECT_EQ(expected(hebe).limits->high, ofOne.high);
    EXPECT_NE(expected(hebe).inWords.find("in 1 batch; 55 to 88 of 100 fits (95 % interval)."), std::string::npos)
        << expected(hebe).inWords;
    EXPECT_EQ(expected({}).batches, 2) << "of any plant";
    ASSERT_TRUE(expected({}).limits);
    const core::Limits alike = core::rateLimits(core::RateInterval::Wilson, 42, 48, 0.95);
    EXPECT_LT(expected({}).limits->low, alike.low) << "two batches that differ say less than their cuttings";
    EXPECT_NE(expected({}).inWords.find("interval, with the spread between batches)"), std::string::npos)
        << expected({}).inWords;

    design.factor = core::Factor::Treatment;
    design.arms = {{.treatment = support::weakGel}, {.treatment = support::nothing}};
    EXPECT_EQ(expected({}).rate, 0.5);
    EXPECT_EQ(expected({}).batches, 0);
    EXPECT_FALSE(expected({}).limits);
    EXPECT_NE(expected({}).inWords.find("Nothing of"), std::string::npos) << expected({}).inWords;
}

}  // namespace
