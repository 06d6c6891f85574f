// SPDX-License-Identifier: MIT
#include "tests/calibration/judged_tests.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/overdispersion/beta_binomial.h"
#include "stats/overdispersion/intraclass_correlation.h"
#include "stats/overdispersion/rao_scott.h"
#include "stats/overdispersion/tray_permutation_test.h"
#include "stats/overdispersion/tray_t_test.h"
#include "stats/overdispersion/tray_weighted_t_test.h"
#include "stats/two_proportions/fisher_test.h"

namespace calibration {
namespace {

constexpr double alpha = 0.05;
using Trays = std::vector<stats::Tray>;

struct Sample {
    double count{}, mean{}, squares{};
};

template <class Scale>
Sample sampleOf(const Trays& trays, Scale scale) {
    Sample sample{.count = static_cast<double>(trays.size())};
    for (const stats::Tray& tray : trays) sample.mean += scale(tray) / sample.count;
    for (const stats::Tray& tray : trays) sample.squares += std::pow(scale(tray) - sample.mean, 2);
    return sample;
}

double rateOf(const stats::Tray& tray) {
    return static_cast<double>(tray.successes) / tray.trials;
}

double arcsineOf(const stats::Tray& tray) {
    return std::asin(std::sqrt((tray.successes + 0.375) / (tray.trials + 0.75)));
}

double logitOf(const stats::Tray& tray) {
    return std::log((tray.successes + 0.5) / (tray.trials - tray.successes + 0.5));
}

template <class Scale>
bool isFoundByT(const Trays& first, const Trays& second, Scale scale) {
    const Sample a = sampleOf(first, scale), b = sampleOf(second, scale);
    const double degrees = a.count + b.count - 2;
    const double variance = (a.squares + b.squares) / degrees * (1 / a.count + 1 / b.count);
    return variance > 1e-20 && stats::studentTwoSidedTail((a.mean - b.mean) / std::sqrt(variance), degrees) < alpha;
}

// Welch's: spreads of their own, Satterthwaite's degrees of freedom.
bool isFoundByWelch(const Trays& first, const Trays& second) {
    const Sample a = sampleOf(first, rateOf), b = sampleOf(second, rateOf);
    const double va = a.squares / (a.count - 1) / a.count, vb = b.squares / (b.count - 1) / b.count;
    if (va + vb < 1e-20) return false;
    const double degrees = std::pow(va + vb, 2) / (va * va / (a.count - 1) + vb * vb / (b.count - 1));
    return stats::studentTwoSidedTail((a.mean - b.mean) / std::sqrt(va + vb), degrees) < alpha;
}

stats::TwoCounts pooled(const Trays& first, const Trays& second) {
    stats::TwoCounts counts;
    for (const stats::Tray& tray : first) {
        counts.successes1 += tray.successes;
        counts.trials1 += tray.trials;
    }
    for (const stats::Tray& tray : second) {
        counts.successes2 += tray.successes;
        counts.trials2 += tray.trials;
    }
    return counts;
}

bool isBelow(const std::optional<double>& p) {
    return p && *p < alpha;
}

}  // namespace

std::string thingOf(std::string_view test, Truth truth) {
    return std::string(test) + (truth == Truth::Apart ? ", apart" : "");
}

void judgeTests(const Season& season, const Cell& cell, Truth truth, stats::SeededRandom& random, Tally& tally) {
    const auto arms = season.traysSeen();
    const Trays &first = arms[0], &second = arms[1];
    const auto add = [&](std::string_view test, bool isFound) { tally.add(thingOf(test, truth), cell, isFound); };
    add("pooled Fisher", stats::fisherTest(pooled(first, second)).twoSided < alpha);
    if (std::min(first.size(), second.size()) < 2) return;
    add("Rao-Scott", isBelow(stats::raoScottTest(arms).p));
    add("beta-binomial likelihood ratio", stats::compareBetaBinomial(arms).p < alpha);
    add("t on tray rates", isBelow(stats::trayTTest(first, second).p));
    add("Welch's t on tray rates", isFoundByWelch(first, second));
    add("t on arcsines of tray rates", isFoundByT(first, second, arcsineOf));
    add("t on logits of tray rates", isFoundByT(first, second, logitOf));
    add("weighted t, correlation 0", isBelow(stats::trayWeightedTTest(first, second, 0).p));
    add("weighted t, correlation 0.1", isBelow(stats::trayWeightedTTest(first, second, 0.1).p));
    const double correlation = stats::pooledSpread(arms).correlation;
    add("weighted t, pooled spread", isBelow(stats::trayWeightedTTest(first, second, correlation).p));
    const std::optional<double> guarded = stats::trayGuardedTTest(first, second).p;
    add("guarded t", isBelow(guarded));
    if (std::min(first.size(), second.size()) < 4) return;
    const double dealt = stats::trayPermutationTest(first, second, random).p;
    add("permutation of trays", dealt < alpha);
    add("guarded t and permutation", isBelow(guarded) && dealt < alpha);
}

}  // namespace calibration
