// SPDX-License-Identifier: MIT
#include "app/report/comparison_sheet.h"

#include "app/report/plain_text.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/plot/more_examples.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

QString printed(const core::Comparison& comparison) {
    return report::plainText(report::comparisonSheet(comparison, examples::smallShelves(), examples::printedAt()));
}

}  // namespace

TEST(ComparisonSheet, BeginsWithTheAnswer) {
    examples::expectGolden(printed(examples::twoMethods()), "comparison");
}

TEST(ComparisonSheet, PrintsItsCautionsBeforeAnyFigure) {
    const std::string text = printed(examples::oneStationEach()).toStdString();
    EXPECT_LT(text.find("cannot be told apart"), text.find("[Figure]"));
}

TEST(ComparisonSheet, SaysWhenThereIsNothingToCompare) {
    const std::string text = printed(examples::nothing()).toStdString();
    EXPECT_THAT(text, testing::HasSubstr("Nothing to compare."));
    EXPECT_THAT(text, testing::Not(testing::HasSubstr("[Figure]")));
}

TEST(ComparisonSheet, LeavesOutExactTestsThatWereNotRun) {
    core::Comparison comparison = examples::twoMethods();
    EXPECT_THAT(printed(comparison).toStdString(), testing::HasSubstr("Boschloo"));
    comparison.pairs[0].exactTestsLeftOut = true;
    EXPECT_THAT(printed(comparison).toStdString(), testing::Not(testing::HasSubstr("Boschloo")));
}

TEST(ComparisonSheet, PrintsSpeedsDosesAndWhatWentWithRooting) {
    core::Comparison comparison = examples::withSpeeds(examples::manyArms(4));
    comparison.doses = {examples::doseSeries(), examples::twoDoses()};
    comparison.goesWith = examples::goesWith(4);
    comparison.severalArms = core::SeveralArms{.arms = 4,
                                               .chiSquare = 9.1,
                                               .degreesOfFreedom = 3,
                                               .chiSquareP = 0.028,
                                               .smallestExpected = 3.2,
                                               .f = {},
                                               .batchRatesP = {}};
    const std::string text = printed(comparison).toStdString();
    for (const char* words :
         {"Are all 4 arms alike?", "it takes three batches in each arm", "the chi-square is rough",
          "half of those that root have rooted", "DOSES: IBA, GEL", "DOSES: NAA", "Cochran-Armitage",
          "WHAT WENT WITH ROOTING", "can't be told from the rest: method aerated water", "Firth's logistic regression",
          "mixture of those that root"})
        EXPECT_THAT(text, testing::HasSubstr(words));
}

TEST(ComparisonSheet, SaysWhyNoCurveOfSpeedCanBeFitted) {
    core::Comparison comparison = examples::twoMethods();
    for (core::Arm& arm : comparison.arms) arm.speed.whyNot = "none rooted";
    EXPECT_THAT(printed(comparison).toStdString(),
                testing::HasSubstr("no curve can be fitted. media tray: none rooted; aerated water: none rooted."));
}

TEST(ComparisonSheet, AnswersAsGoodAsBothWays) {
    core::Comparison comparison = examples::twoMethods();
    core::AsGoodAs answer;
    answer.margin = 0.1, answer.asCounted = {.low = 0.05, .high = 0.29}, answer.asCountedP = 0.002;
    answer.withSpread = core::Limits{.low = -0.02, .high = 0.35}, answer.withSpreadP = 0.011, answer.isShown = true;
    comparison.pairs[0].firstAsGood = answer;
    answer.withSpread = core::Limits{.low = -0.35, .high = 0.02}, answer.withSpreadP = 0.8, answer.isShown = false;
    comparison.pairs[0].secondAsGood = answer;
    const std::string text = printed(comparison).toStdString();
    EXPECT_THAT(text, testing::HasSubstr("media tray as good as aerated water, within 10 of 100"));
    EXPECT_THAT(text, testing::HasSubstr("shown: −2 or better, p = 0.011"));
    EXPECT_THAT(text, testing::HasSubstr("not shown: −35 or better"));
    EXPECT_THAT(text, testing::HasSubstr("against the margin set"));
}

TEST(ComparisonSheet, AdjustsForAllPairsOnlyWhereThereAreSeveral) {
    core::Comparison comparison = examples::twoMethods();
    comparison.pairs[0].batchRatesHolm = 0.18, comparison.pairs[0].boschlooHolm = 0.008;
    EXPECT_THAT(printed(comparison).toStdString(), testing::Not(testing::HasSubstr("Holm")));
    comparison.pairs.push_back(comparison.pairs[0]);
    EXPECT_THAT(printed(comparison).toStdString(), testing::HasSubstr("t test, Holm for all pairs"));
}

TEST(ComparisonSheet, SaysOfTheRatesByWhichIntervalTheyAre) {
    core::Comparison comparison = examples::twoMethods();
    comparison.interval = core::RateInterval::ClopperPearson;
    EXPECT_THAT(printed(comparison).toStdString(), testing::HasSubstr("Clopper and Pearson"));
}
