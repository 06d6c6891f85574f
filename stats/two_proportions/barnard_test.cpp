// SPDX-License-Identifier: MIT
#include "stats/two_proportions/barnard_test.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "stats/numeric/bernstein_maximum.h"
#include "stats/numeric/hypergeometric.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

__extension__ using WideInteger = __int128;

// Z of one table is numerator / sqrt(spread) times a factor that all tables of a design share.
struct PooledZ {
    std::int64_t numerator{};  // successes1 trials2 - successes2 trials1
    std::int64_t spread{1};    // successes in all times failures in all; 1 where both are 0, as the numerator is then

    [[nodiscard]] WideInteger squareTimes(std::int64_t factor) const {
        return static_cast<WideInteger>(numerator) * numerator * factor;
    }
};

PooledZ pooledZ(const TwoCounts& counts) {
    const std::int64_t successes = std::int64_t{counts.successes1} + counts.successes2;
    const std::int64_t failures = std::int64_t{counts.trials1} + counts.trials2 - successes;
    const std::int64_t spread = successes * failures;
    return {.numerator =
                std::int64_t{counts.successes1} * counts.trials2 - std::int64_t{counts.successes2} * counts.trials1,
            .spread = spread == 0 ? 1 : spread};
}

bool isAtLeastAsFarOut(const PooledZ& table, const PooledZ& observed) {
    return table.squareTimes(observed.spread) >= observed.squareTimes(table.spread);
}

bool isAtMost(const PooledZ& table, const PooledZ& observed) {
    if (table.numerator <= 0 && observed.numerator >= 0) return true;
    if (table.numerator > 0 && observed.numerator <= 0) return false;
    if (table.numerator > 0) return table.squareTimes(observed.spread) <= observed.squareTimes(table.spread);
    return isAtLeastAsFarOut(table, observed);
}

// Z rises with successes1 while the total is fixed, so these are tails; the negated tables turn "greater" into "less".
struct BarnardRegions {
    std::vector<double> less, greater, twoSided;
};

BarnardRegions barnardRegions(const TwoCounts& counts, const PooledZ& observed) {
    const int all = counts.trials1 + counts.trials2;
    const auto totals = static_cast<std::size_t>(all) + 1;
    BarnardRegions regions{std::vector<double>(totals), std::vector<double>(totals), std::vector<double>(totals)};
    const PooledZ mirrored{-observed.numerator, observed.spread};
    for (int total = 0; total <= all; ++total) {
        const CountProbabilities law = hypergeometricProbabilities(counts.trials1, counts.trials2, total);
        double less = 0, greater = 0, twoSided = 0;
        for (std::size_t i = 0; i < law.probabilities.size(); ++i) {
            const int successes1 = law.first + static_cast<int>(i);
            const PooledZ z = pooledZ({successes1, counts.trials1, total - successes1, counts.trials2});
            if (isAtMost(z, observed)) less += law.probabilities[i];
            if (isAtMost({-z.numerator, z.spread}, mirrored)) greater += law.probabilities[i];
            if (isAtLeastAsFarOut(z, observed)) twoSided += law.probabilities[i];
        }
        const auto index = static_cast<std::size_t>(total);
        regions.less[index] = less;
        regions.greater[index] = greater;
        regions.twoSided[index] = twoSided;
    }
    return regions;
}

}  // namespace

BarnardTest barnardTest(const TwoCounts& counts) {
    requireTwoCounts("barnardTest", counts);
    const std::int64_t all = std::int64_t{counts.trials1} + counts.trials2;
    if (all > 1'000'000) throwDomainError("barnardTest", "trials in all", static_cast<double>(all), "at most 1000000");
    if (counts.trials1 == 0 || counts.trials2 == 0) return {};
    const PooledZ observed = pooledZ(counts);
    const BarnardRegions regions = barnardRegions(counts, observed);
    const double n1 = counts.trials1, n2 = counts.trials2;
    BarnardTest test;
    test.statistic = static_cast<double>(observed.numerator) / std::sqrt(static_cast<double>(observed.spread)) *
                     std::sqrt((n1 + n2) / (n1 * n2));
    test.less = std::min(1.0, bernsteinMaximum(regions.less));
    test.greater = std::min(1.0, bernsteinMaximum(regions.greater));
    test.twoSided = std::min(1.0, bernsteinMaximum(regions.twoSided));
    return test;
}

}  // namespace stats
