// SPDX-License-Identifier: MIT
#include "stats/planning/predictive_range.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <cstddef>
#include <functional>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "stats/planning/tray_sums.h"

namespace stats {
namespace {

constexpr int mostOfOneLaw = 1'000'000;
constexpr int mostStuckInTrays = 20'000;
constexpr int mostExact = 600;

void requireStuck(const char* function, int count, int most) {
    if (count < 0 || count > most) throwDomainError(function, "count", count, "from 0 to " + std::to_string(most));
}

/// `atLeast(k)` is P(k or more), 0 < k <= count, and falls with k.
template <class AtLeast>
CountRange rangeWith(int count, double level, const AtLeast& atLeast) {
    const double tail = (1 - level) / 2;
    // The last of 0, ..., count at which `holds`, which it does up to there and no further.
    const auto last = [count](const auto& holds) {
        int yes = 0, no = count + 1;
        while (no - yes > 1) {
            const int middle = yes + (no - yes) / 2;
            (holds(middle) ? yes : no) = middle;
        }
        return yes;
    };
    return {.low = last([&](int k) { return atLeast(k) >= 1 - tail; }),
            .high = last([&](int k) { return atLeast(k) > tail; })};
}

std::vector<double> atLeastOf(const std::vector<double>& law) {
    std::vector<double> atLeast(law.size());
    double more = 0;
    for (std::size_t k = law.size(); k-- > 0;) atLeast[k] = more += law[k];
    return atLeast;
}

CountRange rangeWithin(const std::vector<double>& atLeast, double level) {
    return rangeWith(static_cast<int>(atLeast.size()) - 1, level,
                     [&](int k) { return atLeast[static_cast<std::size_t>(k)]; });
}

std::vector<double> atLeastWithAngles(int count, const PastBatches& past, int traySize, double livesOn, int angles) {
    const int size = std::min(traySize, count);
    TraySums sums(ratePosterior(past, angles), count + 1, livesOn, size);
    for (int left = count; left > 0; left -= size) sums.addTray(std::min(size, left));
    return atLeastOf(sums.law());
}

struct MeanAndVariance {
    double mean{};
    double variance{};
};

/// Of those that live on of a tray of so many.
MeanAndVariance ofTray(int size, const RatePoint& point, double livesOn) {
    const double rooted = size * point.rate;
    const double spread = rooted * (1 - point.rate) * (1 + (size - 1) * point.correlation);
    return {.mean = livesOn * rooted, .variance = livesOn * livesOn * spread + livesOn * (1 - livesOn) * rooted};
}

/// Sums of trays as normal, at each point of the posterior.
CountRange normalRange(int count, const std::vector<RatePoint>& points, int traySize, double level, double livesOn) {
    const int size = std::min(traySize, count), full = count / size, rest = count % size;
    struct Normal {
        double mean, deviation, weight;
    };
    std::vector<Normal> sums;
    for (const RatePoint& point : points) {
        const MeanAndVariance whole = ofTray(size, point, livesOn), last = ofTray(rest, point, livesOn);
        const double variance = full * whole.variance + last.variance;
        sums.push_back({full * whole.mean + last.mean, std::sqrt(std::max(variance, 1e-12)), point.weight});
    }
    return rangeWith(count, level, [&sums](int k) {
        double chance = 0;
        for (const Normal& sum : sums)
            chance += sum.weight * std::erfc((k - 0.5 - sum.mean) / sum.deviation / std::numbers::sqrt2) / 2;
        return chance;
    });
}

/// Calls `answerWith` with ever finer steps until `isStill`.
template <class Answer, class AnswerWith, class IsStill>
Answer settled(const AnswerWith& answerWith, const IsStill& isStill) {
    constexpr int fewestSteps = 24, mostSteps = 3072;
    int angles = fewestSteps;
    Answer answer = answerWith(angles);
    while (angles < mostSteps) {
        Answer finer = answerWith(angles *= 2);
        const bool isEnough = isStill(answer, finer);
        answer = std::move(finer);
        if (isEnough) break;
    }
    return answer;
}

bool hardlyMoved(const std::vector<double>& before, const std::vector<double>& now) {
    constexpr double stillLimit = 1e-5;
    for (std::size_t k = 0; k < now.size(); ++k)
        if (std::abs(now[k] - before[k]) >= stillLimit) return false;
    return true;
}

}  // namespace

CountRange rangeForKnownRate(int count, double rate, double level, double livesOn) {
    requireStuck("rangeForKnownRate", count, mostOfOneLaw);
    requireLevel("rangeForKnownRate", level);
    if (!(rate >= 0 && rate <= 1)) throwDomainError("rangeForKnownRate", "rate", rate, "from 0 to 1");
    if (!(livesOn > 0 && livesOn <= 1)) throwDomainError("rangeForKnownRate", "livesOn", livesOn, "above 0, at most 1");
    const double usable = rate * livesOn;
    if (usable == 0 || usable == 1) return {.low = usable == 0 ? 0 : count, .high = usable == 0 ? 0 : count};
    return rangeWith(count, level, [count, usable](int k) {
        return boost::math::ibeta(static_cast<double>(k), count - k + 1.0, usable, BoostPolicy{});
    });
}

CountRange rangeForPastRecords(int count, int successes, int trials, double level) {
    requireStuck("rangeForPastRecords", count, mostOfOneLaw);
    requireCounts("rangeForPastRecords", successes, trials);
    requireLevel("rangeForPastRecords", level);
    const double sum = trials + 1.0;
    return rangeWithin(atLeastOf(betaBinomialProbabilities(count, (successes + 0.5) / sum, 1 / (sum + 1))), level);
}

CountRange rangeForPastBatches(int count, const PastBatches& past, int traySize, double level, double livesOn) {
    requirePastBatches("rangeForPastBatches", past);
    requireStuck("rangeForPastBatches", count, mostStuckInTrays);
    requireLevel("rangeForPastBatches", level);
    if (traySize < 1) throwDomainError("rangeForPastBatches", "traySize", traySize, "1 or more");
    if (!(livesOn > 0 && livesOn <= 1))
        throwDomainError("rangeForPastBatches", "livesOn", livesOn, "above 0, at most 1");
    if (count == 0) return {};
    if (count > mostExact)
        return settled<CountRange>(
            [&](int angles) { return normalRange(count, ratePosterior(past, angles), traySize, level, livesOn); },
            std::equal_to<>());
    const auto atLeast = settled<std::vector<double>>(
        [&](int angles) { return atLeastWithAngles(count, past, traySize, livesOn, angles); }, hardlyMoved);
    return rangeWithin(atLeast, level);
}

}  // namespace stats
