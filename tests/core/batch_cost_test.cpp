// SPDX-License-Identifier: MIT
// What the reference's checks leave open: see records_reference_test.cpp for its values.
#include "core/money/batch_cost.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "core/due/first_look.h"

namespace {

using testing::HasSubstr;

std::string sentenceOf(const core::BatchCostQuestion& question) {
    const auto cost = core::batchCost(question);
    return cost ? "" : cost.error().front().sentence;
}

TEST(BatchCost, IsTheSumOfItsParts) {
    // Invented: 60.00 over two years of five batches, 0.10 a cutting, 3 kWh at 0.40, an hour that is worth nothing.
    const core::BatchCost cost = core::batchCost({.capital = 60,
                                                  .lifeYears = 2,
                                                  .batchesAYear = 5,
                                                  .consumablesPerCutting = 0.1,
                                                  .stuck = 20,
                                                  .kilowattHours = 3,
                                                  .pricePerKilowattHour = 0.4,
                                                  .minutesOfWork = 60,
                                                  .worthOfAnHour = 0,
                                                  .overhead = 0})
                                     .value();
    EXPECT_DOUBLE_EQ(cost.capital, 6);
    EXPECT_DOUBLE_EQ(cost.labour, 0);
    EXPECT_DOUBLE_EQ(cost.total(), 6 + 2 + 1.2);
}

TEST(BatchCost, NamesTheFieldTheValueAndWhatIsAllowed) {
    const core::BatchCostQuestion plain{.stuck = 10};
    EXPECT_EQ(sentenceOf(plain), "");
    auto wrong = plain;
    wrong.stuck = 0;
    EXPECT_THAT(sentenceOf(wrong), HasSubstr("Cuttings stuck is 0; 1 to 100000"));
    wrong = plain;
    wrong.lifeYears = 0;
    EXPECT_THAT(sentenceOf(wrong), HasSubstr("Years that they last is 0; more than 0 and up to 100"));
    wrong = plain;
    wrong.capital = -1;
    EXPECT_THAT(sentenceOf(wrong), HasSubstr("Price of lasting things is -1; 0 to"));
    wrong = plain;
    wrong.overhead = std::numeric_limits<double>::quiet_NaN();
    EXPECT_THAT(sentenceOf(wrong), HasSubstr("Overhead"));
    EXPECT_FALSE(core::kilowattHours(std::vector<core::ElectricLoad>{{.watts = 5, .hoursADay = 25, .days = 1}}));
}

TEST(UnitCost, HasNoCostPerPlantWhereNoneRooted) {
    const core::UnitCost none = core::unitCost(12, 24, 0, 0).value();
    EXPECT_DOUBLE_EQ(none.perStuck, 0.5);
    EXPECT_FALSE(none.perRooted);
    EXPECT_FALSE(none.perUsable);
    EXPECT_FALSE(core::unitCost(12, 24, 25, 0));
    EXPECT_FALSE(core::unitCost(12, 24, 10, 11));
    EXPECT_FALSE(core::unitCost(-1, 24, 10, 10));
}

TEST(StrikeToBreakEven, RefusesWhatCannotBeDividedBy) {
    EXPECT_DOUBLE_EQ(core::strikeToBreakEven(0.5, 0.6, 0).value(), 0);
    EXPECT_FALSE(core::strikeToBreakEven(0, 0.6, 1));
    EXPECT_FALSE(core::strikeToBreakEven(0.5, 0, 1));
    EXPECT_FALSE(core::strikeToBreakEven(0.5, 1.1, 1));
}

TEST(UsualFirstLook, IsNeverBeforeTheFifthDay) {
    EXPECT_EQ(core::usualFirstLook(3).value(), 5);
    EXPECT_EQ(core::usualFirstLook(11).value(), 6);
    EXPECT_EQ(core::usualFirstLook(42).value(), 21);
    EXPECT_THAT(core::usualFirstLook(0).error().front().sentence, HasSubstr("1 to 3650"));
}

}  // namespace
