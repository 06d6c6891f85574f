// SPDX-License-Identifier: MIT
#include "stats/numeric/cholesky.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stats/numeric/seeded_random.h"

namespace {

stats::SquareMatrix crossProduct(const std::vector<std::vector<double>>& rows) {
    stats::SquareMatrix matrix = stats::zeroMatrix(rows.front().size());
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            for (std::size_t j = 0; j < row.size(); ++j) matrix.at(i, j) += row[i] * row[j];
        }
    }
    return matrix;
}

TEST(Cholesky, SolvesWhatIsSolvedByHand) {
    // [4 2; 2 3]: determinant 8, inverse [3 -2; -2 4] / 8.
    const stats::Cholesky decomposed({.size = 2, .values = {4, 2, 2, 3}});
    ASSERT_TRUE(decomposed.isPositiveDefinite());
    EXPECT_NEAR(decomposed.logDeterminant(), std::log(8), 1e-15);
    EXPECT_NEAR(decomposed.solve({8, 16})[0], -1, 1e-15);
    EXPECT_NEAR(decomposed.solve({8, 16})[1], 6, 1e-15);
    EXPECT_NEAR(decomposed.inverse().at(1, 1), 0.5, 1e-15);
    EXPECT_NEAR(decomposed.inverse().at(0, 1), -0.25, 1e-15);
}

TEST(Cholesky, GivesBackTheRightHandSide) {
    stats::SeededRandom random(8);
    for (int run = 0; run < 300; ++run) {
        const std::size_t size = 1 + random.below(8);
        std::vector<std::vector<double>> rows(3 * size, std::vector<double>(size));
        for (auto& row : rows) {
            for (double& each : row) each = random.normal();
        }
        const stats::SquareMatrix matrix = crossProduct(rows);
        const stats::Cholesky decomposed(matrix);
        ASSERT_TRUE(decomposed.isPositiveDefinite()) << run;
        const std::vector<double> x = decomposed.solve(rows.front());
        for (std::size_t i = 0; i < size; ++i) {
            double back = 0;
            for (std::size_t j = 0; j < size; ++j) back += matrix.at(i, j) * x[j];
            ASSERT_NEAR(back, rows.front()[i], 1e-10) << run;
        }
    }
}

TEST(Cholesky, NamesTheFirstColumnThatOthersMakeUp) {
    const auto matrix =
        crossProduct({{1, 0, 1, 3}, {1, 1, 3, 1}, {1, 2, 5, 4}, {1, 5, 11, 1}});  // 1 + 2 second = third
    const stats::Cholesky decomposed(matrix);
    EXPECT_FALSE(decomposed.isPositiveDefinite());
    EXPECT_EQ(decomposed.firstDependent(), 2U);
    EXPECT_EQ(stats::Cholesky({.size = 2, .values = {1, 0, 0, -1}}).firstDependent(), 1U);
    EXPECT_FALSE(stats::Cholesky({.size = 1, .values = {std::nan("")}}).isPositiveDefinite());
    EXPECT_TRUE(stats::Cholesky({.size = 0, .values = {}}).isPositiveDefinite());
}

}  // namespace
