// SPDX-License-Identifier: MIT
#include "stats/two_proportions/non_inferiority.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/overdispersion/tray_non_inferiority.h"
#include "stats/overdispersion/tray_t_test.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using Trays = std::vector<stats::Tray>;

class NonInferiorityReference : public testing::TestWithParam<support::ReferenceCase> {};

// At a margin equal to minus a reference lower limit, p is half of one less its level; so too at the upper limit with
// the arms swapped.
TEST_P(NonInferiorityReference, IsJustShownAtTheReferenceLimit) {
    const support::ReferenceCase& each = GetParam();
    const stats::TwoCounts counts{each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")};
    const stats::TwoCounts swapped{counts.successes2, counts.trials2, counts.successes1, counts.trials1};
    const double level = each.number("conf"), rejected = (1 - level) / 2;
    const auto expectAt = [&](const stats::TwoCounts& arms, double margin) {
        if (arms.trials1 == 0 || arms.trials2 == 0 || margin <= 1e-3 || margin >= 0.999) return;
        const auto touching = stats::nonInferiority(arms, margin, level);
        EXPECT_NEAR(touching.p, rejected, 1e-7);
        support::prove({.function = "nonInferiority",
                        .source = each.source,
                        .independent = "p where the reference limit is; " + each.provenance},
                       touching.p, rejected);
        EXPECT_TRUE(stats::nonInferiority(arms, margin + 1e-6, level).isShown);
        EXPECT_FALSE(stats::nonInferiority(arms, margin - 1e-6, level).isShown);
    };
    expectAt(counts, -each.expected.at("lower").get<double>());
    expectAt(swapped, each.expected.at("upper").get<double>());
}

std::vector<support::ReferenceCase> unbiasedDifferences() {
    std::vector<support::ReferenceCase> cases = support::referenceCases({"diff_score"});
    std::erase_if(cases, [](const support::ReferenceCase& each) { return !each.flag("bias"); });
    return cases;
}
INSTANTIATE_TEST_SUITE_P(Statistics, NonInferiorityReference, testing::ValuesIn(unbiasedDifferences()),
                         support::nameOfCase);

TEST(NonInferiority, GivesTheStatisticThatROptimisesFor) {
    // R 4.2: the restricted rates by uniroot on the score, then z and pnorm.
    struct Row {
        stats::TwoCounts counts;
        double margin, z, p;
    };
    const Row rows[] = {{{18, 24, 20, 24}, 0.10, 0.1413790065634831, 0.4437852690075838},
                        {{36, 40, 37, 40}, 0.15, 1.74173326540187978, 0.04077756440194283},
                        {{3, 10, 9, 12}, 0.20, -1.1666360191813490, 0.8783213045631922}};
    for (const Row& row : rows) {
        const auto answer = stats::nonInferiority(row.counts, row.margin, 0.95);
        EXPECT_NEAR(*answer.z, row.z, 1e-9);
        EXPECT_NEAR(answer.p, row.p, 1e-9);
        const support::Proof proof{.function = "nonInferiority",
                                   .source = "three tables of 10 to 40 a side",
                                   .independent = "R 4.2, restricted rates by uniroot"};
        support::prove(proof, *answer.z, row.z);
        support::prove(proof, answer.p, row.p);
    }
}

TEST(NonInferiority, IsEasierToShowTheWiderTheMargin) {
    double before = 1;
    for (double margin = 0.01; margin < 1; margin += 0.01) {
        const auto answer = stats::nonInferiority({17, 24, 20, 26}, margin, 0.95);
        EXPECT_LT(answer.p, before) << margin;
        EXPECT_EQ(answer.isShown, answer.p < 0.025) << margin;
        before = answer.p;
    }
}

TEST(NonInferiority, HoldsItsLevelOnTheEdgeOfTheMargin) {
    // How often a way that is worse by exactly the margin is called as good, by full enumeration: near 2.5 %.
    constexpr int trials = 30;
    constexpr double margin = 0.15, second = 0.7;
    double shown = 0;
    const auto probability = [](int count, double p) {
        return std::exp(std::lgamma(trials + 1) - std::lgamma(count + 1) - std::lgamma(trials - count + 1) +
                        count * std::log(p) + (trials - count) * std::log1p(-p));
    };
    for (int x1 = 0; x1 <= trials; ++x1) {
        for (int x2 = 0; x2 <= trials; ++x2) {
            if (stats::nonInferiority({x1, trials, x2, trials}, margin, 0.95).isShown)
                shown += probability(x1, second - margin) * probability(x2, second);
        }
    }
    EXPECT_NEAR(shown, 0.025, 0.006);
}

TEST(NonInferiority, SaysNothingOfAnEmptyArm) {
    const auto answer = stats::nonInferiority({0, 0, 5, 9}, 0.1, 0.95);
    EXPECT_FALSE(answer.difference);
    EXPECT_FALSE(answer.z);
    EXPECT_EQ(answer.p, 1);
    EXPECT_FALSE(answer.isShown);
    EXPECT_EQ(answer.limits.low, -1);
}

TEST(NonInferiority, RefusesMarginsOutsideZeroAndOne) {
    for (const double margin : {0.0, 1.0, -0.1, 10.0, std::nan("")}) {
        EXPECT_THROW((void)stats::nonInferiority({1, 4, 1, 4}, margin, 0.95), std::domain_error) << margin;
        EXPECT_THROW((void)stats::trayNonInferiority(Trays{{1, 4}}, Trays{{1, 4}}, margin), std::domain_error)
            << margin;
    }
    EXPECT_THROW((void)stats::nonInferiority({5, 4, 1, 4}, 0.1, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::nonInferiority({1, 4, 1, 4}, 0.1, 1), std::domain_error);
    EXPECT_THROW((void)stats::trayNonInferiority(Trays{{5, 4}}, Trays{{1, 4}}, 0.1), std::domain_error);
    EXPECT_THROW((void)stats::trayNonInferiority(Trays{{1, 4}}, Trays{{1, 4}}, 0.1, 0), std::domain_error);
}

TEST(TrayNonInferiority, GivesRsOneSidedTTest) {
    // R 4.2, t.test(first, second, var.equal = TRUE, mu = -0.1, alternative = "greater") on the rates. With trays of one size
    // the guarded test is that one.
    const Trays first{{12, 20}, {15, 20}, {9, 20}}, second{{8, 20}, {6, 20}, {11, 20}, {7, 20}};
    const auto answer = stats::trayNonInferiority(first, second, 0.1);
    ASSERT_TRUE(answer);
    EXPECT_NEAR(answer->t, 3.1052950170405933, 1e-12);
    EXPECT_NEAR(answer->p, 0.013346295364776273, 1e-13);
    const support::Proof proof{.function = "trayNonInferiority",
                               .source = "three against four trays",
                               .independent = "R 4.2 t.test with mu = -margin"};
    support::prove(proof, answer->t, 3.1052950170405933);
    support::prove(proof, answer->p, 0.013346295364776273);
    EXPECT_EQ(answer->isShown, answer->limits.low > -0.1);
    EXPECT_TRUE(answer->isShown);
}

TEST(TrayNonInferiority, IsShownWherePIsBelowHalfOfOneLessLevel) {
    const Trays first{{12, 20}, {11, 20}, {13, 18}}, second{{12, 20}, {13, 17}, {14, 20}};
    for (double margin = 0.01; margin < 0.6; margin += 0.01) {
        const auto answer = stats::trayNonInferiority(first, second, margin, 0.9);
        EXPECT_EQ(answer->isShown, answer->p < 0.05) << margin;
    }
}

TEST(TrayNonInferiority, IsAbsentWhereItCannotBeJudged) {
    EXPECT_FALSE(stats::trayNonInferiority(Trays{}, Trays{{1, 4}, {2, 4}}, 0.1));
    EXPECT_FALSE(stats::trayNonInferiority(Trays{{3, 4}}, Trays{{1, 4}}, 0.1));
    EXPECT_FALSE(stats::trayNonInferiority(Trays{{2, 4}, {3, 6}}, Trays{{1, 4}, {2, 8}}, 0.1));
}

}  // namespace
