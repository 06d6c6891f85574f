// SPDX-License-Identifier: MIT
#include "app/plot/row_axis.h"

#include <cmath>
#include <limits>

#include "gmock/gmock.h"
#include "gtest/gtest.h"

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

plot::IntervalRows rowsOf(plot::RowScale scale, double value, core::Limits thick) {
    plot::IntervalRow row;
    row.value = value;
    row.thick = thick;
    plot::IntervalRows rows;
    rows.scale = scale;
    rows.rows = {row};
    return rows;
}

const QRectF area(100, 0, 200, 50);

TEST(RowAxis, PlacesRatiosByTheirLogarithmAboutOne) {
    const plot::RowAxis axis(rowsOf(plot::RowScale::Ratio, 2, {0.25, 4}), area);
    EXPECT_EQ(axis.neutral(), 1);
    EXPECT_NEAR(axis.at(1), 200, 1e-9);
    EXPECT_NEAR(axis.at(0.25), 100, 1e-9);
    EXPECT_NEAR(axis.at(4), 300, 1e-9);
    EXPECT_NEAR(axis.at(2) - axis.at(1), axis.at(1) - axis.at(0.5), 1e-9);
}

TEST(RowAxis, PutsWhatHasNoPlaceAtItsEnds) {
    const plot::RowAxis axis(rowsOf(plot::RowScale::Ratio, 3, {0, endless}), area);
    EXPECT_EQ(axis.at(0), 100);
    EXPECT_EQ(axis.at(endless), 300);
    EXPECT_TRUE(axis.isBeyond(0));
    EXPECT_TRUE(axis.isBeyond(endless));
    EXPECT_FALSE(axis.isBeyond(3));
}

TEST(RowAxis, EndsRatiosAtAHundredfold) {
    const plot::RowAxis axis(rowsOf(plot::RowScale::Ratio, 2, {1e-30, 1e30}), area);
    EXPECT_TRUE(axis.isBeyond(1e30));
    EXPECT_NEAR(axis.at(100), 300, 1e-9);
    EXPECT_LT(axis.at(1), axis.at(2));
}

TEST(RowAxis, LetsNoEndlessLimitStretchTheDays) {
    const plot::RowAxis axis(rowsOf(plot::RowScale::Day, 12, {9, endless}), area);
    EXPECT_EQ(axis.at(0), 100);
    EXPECT_TRUE(axis.isBeyond(endless));
    EXPECT_GT(axis.at(12), 130);
    EXPECT_FALSE(axis.neutral().has_value());
}

TEST(RowAxis, HasTicksWithinItsEnds) {
    for (const plot::RowScale scale :
         {plot::RowScale::Share, plot::RowScale::Difference, plot::RowScale::Ratio, plot::RowScale::Day})
        for (const int most : {3, 5, 9, 20}) {
            const plot::RowAxis axis(rowsOf(scale, 0.4, {0.03, 0.9}), area);
            const std::vector<double> ticks = axis.ticks(most);
            EXPECT_FALSE(ticks.empty());
            for (const double tick : ticks) {
                EXPECT_FALSE(axis.isBeyond(tick)) << tick;
                EXPECT_FALSE(axis.labelOf(tick).isEmpty());
            }
        }
}

}  // namespace
