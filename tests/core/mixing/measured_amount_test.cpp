// SPDX-License-Identifier: MIT
#include "core/mixing/measured_amount.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::AmountRounding;
using core::AmountUnit;
using testing::HasSubstr;

TEST(MeasuredAmount, IsAWholeNumberOfStepsAndTheNearest) {
    for (const double step : {0.001, 0.01, 0.05, 0.1, 0.5, 1.0, 5.0})
        for (double exact = 0; exact < 40; exact += 0.0371) {
            const core::MeasuredAmount amount = core::measuredWith({.scale = step}, AmountUnit::Grams, exact);
            const double steps = amount.measured / step;
            EXPECT_NEAR(steps, std::round(steps), 1e-6);
            EXPECT_LE(std::abs(amount.measured - exact), step / 2 * 1.001);
            EXPECT_GE(core::measuredWith({.scale = step}, AmountUnit::Grams, exact, AmountRounding::Up).measured,
                      exact - 1e-5 * step);
            EXPECT_LE(core::measuredWith({.scale = step}, AmountUnit::Grams, exact, AmountRounding::Down).measured,
                      exact + 1e-5 * step);
        }
}

TEST(MeasuredAmount, IsWrittenWithTheDecimalsOfItsStep) {
    EXPECT_EQ(core::measuredText(core::measuredWith({}, AmountUnit::Grams, 7)), "7.0 g");
    EXPECT_EQ(core::measuredText(core::measuredWith({.scale = 1}, AmountUnit::Grams, 7.2)), "7 g");
    EXPECT_EQ(core::measuredText(core::measuredWith({.syringe = 0.05}, AmountUnit::Millilitres, 2.105)), "2.10 mL");
    EXPECT_EQ(core::measuredText(core::measuredWith({.jug = 0.25}, AmountUnit::Litres, 3.1)), "3.00 L");
}

TEST(MeasuredAmount, TakesTheStepOfItsOwnTool) {
    const core::MeasuringTools tools{.scale = 1, .syringe = 0.5, .jug = 2};
    EXPECT_EQ(core::measuredWith(tools, AmountUnit::Grams, 3.4).measured, 3);
    EXPECT_EQ(core::measuredWith(tools, AmountUnit::Millilitres, 3.4).measured, 3.5);
    EXPECT_EQ(core::measuredWith(tools, AmountUnit::Litres, 3.4).measured, 4);
}

TEST(MeasuredAmount, SaysHowFarOffItIsWhereThatIsMuch) {
    EXPECT_FALSE(core::coarsenessOf(core::measuredWith({}, AmountUnit::Grams, 7.01), "A"));
    EXPECT_THAT(core::coarsenessOf(core::measuredWith({}, AmountUnit::Grams, 0.36), "A").value(),
                HasSubstr("Steps of 0.1 g are coarse for 0.36 g of A: what can be measured is 11 % too much."));
    EXPECT_THAT(core::coarsenessOf(core::measuredWith({}, AmountUnit::Millilitres, 0.04), "acid").value(),
                HasSubstr("nothing would be taken. Dilute it ten times"));
    EXPECT_FALSE(core::coarsenessOf(core::measuredWith({}, AmountUnit::Grams, 0), "A"));
}

TEST(MeasuringTools, RefuseStepsThatNoToolHas) {
    EXPECT_TRUE(core::faultsIn(core::MeasuringTools{}).empty());
    EXPECT_EQ(core::faultsIn(core::MeasuringTools{.scale = 0, .syringe = -1, .jug = NAN}).size(), 3U);
}

}  // namespace
