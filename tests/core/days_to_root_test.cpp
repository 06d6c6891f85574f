// SPDX-License-Identifier: MIT
#include "core/comparison/days_to_root.h"

#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

std::vector<core::Course> coursesAt(core::MethodId method, const std::vector<core::BatchRecord>& records) {
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : records)
        if (record.batch.method == method) courses.push_back(core::courseOf(record, 21));
    return courses;
}

// Found by 2000 and 3000 rounds of Turnbull's self-consistency over all intervals between neighbouring look days, in numpy, until
// no mass moved by 1e-15 and the certificate max_j sum_i w_i A_ij / (A p)_i - sum w was below 1e-12.
struct ShareOnDay {
    double day, rooted, lost;
};
constexpr ShareOnDay inTubs[] = {{7, 0.1013524315, 0.0454545455},  {10, 0.2004405053, 0.0454545455},
                                 {14, 0.3040572945, 0.0454545455}, {20, 0.5512113897, 0.1030736976},
                                 {21, 0.5512113897, 0.1462880617}, {30, 0.5512113897, 0.155454745}};
constexpr ShareOnDay inTrays[] = {{7, 0.1928154248, 0},
                                  {14, 0.5658339615, 0.0588235294},
                                  {21, 0.6418320523, 0.0588235294},
                                  {27, 0.7266950368, 0.0588235294},
                                  {28, 0.7326528544, 0.1005282526},
                                  {35, 0.7803153952, 0.1124438879}};

void expectShares(const core::RootingCurves& curves, std::span<const ShareOnDay> expected) {
    ASSERT_EQ(curves.rootedByDay.size(), expected.size());
    ASSERT_EQ(curves.lostByDay.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        SCOPED_TRACE(testing::Message() << "day " << expected[i].day);
        EXPECT_EQ(curves.rootedByDay[i].day, expected[i].day);
        EXPECT_NEAR(curves.rootedByDay[i].share, expected[i].rooted, 1e-7);
        EXPECT_NEAR(curves.lostByDay[i].share, expected[i].lost, 1e-7);
    }
}

TEST(RootingCurves, AgreeWithSelfConsistencyOnBatchesSeenOnDifferentDays) {
    const auto records = examples::tubsAndTrays();
    expectShares(core::rootingCurves(coursesAt(support::aeratedWater, records), {}), inTubs);
    expectShares(core::rootingCurves(coursesAt(support::mediaTray, records), {}), inTrays);
}

TEST(RootingCurves, AreTheCountsThemselvesWhereAllBatchesAreSeenOnTheSameDays) {
    const std::vector<core::BatchRecord> records{
        support::aBatch().stuck(20).looked(7, {3, 1}).looked(14, {4}).looked(21, {2, 2}),
        support::aBatch().stuck(20).looked(7, {5}).looked(14, {6, 1}).looked(21, {1})};
    const auto curves = core::rootingCurves(coursesAt(support::aeratedWater, records), {});
    const double rooted[] = {8, 18, 21}, lost[] = {1, 2, 4};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(curves.rootedByDay[i].share, rooted[i] / 40, 1e-9);
        EXPECT_NEAR(curves.lostByDay[i].share, lost[i] / 40, 1e-9);
        EXPECT_EQ(curves.looks[i].rooted, rooted[i]);
        EXPECT_EQ(curves.looks[i].lost, lost[i]);
    }
    ASSERT_TRUE(curves.ofStuck.p50.has_value());
    EXPECT_EQ(curves.ofStuck.p50->after, 14);
    EXPECT_EQ(curves.ofStuck.p50->by, 21);
    EXPECT_FALSE(curves.ofStuck.p75.has_value());
    EXPECT_EQ(curves.ofRooted.p50->by, 14);  // half of those that root
}

TEST(RootingCurves, CountWhoIsStillWatched) {
    // The second batch is last looked at on day 7: its cuttings are waited for, but nobody watches them any more.
    const std::vector<core::BatchRecord> records{support::aBatch().stuck(20).looked(7, {3, 1}).looked(14, {4, 0, 2}),
                                                 support::aBatch().stuck(10).looked(7, {2}),
                                                 support::aBatch().stuck(5)};
    const auto curves = core::rootingCurves(coursesAt(support::aeratedWater, records), {});
    EXPECT_EQ(curves.stillWatched, (std::vector<int>{16 + 8, 10}));
    EXPECT_EQ(curves.looks[0].waiting, 16 + 8 + 5);
    EXPECT_EQ(curves.looks[1].waiting, 10 + 8 + 5);
}

TEST(RootingCurves, HaveBandsOnlyOverSeveralBatches) {
    const auto records = examples::tubsAndTrays();
    const auto tubs = coursesAt(support::aeratedWater, records);
    const core::Resampling resampling{.level = 0.9, .replicates = 99, .seed = 5};
    const auto several = core::rootingCurves(tubs, resampling);
    for (const auto& share : several.rootedByDay) {
        ASSERT_TRUE(share.band.has_value());
        EXPECT_LE(share.band->low, share.share);
        EXPECT_GE(share.band->high, share.share);
    }
    const auto one = core::rootingCurves(std::span(tubs).first(1), resampling);
    for (const auto& share : one.rootedByDay) EXPECT_FALSE(share.band.has_value());
    EXPECT_FALSE(one.ofStuck.p50Interval.has_value());
}

TEST(RootingCurves, AreEmptyWithoutALook) {
    const std::vector<core::BatchRecord> records{support::aBatch(), support::aBatch()};
    const auto curves = core::rootingCurves(coursesAt(support::aeratedWater, records), core::Resampling{});
    EXPECT_TRUE(curves.rootedByDay.empty());
    EXPECT_FALSE(curves.ofStuck.p25.has_value());
    EXPECT_TRUE(core::rootingCurves({}, {}).looks.empty());
}

}  // namespace
