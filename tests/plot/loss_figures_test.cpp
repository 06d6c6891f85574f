// SPDX-License-Identifier: MIT
#include <memory>

#include "app/plot/loss_by_month_figure.h"
#include "app/plot/loss_by_station_figure.h"
#include "app/plot/loss_pareto_figure.h"
#include "app/plot/rare_text.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/loss_examples.h"

namespace {

using testing::HasSubstr;

std::string drawnWords(const plot::Figure& figure, const QSize& size = {900, 640}) {
    return examples::drawnTexts(figure, size).join(u'\n').toStdString();
}

TEST(LossParetoFigure, NamesWhatMostWereLostToWithItsCounts) {
    const auto figure = plot::lossParetoFigure(examples::losses(4, 6, 3));
    EXPECT_EQ(figure->sentence().toStdString(), "Of all lost, 40\u202f% (20 of 50) to cause number 1");
    for (const char* words :
         {"50 cuttings", "11 batches", "95", "Wilson", "batches that lose together", "running share"})
        EXPECT_THAT(figure->method().toStdString(), HasSubstr(words));
}

TEST(LossParetoFigure, GivesEachCauseItsCountShareIntervalAndRunningShare) {
    const auto figure = plot::lossParetoFigure(examples::losses(4, 6, 3));
    const plot::FigureTable table = figure->table();
    ASSERT_EQ(table.rows.size(), 4U);
    EXPECT_EQ(table.rows[0].mid(0, 4).join(u'|').toStdString(), "cause number 1|20|4|40.0");
    EXPECT_EQ(table.rows[3][0].toStdString(), "cause not known");
    EXPECT_EQ(table.rows[3].back().toStdString(), "100.0");
    EXPECT_TRUE(table.rows[3][6].isEmpty()) << "one batch alone shows no spread";
    EXPECT_THAT(drawnWords(*figure), HasSubstr("40\u202f% (20 of 50)"));
    EXPECT_THAT(drawnWords(*figure), HasSubstr("70\u202f%"));
}

TEST(LossParetoFigure, SaysSoWhereNothingWasLostAndWhereNothingStood) {
    const auto nothing = plot::lossParetoFigure(examples::nothingLost());
    EXPECT_EQ(nothing->sentence().toStdString(), "Losses by cause: nothing was lost");
    EXPECT_THAT(drawnWords(*nothing), HasSubstr("144 cuttings stood, in 6 batches"));
    EXPECT_TRUE(nothing->table().rows.empty());
    EXPECT_THAT(drawnWords(*plot::lossParetoFigure(core::Losses{})), HasSubstr("No cuttings stood in this time."));
}

TEST(LossByMonthFigure, ShowsRatesWithTheirCountsMonthByMonth) {
    const auto figure = plot::lossByMonthFigure(examples::losses(3, 6, 2));
    EXPECT_EQ(figure->sentence().toStdString(), "The largest share was lost in May 2026: 13\u202f% (8 of 64)");
    const plot::FigureTable table = figure->table();
    ASSERT_EQ(table.rows.size(), 6U);
    EXPECT_EQ(table.headings.size(), 10) << "seven columns and one for each cause";
    EXPECT_EQ(table.rows[1].mid(0, 4).join(u'|').toStdString(), "February 2026|4|2|61");
    EXPECT_THAT(drawnWords(*figure), HasSubstr("2 of 61"));
    EXPECT_THAT(drawnWords(*figure), HasSubstr("Feb 26"));
}

TEST(LossByMonthFigure, LeavesRoomForMonthsInWhichNothingStood) {
    core::Losses losses = examples::losses(2, 6, 1);
    const auto widest = [](const core::Losses& of) {
        double right = 0;
        for (const plot::Hint& hint : examples::drawn(*plot::lossByMonthFigure(of)).hints)
            right = std::max(right, hint.area.right());
        return right;
    };
    const double whole = widest(losses);
    losses.months.erase(losses.months.begin() + 2, losses.months.begin() + 4);
    EXPECT_NEAR(widest(losses), whole, 0.5);
    EXPECT_EQ(plot::lossByMonthFigure(losses)->table().rows.size(), 4U);
}

TEST(LossByMonthFigure, SaysSoWhereNothingWasLost) {
    EXPECT_EQ(plot::lossByMonthFigure(examples::nothingLost())->sentence().toStdString(),
              "Losses by month: nothing was lost in any");
    EXPECT_EQ(plot::lossByMonthFigure(core::Losses{})->sentence().toStdString(), "Losses by month: no cuttings stood");
}

TEST(LossByStationFigure, RunsFromTheWorstToTheBestAndBlamesNone) {
    const auto figure = plot::lossByStationFigure(examples::losses(2, 3, 3));
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("at Bench 1"));
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("at station not recorded"));
    EXPECT_THAT(drawnWords(*figure), HasSubstr("a station isn't to blame"));
    const plot::FigureTable table = figure->table();
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[0].mid(0, 4).join(u'|').toStdString(), "Bench 1|4|6|80");
}

TEST(LossByStationFigure, TellsTheCausesNearTheMouse) {
    const plot::Drawing drawing = examples::drawn(*plot::lossByStationFigure(examples::losses(2, 3, 3)));
    ASSERT_FALSE(drawing.hints.empty());
    EXPECT_THAT(drawing.hints.front().text.toStdString(), HasSubstr("cause number 1: 3"));
}

TEST(LossByStationFigure, SaysSoWhereNothingWasLostAndWhereNothingStood) {
    EXPECT_EQ(plot::lossByStationFigure(examples::nothingLost())->sentence().toStdString(),
              "Losses by station: nothing was lost at any");
    EXPECT_EQ(plot::lossByStationFigure(core::Losses{})->sentence().toStdString(),
              "Losses by station: no cuttings stood");
}

TEST(RareText, SaysHowManyBatchesItTakes) {
    EXPECT_EQ(plot::oneInText(0.01).toStdString(), "1 in 100");
    EXPECT_EQ(plot::oneInText(0.031).toStdString(), "1 in 32");
    EXPECT_EQ(plot::oneInText(0.0042).toStdString(), "1 in 240");
    EXPECT_EQ(plot::oneInText(0.0004).toStdString(), "less than 1 in 1000");
    EXPECT_EQ(plot::oneInText(0).toStdString(), "less than 1 in 1000");
    EXPECT_EQ(plot::oneInText(0.23).toStdString(), "23 in 100");
}

}  // namespace
