// SPDX-License-Identifier: MIT
#include "core/money/worth_cell.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <unordered_map>

#include "core/comparison/days_to_root.h"
#include "core/money/costing.h"
#include "core/money/rate_of_mix.h"
#include "core/planning/past_records.h"
#include "stats/overdispersion/rate_law.h"

namespace core {
namespace {

bool isAskedFor(const WorthQuestion& question, const Batch& batch) {
    if (question.plant.isSet() && batch.plant != question.plant) return false;
    if (!question.methods.empty() && std::ranges::find(question.methods, batch.method) == question.methods.end())
        return false;
    return (!question.from || *question.from <= batch.stuckOn) && (!question.to || batch.stuckOn <= *question.to);
}

using PottingsOf = std::unordered_map<BatchId, std::vector<Potting>>;

PottingsOf pottingsByBatch(std::span<const Potting> pottings) {
    PottingsOf byBatch;
    for (const Potting& potting : pottings) byBatch[potting.batch].push_back(potting);
    return byBatch;
}

void takeInWatched(Course course, const CostOfBatch* cost, const PottingsOf& pottings, WorthCell& cell) {
    const int stuck = course.stuck();
    const bool isPriced = cost != nullptr && cost->parts.total() > 0;
    cell.trays.push_back({.successes = course.fate.rooted, .trials = course.fate.assessed});
    if (isPriced) {
        ++cell.pricedBatches;
        cell.pricedStuck += stuck;
        cell.costs += cost->parts;
        cell.ofOwnThings += cost->ofOwnThings;
    } else
        ++cell.unpriced;
    if (const auto counted = pottings.find(course.record->batch.id); counted != pottings.end()) {
        const int usable = std::clamp(pottedTallyOf(counted->second).usable(), 0, stuck);
        cell.usable.push_back({.successes = usable, .trials = stuck});
        if (isPriced) cell.usablePricedStuck += stuck;
        if (isPriced) cell.usableCosts += cost->parts.total();
    }
    cell.courses.push_back(std::move(course));
}

void takeIn(const BatchRecord& record, const WorthSettings& settings, const PottingsOf& pottings, WorthCell& cell) {
    const Batch& batch = record.batch;
    cell.method = batch.method;
    cell.plant = batch.plant;
    ++cell.batches;
    cell.stuck += batch.stuck;
    if (batch.station.isSet() && std::ranges::find(cell.stations, batch.station) == cell.stations.end())
        cell.stations.push_back(batch.station);
    Course course = courseOf(record, settings.horizonDay);
    if (isWatchedToTheEnd(course, settings.horizonDay))
        return takeInWatched(std::move(course), settings.records.costs.of(batch.id), pottings, cell);
    const bool isYoung = daysBetween(batch.stuckOn, settings.records.today) < settings.horizonDay;
    ++(isYoung && !batch.closedOn ? cell.running : cell.unwatched);
}

Limits heldBy(stats::Interval interval, double rate) {
    return {.low = std::min(interval.low, rate), .high = std::max(interval.high, rate)};
}

using Batches = std::vector<stats::Tray> WorthCell::*;

/// Plants of which none was tried have no part in the rate.
std::vector<MixedPlant> mixOf(std::span<const WorthCell* const> cells, Batches batches,
                              std::span<const double> shares) {
    std::vector<MixedPlant> plants;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        int trials = 0;
        for (const stats::Tray& tray : cells[i]->*batches) trials += tray.trials;
        plants.push_back({.batches = cells[i]->*batches, .share = shares.empty() ? trials : shares[i]});
    }
    return plants;
}

/// Of the mix; with none counted, nothing of it.
CountedRate countedRate(std::span<const MixedPlant> plants, const WorthSettings& settings,
                        std::vector<stats::RatePoint>& law) {
    CountedRate rate{.limits = {.low = 0, .high = 1}};
    for (const MixedPlant& plant : plants)
        for (const stats::Tray& tray : plant.batches) {
            ++rate.batches;
            rate.of += tray.trials;
            rate.succeeded += tray.successes;
        }
    if (rate.of == 0) return rate;
    rate.rate = rateOfMixAsCounted(plants);
    law = rateOfMix(plants, settings.spread.law);
    rate.limits = heldBy(stats::RateLaw("countedRate", law).interval(settings.level), rate.rate);
    return rate;
}

/// `cost` of each that was tried.
CostOfEach costOfEach(double cost, const CountedRate& rate) {
    CostOfEach each;
    each.limits.low = cost / rate.limits.high;
    each.limits.high = rate.limits.low > 0 ? cost / rate.limits.low : std::numeric_limits<double>::infinity();
    if (rate.rate > 0) each.value = cost / rate.rate;
    return each;
}

/// What its things that last for years cost now.
double upFrontOf(MethodId method, const WorthRecords& records) {
    const std::vector<Price>& prices = records.shelves.prices;
    double sum = 0;
    for (const Price& price : prices) {
        if (!isOwnThing(price) || !holdsOn(records.today, price, prices)) continue;
        const Station* station = find(records.shelves.stations, price.station);
        const bool isOfItsStation = station != nullptr && station->method == method && !station->isRetired;
        if (price.method == method || isOfItsStation) sum += amountOf(price);
    }
    return sum;
}

void fillCosts(std::span<const WorthCell* const> cells, std::span<const double> shares, const WorthRecords& records,
               WorthOfMethod& worth) {
    double sum = 0, ofOwnThings = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const WorthCell& cell = *cells[i];
        worth.pricedBatches += cell.pricedBatches;
        worth.pricedStuck += cell.pricedStuck;
        if (cell.pricedStuck == 0) continue;
        const double share = shares.empty() ? cell.pricedStuck : shares[i];
        sum += share;
        worth.perCutting += cell.costs.times(share / cell.pricedStuck);
        ofOwnThings += cell.ofOwnThings * share / cell.pricedStuck;
    }
    worth.upFront = upFrontOf(worth.method, records);
    if (sum <= 0) return;
    worth.perCutting = worth.perCutting.times(1 / sum);
    worth.cuttingsPerBatch = static_cast<double>(worth.pricedStuck) / worth.pricedBatches;
    worth.perBatch = std::max(0.0, worth.perCutting.total() - ofOwnThings / sum) * worth.cuttingsPerBatch;
    if (!worth.rates.empty()) worth.perRooted = costOfEach(worth.perCutting.total(), worth.strike);
}

void fillUsable(std::span<const WorthCell* const> cells, std::span<const double> shares, const WorthSettings& settings,
                WorthOfMethod& worth) {
    std::vector<stats::RatePoint> law;
    const CountedRate usable = countedRate(mixOf(cells, &WorthCell::usable, shares), settings, law);
    if (usable.of == 0) return;
    worth.usable = usable;
    double cost = 0, sum = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (cells[i]->usablePricedStuck == 0) continue;
        const double share = shares.empty() ? cells[i]->usablePricedStuck : shares[i];
        cost += share * cells[i]->usableCosts / cells[i]->usablePricedStuck;
        sum += share;
    }
    if (sum > 0) worth.perUsable = costOfEach(cost / sum, usable);
}

/// A mean over cells by shares, with limits by squaring and adding.
struct MeanDays {
    double sum{};
    double after{}, by{};
    double below{}, above{};  // squares
    bool haveAllLimits{true};

    void add(double share, const DayRange& median, const std::optional<Limits>& limits) {
        sum += share;
        after += share * median.after;
        by += share * median.by;
        const double middle = (median.after + median.by) / 2;
        haveAllLimits = haveAllLimits && limits;
        if (!limits) return;
        below += std::pow(share * (middle - limits->low), 2);
        above += std::pow(share * (limits->high - middle), 2);
    }
    [[nodiscard]] DayRange median() const { return {.after = after / sum, .by = by / sum}; }
    [[nodiscard]] double middle() const { return (after + by) / (2 * sum); }
    [[nodiscard]] Limits limits() const {
        return {.low = middle() - std::sqrt(below) / sum, .high = middle() + std::sqrt(above) / sum};
    }
};

}  // namespace

std::vector<WorthCell> worthCells(const WorthQuestion& question, const WorthSettings& settings) {
    const PottingsOf pottings = pottingsByBatch(settings.records.pottings);
    std::map<std::pair<PlantId, MethodId>, WorthCell> cells;
    for (const BatchRecord& record : settings.records.batches)
        if (isAskedFor(question, record.batch))
            takeIn(record, settings, pottings, cells[{record.batch.plant, record.batch.method}]);
    std::vector<WorthCell> result;
    for (auto& [key, cell] : cells) result.push_back(std::move(cell));
    return result;
}

void fillDays(const WorthQuestion& question, double level, const std::stop_token& stop, std::vector<WorthCell>& cells) {
    double steps = 0;
    for (const WorthCell& cell : cells) steps += stepsPerEstimate(cell.courses);
    const int replicates = affordable(question.bootstrapReplicates, steps);
    for (std::size_t i = 0; i < cells.size() && !stop.stop_requested(); ++i) {
        std::optional<Resampling> resampling;
        if (replicates > 0)
            resampling = {.level = level, .replicates = replicates, .seed = std::uint64_t{question.seed} + 1000 * i};
        const RootingCurves curves = rootingCurves(cells[i].courses, resampling, stop);
        cells[i].medianDays = curves.ofRooted.p50;
        cells[i].medianDaysLimits = curves.ofRooted.p50Interval;
    }
}

WorthOfMethod worthOfMix(std::span<const WorthCell* const> cells, std::span<const double> shares,
                         const WorthSettings& settings) {
    WorthOfMethod worth{.method = cells.front()->method};
    std::vector<StationId> stations;
    MeanDays days;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const WorthCell& cell = *cells[i];
        worth.batches += cell.batches;
        worth.stuck += cell.stuck;
        worth.running += cell.running;
        worth.unwatched += cell.unwatched;
        worth.unpriced += cell.unpriced;
        for (const StationId station : cell.stations)
            if (std::ranges::find(stations, station) == stations.end()) stations.push_back(station);
        if (cell.medianDays) days.add(shares.empty() ? cell.stuck : shares[i], *cell.medianDays, cell.medianDaysLimits);
    }
    worth.stations = static_cast<int>(stations.size());
    worth.mix = mixOf(cells, &WorthCell::trays, shares);
    worth.strike = countedRate(worth.mix, settings, worth.rates);
    fillCosts(cells, shares, settings.records, worth);
    fillUsable(cells, shares, settings, worth);
    if (days.sum > 0) worth.medianDays = days.median();
    if (days.sum > 0 && days.haveAllLimits) worth.medianDaysLimits = days.limits();
    return worth;
}

DaysSaved daysSaved(std::span<const WorthCell* const> first, std::span<const WorthCell* const> second,
                    std::span<const double> shares) {
    MeanDays one, other;
    for (std::size_t i = 0; i < first.size(); ++i) {
        if (!first[i]->medianDays || !second[i]->medianDays) continue;
        one.add(shares[i], *first[i]->medianDays, first[i]->medianDaysLimits);
        other.add(shares[i], *second[i]->medianDays, second[i]->medianDaysLimits);
    }
    if (one.sum <= 0) return {};
    DaysSaved saved{.days = other.middle() - one.middle()};
    if (one.haveAllLimits && other.haveAllLimits)
        saved.limits = Limits{.low = *saved.days - std::sqrt(other.below + one.above) / one.sum,
                              .high = *saved.days + std::sqrt(other.above + one.below) / one.sum};
    return saved;
}

}  // namespace core
