// SPDX-License-Identifier: MIT
#include "stats/several_proportions/holm_adjustment.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

class HolmAdjustmentReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(HolmAdjustmentReference, IsReproduced) {
    const auto p = GetParam().inputs.at("p").get<std::vector<double>>();
    const std::vector<double> adjusted = stats::holmAdjustment(p);
    const auto& want = GetParam().expected.at("adjusted");
    ASSERT_EQ(adjusted.size(), want.size());
    for (std::size_t i = 0; i < adjusted.size(); ++i) {
        GetParam().expectNear("adjusted", adjusted[i], want.at(i), std::to_string(i));
    }
}
INSTANTIATE_TEST_SUITE_P(Statistics, HolmAdjustmentReference, testing::ValuesIn(support::referenceCases({"holm"})),
                         support::nameOfCase);

TEST(HolmAdjustment, RejectsWhatTheStepDownProcedureRejects) {
    // Holm's procedure itself: from the smallest on, reject while p(k) <= level / (m - k + 1).
    stats::SeededRandom random(41);
    for (int run = 0; run < 5000; ++run) {
        std::vector<double> p(1 + random.below(8));
        for (double& each : p) each = static_cast<double>(random.below(40)) / 400;
        const double level = 0.0491;  // no multiple of 1/400 times a small number meets it
        std::vector<double> sorted = p;
        std::sort(sorted.begin(), sorted.end());
        std::size_t rejected = 0;
        while (rejected < sorted.size() && sorted[rejected] * static_cast<double>(sorted.size() - rejected) <= level)
            ++rejected;
        const auto adjusted = stats::holmAdjustment(p);
        const auto count = std::count_if(adjusted.begin(), adjusted.end(), [&](double each) { return each <= level; });
        ASSERT_EQ(static_cast<std::size_t>(count), rejected) << run;
    }
}

TEST(HolmAdjustment, LeavesOneAloneAndNeverLowersAny) {
    EXPECT_EQ(stats::holmAdjustment(std::vector<double>{0.037}), std::vector<double>{0.037});
    EXPECT_TRUE(stats::holmAdjustment(std::vector<double>{}).empty());
    EXPECT_EQ(stats::holmAdjustment(std::vector<double>{1, 0, 0.6}), (std::vector<double>{1, 0, 1}));
}

TEST(HolmAdjustment, RefusesWhatIsNoProbability) {
    EXPECT_THROW((void)stats::holmAdjustment(std::vector<double>{0.1, 1.1}), std::domain_error);
    EXPECT_THROW((void)stats::holmAdjustment(std::vector<double>{-0.1}), std::domain_error);
}

}  // namespace
