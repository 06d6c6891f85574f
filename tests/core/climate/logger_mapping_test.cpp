// SPDX-License-Identifier: MIT
#include "core/climate/logger_mapping.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using core::ColumnRole;
using core::LoggerUnit;
using core::Quantity;
using testing::HasSubstr;
using testing::IsEmpty;

const std::vector<std::string> threeNames{"Time", "Temp", "Light"};

core::LoggerMapping aGoodMapping() {
    core::LoggerMapping mapping{.timeForm = core::TimeForm::YearMonthDay, .zone = "UTC"};
    mapping.columns = {{.role = ColumnRole::DayAndTime},
                       {.role = ColumnRole::Values, .station = support::tubNorth},
                       {.role = ColumnRole::Values,
                        .station = support::tubNorth,
                        .quantity = Quantity::Light,
                        .unit = LoggerUnit::Lux,
                        .luxPerMicromole = 54}};
    return mapping;
}

void expectRefused(const core::LoggerMapping& mapping, const std::string& field, const std::string& word) {
    const core::Refusals faults = core::faultsIn(mapping, threeNames, support::someShelves());
    ASSERT_EQ(faults.size(), 1U) << word;
    EXPECT_EQ(faults[0].field, field);
    EXPECT_THAT(faults[0].sentence, HasSubstr(word));
}

TEST(LoggerMapping, IsAllowedWithATimeAndAValue) {
    EXPECT_THAT(core::faultsIn(aGoodMapping(), threeNames, support::someShelves()), IsEmpty());
}

TEST(LoggerMapping, NeedsOneTimeInOneColumnOrInTwo) {
    core::LoggerMapping mapping = aGoodMapping();
    mapping.columns[0].role = ColumnRole::LeftOut;
    expectRefused(mapping, "Time", "in no column");
    mapping.columns[0].role = ColumnRole::Day;
    expectRefused(mapping, "Time", "do not go together");
    mapping.columns[2] = {.role = ColumnRole::TimeOfDay};
    EXPECT_THAT(core::faultsIn(mapping, threeNames, support::someShelves()), IsEmpty());
    mapping.columns[0].role = ColumnRole::DayAndTime;
    expectRefused(mapping, "Time", "do not go together");
}

TEST(LoggerMapping, NeedsAnOrderAZoneAStationAndAFittingUnit) {
    core::LoggerMapping mapping = aGoodMapping();
    mapping.timeForm = core::TimeForm::NotSettled;
    expectRefused(mapping, "Day and month", "more than one way");
    mapping = aGoodMapping();
    mapping.zone = " ";
    expectRefused(mapping, "Zone", "not named");
    mapping.timeForm = core::TimeForm::UnixSeconds;  // which needs none
    EXPECT_THAT(core::faultsIn(mapping, threeNames, support::someShelves()), IsEmpty());
    mapping = aGoodMapping();
    mapping.columns[1].station = {};
    expectRefused(mapping, "Column \"Temp\"", "no station");
    mapping = aGoodMapping();
    mapping.columns[1].unit = LoggerUnit::Lux;
    mapping.columns[1].luxPerMicromole = 54;
    expectRefused(mapping, "Column \"Temp\"", "is in lux");
    mapping = aGoodMapping();
    mapping.columns[1].role = mapping.columns[2].role = ColumnRole::LeftOut;
    expectRefused(mapping, "Values", "in no column");
}

TEST(LoggerMapping, NeedsAFigureForLuxFromTheGrower) {
    for (const double lux : {0.0, 0.9, 501.0, -54.0, std::numeric_limits<double>::quiet_NaN()}) {
        core::LoggerMapping mapping = aGoodMapping();
        mapping.columns[2].luxPerMicromole = lux;
        expectRefused(mapping, "Column \"Light\"", "how many lux");
    }
}

TEST(LoggerMapping, TakesAQuantityOfAStationOnce) {
    core::LoggerMapping mapping = aGoodMapping();
    mapping.columns[2] = mapping.columns[1];
    expectRefused(mapping, "Column \"Light\"", "column before");
    mapping.columns[2].station = support::tubSouth;
    EXPECT_THAT(core::faultsIn(mapping, threeNames, support::someShelves()), IsEmpty());
}

TEST(LoggerMapping, HasAWordForEachUnitAndWaysThereAndBack) {
    for (const Quantity quantity : core::allQuantities)
        for (const LoggerUnit unit : core::loggerUnitsOf(quantity)) {
            EXPECT_EQ(core::loggerUnitFrom(core::wordFor(unit)), unit);
            const core::LoggerColumn column{.role = ColumnRole::Values,
                                            .station = support::tubNorth,
                                            .quantity = quantity,
                                            .unit = unit,
                                            .luxPerMicromole = 54};
            for (int step = 0; step <= 100; ++step) {
                const core::QuantityFacts& facts = core::factsOf(quantity);
                const double stored = facts.low + (facts.high - facts.low) * step / 100;
                EXPECT_NEAR(core::storedValue(core::loggedValue(stored, column), column), stored, 1e-9);
            }
        }
    EXPECT_FALSE(core::loggerUnitFrom("kelvin"));
}

}  // namespace
