// SPDX-License-Identifier: MIT
#include "app/plot/goes_with_figure.h"

#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/more_examples.h"

namespace {

using testing::HasSubstr;

std::string wordsOf(const core::GoesWith& answer) {
    return examples::drawnTexts(*plot::goesWithFigure(answer, 0.95)).join(u' ').toStdString();
}

TEST(GoesWithFigure, CallsOnlyThatClearWhichIsSoAmongAllThatWereLookedAt) {
    core::GoesWith answer = examples::goesWith(4);
    EXPECT_THAT(plot::goesWithFigure(answer, 0.95)->sentence().toStdString(), HasSubstr("(worse)"));
    answer.associations[0].holmP = 0.2, answer.associations[0].withSpreadP = 0.01;
    EXPECT_THAT(plot::goesWithFigure(answer, 0.95)->sentence().toStdString(), HasSubstr("nothing on record, clearly"));
    answer.associations[0].holmP.reset();  // one plant against another
    EXPECT_THAT(plot::goesWithFigure(answer, 0.95)->sentence().toStdString(), HasSubstr("nothing on record, clearly"));
}

TEST(GoesWithFigure, WarnsInThePictureAndListsWhatCannotBeTold) {
    EXPECT_THAT(wordsOf(examples::goesWith(4)), HasSubstr("not an experiment"));
    const plot::FigureTable table = plot::goesWithFigure(examples::goesWith(4), 0.95)->table();
    ASSERT_EQ(table.rows.size(), 6U);
    EXPECT_THAT(table.rows.back().join(u' ').toStdString(), HasSubstr("heel"));
    EXPECT_THAT(table.rows.back().join(u' ').toStdString(), HasSubstr("can't be told from the rest"));
}

TEST(GoesWithFigure, SaysWhyThereIsNothing) {
    EXPECT_THAT(wordsOf(examples::goesWith(0)), HasSubstr("Nothing on record differs"));
    EXPECT_TRUE(plot::goesWithFigure(examples::goesWith(0), 0.95)->table().rows.empty());
}

TEST(GoesWithFigure, WritesEndlessRatiosAsSuch) {
    const plot::FigureTable table = plot::goesWithFigure(examples::goesWith(3), 0.95)->table();
    ASSERT_GE(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[1][4], QStringLiteral("∞"));
    EXPECT_EQ(table.rows[2][3], QStringLiteral("0"));
}

TEST(GoesWithFigure, NamesItsMethodAndHowManyItRestsOn) {
    const std::string method = plot::goesWithFigure(examples::goesWith(4), 0.8)->method().toStdString();
    for (const char* words : {"logistic regression", "Firth", "48 batches", "1130 cuttings", "80", "spread", "Holm"})
        EXPECT_THAT(method, HasSubstr(words));
}

}  // namespace
