// SPDX-License-Identifier: MIT
// What the records say of one batch, beside the grower's own past with the same plant and method.
#pragma once

#include <span>

#include "core/comparison/comparison.h"
#include "core/comparison/unusual.h"
#include "core/records.h"

namespace core {

struct OwnPast {
    int batches{};
    int horizonDay{};  // on which its cuttings are counted
    int rooted{};
    int assessed{};
    std::optional<double> rate;
    std::optional<Limits> asCounted;
    std::optional<Limits> withSpread;
    std::vector<DayShare> rootedByDay;  // up to that day
};

struct BatchSummary {
    Tally tally;              // today
    double level{0.95};       // of every interval here: the logbook's
    RateInterval interval{};  // of asCounted, here and of the past: the logbook's
    double rate{};            // rooted / stuck so far
    Limits asCounted;         // of rooted / stuck
    std::vector<DayShare> rootedByDay;
    std::vector<DayShare> lostByDay;
    std::vector<LookCounts> looks;  // one for each of rootedByDay
    CurveMakeup makeup;
    DaysToRoot ofStuck;
    DaysToRoot ofRooted;
    std::vector<LossByCause> losses;
    OwnPast past;  // other batches of the same plant and method, stuck before this one
    std::optional<AgainstThePast> againstPast;
    StrikeChart chart;  // this batch among all of the plant and method, at the horizon
    std::vector<std::string> cautions;
    std::string inWords;
};

/// `all`: every batch of the plant. How alike batches are is judged by these: a page that opens in no time can't read the whole logbook.
[[nodiscard]] BatchSummary summaryOf(const BatchRecord& record, const Shelves& shelves,
                                     std::span<const BatchRecord> all, Date today);

}  // namespace core
