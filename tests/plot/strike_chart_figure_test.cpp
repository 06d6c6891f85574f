// SPDX-License-Identifier: MIT
#include "app/plot/strike_chart_figure.h"

#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/more_examples.h"

namespace {

using testing::HasSubstr;

TEST(StrikeChartFigure, LabelsSignalsInWords) {
    const core::StrikeChart chart = examples::strikeChart(14);
    const QStringList texts = examples::drawnTexts(*plot::strikeChartFigure(chart, {}));
    EXPECT_TRUE(texts.contains(QStringLiteral("B261005K: fewer"))) << texts.join(u'\n').toStdString();
    EXPECT_TRUE(texts.contains(QStringLiteral("B261012K: more"))) << texts.join(u'\n').toStdString();
    EXPECT_EQ(plot::strikeChartFigure(chart, {})->sentence(), QStringLiteral("2 of 13 batches outside their limits"));
}

TEST(StrikeChartFigure, SaysWhereThisBatchLies) {
    const core::StrikeChart chart = examples::strikeChart(14);
    const auto sentenceFor = [&](const char* code) {
        return plot::strikeChartFigure(chart, QLatin1String(code))->sentence().toStdString();
    };
    EXPECT_THAT(sentenceFor("B261004K"), HasSubstr("within its limits"));
    EXPECT_THAT(sentenceFor("B261005K"), HasSubstr("fewer than luck would explain"));
    EXPECT_THAT(sentenceFor("B261012K"), HasSubstr("more than luck would explain"));
    EXPECT_THAT(sentenceFor("B261013K"), HasSubstr("nothing assessed at the horizon yet"));
    EXPECT_TRUE(examples::drawnTexts(*plot::strikeChartFigure(chart, QStringLiteral("B261004K")))
                    .contains(QStringLiteral("B261004K")));
}

TEST(StrikeChartFigure, ShowsTheCentreWithItsCounts) {
    const core::StrikeChart chart = examples::strikeChart(3);
    int rooted = 0, assessed = 0;
    for (const core::ChartedBatch& batch : chart.batches) rooted += batch.rooted, assessed += batch.assessed;
    EXPECT_TRUE(examples::drawnTexts(*plot::strikeChartFigure(chart, {}))
                    .contains(QStringLiteral("%1 of %2").arg(rooted).arg(assessed)));
}

TEST(StrikeChartFigure, HasEveryBatchInItsTable) {
    const plot::FigureTable table = plot::strikeChartFigure(examples::strikeChart(40), {})->table();
    ASSERT_EQ(table.rows.size(), 40U);
    EXPECT_EQ(table.rows[5].back(), QStringLiteral("below"));
    EXPECT_EQ(table.rows[39].back(), QStringLiteral("nothing known"));
}

TEST(StrikeChartFigure, SaysSoWhereNothingIsKnown) {
    for (const core::StrikeChart& chart : {core::StrikeChart{}, examples::strikeChart(0)}) {
        const auto figure = plot::strikeChartFigure(chart, QStringLiteral("B260001K"));
        EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("nothing assessed yet"));
        EXPECT_TRUE(figure->table().rows.empty());
    }
}

TEST(StrikeChartFigure, NamesItsMethod) {
    const std::string method = plot::strikeChartFigure(examples::strikeChart(12), {})->method().toStdString();
    for (const char* words : {"beta-binomial", "0.08", "2.7 in 1000"}) EXPECT_THAT(method, HasSubstr(words));
}

TEST(StrikeChartFigure, MarksATurningPointInWordsToo) {
    const auto figure = plot::strikeChartFigure(examples::strikeChart(14), {}, examples::turningPoint());
    const std::string texts = examples::drawnTexts(*figure).join(u'\n').toStdString();
    EXPECT_THAT(texts, HasSubstr("turn between the dotted lines; dash-dotted: 68"));
    EXPECT_EQ(figure->sentence(), QStringLiteral("2 of 13 batches outside their limits; a turn at about B261008K"));
    EXPECT_THAT(figure->method().toStdString(), HasSubstr("97 in 100 that there was one"));
    const plot::FigureTable table = figure->table();
    ASSERT_EQ(table.rows.size(), 16U);
    EXPECT_EQ(table.rows[14],
              (QStringList{"before the turn", "", "", "", "68.0", "60.0", "75.0", "first after it: B261008K"}));
    EXPECT_EQ(table.rows[15],
              (QStringList{"after the turn", "", "", "", "41.0", "30.0", "53.0", "or B261006K to B261010K"}));
}

TEST(StrikeChartFigure, MarksNoTurningPointThatIsNotCalled) {
    core::TurningPoint turn = examples::turningPoint();
    turn.chance = 0.94;
    const core::StrikeChart chart = examples::strikeChart(14);
    const auto with = plot::strikeChartFigure(chart, {}, turn), without = plot::strikeChartFigure(chart, {});
    EXPECT_EQ(with->sentence(), without->sentence());
    EXPECT_EQ(with->method(), without->method());
    EXPECT_EQ(with->table().rows.size(), without->table().rows.size());
    EXPECT_EQ(examples::drawnTexts(*with), examples::drawnTexts(*without));
}

}  // namespace
