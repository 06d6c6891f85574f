// SPDX-License-Identifier: MIT
#include "stats/planning/predictive_count.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <cstddef>
#include <functional>
#include <utility>
#include <vector>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "stats/planning/tray_sums.h"

namespace stats {
namespace {

constexpr int mostToStick = 1'000'000;
constexpr int mostInTrays = 20'000;

void requireWanted(const char* function, int wanted, double assurance) {
    if (wanted < 0) throwDomainError(function, "wanted", wanted, "0 or more");
    if (!(assurance > 0 && assurance < 1)) throwDomainError(function, "assurance", assurance, "between 0 and 1");
}

// One more cutting never makes it less likely, so doubling and halving find the smallest count.
CountToStick smallestCount(int wanted, double assurance, const std::function<double(int)>& chance) {
    if (wanted == 0) return {.count = 0, .achieved = 1};
    if (wanted > mostToStick) return {};
    int tooFew = wanted - 1, enough = wanted;
    while (chance(enough) < assurance) {
        if (enough == mostToStick) return {};
        tooFew = enough;
        enough = enough > mostToStick / 2 ? mostToStick : 2 * enough;
    }
    while (enough - tooFew > 1) {
        const int middle = tooFew + (enough - tooFew) / 2;
        (chance(middle) < assurance ? tooFew : enough) = middle;
    }
    return {.count = enough, .achieved = chance(enough)};
}

double chanceOfAtLeast(int wanted, const std::vector<double>& law) {
    double fewer = 0;
    for (std::size_t x = 0; x < std::min(law.size(), static_cast<std::size_t>(wanted)); ++x) fewer += law[x];
    return static_cast<std::size_t>(wanted) < law.size() ? std::clamp(1 - fewer, 0.0, 1.0) : 0.0;
}

void requireTrayPlan(const char* function, int wanted, int traySize) {
    constexpr int mostWanted = 10'000;
    if (wanted < 0 || wanted > mostWanted) throwDomainError(function, "wanted", wanted, "from 0 to 10000");
    if (traySize < 1) throwDomainError(function, "traySize", traySize, "1 or more");
}

void requireLivesOn(const char* function, double livesOn) {
    if (!(livesOn > 0 && livesOn <= 1)) throwDomainError(function, "livesOn", livesOn, "above 0, at most 1");
}

// With one fineness of the posterior: full trays until enough, then as few as will do in the last of them.
CountToStick countWithAngles(int wanted, const PastBatches& past, int traySize, double assurance, double livesOn,
                             int angles) {
    const int size = std::min(traySize, mostInTrays);
    TraySums sums(ratePosterior(past, angles), wanted, livesOn, size);
    int stuck = 0;
    while (stuck + size < mostInTrays && sums.chanceWithAnotherTray(size) < assurance) {
        sums.addTray(size);
        stuck += size;
    }
    int tooFew = 0, enough = std::min(size, mostInTrays - stuck);
    if (sums.chanceWithAnotherTray(enough) < assurance) return {};
    while (enough - tooFew > 1) {
        const int middle = tooFew + (enough - tooFew) / 2;
        (sums.chanceWithAnotherTray(middle) < assurance ? tooFew : enough) = middle;
    }
    return {.count = stuck + enough, .achieved = sums.chanceWithAnotherTray(enough)};
}

std::vector<double> chancesWithAngles(int wanted, std::span<const int> counts, const PastBatches& past, int traySize,
                                      double livesOn, int angles) {
    TraySums sums(ratePosterior(past, angles), wanted, livesOn, std::min(traySize, mostInTrays));
    std::vector<double> chances;
    int stuck = 0;
    for (const int count : counts) {
        for (; count - stuck > traySize; stuck += traySize) sums.addTray(traySize);
        chances.push_back(count < wanted ? 0 : sums.chanceWithAnotherTray(count - stuck));
    }
    return chances;
}

constexpr int fewestAngles = 48;
constexpr int mostAngles = 6144;
// A step halved squares the error at least where the posterior is smooth, so what moved this little is far nearer now.
constexpr double stillChance = 1e-7;

}  // namespace

CountToStick countForKnownRate(int wanted, double rate, double assurance, double livesOn) {
    requireWanted("countForKnownRate", wanted, assurance);
    requireLivesOn("countForKnownRate", livesOn);
    if (!(rate >= 0 && rate <= 1)) throwDomainError("countForKnownRate", "rate", rate, "from 0 to 1");
    const double usable = rate * livesOn;
    if (usable == 0 && wanted > 0) return {};
    return smallestCount(wanted, assurance, [wanted, usable](int count) {
        return boost::math::ibeta(static_cast<double>(wanted), count - wanted + 1.0, usable, BoostPolicy{});
    });
}

CountToStick countForPastRecords(int wanted, int successes, int trials, double assurance) {
    requireWanted("countForPastRecords", wanted, assurance);
    requireCounts("countForPastRecords", successes, trials);
    const double sum = trials + 1.0;
    const double mean = (successes + 0.5) / sum, correlation = 1 / (sum + 1);
    return smallestCount(wanted, assurance, [wanted, mean, correlation](int count) {
        return chanceOfAtLeast(wanted, betaBinomialProbabilities(count, mean, correlation));
    });
}

CountToStick countForPastBatches(int wanted, const PastBatches& past, int traySize, double assurance, double livesOn) {
    requirePastBatches("countForPastBatches", past);
    requireWanted("countForPastBatches", wanted, assurance);
    requireTrayPlan("countForPastBatches", wanted, traySize);
    requireLivesOn("countForPastBatches", livesOn);
    if (wanted == 0) return {.count = 0, .achieved = 1};
    int angles = fewestAngles;
    CountToStick answer = countWithAngles(wanted, past, traySize, assurance, livesOn, angles);
    while (angles < mostAngles) {
        angles *= 2;
        const CountToStick finer = countWithAngles(wanted, past, traySize, assurance, livesOn, angles);
        const bool isStill =
            finer.count == answer.count && (!finer.count || std::abs(*finer.achieved - *answer.achieved) < stillChance);
        answer = finer;
        if (isStill) break;
    }
    return answer;
}

double assuranceOfCount(int wanted, int count, const PastBatches& past, int traySize, double livesOn) {
    return assuranceOfCounts(wanted, {&count, 1}, past, traySize, livesOn).front();
}

std::vector<double> assuranceOfCounts(int wanted, std::span<const int> counts, const PastBatches& past, int traySize,
                                      double livesOn) {
    requirePastBatches("assuranceOfCounts", past);
    requireTrayPlan("assuranceOfCounts", wanted, traySize);
    requireLivesOn("assuranceOfCounts", livesOn);
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] < (i == 0 ? 0 : counts[i - 1]) || counts[i] > mostInTrays)
            throwDomainError("assuranceOfCounts", "count", counts[i], "from 0 to 20000 and rising");
    if (wanted == 0) return std::vector<double>(counts.size(), 1.0);
    if (counts.empty() || counts.back() < wanted) return std::vector<double>(counts.size());
    int angles = fewestAngles;
    std::vector<double> chances = chancesWithAngles(wanted, counts, past, traySize, livesOn, angles);
    while (angles < mostAngles) {
        angles *= 2;
        std::vector<double> finer = chancesWithAngles(wanted, counts, past, traySize, livesOn, angles);
        double move = 0;
        for (std::size_t i = 0; i < finer.size(); ++i) move = std::max(move, std::abs(finer[i] - chances[i]));
        chances = std::move(finer);
        if (move < stillChance) break;
    }
    return chances;
}

}  // namespace stats
