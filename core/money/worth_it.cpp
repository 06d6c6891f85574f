// SPDX-License-Identifier: MIT
#include "core/money/worth_it.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "core/comparison/comparison.h"
#include "core/comparison/spread.h"
#include "core/money/costing.h"
#include "core/money/worth_cell.h"
#include "core/money/worth_of_pair.h"
#include "core/money/worth_words.h"
#include "core/units/figure_text.h"

namespace core {
namespace {

Refusals faultsInWorth(const WorthQuestion& question, int horizonDay, double level) {
    Refusals faults;
    const auto refuse = [&faults](const std::string& field, const std::string& value, const std::string& allowed) {
        faults.push_back({.field = field,
                          .value = value,
                          .allowed = allowed,
                          .sentence = field + " is " + value + "; " + allowed + " is allowed."});
    };
    if (horizonDay < 1) refuse("At day", std::to_string(horizonDay), "1 or more");
    if (!(level > 0 && level < 1)) refuse("Level", figureText(level), "a number between 0 and 1, such as 0.95,");
    if (question.from && question.to && *question.to < *question.from)
        refuse("To", isoText(*question.to), isoText(*question.from) + " or later");
    constexpr double mostOfADay = 1e6;
    if (question.worthOfADay && !(*question.worthOfADay >= 0 && *question.worthOfADay <= mostOfADay))
        refuse("Worth of a day", figureText(*question.worthOfADay), "0 to 1000000");
    return faults;
}

std::optional<double> worthOfADayIn(const WorthQuestion& question, const WorthRecords& records) {
    if (question.worthOfADay) return question.worthOfADay;
    for (const Price& price : records.shelves.prices)
        if (price.kind == PriceKind::DaySooner && holdsOn(records.today, price, records.shelves.prices))
            return amountOf(price);
    return {};
}

void setNames(const Shelves& shelves, WorthOfMethod& worth) {
    const Method* method = find(shelves.methods, worth.method);
    worth.name = method == nullptr ? "not recorded" : method->name;
    if (!worth.plant.isSet()) return;
    const Plant* plant = find(shelves.plants, worth.plant);
    worth.plantName = plant == nullptr ? "not recorded" : fullName(*plant);
}

void fillMethods(std::span<const WorthCell> cells, const WorthSettings& settings, Worth& worth) {
    std::map<MethodId, std::vector<const WorthCell*>> byMethod;
    for (const WorthCell& cell : cells) byMethod[cell.method].push_back(&cell);
    for (const auto& [method, own] : byMethod) {
        worth.methods.push_back(worthOfMix(own, {}, settings));
        setNames(settings.records.shelves, worth.methods.back());
    }
    std::ranges::sort(worth.methods, {}, [](const WorthOfMethod& method) {
        return std::tuple(-method.stuck, std::string_view(method.name), method.method);
    });
}

void fillByPlant(std::span<const WorthCell> cells, const WorthSettings& settings, Worth& worth) {
    for (const WorthCell& cell : cells) {
        const WorthCell* const only = &cell;
        worth.byPlant.push_back(worthOfMix({&only, 1}, {}, settings));
        worth.byPlant.back().plant = cell.plant;
        setNames(settings.records.shelves, worth.byPlant.back());
    }
    const auto placeOf = [&worth](MethodId method) {
        return std::ranges::find(worth.methods, method, &WorthOfMethod::method) - worth.methods.begin();
    };
    std::ranges::sort(worth.byPlant, {}, [&placeOf](const WorthOfMethod& row) {
        return std::tuple(std::string_view(row.plantName), row.plant, placeOf(row.method));
    });
}

void fillPairs(std::span<const WorthCell> cells, std::optional<double> worthOfADay, const WorthSettings& settings,
               const std::stop_token& stop, Worth& worth) {
    const std::size_t count = worth.methods.size();
    PairToWeigh question{.cells = cells, .worthOfADay = worthOfADay};
    question.pairs = static_cast<int>(count * (count - 1) / 2);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = i + 1; j < count && !stop.stop_requested(); ++j) {
            question.first = worth.methods[i].method;
            question.second = worth.methods[j].method;
            WorthOfPair pair = worthOfPair(question, settings);
            pair.inWords = pairInWords(pair, worth, settings.records.shelves.facts.currency);
            worth.pairs.push_back(std::move(pair));
        }
    }
}

bool isShown(const StoodEmpty& empty, const Worth& worth, const Shelves& shelves) {
    const Station* station = find(shelves.stations, empty.station);
    const MethodId method = station == nullptr ? empty.method : station->method;
    return !method.isSet() || std::ranges::find(worth.methods, method, &WorthOfMethod::method) != worth.methods.end();
}

void fillFromCosts(const WorthQuestion& question, const WorthSettings& settings, std::span<const WorthCell> cells,
                   Worth& worth) {
    const CostsOfBatches& costs = settings.records.costs;
    for (const StoodEmpty& empty : costs.stoodEmpty)
        if (!question.plant.isSet() && isShown(empty, worth, settings.records.shelves))
            worth.stoodEmpty.push_back(empty);
    std::set<std::size_t> missing;
    for (const WorthCell& cell : cells)
        for (const Course& course : cell.courses)
            if (const CostOfBatch* cost = costs.of(course.record->batch.id))
                missing.insert(cost->missing.begin(), cost->missing.end());
    for (const std::size_t place : missing) worth.missing.push_back(costs.missing[place]);
}

}  // namespace

Result<Worth> worthIt(const WorthQuestion& question, const WorthRecords& records, const std::stop_token& stop) {
    const Horizon horizon =
        horizonFor({.plant = question.plant, .horizonDay = question.horizonDay}, records.shelves, records.batches);
    const double level = question.level.value_or(records.shelves.facts.level);
    if (Refusals faults = faultsInWorth(question, horizon.day, level); !faults.empty())
        return refused(std::move(faults));
    const WorthSettings settings{.records = records,
                                 .horizonDay = horizon.day,
                                 .level = level,
                                 .spread = pooledSpreadOf(records.batches, horizon.day, level)};
    Worth worth{.question = question,
                .horizonDay = horizon.day,
                .horizonReason = horizon.reason,
                .level = level,
                .correlation = settings.spread.correlation,
                .isSpreadFromRecords = settings.spread.basis == stats::SpreadBasis::RecordsAndPrior};
    for (const stats::WeightedCorrelation& each : settings.spread.law) worth.correlations.push_back(each.correlation);
    std::vector<WorthCell> cells = worthCells(question, settings);
    fillDays(question, level, stop, cells);
    if (stop.stop_requested()) return worth;
    fillMethods(cells, settings, worth);
    if (!question.plant.isSet()) fillByPlant(cells, settings, worth);
    fillPairs(cells, worthOfADayIn(question, records), settings, stop, worth);
    fillFromCosts(question, settings, cells, worth);
    worth.cautions = worthCautions(worth, records.shelves.facts);
    worth.inWords = worthInWords(worth, records.shelves.facts.currency);
    return worth;
}

}  // namespace core
