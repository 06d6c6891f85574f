// SPDX-License-Identifier: MIT
// What went with rooting in the records: a regression of strike on everything that was recorded of a batch at once, so that a plant that
// was always stuck in one medium doesn't speak for the medium. Records are not an experiment: what went with rooting need not have caused it.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/comparison/condition_features.h"
#include "core/records.h"

namespace core {

struct Association {
    std::string name;  // "medium perlite, against coir", "IBA, each tenfold dose"
    bool isPlant{};    // one plant against another: no news, and not looked for
    int batches{};     // that have it; for doses, that were treated
    double oddsRatio{1};
    Limits asCounted;                  // profile of the penalised likelihood; either end may be infinite or 0
    std::optional<Limits> withSpread;  // the same, widened by the spread between batches
    double asCountedP{1};
    std::optional<double> withSpreadP;
    std::optional<double> holmP;  // the same, adjusted for all that were looked at but plants
};

/// One batch as the regression sees it.
struct FeaturedBatch {
    int rooted{}, assessed{};
    std::vector<double> values;  // in the order of the associations
};

struct GoesWith {
    std::vector<FeaturedBatch> rows;
    std::vector<Association> associations;  // plants first, then method, medium, kind of cutting, treatment
    std::vector<std::string>
        cannotBeTold;  // "method mist: always together with ..." names that other columns already tell
    std::vector<std::string> leftOut{};  // "solution EC: on record of 6 batches": conditions that were not looked at
    std::string whyNot;                  // why there are none; empty otherwise
    double dispersion{1};                // of batches about the fit
    int batches{}, cuttings{};
    std::string inWords;
};

/// Batches whose fate at the horizon is known, one row each. Of the conditions on record those are looked at that ten batches have and that
/// leave three batches for each thing looked at, beside everything else on record; the others are named in leftOut.
[[nodiscard]] GoesWith goesWithRooting(const Shelves& shelves, std::span<const BatchRecord* const> batches,
                                       int horizonDay, double level, const ConditionsOnRecord& conditions = {});

}  // namespace core
