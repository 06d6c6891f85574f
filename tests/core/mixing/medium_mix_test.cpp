// SPDX-License-Identifier: MIT
#include "core/mixing/medium_mix.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::HasSubstr;

core::MediumQuestion coirAndPerlite() {
    return {.components = {{"coir", 3}, {"perlite", 2}}, .litres = 10, .lossPercent = 15};
}

template <class Answer>
std::string mediumRefusal(const core::Result<Answer>& answer) {
    return answer ? "not refused" : answer.error().front().sentence;
}

TEST(MixMedium, RoundsUpSoThatItIsEnough) {
    const core::MixedMedium mixed = core::mixMedium(coirAndPerlite()).value();
    ASSERT_EQ(mixed.components.size(), 2U);
    EXPECT_NEAR(mixed.components[0].amount.exact, 10 * 0.6 / 0.85, 1e-12);
    EXPECT_NEAR(mixed.components[0].amount.measured, 7.1, 1e-12);
    EXPECT_NEAR(mixed.components[1].amount.measured, 4.8, 1e-12);
    EXPECT_NEAR(mixed.litresAsMeasured, 11.9 * 0.85, 1e-12);
    EXPECT_THAT(mixed.notes.workings[0].withNumbers, HasSubstr("10 L x 3 / 5 / (1 - 0.15) = 7.059 L"));
    EXPECT_EQ(mixed.notes.cautions.front(), core::CautionTopic::MouldAndDust);
}

TEST(MixMedium, NeverGivesLessThanIsWanted) {
    for (double litres = 0.3; litres < 30; litres += 0.7)
        for (double loss = 0; loss <= 60; loss += 7.5) {
            core::MediumQuestion question = coirAndPerlite();
            question.litres = litres;
            question.lossPercent = loss;
            question.tools.jug = 0.5;
            EXPECT_GE(core::mixMedium(question)->litresAsMeasured, litres - 1e-5);
        }
}

TEST(MixMedium, RefusesWhatIsOutsideItsDomain) {
    const auto with = [](auto change) {
        core::MediumQuestion question = coirAndPerlite();
        change(question);
        return mediumRefusal(core::mixMedium(question));
    };
    EXPECT_EQ(with([](auto& q) { q.components.clear(); }), "Number of components is 0; 1 to 20 is allowed.");
    EXPECT_EQ(with([](auto& q) { q.components[1].parts = 0; }),
              "Parts of \"perlite\" is 0; more than 0 and up to 1000 is allowed.");
    EXPECT_THAT(with([](auto& q) { q.components[0].name = " "; }), HasSubstr("Component"));
    EXPECT_EQ(with([](auto& q) { q.lossPercent = 100; }), "Loss in mixing is 100; 0 to 60 % is allowed.");
    EXPECT_THAT(with([](auto& q) { q.litres = 0; }), HasSubstr("Volume is 0"));
}

TEST(CellMillilitres, OfACellWithStraightWallsIsItsBox) {
    EXPECT_NEAR(core::cellMillilitres({40, 30, 40, 30, 50}).value(), 60, 1e-12);
    EXPECT_NEAR(core::cellMillilitres({40, 30, 0, 0, 50}).value(), 20, 1e-12);   // a pyramid
    EXPECT_NEAR(core::cellMillilitres({40, 30, 40, 0, 50}).value(), 30, 1e-12);  // a wedge
    EXPECT_THAT(mediumRefusal(core::cellMillilitres({40, 30, 40, 30, 0})), HasSubstr("Depth of the cell is 0"));
    EXPECT_THAT(mediumRefusal(core::cellMillilitres({0, 30, 40, 30, 9})), HasSubstr("Width of the cell is 0"));
}

TEST(TrayLitres, MultiplyOverTrays) {
    EXPECT_NEAR(core::trayLitres(3, 60, 43.98).value(), 3 * 2.6388, 1e-9);
    EXPECT_THAT(mediumRefusal(core::trayLitres(0, 60, 43.98)), HasSubstr("Trays is 0"));
    EXPECT_THAT(mediumRefusal(core::trayLitres(1, 60, 0)), HasSubstr("Volume of a cell is 0"));
}

TEST(PotTests, RefuseWhatAPotCannotHold) {
    EXPECT_THAT(mediumRefusal(core::airFilledPorosity(1000, 1001)), HasSubstr("Drained is 1001; 0 to 1000 mL"));
    EXPECT_THAT(mediumRefusal(core::airFilledPorosity(0, 0)), HasSubstr("Volume of the pot is 0"));
    EXPECT_THAT(mediumRefusal(core::waterHeld(1000, 400, 430)), HasSubstr("Wet weight is 400; 430 to 1430 g"));
}

}  // namespace
