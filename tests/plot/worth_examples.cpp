// SPDX-License-Identifier: MIT
#include "tests/plot/worth_examples.h"

#include <limits>
#include <string>

namespace examples {

namespace {

core::CostParts partsOf(double lasting, double usedUp, double electricity, double work, double writtenDown) {
    core::CostParts parts;
    parts.amounts = {lasting, usedUp, electricity, work, writtenDown};
    return parts;
}

core::CostOfEach costOfEach(const core::CostParts& parts, const core::CountedRate& rate) {
    const double whole = parts.total();
    core::CostOfEach cost{.value = {}, .limits = {.low = whole / rate.limits.high, .high = whole / rate.limits.low}};
    if (rate.succeeded > 0)
        cost.value = whole / rate.rate;
    else
        cost.limits.high = std::numeric_limits<double>::infinity();
    return cost;
}

core::WorthOfMethod methodOf(core::MethodId id, const std::string& name, const core::CountedRate& strike,
                             const core::CostParts& parts) {
    core::WorthOfMethod method;
    method.method = id;
    method.name = name;
    method.batches = strike.batches;
    method.stuck = strike.of;
    method.stations = 2;
    method.strike = strike;
    method.pricedBatches = strike.batches;
    method.pricedStuck = strike.of;
    method.perCutting = parts;
    method.perRooted = costOfEach(parts, strike);
    method.perBatch = 20 * parts.total();
    method.cuttingsPerBatch = 20;
    return method;
}

core::WorthOfMethod tray() {
    core::WorthOfMethod method =
        methodOf({302}, "media tray",
                 {.batches = 6, .of = 118, .succeeded = 70, .rate = 70 / 118.0, .limits = {.low = 0.46, .high = 0.71}},
                 partsOf(0.06, 0.12, 0, 0.20, 0.02));
    method.medianDays = core::DayRange{.after = 21, .by = 28};
    method.medianDaysLimits = core::Limits{.low = 20, .high = 33};
    return method;
}

core::WorthOfMethod water() {
    core::WorthOfMethod method =
        methodOf({301}, "aerated water",
                 {.batches = 5, .of = 100, .succeeded = 84, .rate = 0.84, .limits = {.low = 0.74, .high = 0.91}},
                 partsOf(0.30, 0.04, 0.08, 0.25, 0.05));
    method.upFront = 120;
    method.usable =
        core::CountedRate{.batches = 2, .of = 40, .succeeded = 30, .rate = 0.75, .limits = {.low = 0.55, .high = 0.88}};
    method.perUsable = {.value = 0.96, .limits = {.low = 0.82, .high = 1.31}};
    method.medianDays = core::DayRange{.after = 14, .by = 21};
    return method;
}

}  // namespace

core::Worth worthOfTwoMethods() {
    core::Worth worth{.horizonDay = 35, .horizonReason = "the day the plants are usually rooted by", .level = 0.95};
    worth.correlation = 0.08;
    worth.isSpreadFromRecords = true;
    worth.methods = {tray(), water()};
    worth.byPlant = worthByPlant(2);
    core::WorthOfPair pair{.dear = water(), .cheap = tray()};
    pair.plants = {"Hebe 'Emerald'"};
    pair.chanceDearPays = 0.12;
    pair.daysSaved = 7;
    pair.daysSavedLimits = core::Limits{.low = 2, .high = 12};
    pair.worthOfADay = 0.01;
    pair.line = {.dear = 0.72, .cheap = 0.40, .shift = 0.07};
    pair.dearStrikeToTie = pair.line.dearRateFor(pair.cheap.strike.rate);
    pair.dearCostToTie = 0.63;
    pair.upFrontToTie = 84;
    pair.breakEven = core::BreakEvenBatches{
        .method = {301}, .name = "aerated water", .chanceEver = 0.8, .low = 6, .middle = 18, .high = {}};
    pair.verdict = core::WorthVerdict::CannotTellYet;
    pair.moreCuttings = 160;
    pair.inWords = "It cannot be told yet whether aerated water is worth it.";
    worth.pairs = {pair};
    worth.stoodEmpty = {{.method = {301}, .what = "air pump", .days = 40, .amount = 6.5}};
    worth.missing = {"No tariff holds on 2026-03-02, so the electricity of air pump isn't in it."};
    worth.cautions = {"Both methods stood at different stations."};
    worth.inWords = pair.inWords;
    return worth;
}

std::vector<core::WorthOfMethod> worthByPlant(int plants) {
    std::vector<core::WorthOfMethod> rows;
    for (int plant = 0; plant < plants; ++plant)
        for (core::WorthOfMethod row : {tray(), water()}) {
            row.plant = {100 + plant};
            row.plantName = "Hebe 'Number " + std::to_string(plant + 1) + "'";
            rows.push_back(row);
        }
    return rows;
}

core::WorthOfMethod noneRooted() {
    return methodOf({303}, "jar on the sill",
                    {.batches = 4, .of = 60, .succeeded = 0, .rate = 0, .limits = {.low = 0, .high = 0.12}},
                    partsOf(0, 0.02, 0, 0.36, 0));
}

core::WorthOfMethod notPriced() {
    core::WorthOfMethod method =
        methodOf({304}, "open bench",
                 {.batches = 3, .of = 50, .succeeded = 20, .rate = 0.4, .limits = {.low = 0.25, .high = 0.56}}, {});
    method.unpriced = 3;
    method.pricedBatches = 0;
    method.pricedStuck = 0;
    method.perRooted = {};
    return method;
}

std::vector<core::ChanceAfter> payOff() {
    std::vector<core::ChanceAfter> curve;
    for (const int batches : {1, 6, 12, 18, 40, 80, 108})
        curve.push_back({.batches = batches, .chance = 0.8 * batches / (batches + 10.8)});
    return curve;
}

}  // namespace examples
