// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_analysis_of_variance.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/tray_t_test.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Trays = std::vector<stats::Tray>;
using ArmsOfTrays = std::vector<Trays>;

TEST(TrayAnalysisOfVariance, GivesWhatSciPyAndRDo) {
    struct Row {
        ArmsOfTrays arms;
        double f, p;
        const char* source;
    };
    ArmsOfTrays litters;
    for (const auto& each : support::referenceCases({"rao_scott_test"})) {
        if (each.id == "raoscott-test-weil") litters = armsIn(each);
    }
    ASSERT_EQ(litters.size(), 2U);
    const Row rows[] = {
        {{{{12, 20}, {15, 20}, {9, 18}}, {{8, 20}, {6, 17}, {11, 20}, {7, 20}}, {{16, 20}, {18, 20}}},
         12.395098352425718,
         0.0073997383030507576,
         "nine trays in three arms"},
        {litters, 3.527756560301749, 0.07009965390045166, "Weil (1970), Food Cosmet. Toxicol. 8, 177-182, 32 litters"}};
    for (const Row& row : rows) {
        const auto test = stats::trayAnalysisOfVariance(row.arms);
        EXPECT_NEAR(*test.f, row.f, 1e-11) << row.source;
        EXPECT_NEAR(*test.p, row.p, 1e-13) << row.source;
        const support::Proof proof{.function = "trayAnalysisOfVariance",
                                   .source = row.source,
                                   .independent = "scipy.stats.f_oneway 1.10 on the rates, R 4.2 aov"};
        support::prove(proof, *test.f, row.f);
        support::prove(proof, *test.p, row.p);
    }
}

TEST(TrayAnalysisOfVariance, OfTwoArmsIsTheTTest) {
    stats::SeededRandom random(17);
    for (int run = 0; run < 500; ++run) {
        ArmsOfTrays arms(2);
        for (Trays& arm : arms) {
            for (int i = 0; i < 3; ++i) arm.push_back({random.binomial(20, 0.6), 20});
        }
        const auto t = stats::trayTTest(arms[0], arms[1]);
        const auto f = stats::trayAnalysisOfVariance(arms);
        ASSERT_EQ(t.p.has_value(), f.p.has_value());
        if (!t.p) continue;
        ASSERT_NEAR(*t.p, *f.p, 1e-11) << run;
        ASSERT_NEAR(*t.t * *t.t, *f.f, 1e-9 * (1 + *f.f)) << run;
    }
}

TEST(TrayAnalysisOfVariance, IsAbsentWhereItCannotBeHad) {
    EXPECT_FALSE(stats::trayAnalysisOfVariance(ArmsOfTrays{}).f);
    EXPECT_FALSE(stats::trayAnalysisOfVariance(ArmsOfTrays{{{3, 9}, {4, 9}}}).f);
    const auto oneEach = stats::trayAnalysisOfVariance(ArmsOfTrays{{{3, 9}}, {{4, 9}}, {}, {{0, 0}}});
    EXPECT_FALSE(oneEach.withinVariance);
    EXPECT_EQ(oneEach.betweenDegrees, 1);
    const auto alike = stats::trayAnalysisOfVariance(ArmsOfTrays{{{3, 9}, {4, 12}}, {{1, 2}, {2, 4}}});
    EXPECT_EQ(alike.withinVariance, 0);
    EXPECT_FALSE(alike.f);
    EXPECT_FALSE(alike.p);
}

TEST(TrayAnalysisOfVariance, RefusesCountsThatCannotBe) {
    EXPECT_THROW((void)stats::trayAnalysisOfVariance(ArmsOfTrays{{{5, 4}}}), std::domain_error);
}

TEST(VarianceRatioTail, AgreesWithSciPyAndClosedForms) {
    // scipy.stats.f.sf, 1.10
    EXPECT_NEAR(stats::varianceRatioTail(3.7, 3, 8), 0.06168256633770888, 1e-14);
    EXPECT_NEAR(stats::varianceRatioTail(0.01, 2, 5), 0.9900695822980481, 1e-14);
    EXPECT_NEAR(stats::varianceRatioTail(250, 4, 30) / 1.4333648423519554e-22, 1, 1e-12);
    // On 2 and n degrees: (1 + 2 f / n)^(-n / 2); on 1 and n it is Student's squared.
    EXPECT_NEAR(stats::varianceRatioTail(1.3, 2, 7), std::pow(1 + 2.6 / 7, -3.5), 1e-15);
    EXPECT_NEAR(stats::varianceRatioTail(4.41, 1, 6), stats::studentTwoSidedTail(2.1, 6), 1e-15);
    EXPECT_EQ(stats::varianceRatioTail(0, 3, 3), 1);
    EXPECT_EQ(stats::varianceRatioTail(INFINITY, 3, 3), 0);
    EXPECT_THROW((void)stats::varianceRatioTail(-1, 3, 3), std::domain_error);
    EXPECT_THROW((void)stats::varianceRatioTail(1, 0, 3), std::domain_error);
    EXPECT_THROW((void)stats::varianceRatioTail(1, 3, 0), std::domain_error);
}

}  // namespace
