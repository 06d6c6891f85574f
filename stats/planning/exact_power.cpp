// SPDX-License-Identifier: MIT
#include "stats/planning/exact_power.h"

#include "stats/numeric/require.h"
#include "stats/planning/critical_region.h"

namespace stats {
namespace {

void requirePlannedArms(const char* function, const PlannedArms& arms, double alpha) {
    constexpr int mostTrials = 1000;
    for (const int trials : {arms.trials1, arms.trials2})
        if (trials < 0 || trials > mostTrials) throwDomainError(function, "trials", trials, "from 0 to 1000");
    for (const double rate : {arms.rate1, arms.rate2})
        if (!(rate >= 0 && rate <= 1)) throwDomainError(function, "rate", rate, "from 0 to 1");
    if (!(alpha > 0 && alpha < 1)) throwDomainError(function, "alpha", alpha, "between 0 and 1");
}

CriticalRegion fisherRegion(const PlannedArms& arms, double alpha, FisherSide side) {
    CriticalRegion region(arms.trials1, arms.trials2);
    region.add(FisherTables(arms.trials1, arms.trials2, side), alpha);
    return region;
}

CriticalRegion boschlooRegion(const PlannedArms& arms, double alpha, BoschlooKind kind) {
    CriticalRegion region(arms.trials1, arms.trials2);
    const auto addSide = [&](FisherSide side, double share) {
        const FisherTables tables(arms.trials1, arms.trials2, side);
        region.add(tables, tables.thresholdOfBoschloo(share));
    };
    if (kind == BoschlooKind::Minlike) addSide(FisherSide::TwoSided, alpha);
    if (kind == BoschlooKind::Less) addSide(FisherSide::Less, alpha);
    if (kind == BoschlooKind::Greater) addSide(FisherSide::Greater, alpha);
    if (kind == BoschlooKind::Central) {
        addSide(FisherSide::Less, alpha / 2);
        addSide(FisherSide::Greater, alpha / 2);
    }
    return region;
}

bool hasEmptyArm(const PlannedArms& arms) {
    return arms.trials1 == 0 || arms.trials2 == 0;
}

}  // namespace

ExactPower fisherPower(const PlannedArms& arms, double alpha, FisherSide side) {
    requirePlannedArms("fisherPower", arms, alpha);
    if (hasEmptyArm(arms)) return {};
    const CriticalRegion region = fisherRegion(arms, alpha, side);
    return {.power = region.probability(arms.rate1, arms.rate2), .size = region.size()};
}

ExactPower boschlooPower(const PlannedArms& arms, double alpha, BoschlooKind kind) {
    requirePlannedArms("boschlooPower", arms, alpha);
    if (hasEmptyArm(arms)) return {};
    const CriticalRegion region = boschlooRegion(arms, alpha, kind);
    return {.power = region.probability(arms.rate1, arms.rate2), .size = region.size()};
}

double fisherPowerAlone(const PlannedArms& arms, double alpha, FisherSide side) {
    requirePlannedArms("fisherPowerAlone", arms, alpha);
    return hasEmptyArm(arms) ? 0 : fisherRegion(arms, alpha, side).probability(arms.rate1, arms.rate2);
}

double boschlooPowerAlone(const PlannedArms& arms, double alpha, BoschlooKind kind) {
    requirePlannedArms("boschlooPowerAlone", arms, alpha);
    return hasEmptyArm(arms) ? 0 : boschlooRegion(arms, alpha, kind).probability(arms.rate1, arms.rate2);
}

}  // namespace stats
