// SPDX-License-Identifier: MIT
#include "app/plot/chance_figure.h"

#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/drawn_texts.h"

namespace {

plot::ChanceCurve risingCurve() {
    plot::ChanceCurve curve{.sentence = "Stick 34 for 24",
                            .method = "Beta-binomial",
                            .numberCaption = "cuttings stuck",
                            .chanceCaption = "chance of 24 or more",
                            .points = {},
                            .wanted = 0.9,
                            .answer = 34,
                            .nothing = "No number is enough."};
    for (int number = 24; number <= 50; ++number) curve.points.push_back({number, 1 - 1.0 / (number - 24 + 1)});
    return curve;
}

TEST(ChanceFigure, NamesTheAnswerItsChanceAndWhatWasWanted) {
    const QStringList texts = examples::drawnTexts(*plot::chanceFigure(risingCurve()));
    for (const char* text : {"34: 91 in 100", "wanted: 90 in 100", "cuttings stuck", "chance of 24 or more"})
        EXPECT_TRUE(texts.contains(QLatin1String(text))) << text << '\n' << texts.join('|').toStdString();
}

TEST(ChanceFigure, HasEveryPointInItsTable) {
    const plot::FigureTable table = plot::chanceFigure(risingCurve())->table();
    ASSERT_EQ(table.rows.size(), 27u);
    EXPECT_EQ(table.rows.at(10), QStringList({"34", "90.9"}));
    EXPECT_EQ(table.headings.size(), 2);
}

TEST(ChanceFigure, SaysWhyThereIsNoCurve) {
    plot::ChanceCurve curve = risingCurve();
    curve.points.clear();
    EXPECT_THAT(examples::drawnTexts(*plot::chanceFigure(curve)).join('\n').toStdString(),
                testing::HasSubstr("No number is enough."));
}

TEST(ChanceFigure, DrawsOneNumberAlone) {
    plot::ChanceCurve curve = risingCurve();
    curve.points = {{34, 0.91}};
    EXPECT_TRUE(examples::drawnTexts(*plot::chanceFigure(curve)).contains(QStringLiteral("34: 91 in 100")));
}

}  // namespace
