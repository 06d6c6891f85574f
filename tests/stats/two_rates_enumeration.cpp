// SPDX-License-Identifier: MIT
#include "tests/stats/two_rates_enumeration.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <random>
#include <utility>

namespace enumeration {

long double ways(int things, int chosen) {
    if (chosen < 0 || chosen > things) return 0;
    long double product = 1;
    for (int i = 1; i <= chosen; ++i) product = product * (things - chosen + i) / i;
    return product;
}

long double binomial(int trials, int successes, long double p) {
    return ways(trials, successes) * std::pow(p, successes) * std::pow(1 - p, trials - successes);
}

std::vector<stats::TwoCounts> randomTables(int howMany, int mostTrials, unsigned seed) {
    std::mt19937 random(seed);
    const auto upTo = [&random](int most) { return static_cast<int>(random() % (static_cast<unsigned>(most) + 1)); };
    std::vector<stats::TwoCounts> tables;
    for (int i = 0; i < howMany; ++i) {
        const int trials1 = 1 + upTo(mostTrials - 1), trials2 = 1 + upTo(mostTrials - 1);
        stats::TwoCounts table{upTo(trials1), trials1, upTo(trials2), trials2};
        if (i % 6 == 0) table.successes1 = 0;
        if (i % 6 == 3) table.successes2 = trials2;
        tables.push_back(table);
    }
    return tables;
}

std::vector<stats::TwoCounts> tablesOf(int trials1, int trials2) {
    std::vector<stats::TwoCounts> tables;
    for (int first = 0; first <= trials1; ++first)
        for (int second = 0; second <= trials2; ++second) tables.push_back({first, trials1, second, trials2});
    return tables;
}

std::vector<stats::TwoCounts> tablesOf(int trials1, int trials2, int successes) {
    std::vector<stats::TwoCounts> tables;
    for (int first = std::max(0, successes - trials2); first <= std::min(trials1, successes); ++first)
        tables.push_back({first, trials1, successes - first, trials2});
    return tables;
}

double largestProbability(int trials1, int trials2, const std::function<bool(const stats::TwoCounts&)>& isExtreme) {
    std::vector<std::pair<std::size_t, std::size_t>> region;
    for (const stats::TwoCounts& table : tablesOf(trials1, trials2))
        if (isExtreme(table)) region.emplace_back(table.successes1, table.successes2);
    const auto lawOf = [](int trials, long double p) {
        std::vector<long double> law(static_cast<std::size_t>(trials) + 1);
        long double failing = 1;
        for (int successes = trials; successes >= 0; --successes, failing *= 1 - p)
            law[static_cast<std::size_t>(successes)] = ways(trials, successes) * failing;
        long double succeeding = 1;
        for (long double& each : law) {
            each *= succeeding;
            succeeding *= p;
        }
        return law;
    };
    constexpr int steps = 2000;
    long double largest = 0;
    for (int step = 0; step <= steps; ++step) {
        const long double p = static_cast<long double>(step) / steps;
        const std::vector<long double> first = lawOf(trials1, p), second = lawOf(trials2, p);
        long double sum = 0;
        for (const auto& [successes1, successes2] : region) sum += first[successes1] * second[successes2];
        largest = std::max(largest, sum);
    }
    return static_cast<double>(largest);
}

double scoreStatistic(const stats::TwoCounts& counts, double shift, double factor) {
    const auto term = [](int count, long double p) { return count == 0 ? 0.0L : count * std::log(p); };
    const auto logLikelihood = [&](long double second) {
        const long double first = shift + factor * second;
        return term(counts.successes1, first) + term(counts.trials1 - counts.successes1, 1 - first) +
               term(counts.successes2, second) + term(counts.trials2 - counts.successes2, 1 - second);
    };
    long double low = std::max(0.0L, -static_cast<long double>(shift) / factor);
    long double high = std::min(1.0L, (1.0L - shift) / factor);
    for (int step = 0; step < 200; ++step) {
        const long double left = low + (high - low) / 3, right = high - (high - low) / 3;
        (logLikelihood(left) < logLikelihood(right) ? low : high) =
            logLikelihood(left) < logLikelihood(right) ? left : right;
    }
    const long double second = (low + high) / 2, first = shift + factor * second;
    const long double variance =
        first * (1 - first) / counts.trials1 + factor * factor * second * (1 - second) / counts.trials2;
    const long double observed1 = static_cast<long double>(counts.successes1) / counts.trials1;
    const long double observed2 = static_cast<long double>(counts.successes2) / counts.trials2;
    return static_cast<double>((observed1 - shift - factor * observed2) / std::sqrt(variance));
}

}  // namespace enumeration
