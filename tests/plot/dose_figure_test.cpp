// SPDX-License-Identifier: MIT
#include "app/plot/dose_figure.h"

#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/more_examples.h"

namespace {

using testing::HasSubstr;
using testing::Not;

std::string sentenceOf(const core::DoseSeries& series) {
    return plot::doseFigure(series, 0.95)->sentence().toStdString();
}

TEST(DoseFigure, SaysWhereTheBestDoseIsAndWhatElseFits) {
    const std::string sentence = sentenceOf(examples::doseSeries());
    EXPECT_THAT(sentence, HasSubstr("best near 1800 mg/L, where about 78 of 100 would root"));
    EXPECT_THAT(sentence, HasSubstr("from 900 to 4200 mg/L"));  // with spread, not 1300 to 2500
}

TEST(DoseFigure, NamesTheUntreatedAndTheCountsOfEachDose) {
    const QStringList texts = examples::drawnTexts(*plot::doseFigure(examples::doseSeries(), 0.95));
    for (const char* text : {"untreated", "21 of 60", "500", "34 of 60", "8000", "22 of 56"})
        EXPECT_TRUE(texts.contains(QLatin1String(text))) << text;
    EXPECT_FALSE(
        examples::drawnTexts(*plot::doseFigure(examples::twoDoses(), 0.95)).contains(QStringLiteral("untreated")));
}

TEST(DoseFigure, SaysOfPowdersThatTheyAreByWeight) {
    EXPECT_THAT(examples::drawnTexts(*plot::doseFigure(examples::crowdedDoses(), 0.95)).join(u'\n').toStdString(),
                HasSubstr("mg/kg"));
}

TEST(DoseFigure, SaysHowManyCountsHadNoRoom) {
    EXPECT_THAT(
        examples::drawnTexts(*plot::doseFigure(examples::crowdedDoses(), 0.95), {600, 300}).join(u'\n').toStdString(),
        HasSubstr("more are in the table of figures"));
}

TEST(DoseFigure, DoesNotNameABestDoseWhereThereIsNone) {
    EXPECT_THAT(sentenceOf(examples::twoDoses()), HasSubstr("too few doses for a curve"));
    core::DoseSeries series = examples::doseSeries();
    series.bestMilligrams.reset(), series.bestRate.reset();
    for (const core::BestDose best :
         {core::BestDose::NoTop, core::BestDose::BelowLowest, core::BestDose::AboveHighest, core::BestDose::NoCurve}) {
        series.best = best;
        EXPECT_THAT(sentenceOf(series), Not(HasSubstr("best near")));
    }
}

TEST(DoseFigure, SaysWhenNoDoseCanBeExcluded) {
    core::DoseSeries series = examples::doseSeries();
    series.isUnboundedWithSpread = true;
    EXPECT_THAT(sentenceOf(series), HasSubstr("where the top of the curve lies can't be told"));
    EXPECT_THAT(sentenceOf(examples::endlessDoses()), HasSubstr("from 0 to ∞ mg/L"));
}

TEST(DoseFigure, NamesItsMethods) {
    core::DoseSeries series = examples::doseSeries();
    const std::string method = plot::doseFigure(series, 0.9)->method().toStdString();
    for (const char* words : {"Wilson", "90", "logistic on log dose", "spread between batches", "Fieller"})
        EXPECT_THAT(method, HasSubstr(words));
    EXPECT_THAT(method, Not(HasSubstr("Firth")));
    series.isFirth = true;
    EXPECT_THAT(plot::doseFigure(series, 0.9)->method().toStdString(), HasSubstr("Firth"));
}

TEST(DoseFigure, HasEveryPointAndTheBestDoseInItsTable) {
    const plot::FigureTable table = plot::doseFigure(examples::doseSeries(), 0.95)->table();
    ASSERT_GE(table.rows.size(), 10U);
    EXPECT_EQ(table.rows[1][1], QStringLiteral("500"));
    EXPECT_EQ(table.rows[1][3], QStringLiteral("34"));
    EXPECT_EQ(table.rows[5][0], QStringLiteral("best dose"));
    EXPECT_EQ(table.rows[5][1], QStringLiteral("1800"));
}

}  // namespace
