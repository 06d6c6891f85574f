// SPDX-License-Identifier: MIT
#include "stats/time_to_event/nonnegative_quadratic.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/interval_mixture.h"

namespace {

using stats::SquareMatrix;

// H = A'A from a random A, so positive semidefinite; with fewer rows than columns it is singular.
SquareMatrix randomSemidefinite(std::size_t size, std::size_t rank, stats::SeededRandom& random) {
    std::vector<std::vector<double>> rows(rank, std::vector<double>(size));
    for (auto& row : rows) {
        for (double& value : row) value = random.normal();
    }
    SquareMatrix h{.size = size, .values = std::vector<double>(size * size, 0.0)};
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < size; ++i) {
            for (std::size_t j = 0; j < size; ++j) h.at(i, j) += row[i] * row[j];
        }
    }
    return h;
}

TEST(NonnegativeQuadratic, MeetsTheConditionsOfKarushKuhnAndTucker) {
    stats::SeededRandom random(81);
    for (int run = 0; run < 200; ++run) {
        const std::size_t size = 1 + random.below(12);
        const SquareMatrix h = randomSemidefinite(size, size + 2, random);
        std::vector<double> b(size), x(size, 0.0);
        for (double& value : b) value = random.normal();
        if (run % 2 == 0) x[random.below(size)] = random.uniform();
        stats::maximiseNonnegativeQuadratic(h, b, x);
        for (std::size_t i = 0; i < size; ++i) {
            double slope = b[i];
            for (std::size_t j = 0; j < size; ++j) slope -= h.at(i, j) * x[j];
            ASSERT_GE(x[i], 0);
            ASSERT_LE(slope, 1e-7);
            if (x[i] > 0) {
                ASSERT_NEAR(slope, 0, 1e-7);
            }
        }
    }
}

TEST(NonnegativeQuadratic, IsTheSameWhenItKnowsWhereTheMatrixIsZero) {
    stats::SeededRandom random(83);
    for (int run = 0; run < 300; ++run) {
        // H = sum over runs of neighbouring coordinates, as check intervals give it, and a little on the diagonal.
        const std::size_t size = 2 + random.below(40), widest = 1 + random.below(5);
        SquareMatrix h{.size = size, .values = std::vector<double>(size * size, 0.0)};
        stats::RowReach reach{.first = std::vector<std::size_t>(size), .last = std::vector<std::size_t>(size)};
        for (std::size_t i = 0; i < size; ++i) reach.first[i] = reach.last[i] = i;
        for (std::size_t row = 0; row < 3 * size; ++row) {
            const std::size_t a = random.below(size), b = std::min(size - 1, a + random.below(widest));
            const double weight = random.uniform();
            for (std::size_t i = a; i <= b; ++i) {
                reach.first[i] = std::min(reach.first[i], a);
                reach.last[i] = std::max(reach.last[i], b);
                for (std::size_t j = a; j <= b; ++j) h.at(i, j) += weight;
            }
        }
        std::vector<double> b(size), plain(size, 0.1), narrow(size, 0.1);
        for (std::size_t i = 0; i < size; ++i) {
            h.at(i, i) += 0.1;
            b[i] = random.normal();
        }
        stats::maximiseNonnegativeQuadratic(h, b, plain);
        stats::maximiseNonnegativeQuadratic(h, reach, b, narrow);
        for (std::size_t i = 0; i < size; ++i) ASSERT_NEAR(plain[i], narrow[i], 1e-9) << run;
    }
}

TEST(NonnegativeQuadratic, NeverFallsWhereTheMatrixIsSingular) {
    stats::SeededRandom random(82);
    for (int run = 0; run < 100; ++run) {
        const SquareMatrix h = randomSemidefinite(8, 3, random);
        std::vector<double> start(8), b(8, 0.0);
        for (double& value : start) value = random.uniform();
        // b in the range of H, so that the quadratic has a maximum.
        for (std::size_t i = 0; i < 8; ++i) {
            for (std::size_t j = 0; j < 8; ++j) b[i] += h.at(i, j) * (static_cast<double>(j) - 3);
        }
        const auto valueAt = [&](const std::vector<double>& x) {
            double value = 0;
            for (std::size_t i = 0; i < 8; ++i) {
                value += b[i] * x[i];
                for (std::size_t j = 0; j < 8; ++j) value -= x[i] * h.at(i, j) * x[j] / 2;
            }
            return value;
        };
        std::vector<double> x = start;
        stats::maximiseNonnegativeQuadratic(h, b, x);
        ASSERT_GE(valueAt(x), valueAt(start) - 1e-9);
    }
}

TEST(IntervalMixture, IsBeatenByNoStepOfExpectationAndMaximisation) {
    // Many thousand steps of the slow method on a small problem, against Newton's.
    stats::SeededRandom random(83);
    stats::IntervalMixture mixture{.columns = 9, .rows = {}};
    for (int i = 0; i < 30; ++i) {
        const int first = static_cast<int>(random.below(9)),
                  last = first + static_cast<int>(random.below(9 - static_cast<std::uint64_t>(first)));
        mixture.rows.push_back({.first = first, .last = last, .weight = 1 + random.uniform()});
    }
    const auto fit = stats::fitIntervalMixture(mixture, {}, {}, {});
    EXPECT_TRUE(fit.converged);
    std::vector<double> masses(9, 1.0 / 9);
    double total = 0;
    for (const auto& row : mixture.rows) total += row.weight;
    for (int step = 0; step < 20'000; ++step) {
        std::vector<double> next(9, 0.0);
        for (const auto& row : mixture.rows) {
            double covered = 0;
            for (int j = row.first; j <= row.last; ++j) covered += masses[static_cast<std::size_t>(j)];
            for (int j = row.first; j <= row.last; ++j) {
                next[static_cast<std::size_t>(j)] += row.weight / total * masses[static_cast<std::size_t>(j)] / covered;
            }
        }
        masses = next;
    }
    for (std::size_t j = 0; j < 9; ++j) EXPECT_NEAR(fit.masses[j], masses[j], 1e-4);
}

TEST(IntervalMixture, FindsTheSameMaximumFromAnyStart) {
    stats::SeededRandom random(84);
    stats::IntervalMixture mixture{.columns = 12, .rows = {}};
    for (int i = 0; i < 12; ++i) mixture.rows.push_back({.first = i / 2, .last = 6 + i / 3, .weight = 1.0 + i});
    for (int i = 0; i < 12; ++i) mixture.rows.push_back({.first = i, .last = i, .weight = 1.0});
    const auto fit = stats::fitIntervalMixture(mixture, {}, {}, {});
    for (int run = 0; run < 20; ++run) {
        std::vector<double> start(12);
        for (double& mass : start) mass = random.uniform() < 0.5 ? 0 : random.uniform();
        const auto other = stats::fitIntervalMixture(mixture, start, {}, {});
        EXPECT_NEAR(other.logLikelihood, fit.logLikelihood, 1e-9);
        EXPECT_TRUE(other.converged);
    }
}

}  // namespace
