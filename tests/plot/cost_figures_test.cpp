// SPDX-License-Identifier: MIT
// Figures of costs: their parts, and the plane of strike rates.
#include "app/plot/cost_parts_figure.h"
#include "app/plot/cost_text.h"
#include "app/plot/strike_plane_figure.h"
#include "app/plot/strike_plane_picture.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/worth_examples.h"

namespace {

using testing::HasSubstr;

plot::CostRows rowsOf(std::vector<core::WorthOfMethod> methods, bool hasPlants = false) {
    return {.methods = std::move(methods), .hasPlants = hasPlants, .currency = "EUR", .level = 0.95};
}

std::string saidBy(const plot::Figure& figure) {
    return examples::drawnTexts(figure).join(u'\n').toStdString();
}

core::WorthOfPair aPair() {
    return examples::worthOfTwoMethods().pairs.front();
}

TEST(CostText, RoundsToTwoDecimalsOrTwoFiguresThatCount) {
    EXPECT_EQ(plot::costAmount(0.416).toStdString(), "0.42");
    EXPECT_EQ(plot::costAmount(0).toStdString(), "0.00");
    EXPECT_EQ(plot::costAmount(0.0432).toStdString(), "0.043");
    EXPECT_EQ(plot::costAmount(0.00432).toStdString(), "0.0043");
    EXPECT_EQ(plot::costAmount(1e-9).toStdString(), "0.000000");
    EXPECT_EQ(plot::costText(12.5, "EUR").toStdString(), "12.50 EUR");
    EXPECT_EQ(plot::costLimitsText({.low = 3.2, .high = HUGE_VAL}).toStdString(), "3.20 or more");
    EXPECT_EQ(plot::noneSucceededText({.value = {}, .limits = {.low = 3.2, .high = HUGE_VAL}}, "none rooted"),
              QStringLiteral("none rooted; at least 3.20"));
}

TEST(CostPartsFigure, NamesEveryPartTheWholeWithItsIntervalAndN) {
    const auto figure = plot::costPartsFigure(rowsOf(examples::worthOfTwoMethods().methods));
    const std::string texts = saidBy(*figure);
    for (const char* text : {"lasting things", "used up", "electricity", "work", "written down", "aerated water",
                             "84 of 100", "0.86 (0.79 to 0.97)", "70 of 118", "EUR for each rooted plant"})
        EXPECT_THAT(texts, HasSubstr(text));
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("0.67 EUR by media tray and 0.86 EUR by aerated water"));
    EXPECT_THAT(figure->method().toStdString(), HasSubstr("95"));
}

TEST(CostPartsFigure, PartsOfARowAddUpToItsWhole) {
    const plot::FigureTable table = plot::costPartsFigure(rowsOf(examples::worthOfTwoMethods().methods))->table();
    ASSERT_EQ(table.rows.size(), 2U);
    for (const QStringList& row : table.rows) {
        double sum = 0;
        for (int part = 5; part < 10; ++part) sum += row[part].toDouble();
        EXPECT_NEAR(sum, row[10].toDouble(), 5e-4) << row.join(u' ').toStdString();
    }
}

TEST(CostPartsFigure, SaysOfNoneRootedWhatAPlantCostsAtLeast) {
    const auto figure = plot::costPartsFigure(rowsOf({examples::noneRooted(), examples::notPriced()}));
    const std::string texts = saidBy(*figure);
    EXPECT_THAT(texts, HasSubstr("none rooted; at least 3.17"));
    EXPECT_THAT(texts, HasSubstr("nothing priced"));
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("nothing to show yet"));
    EXPECT_THAT(figure->table().rows.front().join(u' ').toStdString(), testing::Not(HasSubstr("inf")));
}

TEST(CostPartsFigure, SaysHowManyRowsDidNotFit) {
    const auto figure = plot::costPartsFigure(rowsOf(examples::worthByPlant(20), true));
    EXPECT_EQ(figure->table().rows.size(), 40U);
    EXPECT_THAT(examples::drawnTexts(*figure, {600, 300}).join(u'\n').toStdString(),
                HasSubstr("more, in the table of figures"));
}

TEST(StrikePlaneFigure, NamesBothSidesTheLineAndTheRecordsWithTheirCounts) {
    const auto figure = plot::strikePlaneFigure(aPair(), 0.95);
    QString texts = examples::drawnTexts(*figure).join(u' ');
    for (const char* text :
         {"a rooted plant costs less by aerated water", "a rooted plant costs less by media tray",
          "it costs the same by both", "84 of 100", "70 of 118", "in 5 batches", "strike rate, media tray"})
        EXPECT_THAT(texts.toStdString(), HasSubstr(text));
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("aerated water has to root 97"));
    EXPECT_THAT(figure->method().toStdString(), HasSubstr("days sooner"));
}

TEST(StrikePlaneFigure, LiesOnItsLineWhereBothCostTheSame) {
    const core::TurningLine line{.dear = 0.72, .cheap = 0.40, .shift = 0.07};
    const std::vector<QPointF> tied = plot::tyingRates(line);
    ASSERT_GT(tied.size(), 10U);
    EXPECT_EQ(tied.front(), QPointF(0, 0));
    for (std::size_t i = 1; i < tied.size(); ++i) {
        EXPECT_NEAR(line.dear / tied[i].y(), line.cheap / tied[i].x() + line.shift, 1e-9);
        EXPECT_LE(tied[i].y(), 1);
    }
}

TEST(StrikePlaneFigure, SaysWhenNoStrikeRateWillDo) {
    core::WorthOfPair pair = aPair();
    pair.line = {.dear = 8, .cheap = 0.01, .shift = 0};
    pair.dearStrikeToTie.reset();
    const auto figure = plot::strikePlaneFigure(pair, 0.95);
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("no strike rate of aerated water costs the same"));
    EXPECT_FALSE(saidBy(*figure).empty());
    pair.cheap.strike.succeeded = 0, pair.cheap.strike.rate = 0;
    EXPECT_THAT(plot::strikePlaneFigure(pair, 0.95)->sentence().toStdString(), HasSubstr("None rooted by media tray"));
}

TEST(StrikePlaneFigure, SaysWhyThereIsNoPlane) {
    core::WorthOfPair pair = aPair();
    pair.cheap = examples::notPriced();
    EXPECT_THAT(saidBy(*plot::strikePlaneFigure(pair, 0.95)), HasSubstr("Nothing of open bench is priced yet."));
    pair.cheap.pricedBatches = 3;
    pair.cheap.strike = {};
    EXPECT_THAT(saidBy(*plot::strikePlaneFigure(pair, 0.95)), HasSubstr("Nothing of open bench is assessed yet."));
}

}  // namespace
