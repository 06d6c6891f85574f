// SPDX-License-Identifier: MIT
#include "core/mixing/nutrient_dose.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/units/display_units.h"

namespace {

using core::AmountUnit;
using core::CautionTopic;
using core::NutrientQuestion;
using core::NutrientReading;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

/// Two parts of 1.2 g/L with EC 2.4 in the grower's tub of 20 L.
NutrientQuestion twoParts() {
    return {.litres = 20,
            .targetEc = 1.0,
            .waterEc = 0.3,
            .fullEc = 2.4,
            .parts = {{.name = "A", .fullPerLitre = 1.2}, {.name = "B", .fullPerLitre = 1.2}}};
}

std::string firstSentence(const core::Refusals& faults) {
    return faults.empty() ? "no fault" : faults.front().sentence;
}

TEST(NutrientDose, GivesEachPartTheSameShareOfItsFullDose) {
    const core::NutrientDose dose = core::nutrientDose(twoParts()).value();
    ASSERT_EQ(dose.parts.size(), 2U);
    EXPECT_NEAR(dose.parts[0].amount.exact, 7, 1e-12);
    EXPECT_NEAR(dose.parts[1].amount.measured, 7, 1e-12);
    EXPECT_NEAR(dose.ecLow, 1.0, 1e-12);
    EXPECT_NEAR(dose.ecHigh, 1.0, 1e-12);
    EXPECT_THAT(dose.notes.cautions,
                testing::ElementsAre(CautionTopic::Concentrates, CautionTopic::Oxidisers, CautionTopic::Advice));
}

TEST(NutrientDose, ShowsItsFormulaWithTheNumbersAndItsSource) {
    const core::NutrientDose dose = core::nutrientDose(twoParts()).value();
    ASSERT_EQ(dose.notes.workings.size(), 3U);
    EXPECT_EQ(dose.notes.workings[0].withNumbers, "(1 - 0.3) / 2.4 = 0.2917");
    EXPECT_EQ(dose.notes.workings[1].withNumbers, "0.2917 x 1.2 g/L x 20 L = 7 g");
    for (const core::Working& working : dose.notes.workings) EXPECT_FALSE(working.source.empty());
}

TEST(NutrientDose, SaysWhatAKitchenScaleOfOneGramDoesToTheTarget) {
    NutrientQuestion question = twoParts();
    question.parts[1].fullPerLitre = 1.0;  // 5.83 g: rounds up, while 7 g stays
    question.tools.scale = 1;
    const core::NutrientDose dose = core::nutrientDose(question).value();
    EXPECT_EQ(dose.parts[1].amount.measured, 6);
    EXPECT_NEAR(dose.ecLow, 1.0, 1e-12);
    EXPECT_NEAR(dose.ecHigh, 0.3 + 6.0 / 20 * 2.4, 1e-12);
}

TEST(NutrientDose, SaysWhereAScaleIsTooCoarse) {
    NutrientQuestion question = twoParts();
    question.litres = 1;
    question.tools.scale = 1;
    const core::NutrientDose dose = core::nutrientDose(question).value();
    EXPECT_EQ(dose.parts[0].amount.measured, 0);
    EXPECT_THAT(dose.notes.remarks, Contains(HasSubstr("nothing would be taken")));
}

TEST(NutrientDose, IsNothingWhereTheWaterIsAsStrongAndSaysSo) {
    NutrientQuestion question = twoParts();
    question.waterEc = 1.0;
    const core::NutrientDose dose = core::nutrientDose(question).value();
    EXPECT_EQ(dose.strength, 0);
    EXPECT_EQ(dose.parts[0].amount.exact, 0);
    EXPECT_EQ(dose.ecHigh, 1.0);
    EXPECT_THAT(dose.notes.remarks, Contains(HasSubstr("Without nutrient it reads 1 mS/cm")));
    EXPECT_THAT(dose.notes.cautions, Not(Contains(CautionTopic::Concentrates)));
}

TEST(NutrientDose, WarnsAboveFullStrength) {
    NutrientQuestion question = twoParts();
    question.targetEc = 3.6;
    EXPECT_THAT(core::nutrientDose(question).value().notes.remarks,
                Contains(HasSubstr("above full strength (1.38 times)")));
}

TEST(NutrientDose, NamesTheStagesThatTheTargetSuits) {
    EXPECT_EQ(core::nutrientDose(twoParts()).value().bands.size(), 2U);  // once rooted, and leafy greens: both hold 1.0
    EXPECT_TRUE(core::feedingBandsAt(1.7).empty());
    EXPECT_EQ(core::feedingBandsAt(0).front().stage, "cuttings before roots");
}

TEST(NutrientDose, IsTheSameMixInGallonsAndInLitres) {
    NutrientQuestion litres = twoParts(), gallons = twoParts();
    litres.litres = 5 * 3.785411784;
    gallons.litres = core::storedVolume(5, core::VolumeUnit::UsGallons);
    EXPECT_NEAR(core::nutrientDose(litres)->parts[0].amount.exact, core::nutrientDose(gallons)->parts[0].amount.exact,
                1e-12);
}

TEST(NutrientDose, RefusesWhatIsOutsideItsDomain) {
    const auto with = [](auto change) {
        NutrientQuestion question = twoParts();
        change(question);
        const auto dose = core::nutrientDose(question);
        return dose ? std::string("not refused") : firstSentence(dose.error());
    };
    constexpr double noNumber = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(with([](auto& q) { q.litres = 0; }), "Volume is 0; more than 0 and up to 100000 L is allowed.");
    EXPECT_EQ(with([](auto& q) { q.litres = -1; }), "Volume is -1; more than 0 and up to 100000 L is allowed.");
    EXPECT_THAT(with([&](auto& q) { q.litres = noNumber; }), HasSubstr("Volume is not a number"));
    EXPECT_EQ(with([](auto& q) { q.targetEc = 21; }), "EC wanted is 21; 0 to 20 mS/cm is allowed.");
    EXPECT_EQ(with([](auto& q) { q.waterEc = -0.1; }), "EC of the water is -0.1; 0 to 20 mS/cm is allowed.");
    EXPECT_EQ(with([](auto& q) { q.fullEc = 0; }),
              "EC at full strength is 0; more than 0 and up to 20 mS/cm is allowed.");
    EXPECT_EQ(with([](auto& q) { q.parts.clear(); }), "Number of parts is 0; 1 to 6 is allowed.");
    EXPECT_EQ(with([](auto& q) { q.parts[0].fullPerLitre = 0; }),
              "\"A\" is 0; more than 0 and up to 1000 g/L is allowed.");
    EXPECT_EQ(with([](auto& q) { q.parts[0].unit = AmountUnit::Litres; }), "Unit of \"A\" is L; g or mL is allowed.");
    EXPECT_EQ(with([](auto& q) { q.tools.scale = 0; }), "Step of the scale is 0; 0.001 to 1000 g is allowed.");
    NutrientQuestion all = twoParts();
    all.litres = -1;
    all.targetEc = -1;
    EXPECT_EQ(core::faultsIn(all).size(), 2U);
}

NutrientReading tenGramsOfEach() {
    return {.litres = 20,
            .readEc = 1.0,
            .waterEc = 0.3,
            .fullEc = 2.4,
            .parts = {{.name = "A", .fullPerLitre = 10}, {.name = "B", .fullPerLitre = 10}}};
}

TEST(LearnNutrient, IsTheInverseOfTheDose) {
    for (double strength = 0.1; strength <= 1; strength += 0.1) {
        const core::LearntNutrient learnt =
            core::learnNutrient({.litres = 15,
                                 .readEc = 0.4 + strength * 2.2,
                                 .waterEc = 0.4,
                                 .fullEc = 2.2,
                                 .parts = {{.name = "A", .fullPerLitre = strength * 15 * 1.7}}})
                .value();
        EXPECT_NEAR(learnt.parts[0].fullPerLitre.value(), 1.7, 1e-12);
    }
}

TEST(LearnNutrient, TellsHowFarTheMetersStepLetsItBeTold) {
    const core::LearntNutrient learnt = core::learnNutrient(tenGramsOfEach()).value();
    EXPECT_NEAR(learnt.parts[0].fullLow, 0.5 * 2.4 / 0.8, 1e-12);
    EXPECT_NEAR(learnt.parts[0].fullHigh, 0.5 * 2.4 / 0.6, 1e-12);
    EXPECT_NEAR(learnt.ecPerUnit, 0.7 / 0.5, 1e-12);
    EXPECT_THAT(learnt.notes.remarks, Contains(HasSubstr("30 % too low")));
}

TEST(LearnNutrient, SaysWhatAGramAddsWhereTheFullStrengthIsNotKnown) {
    NutrientReading reading = tenGramsOfEach();
    reading.fullEc.reset();
    const core::LearntNutrient learnt = core::learnNutrient(reading).value();
    EXPECT_FALSE(learnt.parts[0].fullPerLitre);
    EXPECT_NEAR(learnt.ecPerUnit, 1.4, 1e-12);
}

TEST(LearnNutrient, HasNoUpperLimitWhereTheReadingsAreLessThanAStepApart) {
    NutrientReading reading = tenGramsOfEach();
    reading.readEc = 0.35;
    EXPECT_TRUE(std::isinf(core::learnNutrient(reading)->parts[0].fullHigh));
}

TEST(LearnNutrient, RefusesAReadingThatIsNoStrongerThanTheWater) {
    NutrientReading reading = tenGramsOfEach();
    reading.readEc = 0.3;
    EXPECT_EQ(firstSentence(core::learnNutrient(reading).error()),
              "EC read is 0.3 mS/cm; more than the 0.3 mS/cm of the water is allowed.");
    reading = tenGramsOfEach();
    reading.meterStep = 0;
    EXPECT_THAT(firstSentence(core::learnNutrient(reading).error()), HasSubstr("Step of the meter is 0"));
}

}  // namespace
