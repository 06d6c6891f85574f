// SPDX-License-Identifier: MIT
#include "core/money/worth_of_pair.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/verdict.h"
#include "stats/cost/break_even.h"
#include "stats/cost/cost_per_success.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/overdispersion/rate_law.h"

namespace core {
namespace {

using Cells = std::vector<const WorthCell*>;

const WorthCell* cellOf(std::span<const WorthCell> cells, MethodId method, PlantId plant) {
    const auto found = std::ranges::find_if(
        cells, [&](const WorthCell& cell) { return cell.method == method && cell.plant == plant; });
    return found == cells.end() ? nullptr : &*found;
}

/// What is compared: the plants that both have, each in the mix of both together.
struct SharedPlants {
    Cells first, second;
    std::vector<double> shares;
    std::vector<PlantId> plants, leftOut;
};

SharedPlants sharedPlants(const PairToWeigh& question) {
    SharedPlants shared;
    for (const WorthCell& cell : question.cells) {
        if (cell.method == question.second && cellOf(question.cells, question.first, cell.plant) == nullptr)
            shared.leftOut.push_back(cell.plant);
        if (cell.method != question.first) continue;
        const WorthCell* other = cellOf(question.cells, question.second, cell.plant);
        if (other == nullptr || !cell.isComparable() || !other->isComparable()) {
            shared.leftOut.push_back(cell.plant);
            continue;
        }
        shared.first.push_back(&cell);
        shared.second.push_back(other);
        shared.shares.push_back(cell.pricedStuck + other->pricedStuck);
        shared.plants.push_back(cell.plant);
    }
    return shared;
}

std::vector<std::string> namesOf(std::span<const PlantId> plants, const Shelves& shelves) {
    std::vector<std::string> names;
    for (const PlantId id : plants) {
        const Plant* plant = find(shelves.plants, id);
        names.push_back(plant == nullptr ? "not recorded" : fullName(*plant));
    }
    std::ranges::sort(names);
    return names;
}

/// Where no plant has costs and a rate by both: what there is of each, to say why.
WorthOfMethod whatThereIs(MethodId method, const PairToWeigh& question, const WorthSettings& settings) {
    Cells cells;
    for (const WorthCell& cell : question.cells)
        if (cell.method == method) cells.push_back(&cell);
    return worthOfMix(cells, {}, settings);
}

void nameMethod(const Shelves& shelves, WorthOfMethod& worth) {
    const Method* method = find(shelves.methods, worth.method);
    worth.name = method == nullptr ? "not recorded" : method->name;
}

double chanceWithShift(const WorthOfPair& pair) {
    const stats::RateLaw dear("chanceWithShift", pair.dear.rates), cheap("chanceWithShift", pair.cheap.rates);
    double chance = 0;
    for (const stats::RateLaw::Point& point : cheap.points())
        if (const std::optional<double> tie = pair.line.dearRateFor(point.rate))
            chance += point.weight * (1 - dear.below(*tie));
    return std::clamp(chance, 0.0, 1.0);
}

void fillChances(WorthOfPair& pair) {
    const std::vector<stats::RatePoint>&dear = pair.dear.rates, &cheap = pair.cheap.rates;
    pair.chanceDearRootsMore = stats::chanceCheaper({1, dear}, {1, cheap});
    pair.chanceDearPaysWithoutDays = stats::chanceCheaper({pair.line.dear, dear}, {pair.line.cheap, cheap});
    pair.chanceDearPays = pair.line.shift == 0 ? pair.chanceDearPaysWithoutDays : chanceWithShift(pair);
}

stats::Outlay outlayOf(const WorthOfMethod& worth) {
    return {.upFront = worth.upFront,
            .perBatch = worth.perBatch,
            .trialsPerBatch = worth.cuttingsPerBatch,
            .rates = worth.rates};
}

void fillBreakEven(double level, WorthOfPair& pair) {
    if (pair.dear.upFront == pair.cheap.upFront) return;
    const bool isDearEquipped = pair.dear.upFront > pair.cheap.upFront;
    const WorthOfMethod& equipped = isDearEquipped ? pair.dear : pair.cheap;
    const WorthOfMethod& other = isDearEquipped ? pair.cheap : pair.dear;
    const stats::BreakEven even = stats::breakEven(outlayOf(equipped), outlayOf(other), 1, level);
    pair.breakEven = BreakEvenBatches{.method = equipped.method,
                                      .name = equipped.name,
                                      .chanceEver = even.chanceEver,
                                      .low = even.low,
                                      .middle = even.middle,
                                      .high = even.high};
}

void fillTies(WorthOfPair& pair) {
    const double cheapRate = pair.cheap.strike.rate;
    if (cheapRate <= 0) return;
    pair.dearStrikeToTie = pair.line.dearRateFor(cheapRate);
    const double ofEach = pair.line.cheap / cheapRate + pair.line.shift;
    if (!(ofEach > 0)) return;
    pair.dearCostToTie = pair.dear.strike.rate * ofEach;
    const double ofOwnThings = pair.line.dear - pair.dear.perBatch / pair.dear.cuttingsPerBatch;
    if (pair.dear.upFront <= 0 || ofOwnThings <= 0) return;
    const double left = ofOwnThings + *pair.dearCostToTie - pair.line.dear;
    if (left >= 0) pair.upFrontToTie = pair.dear.upFront * left / ofOwnThings;
}

WorthVerdict worthVerdictOf(const WorthOfPair& pair, double needed) {
    constexpr int fewestBatches = 3, fewestCuttings = 5;
    if (pair.dear.perCutting.total() <= 0 || pair.cheap.perCutting.total() <= 0) return WorthVerdict::NothingPriced;
    if (pair.plants.empty()) return WorthVerdict::TooFew;
    if (!pair.whyNotTold.empty()) return WorthVerdict::CannotTellMethodFromStation;
    if (std::min(pair.dear.strike.batches, pair.cheap.strike.batches) < fewestBatches ||
        std::min(pair.dear.strike.of, pair.cheap.strike.of) < fewestCuttings)
        return WorthVerdict::TooFew;
    if (pair.chanceDearPays >= needed) return WorthVerdict::DearerPays;
    if (pair.chanceDearPays > 1 - needed) return WorthVerdict::CannotTellYet;
    const bool hasNothingForIt = pair.chanceDearRootsMore <= 1 - needed && pair.line.shift <= 0;
    return hasNothingForIt ? WorthVerdict::BetterAndCheaper : WorthVerdict::CheaperPays;
}

struct LogRate {
    double mean{};
    double variance{};
};

LogRate logRateOf(std::span<const stats::RatePoint> law) {
    double mean = 0, square = 0;
    for (const stats::RatePoint& point : law) {
        const double logarithm = std::log(point.rate);
        mean += point.weight * logarithm;
        square += point.weight * logarithm * logarithm;
    }
    return {.mean = mean, .variance = std::max(0.0, square - mean * mean)};
}

ArmRecords armRecordsOf(const std::string& name, std::span<const WorthCell* const> cells) {
    ArmRecords arm;
    arm.arm.name = name;
    for (const WorthCell* cell : cells)
        arm.courses.insert(arm.courses.end(), cell->courses.begin(), cell->courses.end());
    return arm;
}

void fillDays(const SharedPlants& shared, bool isFirstDear, const PairToWeigh& question, WorthOfPair& pair) {
    const DaysSaved saved = isFirstDear ? daysSaved(shared.first, shared.second, shared.shares)
                                        : daysSaved(shared.second, shared.first, shared.shares);
    pair.daysSaved = saved.days;
    pair.daysSavedLimits = saved.limits;
    pair.worthOfADay = question.worthOfADay;
    pair.line = {.dear = pair.dear.perCutting.total(),
                 .cheap = pair.cheap.perCutting.total(),
                 .shift = saved.days.value_or(0) * question.worthOfADay.value_or(0)};
}

}  // namespace

double chanceThatSettles(double level, int pairs) {
    constexpr double leastLevel = 0.9;
    return 1 - (1 - std::max(level, leastLevel)) / (2 * std::max(1, pairs));
}

std::optional<int> moreCuttingsToTell(const WorthOfPair& pair, double chance) {
    constexpr int beyondReach = 2000;
    const LogRate dear = logRateOf(pair.dear.rates), cheap = logRateOf(pair.cheap.rates);
    const double cheapCost = pair.line.cheap / std::exp(cheap.mean), ofEach = cheapCost + pair.line.shift;
    if (!(ofEach > 0)) return {};
    const double apart = std::abs(std::log(pair.line.dear) - dear.mean - std::log(ofEach));
    const double errors = stats::normalQuantile(chance) + stats::normalQuantile(0.8);
    const double slope = cheapCost / ofEach;
    const auto tells = [&](int more) {
        const double variance = dear.variance * pair.dear.strike.of / (pair.dear.strike.of + more) +
                                slope * slope * cheap.variance * pair.cheap.strike.of / (pair.cheap.strike.of + more);
        return apart >= errors * std::sqrt(variance);
    };
    if (!tells(beyondReach)) return {};
    int low = 0, high = beyondReach;  // high tells
    while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        (tells(middle) ? high : low) = middle;
    }
    return high;
}

WorthOfPair worthOfPair(const PairToWeigh& question, const WorthSettings& settings) {
    const SharedPlants shared = sharedPlants(question);
    const Shelves& shelves = settings.records.shelves;
    WorthOfPair pair;
    if (shared.plants.empty()) {
        pair.dear = whatThereIs(question.first, question, settings);
        pair.cheap = whatThereIs(question.second, question, settings);
    } else {
        pair.dear = worthOfMix(shared.first, shared.shares, settings);
        pair.cheap = worthOfMix(shared.second, shared.shares, settings);
    }
    pair.plants = namesOf(shared.plants, shelves);
    pair.leftOut = namesOf(shared.leftOut, shelves);
    const auto dearness = [](const WorthOfMethod& worth) {
        return std::pair(worth.perCutting.total(), -worth.strike.rate);  // at the same cost, the one that roots fewer
    };
    const bool isFirstDear = dearness(pair.dear) >= dearness(pair.cheap);
    if (!isFirstDear) std::swap(pair.dear, pair.cheap);
    nameMethod(shelves, pair.dear);
    nameMethod(shelves, pair.cheap);
    fillDays(shared, isFirstDear, question, pair);
    const double needed = chanceThatSettles(settings.level, question.pairs);
    if (!shared.plants.empty()) {
        fillChances(pair);
        fillBreakEven(settings.level, pair);
        fillTies(pair);
        pair.whyNotTold =
            whyNotTold(armRecordsOf(pair.dear.name, isFirstDear ? shared.first : shared.second),
                       armRecordsOf(pair.cheap.name, isFirstDear ? shared.second : shared.first), Factor::Method);
    }
    pair.verdict = worthVerdictOf(pair, needed);
    if (pair.verdict == WorthVerdict::CannotTellYet) pair.moreCuttings = moreCuttingsToTell(pair, needed);
    return pair;
}

}  // namespace core
