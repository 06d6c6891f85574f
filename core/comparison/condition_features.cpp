// SPDX-License-Identifier: MIT
#include "core/comparison/condition_features.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/climate/lived_through.h"

namespace core {

namespace {

/// How a condition is called, and how much of it one step is: an odds ratio of a tiny step says nothing to anybody.
struct Measure {
    ClimateQuantity quantity;
    const char* name;
    const char* step;
    double size;
};

constexpr std::array measures{
    Measure{ClimateQuantity::SolutionTemperature, "solution temperature", "each C warmer", 1},
    Measure{ClimateQuantity::SolutionEc, "solution EC", "each 0.1 mS/cm more", 0.1},
    Measure{ClimateQuantity::SolutionPh, "solution pH", "each 0.1 more", 0.1},
    Measure{ClimateQuantity::VapourDeficit, "vapour pressure deficit", "each 0.1 kPa more", 0.1},
    Measure{ClimateQuantity::MediumTemperature, "medium temperature", "each C warmer", 1},
    Measure{ClimateQuantity::AirTemperature, "air temperature", "each C warmer", 1},
};
constexpr const char* outsideName = "time outside the bands before roots";
constexpr const char* outsideStep = "each tenth of it more";

constexpr double fewestCovered = 0.1;
constexpr int fewestReadings = 3;
constexpr double fewestHours = 24;
constexpr int fewestWith = 2;

/// One batch's figures: the measures, then the share of time outside; not a number where not on record.
using Figures = std::array<double, measures.size() + 1>;

bool isOnRecord(const LivedFigures& figures) {
    return figures.covered() >= fewestCovered || figures.readings >= fewestReadings;
}

Figures figuresOf(const BatchRecord& record, const ConditionsOnRecord& conditions, const Shelves& shelves, int days) {
    Figures figures;
    figures.fill(NAN);
    const auto climate = conditions.climates.find(record.batch.station);
    if (climate == conditions.climates.end()) return figures;
    const Date stuckOn = record.batch.stuckOn;
    const Moment from = conditions.dayStart(stuckOn), to = conditions.dayStart(addDays(stuckOn, days));
    double outside = 0, known = 0;
    for (const auto& [quantity, values] : climate->second) {
        // One yardstick for all: by the band of its stage a batch would be judged by whether it rooted.
        const auto band = bandFor(shelves, record.batch.plant, Stage::BeforeRoots, quantity);
        BandsInTime bands;
        if (band) bands.pieces.push_back({from, band->band});
        const auto lived = figuresOver(values, quantity, bands, from, to, shelves.facts.degreeDayBase);
        if (!lived) continue;
        outside += lived->hoursOutside();
        known += lived->hoursWithBand;
        for (std::size_t i = 0; i < measures.size(); ++i)
            if (measures[i].quantity == quantity && isOnRecord(*lived)) figures[i] = lived->mean;
    }
    if (known >= fewestHours) figures.back() = outside / known;
    return figures;
}

std::optional<ConditionFeature> featureFrom(std::vector<double> values, const char* name, const char* step, double size,
                                            int days) {
    ConditionFeature condition;
    condition.name = name;
    double sum = 0, low = HUGE_VAL, high = -HUGE_VAL;
    for (const double value : values) {
        condition.notOnRecord.push_back(std::isnan(value) ? 1 : 0);
        if (std::isnan(value)) continue;
        ++condition.onRecord;
        sum += value;
        low = std::min(low, value), high = std::max(high, value);
    }
    if (condition.onRecord < fewestWith || !(low < high)) return {};
    for (double& value : values) value = std::isnan(value) ? 0 : (value - sum / condition.onRecord) / size;
    condition.feature = {.name = std::string(name) + " of the first " + std::to_string(days) + " days, " + step,
                         .isPlant = false,
                         .values = std::move(values),
                         .batches = condition.onRecord};
    return condition;
}

}  // namespace

std::vector<ConditionFeature> conditionFeaturesOf(const ConditionsOnRecord& conditions, const Shelves& shelves,
                                                  std::span<const BatchRecord* const> batches, int horizonDay) {
    std::vector<ConditionFeature> features;
    const int days = std::min(conditionDays, horizonDay);
    if (conditions.climates.empty() || days < 1) return features;
    std::array<std::vector<double>, measures.size() + 1> columns;
    for (const BatchRecord* record : batches) {
        const Figures figures = figuresOf(*record, conditions, shelves, days);
        for (std::size_t i = 0; i < figures.size(); ++i) columns[i].push_back(figures[i]);
    }
    const auto add = [&](std::vector<double>& column, const char* name, const char* step, double size) {
        if (auto feature = featureFrom(std::move(column), name, step, size, days))
            features.push_back(std::move(*feature));
    };
    for (std::size_t i = 0; i < measures.size(); ++i)
        add(columns[i], measures[i].name, measures[i].step, measures[i].size);
    constexpr double tenth = 0.1;
    add(columns.back(), outsideName, outsideStep, tenth);
    return features;
}

}  // namespace core
