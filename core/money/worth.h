// SPDX-License-Identifier: MIT
// What a way to root costs for each cutting, each rooted plant and each usable one, with what is known of its strike rate: the values that the
// window, the command line and the prints show. Formed by worthIt(): core/money/worth_it.h. Money is in whole units of the logbook's
// currency, not rounded.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/comparison/arm.h"
#include "core/money/costs_of_batches.h"
#include "core/money/rate_of_mix.h"
#include "stats/overdispersion/beta_binomial_posterior.h"

namespace core {

/// Of so many, so many; with its interval, which allows for the spread between batches and holds the rate. In a pair over several
/// plants the rate is that of the mix of both, not succeeded / of.
struct CountedRate {
    int batches{};
    int of{};
    int succeeded{};
    double rate{};    // succeeded / of, 0 of none
    Limits limits{};  // at the level asked; 0 to 1 of none
};

/// Money for each one that succeeds: cost of a cutting / rate, and between cost / the rate's high and cost / its low.
struct CostOfEach {
    std::optional<double> value{};  // absent: none succeeded, so there is no cost of each
    Limits limits{};                // with none succeeded, `low` is what it costs at least, and high is no bound
};

/// One method, with one plant or with all plants asked for in the mix in which they were stuck.
struct WorthOfMethod {
    MethodId method{};
    PlantId plant{};  // unset: all that were asked for
    std::string name{};
    std::string plantName{};
    int batches{};  // stuck in the days asked for
    int stuck{};
    int stations{};        // different ones
    int unpriced{};        // watched batches that nothing of any price fell on: in the rate, not in the costs
    int running{};         // not yet at the horizon, with cuttings undecided: neither in the rate nor in the costs
    int unwatched{};       // left before the horizon with more than mostUndecided: neither
    CountedRate strike{};  // rooted by the horizon, of those assessed
    std::vector<stats::RatePoint> rates{};  // the law that strike.limits are of; empty: nothing assessed
    std::vector<MixedPlant> mix{};          // what `rates` is worked out from, with Worth::correlations
    int pricedBatches{};                    // that the costs are of
    int pricedStuck{};
    CostParts perCutting{};  // costs of these batches / pricedStuck
    CostOfEach perRooted{};
    std::optional<CountedRate> usable{};  // of stuck, in batches counted after potting; absent: in none
    CostOfEach perUsable{};               // of these batches' own costs; where none were counted, nothing
    double upFront{};   // prices of its own things that last for years: of the method and its stations, as they are now
    double perBatch{};  // everything but these, of a batch
    double cuttingsPerBatch{};
    std::optional<DayRange> medianDays{};  // until half of those that root have rooted
    std::optional<Limits> medianDaysLimits{};
};

enum class WorthVerdict {
    NothingPriced,                // of one of them or of both
    TooFew,                       // below three batches of one, or below five cuttings whose fate is known
    CannotTellMethodFromStation,  // one batch or one station: whyNotTold()
    CannotTellYet,
    BetterAndCheaper,  // the one that is cheaper for a cutting also roots more: nothing speaks for the other
    DearerPays,        // it is cheaper for each rooted plant
    CheaperPays
};

/// In files: "nothing priced", "too few", "method or station", "cannot tell yet", "better and cheaper", "dearer pays", "cheaper pays".
[[nodiscard]] std::string_view wordFor(WorthVerdict verdict);

/// Strike rates at which two ways cost the same for each rooted plant: dear / y = cheap / x + shift.
struct TurningLine {
    double dear{};   // cost of a cutting
    double cheap{};  // cost of a cutting
    double shift{};  // what a plant of the dearer is worth more for being rooted sooner; below 0 when it is later

    /// The dearer's rate that ties with that rate of the cheaper, 0 < cheapRate <= 1; absent: no rate up to 1 does.
    [[nodiscard]] std::optional<double> dearRateFor(double cheapRate) const;
};

/// How many batches it takes until the method with the dearer things of its own has paid for them by what it saves.
struct BreakEvenBatches {
    MethodId method{};  // that one
    std::string name{};
    double chanceEver{};                   // that they ever are
    std::optional<int> low, middle, high;  // absent: never, or beyond a million batches
};

/// The dearer for a cutting against the cheaper.
struct WorthOfPair {
    WorthOfMethod dear{};  // over the plants that both have, both in the same mix
    WorthOfMethod cheap{};
    std::vector<std::string> plants{};   // these
    std::vector<std::string> leftOut{};  // plants that only one of the two has
    double chanceDearPays{};             // that the dearer is cheaper for each rooted plant, with what days are worth
    double chanceDearPaysWithoutDays{};
    double chanceDearRootsMore{};
    std::optional<BreakEvenBatches>
        breakEven{};                    // without what days are worth; absent: own things of both cost the same
    std::optional<double> daysSaved{};  // by the dearer; below 0: lost. Difference of the medians' middles
    std::optional<Limits> daysSavedLimits{};
    std::optional<double> worthOfADay{};
    TurningLine line{};
    std::optional<double>
        dearStrikeToTie{};  // the dearer's strike rate that ties with the cheaper's as it is; absent: none up to 1
    std::optional<double> dearCostToTie{};  // the dearer's cost of a cutting that ties; absent: the cheaper's rate is 0
    std::optional<double>
        upFrontToTie{};  // price of all its own lasting things that ties; absent: no price from 0 on does
    std::optional<int> moreCuttings{};  // of each method, that would likely tell; absent: not asked, or beyond reach
    WorthVerdict verdict{WorthVerdict::CannotTellYet};
    std::string whyNotTold{};  // why the methods can't be told from where they stood; empty when they can
    std::string inWords{};
};

}  // namespace core
