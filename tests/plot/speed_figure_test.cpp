// SPDX-License-Identifier: MIT
#include "app/plot/speed_figure.h"

#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/more_examples.h"

namespace {

using testing::HasSubstr;

TEST(SpeedFigure, GivesTheMedianDayOfEachArm) {
    const auto figure = plot::speedFigure(examples::withSpeeds(examples::twoMethods()));
    EXPECT_EQ(figure->sentence().toStdString(),
              "Of those that root, half have rooted by day 11.7 in aerated water and by day 14.2 in media tray");
    const QStringList texts = examples::drawnTexts(*figure);
    EXPECT_TRUE(texts.contains(QStringLiteral("14.2 (12.4 to 16.3)"))) << texts.join(u'\n').toStdString();
    EXPECT_THAT(texts.join(u'\n').toStdString(), HasSubstr("72"));
}

TEST(SpeedFigure, SaysWhyAnArmHasNoCurve) {
    const auto figure = plot::speedFigure(examples::withSpeeds(examples::manyArms(4)));
    EXPECT_THAT(examples::drawnTexts(*figure).join(u' ').toStdString(),
                HasSubstr("No curve for not recorded: there was one check only"));
    EXPECT_THAT(figure->table().rows.back().back().toStdString(), HasSubstr("one check only"));
}

TEST(SpeedFigure, SaysSoWhereNoArmHasACurve) {
    const auto figure = plot::speedFigure(examples::twoMethods());
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("no curve can be fitted yet"));
    EXPECT_TRUE(figure->method().isEmpty());
}

TEST(SpeedFigure, HasEveryShapeInItsTableAndNoLimitsWhereNoneAreKnown) {
    const plot::FigureTable table = plot::speedFigure(examples::withSpeeds(examples::twoMethods()))->table();
    ASSERT_EQ(table.rows.size(), 4U);
    EXPECT_EQ(table.rows[1][2], QStringLiteral("Weibull"));
    EXPECT_EQ(table.rows[1][4], QString());
    EXPECT_EQ(table.rows[1][8], QStringLiteral("∞"));
    EXPECT_EQ(table.rows[0][9], QStringLiteral("allowing for the spread"));
    EXPECT_EQ(table.rows[2][9], QStringLiteral("as counted"));
}

TEST(SpeedFigure, NamesItsMethodAndLevel) {
    core::Comparison comparison = examples::withSpeeds(examples::twoMethods());
    comparison.level = 0.8;
    const std::string method = plot::speedFigure(comparison)->method().toStdString();
    for (const char* words : {"Mixture-cure", "80", "as counted", "spread between batches"})
        EXPECT_THAT(method, HasSubstr(words));
}

}  // namespace
