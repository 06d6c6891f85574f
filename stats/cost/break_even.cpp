// SPDX-License-Identifier: MIT
#include "stats/cost/break_even.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "stats/numeric/require.h"
#include "stats/overdispersion/rate_law.h"

namespace stats {
namespace {

constexpr std::string_view function = "breakEven";

void requireOutlay(const Outlay& outlay) {
    const auto isMoney = [](double money) { return money >= 0 && std::isfinite(money); };
    if (!isMoney(outlay.upFront)) throwDomainError(function, "upFront", outlay.upFront, "0 <= upFront, finite");
    if (!isMoney(outlay.perBatch)) throwDomainError(function, "perBatch", outlay.perBatch, "0 <= perBatch, finite");
    if (!(outlay.trialsPerBatch > 0 && std::isfinite(outlay.trialsPerBatch)))
        throwDomainError(function, "trialsPerBatch", outlay.trialsPerBatch, "0 < trialsPerBatch, finite");
}

/// What is asked again and again at different numbers of batches.
class Race {
  public:
    Race(const Outlay& dear, const Outlay& cheap)
        : dear_(dear), cheap_(cheap), dearRates_(function, dear.rates), cheapRates_(function, cheap.rates) {}

    /// P(dear costs less after `batches`, and from then on).
    [[nodiscard]] double chanceBy(double batches) const {
        const double share = 1 / batches;
        double chance = 0;
        for (const RateLaw::Point& dear : dearRates_.points())
            chance += dear.weight * std::min(chanceAt(dear.rate, share), chanceAt(dear.rate, 0));
        return std::clamp(chance, 0.0, 1.0);
    }
    [[nodiscard]] double chanceEver() const { return chanceBy(mostBatchesToBreakEven); }

    [[nodiscard]] std::optional<int> firstWith(double chance) const {
        if (chanceEver() < chance) return std::nullopt;
        int low = 0, high = mostBatchesToBreakEven;  // high has it, low hasn't
        while (high - low > 1) {
            const int middle = low + (high - low) / 2;
            (chanceBy(middle) >= chance ? high : low) = middle;
        }
        return high;
    }

  private:
    /// P(dear costs less), given its rate, when `share` of what it needs more up front falls on each of its batches.
    [[nodiscard]] double chanceAt(double dearRate, double share) const {
        const double dearCost = ((dear_.upFront - cheap_.upFront) * share + dear_.perBatch) / dear_.trialsPerBatch;
        const double cheapCost = cheap_.perBatch / cheap_.trialsPerBatch;
        if (dearCost < 0) return 1;
        if (dearCost == 0) return cheapCost > 0 ? 1 : 0.5;
        return cheapRates_.below(dearRate * cheapCost / dearCost);
    }

    const Outlay& dear_;
    const Outlay& cheap_;
    RateLaw dearRates_, cheapRates_;
};

}  // namespace

BreakEven breakEven(const Outlay& dear, const Outlay& cheap, int batches, double level) {
    requireLevel(function, level);
    requireOutlay(dear);
    requireOutlay(cheap);
    if (batches < 1 || batches > mostBatchesToBreakEven)
        throwDomainError(function, "batches", batches, "1 <= batches <= 1000000");
    const Race race(dear, cheap);
    return {.batches = batches,
            .chanceByThen = race.chanceBy(batches),
            .chanceEver = race.chanceEver(),
            .low = race.firstWith((1 - level) / 2),
            .middle = race.firstWith(0.5),
            .high = race.firstWith((1 + level) / 2)};
}

}  // namespace stats
