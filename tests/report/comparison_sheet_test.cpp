// SPDX-License-Identifier: MIT
#include "app/report/comparison_sheet.h"

#include "app/report/plain_text.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
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
