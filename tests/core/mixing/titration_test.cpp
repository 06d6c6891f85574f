// SPDX-License-Identifier: MIT
#include "core/mixing/titration.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::Contains;
using testing::HasSubstr;

core::TitrationQuestion jugOfOneLitre() {
    return {.sampleLitres = 1, .steps = {{0, 7.6}, {0.4, 6.8}, {0.8, 6.2}, {1.2, 5.6}}, .toPh = 6.0, .litres = 20};
}

std::string refusalOf(const core::TitrationQuestion& question) {
    const auto dose = core::titratedDose(question);
    return dose ? "not refused" : dose.error().front().sentence;
}

TEST(TitratedDose, ScalesWhatTheJugTookToTheTub) {
    const core::TitratedDose dose = core::titratedDose(jugOfOneLitre()).value();
    EXPECT_NEAR(dose.sampleMillilitres, 0.8 + 0.4 / 3, 1e-12);
    EXPECT_NEAR(dose.amount.exact, 20 * (0.8 + 0.4 / 3), 1e-9);
    EXPECT_NEAR(dose.amount.measured, 18.7, 1e-9);
    EXPECT_NEAR(dose.start.measured, 9.3, 1e-9);
    EXPECT_NEAR(dose.high - dose.low, 2.0, 1e-9);  // a tenth of a mL in the jug is 2 mL in the tub
    EXPECT_THAT(dose.notes.workings[0].withNumbers, HasSubstr("x 20 L / 1 L = 18.67 mL"));
    EXPECT_EQ(dose.notes.cautions.front(), core::CautionTopic::Acids);
}

TEST(TitratedDose, CountsThatTheBottleWasDilutedForTheJug) {
    core::TitrationQuestion question = jugOfOneLitre();
    question.dilutedTo = 10;
    EXPECT_NEAR(core::titratedDose(question)->amount.exact, 2 * (0.8 + 0.4 / 3), 1e-9);
}

TEST(TitratedDose, HoldsAtTheReadingsThemselvesAndForBases) {
    core::TitrationQuestion question = jugOfOneLitre();
    for (const core::TitrationStep& step : question.steps) {
        question.toPh = step.ph;
        EXPECT_NEAR(core::titratedDose(question)->sampleMillilitres, step.millilitres, 1e-12);
    }
    question.steps = {{0, 5.0}, {2, 6.0}};
    question.toPh = 5.5;
    const core::TitratedDose base = core::titratedDose(question).value();
    EXPECT_NEAR(base.sampleMillilitres, 1, 1e-12);
    EXPECT_THAT(base.notes.remarks, Contains(HasSubstr("Two readings only")));
}

TEST(TitratedDose, RefusesReadingsThatMakeNoSense) {
    const auto with = [](auto change) {
        core::TitrationQuestion question = jugOfOneLitre();
        change(question);
        return refusalOf(question);
    };
    EXPECT_EQ(with([](auto& q) { q.steps.resize(1); }), "Number of readings is 1; 2 to 50 is allowed.");
    EXPECT_EQ(with([](auto& q) { q.steps[2].millilitres = 0.4; }),
              "Reading 3, amount is 0.4 mL; more than the 0.4 mL before it is allowed.");
    EXPECT_EQ(with([](auto& q) { q.steps[2].ph = 7; }), "Reading 3, pH is 7; less than the 6.8 before it is allowed.");
    EXPECT_EQ(with([](auto& q) { q.steps[1].ph = 7.6; }),
              "Reading 2, pH is 7.6; more than the 7.6 before it is allowed.");
    EXPECT_THAT(with([](auto& q) { q.steps[0].ph = 12; }), HasSubstr("Reading 1, pH is 12; 3 to 11"));
    EXPECT_EQ(with([](auto& q) { q.toPh = 5; }), "pH wanted is 5; 5.6 to 7.6 as the readings go is allowed.");
    EXPECT_EQ(with([](auto& q) { q.sampleLitres = 30; }),
              "Volume of the jug is 30; more than 0 and up to 20 L is allowed.");
    EXPECT_THAT(with([](auto& q) { q.dilutedTo = 0.5; }), HasSubstr("Dilution is 0.5"));
    EXPECT_THAT(with([](auto& q) { q.litres = 0; }), HasSubstr("Volume of the tub is 0"));
}

}  // namespace
