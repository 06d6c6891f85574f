// SPDX-License-Identifier: MIT
#include "app/plot/axis.h"

#include "gmock/gmock.h"
#include "gtest/gtest.h"

using testing::ElementsAre;

TEST(WeekTicks, AreWholeWeeks) {
    EXPECT_THAT(plot::weekTicks(28, 10), ElementsAre(0, 7, 14, 21, 28));
    EXPECT_THAT(plot::weekTicks(28, 3), ElementsAre(0, 14, 28));
    EXPECT_THAT(plot::weekTicks(7, 1), ElementsAre(0, 7));
}

TEST(LastTick, IsTheWeekThatHoldsTheDay) {
    EXPECT_EQ(plot::lastTickFor(0), 7);
    EXPECT_EQ(plot::lastTickFor(28), 28);
    EXPECT_EQ(plot::lastTickFor(29), 35);
}

TEST(ShareTicks, GrowFewer) {
    EXPECT_THAT(plot::shareTicks(1, 6), ElementsAre(0, 0.25, 0.5, 0.75, 1));
    EXPECT_THAT(plot::shareTicks(1, 3), ElementsAre(0, 0.5, 1));
    EXPECT_THAT(plot::shareTicks(0.25, 2), ElementsAre(0, 0.25));
}

TEST(DifferenceTicks, HoldZero) {
    EXPECT_THAT(plot::differenceTicks(-0.2, 0.4, 9), testing::Contains(testing::DoubleNear(0, 1e-12)));
    EXPECT_THAT(plot::differenceTicks(-1, 1, 3), ElementsAre(-1, 0, 1));
}

TEST(CountTicks, AreWholeRoundAndNoMoreThanFit) {
    EXPECT_EQ(plot::countTicks(24, 50, 6), std::vector<int>({25, 30, 35, 40, 45, 50}));
    EXPECT_EQ(plot::countTicks(0, 4, 10), std::vector<int>({0, 1, 2, 3, 4}));
    EXPECT_EQ(plot::countTicks(3, 210, 5), std::vector<int>({50, 100, 150, 200}));
    EXPECT_EQ(plot::countTicks(7, 7, 5), std::vector<int>({7}));
}

TEST(AmountTicks, BeginAtNothingAndAreRound) {
    EXPECT_THAT(plot::amountTicks(0.9, 5), ElementsAre(0, 0.2, 0.4, testing::DoubleEq(0.6), 0.8));
    EXPECT_THAT(plot::amountTicks(12, 4), ElementsAre(0, 5, 10));
    EXPECT_THAT(plot::amountTicks(1e6, 2), ElementsAre(0, 5e5, 1e6));
    for (const double high : {1e-6, 0.03, 7.0, 99.0, 12345.0})
        for (const int most : {1, 2, 5, 9})
            EXPECT_LE(plot::amountTicks(high, most).size(), static_cast<std::size_t>(most) + 1) << high;
}

TEST(RatioTicks, AreRoundAndSymmetricAboutOne) {
    EXPECT_THAT(plot::ratioTicks(0.5, 2, 9), testing::ElementsAre(0.5, 1, 2));
    EXPECT_THAT(plot::ratioTicks(0.1, 10, 9), testing::ElementsAre(0.1, testing::DoubleEq(0.2), 0.5, 1, 2, 5, 10));
    EXPECT_THAT(plot::ratioTicks(0.01, 100, 5),
                testing::ElementsAre(testing::DoubleEq(0.01), testing::DoubleEq(0.1), 1, 10, 100));
    EXPECT_THAT(plot::ratioTicks(0.01, 100, 3), testing::ElementsAre(testing::DoubleEq(0.01), 1, 100));
}

TEST(RatioTicks, NeverAreMoreThanAskedFor) {
    for (const double low : {1e-9, 0.02, 0.7, 300.0})
        for (const double factor : {1.0, 1.5, 40.0, 1e12})
            for (const int most : {3, 4, 7, 12})
                EXPECT_LE(plot::ratioTicks(low, low * factor, most).size(), static_cast<std::size_t>(most))
                    << low << " times " << factor << ", at most " << most;
}
