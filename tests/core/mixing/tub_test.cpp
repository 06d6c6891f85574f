// SPDX-License-Identifier: MIT
#include "core/mixing/tub.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::Contains;
using testing::HasSubstr;

core::TubTopUp halfEmpty() {
    return {.litres = 10,
            .ec = 0.8,
            .fullLitres = 20,
            .feed = {.targetEc = 1.0, .waterEc = 0.2, .fullEc = 2.4, .parts = {{.name = "A", .fullPerLitre = 1.2}}}};
}

TEST(DiluteTub, AddsOrReplacesSoMuchWaterThatTheBlendReadsTheTarget) {
    for (double target = 0.3; target < 1.4; target += 0.1) {
        const core::DilutedTub tub =
            core::diluteTub({.litres = 20, .ec = 1.4, .targetEc = target, .waterEc = 0.2}).value();
        EXPECT_NEAR(core::blendedEc(20, 1.4, tub.add.exact, 0.2).value(), target, 1e-12);
        EXPECT_NEAR(core::blendedEc(20 - tub.replace.exact, 1.4, tub.replace.exact, 0.2).value(), target, 1e-12);
    }
}

TEST(DiluteTub, SaysWhatAMeasuringJugDoesToTheTarget) {
    const core::DilutedTub tub =
        core::diluteTub({.litres = 20, .ec = 1.4, .targetEc = 0.9, .waterEc = 0.2, .tools = {.jug = 5}}).value();
    EXPECT_NEAR(tub.add.exact, 14.2857, 1e-4);
    EXPECT_EQ(tub.add.measured, 15);
    EXPECT_NEAR(tub.ecAfterAdding, (20 * 1.4 + 15 * 0.2) / 35, 1e-12);
    EXPECT_EQ(tub.replace.measured, 10);
    EXPECT_NEAR(tub.ecAfterReplacing, 0.8, 1e-12);
    EXPECT_THAT(tub.notes.workings[0].withNumbers, HasSubstr("20 L x (1.4 - 0.9) / (0.9 - 0.2) = 14.29 L"));
}

TEST(DiluteTub, RefusesATargetThatWaterCannotReach) {
    const auto sentence = [](double target, double water) {
        return core::diluteTub({.litres = 20, .ec = 1.4, .targetEc = target, .waterEc = water})
            .error()
            .front()
            .sentence;
    };
    EXPECT_EQ(sentence(0.2, 0.2),
              "EC wanted is 0.2 mS/cm; more than the 0.2 of the water and less than the 1.4 of the tub is allowed.");
    EXPECT_THAT(sentence(1.4, 0.2), HasSubstr("EC wanted is 1.4"));
    EXPECT_EQ(sentence(1.0, 1.4), "EC of the water is 1.4 mS/cm; less than the 1.4 mS/cm of the tub is allowed.");
}

TEST(TopUpTub, BringsTheFullTubToTheTarget) {
    const core::ToppedUpTub tub = core::topUpTub(halfEmpty()).value();
    EXPECT_EQ(tub.water.measured, 10);
    EXPECT_NEAR(tub.ecWithWaterAlone, 0.5, 1e-12);
    EXPECT_NEAR(tub.parts[0].amount.exact, 0.5 / 2.4 * 1.2 * 20, 1e-12);
    EXPECT_NEAR(tub.ecHigh, 1.0, 1e-12);
    EXPECT_THAT(tub.notes.workings[0].withNumbers, HasSubstr("(10 x 0.8 + 10 x 0.2) / 20 = 0.5 mS/cm"));
}

TEST(TopUpTub, OfAnEmptyTubIsAFreshMix) {
    core::TubTopUp empty = halfEmpty();
    empty.litres = 0;
    core::NutrientQuestion fresh = empty.feed;
    fresh.litres = 20;
    EXPECT_NEAR(core::topUpTub(empty)->parts[0].amount.exact, core::nutrientDose(fresh)->parts[0].amount.exact, 1e-12);
}

TEST(TopUpTub, SaysWhereWaterAloneLeavesItTooStrong) {
    core::TubTopUp strong = halfEmpty();
    strong.ec = 3;
    const core::ToppedUpTub tub = core::topUpTub(strong).value();
    EXPECT_EQ(tub.parts[0].amount.exact, 0);
    EXPECT_THAT(tub.notes.remarks, Contains(HasSubstr("still stronger than wanted")));
}

TEST(TopUpTub, RefusesMoreInTheTubThanItHolds) {
    core::TubTopUp over = halfEmpty();
    over.litres = 21;
    EXPECT_EQ(core::topUpTub(over).error().front().sentence, "Volume now is 21; 0 to 20 L is allowed.");
}

TEST(BlendedEc, RefusesNothingAtAll) {
    EXPECT_EQ(core::blendedEc(0, 1, 0, 1).error().front().sentence, "Volume is 0 L; more than 0 is allowed.");
    EXPECT_EQ(core::blendedEc(-1, 1, 2, 1).error().front().sentence, "First volume is -1; 0 to 100000 L is allowed.");
}

}  // namespace
