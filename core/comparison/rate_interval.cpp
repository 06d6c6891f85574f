// SPDX-License-Identifier: MIT
#include "core/comparison/rate_interval.h"

#include "core/records.h"
#include "stats/proportion/agresti_coull_interval.h"
#include "stats/proportion/clopper_pearson_interval.h"
#include "stats/proportion/jeffreys_interval.h"
#include "stats/proportion/mid_p_interval.h"
#include "stats/proportion/wilson_continuity_interval.h"
#include "stats/proportion/wilson_interval.h"

namespace core {
namespace {

struct Offered {
    RateInterval interval;
    std::string_view word, name;
    stats::Interval (*limits)(int successes, int trials, double level);
};

constexpr Offered offered[] = {
    {RateInterval::Wilson, "wilson", "Wilson", stats::wilsonInterval},
    {RateInterval::WilsonContinuity, "wilson_continuity", "Wilson, corrected for continuity",
     stats::wilsonContinuityInterval},
    {RateInterval::ClopperPearson, "clopper_pearson", "Clopper and Pearson", stats::clopperPearsonInterval},
    {RateInterval::Jeffreys, "jeffreys", "Jeffreys", stats::jeffreysInterval},
    {RateInterval::AgrestiCoull, "agresti_coull", "Agresti and Coull", stats::agrestiCoullInterval},
    {RateInterval::MidP, "mid_p", "mid-p", stats::midPInterval},
};

const Offered& of(RateInterval interval) {
    return offered[static_cast<std::size_t>(interval)];
}

}  // namespace

std::string_view wordFor(RateInterval interval) {
    return of(interval).word;
}

std::string_view nameOf(RateInterval interval) {
    return of(interval).name;
}

std::optional<RateInterval> rateIntervalFrom(std::string_view word) {
    for (const Offered& each : offered)
        if (each.word == word) return each.interval;
    return {};
}

RateInterval intervalOf(const LogbookFacts& facts) {
    return rateIntervalFrom(facts.interval).value_or(RateInterval::Wilson);
}

Limits rateLimits(RateInterval interval, int rooted, int assessed, double level) {
    const stats::Interval limits = of(interval).limits(rooted, assessed, level);
    return {.low = limits.low, .high = limits.high};
}

}  // namespace core
