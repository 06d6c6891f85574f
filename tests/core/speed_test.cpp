// SPDX-License-Identifier: MIT
#include "core/comparison/speed.h"

#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using support::aBatch;

// So many newly rooted at looks on these days, of 20; four such batches at two stations.
std::vector<core::BatchRecord> season(core::StationId one, core::StationId other, const std::vector<int>& days,
                                      const std::vector<int>& rooted) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 4; ++i) {
        support::BatchBuilder batch = aBatch().at(i % 2 == 0 ? one : other).stuck(20);
        for (std::size_t look = 0; look < days.size(); ++look)
            batch.looked(days[look], {.rooted = rooted[look] + (i == static_cast<int>(look) ? 1 : 0)});
        batches.push_back(batch);
    }
    return batches;
}

TEST(RootingSpeed, TellsWhoRootsFromHowFast) {
    const auto comparison = examples::compared(
        examples::together({season(support::tubNorth, support::tubSouth, {7, 10, 14, 21, 35}, {2, 5, 4, 2, 0}),
                            season(support::benchWest, support::benchEast, {14, 20, 28, 42, 70}, {2, 5, 4, 2, 0})}));
    for (const core::Arm& arm : comparison.arms) {
        ASSERT_EQ(arm.speed.fits.size(), 3u) << arm.name << arm.speed.whyNot;
        EXPECT_LE(arm.speed.fits[0].akaike, arm.speed.fits[1].akaike);
        EXPECT_NEAR(arm.speed.fits[0].rootingShare, 0.7, 0.06) << arm.name;
    }
    const core::SpeedDifference& speed = comparison.pairs.front().speed;
    ASSERT_TRUE(speed.ratio) << speed.whyNot;
    const bool firstIsWater = comparison.arms[0].name.find("water") != std::string::npos;
    EXPECT_NEAR(firstIsWater ? *speed.ratio : 1 / *speed.ratio, 0.5, 0.03) << "the days are twice as long";
    EXPECT_LT(speed.asCountedP, 0.001);
}

TEST(RootingSpeed, CountsLostCuttingsAsOnesThatNeverRoot) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 3; ++i)
        batches.push_back(aBatch()
                              .stuck(20)
                              .looked(7, {.rooted = 2, .lost = 5})
                              .looked(14, {.rooted = 5 + i % 2})
                              .looked(21, {.rooted = 2})
                              .looked(60));
    const auto comparison = examples::compared(batches);
    const core::RootingSpeed& speed = comparison.arms.front().speed;
    ASSERT_FALSE(speed.fits.empty()) << speed.whyNot;
    EXPECT_NEAR(speed.fits.front().rootingShare, 28.0 / 60, 0.01);
}

TEST(RootingSpeed, SaysWhyThereIsNone) {
    const auto whyNot = [](const core::BatchRecord& batch) {
        const auto comparison = examples::compared({batch});
        EXPECT_TRUE(comparison.arms.front().speed.fits.empty());
        return comparison.arms.front().speed.whyNot;
    };
    EXPECT_EQ(whyNot(aBatch().looked(28, {.rooted = 0, .lost = 3})), "none rooted");
    EXPECT_EQ(whyNot(aBatch().looked(28, {.rooted = 9})),
              "there was one check only, which says how many rooted, not how fast");
    EXPECT_EQ(whyNot(aBatch().looked(14, {.rooted = 9}).looked(28)), "all that rooted had done so at the first check");
    EXPECT_EQ(whyNot(aBatch().looked(14, {.rooted = 9}).looked(28, {.rooted = 3})),
              "rooting was seen between fewer than three pairs of checks");
}

TEST(SpeedDifference, SaysWhyThereIsNone) {
    const auto comparison = examples::compared(examples::together(
        {examples::batchesAt(support::tubNorth, {9, 8}), examples::batchesAt(support::benchWest, {12, 9})}));
    EXPECT_FALSE(comparison.pairs.front().speed.ratio);
    EXPECT_FALSE(comparison.pairs.front().speed.whyNot.empty());
}

}  // namespace
