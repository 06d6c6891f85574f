// SPDX-License-Identifier: MIT
#include "stats/planning/predictive_count.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <cstddef>
#include <functional>
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

// With one fineness of the posterior: full trays until enough, then as few as will do in the last of them.
CountToStick countWithAngles(int wanted, const PastBatches& past, int traySize, double assurance, int angles) {
    TraySums sums(ratePosterior(past, angles), wanted);
    const int size = std::min(traySize, mostInTrays);
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

double chanceWithAngles(int wanted, int count, const PastBatches& past, int traySize, int angles) {
    TraySums sums(ratePosterior(past, angles), wanted);
    int left = count;
    for (; left > traySize; left -= traySize) sums.addTray(traySize);
    return sums.chanceWithAnotherTray(left);
}

constexpr int fewestAngles = 48;
constexpr int mostAngles = 6144;
// A step halved squares the error at least where the posterior is smooth, so what moved this little is far nearer now.
constexpr double stillChance = 1e-7;

}  // namespace

CountToStick countForKnownRate(int wanted, double rate, double assurance) {
    requireWanted("countForKnownRate", wanted, assurance);
    if (!(rate >= 0 && rate <= 1)) throwDomainError("countForKnownRate", "rate", rate, "from 0 to 1");
    if (rate == 0 && wanted > 0) return {};
    return smallestCount(wanted, assurance, [wanted, rate](int count) {
        return boost::math::ibeta(static_cast<double>(wanted), count - wanted + 1.0, rate, BoostPolicy{});
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

CountToStick countForPastBatches(int wanted, const PastBatches& past, int traySize, double assurance) {
    requirePastBatches("countForPastBatches", past);
    requireWanted("countForPastBatches", wanted, assurance);
    requireTrayPlan("countForPastBatches", wanted, traySize);
    if (wanted == 0) return {.count = 0, .achieved = 1};
    int angles = fewestAngles;
    CountToStick answer = countWithAngles(wanted, past, traySize, assurance, angles);
    while (angles < mostAngles) {
        angles *= 2;
        const CountToStick finer = countWithAngles(wanted, past, traySize, assurance, angles);
        const bool isStill =
            finer.count == answer.count && (!finer.count || std::abs(*finer.achieved - *answer.achieved) < stillChance);
        answer = finer;
        if (isStill) break;
    }
    return answer;
}

double assuranceOfCount(int wanted, int count, const PastBatches& past, int traySize) {
    requirePastBatches("assuranceOfCount", past);
    requireTrayPlan("assuranceOfCount", wanted, traySize);
    if (count < 0 || count > mostInTrays) throwDomainError("assuranceOfCount", "count", count, "from 0 to 20000");
    if (wanted == 0) return 1;
    if (wanted > count) return 0;
    int angles = fewestAngles;
    double chance = chanceWithAngles(wanted, count, past, traySize, angles);
    while (angles < mostAngles) {
        angles *= 2;
        const double finer = chanceWithAngles(wanted, count, past, traySize, angles);
        const bool isStill = std::abs(finer - chance) < stillChance;
        chance = finer;
        if (isStill) break;
    }
    return chance;
}

}  // namespace stats
