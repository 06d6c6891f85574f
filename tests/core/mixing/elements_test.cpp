// SPDX-License-Identifier: MIT
#include "core/mixing/elements.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

TEST(Formula, ReadsSaltsAsBagsPrintThem) {
    EXPECT_THAT(core::elementsOf("Ca(NO3)2.4H2O").value(),
                ElementsAre(core::ElementCount{"Ca", 1}, core::ElementCount{"H", 8}, core::ElementCount{"N", 2},
                            core::ElementCount{"O", 10}));
    EXPECT_THAT(core::elementsOf("5Ca(NO3)2.NH4NO3.10H2O").value(),
                ElementsAre(core::ElementCount{"Ca", 5}, core::ElementCount{"H", 24}, core::ElementCount{"N", 12},
                            core::ElementCount{"O", 43}));
    EXPECT_THAT(core::elementsOf("((K)2)3").value(), ElementsAre(core::ElementCount{"K", 6}));
}

TEST(Formula, HasSharesThatAddUpToOne) {
    for (const std::string_view salt : core::usualSalts()) {
        double all = 0;
        const std::vector<core::ElementShare> shares = core::elementSharesOf(salt).value();
        for (const core::ElementShare& share : shares) all += share.share;
        EXPECT_NEAR(all, 1, 1e-12) << salt;
    }
}

TEST(Formula, RefusesWhatIsNone) {
    for (const char* wrong :
         {"",     " ",    "ca",    "Ca(", "Ca)",           "Ca()",   "()",    "Ca0",         "Ca(NO3", "Xx",
          "H2O.", ".H2O", "Ca..K", "4",   "Ca(NO3)2 4H2O", "Ca1000", "K\xFF", "(((((K)))))", "Ca-2",   "k"}) {
        const auto elements = core::elementsOf(wrong);
        ASSERT_FALSE(elements) << wrong;
        EXPECT_THAT(elements.error().front().sentence, HasSubstr("a chemical formula such as Ca(NO3)2.4H2O"));
    }
    EXPECT_FALSE(core::elementsOf(std::string(101, 'K')));
    EXPECT_FALSE(core::molarMass("Q"));
}

TEST(LabelFactor, TakesElementsOxidesAndIons) {
    EXPECT_EQ(core::labelFactor("N")->factor, 1);
    EXPECT_EQ(core::labelFactor("P2O5")->symbol, "P");
    EXPECT_EQ(core::labelFactor("SO4")->symbol, "S");
    EXPECT_EQ(core::labelFactor("NH4")->symbol, "N");
}

TEST(LabelFactor, RefusesWhatIsNoFigureOfALabel) {
    EXPECT_THAT(core::labelFactor("KNO3").error().front().sentence, HasSubstr("an oxide or ion of one"));
    EXPECT_THAT(core::labelFactor("H2O").error().front().sentence, HasSubstr("an element that feeds plants"));
    EXPECT_THAT(core::labelFactor("potash").error().front().sentence, HasSubstr("a chemical formula"));
}

TEST(SolutionElements, AddUpWhatSeveralBagsBring) {
    const std::vector<core::LabelFigure> label{{"N", 5}, {"P2O5", 11}, {"K2O", 26}};
    const std::vector<core::FeedIngredient> mix{core::labelIngredient("A", 0.5, label).value(),
                                                core::saltIngredient("Ca(NO3)2.4H2O", 0.5).value()};
    const core::SolutionElements solution = core::solutionElements(mix).value();
    ASSERT_EQ(solution.elements.size(), 4U);
    EXPECT_EQ(solution.elements[0].symbol, "N");
    EXPECT_NEAR(solution.elements[0].milligramsPerLitre, 25 + 500 * 2 * 14.007 / 236.146, 0.001);
    EXPECT_EQ(solution.elements[3].symbol, "Ca");
    EXPECT_THAT(solution.notes.workings[0].withNumbers, HasSubstr("1000 x 0.5 x 0.05 = 25 mg/L"));
}

TEST(SolutionElements, CountThePurityOfASalt) {
    const std::vector<core::FeedIngredient> pure{core::saltIngredient("KNO3", 1).value()};
    const std::vector<core::FeedIngredient> half{core::saltIngredient("KNO3", 1, 50).value()};
    EXPECT_NEAR(core::solutionElements(pure)->elements[1].milligramsPerLitre,
                2 * core::solutionElements(half)->elements[1].milligramsPerLitre, 1e-9);
}

TEST(SolutionElements, RefuseWhatIsOutsideTheirDomain) {
    const auto labelSentence = [](const std::vector<core::LabelFigure>& label, double grams = 1) {
        const auto bag = core::labelIngredient("bag", grams, label);
        return bag ? std::string("not refused") : bag.error().front().sentence;
    };
    EXPECT_EQ(labelSentence({{"N", 60}, {"P2O5", 50}}), "Label of \"bag\" is 110 %; 100 % at most is allowed.");
    EXPECT_EQ(labelSentence({{"N", 5}, {"N", 6}}), "Figure of a label is \"N\" twice; each word once is allowed.");
    EXPECT_EQ(labelSentence({{"N", -1}}), "\"N\" is -1; 0 to 100 % is allowed.");
    EXPECT_EQ(labelSentence({{"N", 5}}, 0), "\"bag\" is 0; more than 0 and up to 1000 g/L is allowed.");
    EXPECT_FALSE(core::saltIngredient("KNO3", 1, 101));
    EXPECT_FALSE(core::saltIngredient("sugar", 1));
    EXPECT_FALSE(core::solutionElements({}));
    const std::vector<core::FeedIngredient> tooMuch{
        {.name = "bag", .gramsPerLitre = 1, .shares = {{"N", 0.6}, {"K", 0.6}}}};
    EXPECT_THAT(core::solutionElements(tooMuch).error().front().sentence, HasSubstr("All of \"bag\" is 120 %"));
    EXPECT_FALSE(core::gramsPerLitreFor(-1, 15));
    EXPECT_FALSE(core::gramsPerLitreFor(60, 0));
}

}  // namespace
