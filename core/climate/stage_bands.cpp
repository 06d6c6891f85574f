// SPDX-License-Identifier: MIT
#include "core/climate/stage_bands.h"

#include <algorithm>
#include <array>

#include "core/climate/dissolved_oxygen.h"
#include "core/climate/own_band_rules.h"

namespace core {

namespace {

using enum BandQuantity;

constexpr std::string_view bandPractice = "common practice, no source";
constexpr std::string_view growersSource = "the grower's own band";
constexpr std::string_view deficitBeforeRoots =
    "Owen, Michigan State University Extension, on moisture during vegetative cutting propagation: keep it low; about "
    "0.3 kPa from memory";
constexpr std::string_view deficitFilling =
    "LeBude et al. (2005) HortScience 40:1448-1456, abstract: 0.60 to 0.85 kPa at midday gave at least 80 % in pine; "
    "the rest common practice";
constexpr std::string_view humidityBeforeRoots =
    "common practice; above 95 for a camellia: Tran Van Do et al. (2020) Journal of Applied Horticulture 22:159-163, "
    "abstract";
constexpr std::string_view temperatureAdvice =
    "extension advice on temperatures of cuttings, at second hand: root zone 22 to 25, air 20 to 23, or 25 to 27 "
    "without bottom heat";
constexpr std::string_view temperatureAdviceOn =
    "extension advice on temperatures of cuttings before roots, at second hand; that it holds on while the first roots "
    "come is common practice";
constexpr std::string_view poinsettiaAir =
    "Runkle, Michigan State University, trade article on propagating poinsettias: days 26 to 28, nights 22 to 24, "
    "first two weeks";
constexpr std::string_view poinsettiaLight =
    "Runkle, Michigan State University, trade article on propagating poinsettias: ceiling of a greenhouse in summer; "
    "too strong for most cuttings under a lamp";
constexpr std::string_view carnationRoots =
    "Cheever (1967) Rooting of carnation cuttings, thesis, Colorado State University, abstract: 16 was 8 days slower "
    "than 21 or 27";
constexpr std::string_view lightBeforeRoots =
    "extension limits for the first days, at second hand: up to 100 to 150 or 120 to 200; 60 for 16 hours was enough "
    "for sage and gaura (Owen and Lopez 2019, HortScience 54:684, abstract)";
constexpr std::string_view lightFilling =
    "worked out from 8 to 12 mol/m2 over 16 hours: Currey et al. (2012) HortScience 47:25-30, in a news summary";
constexpr std::string_view dailyLightBeforeRoots =
    "Currey and Lopez (2015) Journal of the American Society for Horticultural Science 140, abstract: trials held "
    "about "
    "5 for the first 7 days; 1 to 4 delays roots";
constexpr std::string_view dailyLightFilling =
    "Currey et al. (2012) HortScience 47:25-30, in a news summary: 8 to 10 best; gain up to 12 in most of 33 crops "
    "(Hurt and Lopez 2017, trade magazine)";
constexpr std::string_view dailyLightHardening =
    "Currey and Lopez (2015) Journal of the American Society for Horticultural Science 140, abstract: still gaining at "
    "13 to 14; the rest common practice";
constexpr std::string_view oxygenPractice =
    "common practice, no source: 5 mg/L is the usual low warning, more does no harm; slower and fewer roots as it fell "
    "from 8 to 0 mg/L (Soffer and Burger 1988, Journal of the American Society for Horticultural Science 113:218-221, "
    "abstract)";

constexpr double anyOxygen = 50;  // factsOf(DissolvedOxygen).high: no upper end
constexpr std::string_view poinsettia = "Euphorbia pulcherrima";
constexpr std::string_view carnation = "Dianthus caryophyllus";

constexpr auto allTradeBands = [] {
    using enum Stage;
    return std::to_array<TradeBand>({
        {BeforeRoots, SolutionEc, {}, {0, 0.5, bandPractice}},
        {FirstRoots, SolutionEc, {}, {0.5, 1.0, bandPractice}},
        {FillingRoots, SolutionEc, {}, {0.5, 1.0, bandPractice}},
        {Hardening, SolutionEc, {}, {0.5, 1.0, bandPractice}},
        {BeforeRoots, SolutionPh, {}, {5.6, 6.2, bandPractice}},
        {FirstRoots, SolutionPh, {}, {5.6, 6.2, bandPractice}},
        {FillingRoots, SolutionPh, {}, {5.6, 6.2, bandPractice}},
        {Hardening, SolutionPh, {}, {5.6, 6.2, bandPractice}},
        {BeforeRoots, SolutionTemperature, {}, {18, 24, bandPractice}},
        {FirstRoots, SolutionTemperature, {}, {18, 24, bandPractice}},
        {FillingRoots, SolutionTemperature, {}, {18, 24, bandPractice}},
        {Hardening, SolutionTemperature, {}, {18, 24, bandPractice}},
        {BeforeRoots, DissolvedOxygen, {}, {5, anyOxygen, oxygenPractice}},
        {FirstRoots, DissolvedOxygen, {}, {5, anyOxygen, oxygenPractice}},
        {FillingRoots, DissolvedOxygen, {}, {5, anyOxygen, oxygenPractice}},
        {Hardening, DissolvedOxygen, {}, {5, anyOxygen, oxygenPractice}},
        {BeforeRoots, MediumTemperature, {}, {22, 25, temperatureAdvice}},
        {FirstRoots, MediumTemperature, {}, {22, 25, temperatureAdviceOn}},
        {FillingRoots, MediumTemperature, {}, {20, 24, bandPractice}},
        {BeforeRoots, MediumTemperature, carnation, {21, 27, carnationRoots}},
        {FirstRoots, MediumTemperature, carnation, {21, 27, carnationRoots}},
        {FillingRoots, MediumTemperature, carnation, {21, 27, carnationRoots}},
        {Hardening, MediumTemperature, carnation, {21, 27, carnationRoots}},
        {BeforeRoots, AirTemperature, {}, {20, 27, temperatureAdvice}},
        {FirstRoots, AirTemperature, {}, {20, 27, temperatureAdviceOn}},
        {Hardening, AirTemperature, {}, {15, 20, bandPractice}},
        {BeforeRoots, AirTemperature, poinsettia, {26, 28, poinsettiaAir}},
        {BeforeRoots, RelativeHumidity, {}, {90, 100, humidityBeforeRoots}},
        {FirstRoots, RelativeHumidity, {}, {80, 95, bandPractice}},
        {Hardening, RelativeHumidity, {}, {50, 75, bandPractice}},
        {BeforeRoots, Light, {}, {60, 150, lightBeforeRoots}},
        {FillingRoots, Light, {}, {140, 210, lightFilling}},
        {BeforeRoots, Light, poinsettia, {200, 300, poinsettiaLight}},
        {BeforeRoots, VapourDeficit, {}, {0.1, 0.4, deficitBeforeRoots}},
        {FirstRoots, VapourDeficit, {}, {0.3, 0.6, bandPractice}},
        {FillingRoots, VapourDeficit, {}, {0.5, 0.85, deficitFilling}},
        {Hardening, VapourDeficit, {}, {0.7, 1.2, bandPractice}},
        {BeforeRoots, DailyLight, {}, {4, 6, dailyLightBeforeRoots}},
        {FillingRoots, DailyLight, {}, {8, 12, dailyLightFilling}},
        {Hardening, DailyLight, {}, {10, 14, dailyLightHardening}},
    });
}();

/// "Dianthus caryophyllus" and whatever stands below it.
bool isOf(const Plant& plant, std::string_view botanicalName) {
    const std::string_view name = plant.botanicalName;
    return name.starts_with(botanicalName) &&
           (name.size() == botanicalName.size() || name[botanicalName.size()] == ' ');
}

StageBand ownStageBand(const OwnBand& own, BandOwner owner) {
    const QuantityFacts& facts = factsOf(own.quantity);
    return {
        .stage = own.stage,
        .quantity = climateQuantityOf(own.quantity),
        .owner = owner,
        .band = {.low = own.low.value_or(facts.low), .high = own.high.value_or(facts.high), .source = growersSource},
        .note = own.note};
}

StageBand tradeStageBand(const TradeBand& trade) {
    return {.stage = trade.stage,
            .quantity = climateQuantityOf(trade.quantity),
            .owner = trade.botanicalName.empty() ? BandOwner::Trade : BandOwner::TradeForPlant,
            .band = trade.band,
            .note = {}};
}

}  // namespace

std::span<const TradeBand> tradeBands() {
    return allTradeBands;
}

std::optional<StageBand> tradeBandFor(const Shelves& shelves, PlantId plantId, Stage stage, ClimateQuantity quantity) {
    if (quantity == ClimateQuantity::OxygenSaturation)
        return StageBand{.stage = stage,
                         .quantity = quantity,
                         .owner = BandOwner::Trade,
                         .band = {.low = goodOxygenPercent, .high = factsOf(quantity).high, .source = bandPractice},
                         .note = {}};
    const auto kept = bandQuantityOf(quantity);
    if (!kept) return {};
    const Plant* plant = plantId.isSet() ? find(shelves.plants, plantId) : nullptr;
    std::optional<StageBand> found;
    for (const TradeBand& trade : allTradeBands) {
        if (trade.stage != stage || trade.quantity != *kept) continue;
        if (trade.botanicalName.empty() ? found.has_value() : plant == nullptr || !isOf(*plant, trade.botanicalName))
            continue;
        found = tradeStageBand(trade);
    }
    return found;
}

std::optional<StageBand> bandFor(const Shelves& shelves, PlantId plant, Stage stage, ClimateQuantity quantity) {
    if (const auto kept = bandQuantityOf(quantity)) {
        if (plant.isSet())
            if (const OwnBand* own = ownBandOf(shelves, stage, *kept, plant))
                return ownStageBand(*own, BandOwner::GrowerForPlant);
        if (const OwnBand* own = ownBandOf(shelves, stage, *kept, {})) return ownStageBand(*own, BandOwner::Grower);
    }
    return tradeBandFor(shelves, plant, stage, quantity);
}

std::optional<Band> bandWhileRooting(const Shelves& shelves, Quantity quantity) {
    std::optional<Band> all;
    for (const Stage stage : {Stage::BeforeRoots, Stage::FirstRoots, Stage::FillingRoots}) {
        const auto band = bandFor(shelves, {}, stage, climateQuantityOf(quantity));
        if (!band) continue;
        if (!all) all = band->band;
        all->low = std::min(all->low, band->band.low);
        all->high = std::max(all->high, band->band.high);
    }
    return all;
}

std::vector<BandFrom> bandsOver(const Shelves& shelves, const BatchRecord& record, ClimateQuantity quantity) {
    std::vector<BandFrom> bands;
    for (const StageFrom& stage : stagesOf(record)) {
        auto band = bandFor(shelves, record.batch.plant, stage.stage, quantity);
        const bool isAsBefore = !bands.empty() && band.has_value() == bands.back().band.has_value() &&
                                (!band || band->band == bands.back().band->band);
        if (!isAsBefore) bands.push_back({.from = stage.from, .band = std::move(band)});
    }
    return bands;
}

const StageBand* bandOn(const std::vector<BandFrom>& bands, Date day) {
    const StageBand* found = nullptr;
    for (const BandFrom& piece : bands)
        if (&piece == &bands.front() || piece.from <= day) found = piece.band ? &*piece.band : nullptr;
    return found;
}

}  // namespace core
