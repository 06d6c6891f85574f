// SPDX-License-Identifier: MIT
#include "app/report/worth_sheet.h"

#include "app/report/plain_text.h"
#include "app/report/worth_words.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/worth_examples.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

using testing::HasSubstr;
using testing::Not;

std::string printedWorth(const core::Worth& worth, int pair = 0) {
    return report::plainText(
               report::worthSheet(worth, pair, examples::payOff(), examples::smallShelves(), examples::printedAt()))
        .toStdString();
}

}  // namespace

TEST(WorthSheet, BeginsWithTheVerdictAndEndsWithHowItWasWorkedOut) {
    examples::expectGolden(QString::fromStdString(printedWorth(examples::worthOfTwoMethods())), "worth_it");
}

TEST(WorthSheet, SaysWhatIsNotInTheSumsBeforeAnyFigure) {
    const std::string text = printedWorth(examples::worthOfTwoMethods());
    EXPECT_LT(text.find("No tariff holds"), text.find("[Figure]"));
}

TEST(WorthSheet, SaysOfNoneRootedWhatAPlantCostsAtLeast) {
    core::Worth worth = examples::worthOfTwoMethods();
    worth.byPlant.push_back(examples::noneRooted());
    worth.byPlant.push_back(examples::notPriced());
    const std::string text = printedWorth(worth);
    EXPECT_THAT(text, HasSubstr("none rooted; at least 3.17"));
    EXPECT_THAT(text, Not(HasSubstr("inf")));
}

TEST(WorthSheet, NamesThePlantAndTheDaysThatItIsAbout) {
    core::Worth worth = examples::worthOfTwoMethods();
    EXPECT_THAT(printedWorth(worth), Not(HasSubstr("stuck from")));
    worth.question.from = core::Date{std::chrono::year(2025), std::chrono::month(1), std::chrono::day(1)};
    worth.question.to = core::Date{std::chrono::year(2025), std::chrono::month(12), std::chrono::day(31)};
    worth.question.plant = examples::smallShelves().plants.front().id;
    const std::string name = core::fullName(examples::smallShelves().plants.front());
    EXPECT_THAT(printedWorth(worth), HasSubstr(name + ", stuck from 1 January 2025 to 31 December 2025"));
}

TEST(WorthSheet, IsAboutTheMethodsAloneWhereThereIsNoPair) {
    core::Worth worth = examples::worthOfTwoMethods();
    worth.pairs.clear();
    const std::string text = printedWorth(worth, -1);
    EXPECT_THAT(text, Not(HasSubstr("WHAT WOULD TURN THE ANSWER")));
    EXPECT_THAT(text, HasSubstr("BY PLANT"));
}

TEST(WorthWords, HaveAHeadlineForEveryVerdict) {
    core::WorthOfPair pair = examples::worthOfTwoMethods().pairs.front();
    QStringList headlines;
    for (const core::WorthVerdict verdict :
         {core::WorthVerdict::NothingPriced, core::WorthVerdict::TooFew,
          core::WorthVerdict::CannotTellMethodFromStation, core::WorthVerdict::CannotTellYet,
          core::WorthVerdict::BetterAndCheaper, core::WorthVerdict::DearerPays, core::WorthVerdict::CheaperPays}) {
        pair.verdict = verdict;
        headlines << report::verdictHeadline(pair);
    }
    EXPECT_EQ(headlines.removeDuplicates(), 0);
    EXPECT_FALSE(headlines.contains(QString()));
    EXPECT_TRUE(headlines.contains(QStringLiteral("Worth it: aerated water")));
    EXPECT_TRUE(headlines.contains(QStringLiteral("Better and cheaper: media tray")));
}

TEST(WorthWords, SayWhenThingsArePaidForAlsoWhenTheyMayNeverBe) {
    core::WorthOfPair pair = examples::worthOfTwoMethods().pairs.front();
    const auto said = [&pair] { return report::paidOffCurve(pair, examples::payOff(), 0.95).sentence.toStdString(); };
    EXPECT_THAT(said(), HasSubstr("after 18 batches"));
    EXPECT_THAT(said(), HasSubstr("from 6 to never"));
    pair.breakEven->high = 300;
    EXPECT_THAT(said(), HasSubstr("6 to 300"));
    pair.breakEven->low.reset(), pair.breakEven->middle.reset(), pair.breakEven->high.reset();
    pair.breakEven->chanceEver = 0.2;
    EXPECT_THAT(said(), HasSubstr("ever pays for its own things is 20 in 100"));
}
