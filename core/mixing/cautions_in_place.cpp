// SPDX-License-Identifier: MIT
#include "core/mixing/cautions_in_place.h"

#include <algorithm>
#include <initializer_list>

#include "core/climate/reading_entry.h"
#include "core/plants/botanical_name.h"
#include "core/plants/plant_reference.h"

namespace core {
namespace {

/// Each once, in the order of the topics; advice behind them.
std::vector<CautionTopic> withAdvice(std::vector<CautionTopic> topics) {
    std::ranges::sort(topics);
    const auto again = std::ranges::unique(topics);
    topics.erase(again.begin(), again.end());
    if (!topics.empty()) topics.push_back(CautionTopic::Advice);
    return topics;
}

void add(std::vector<CautionTopic>& topics, std::initializer_list<CautionTopic> more) {
    topics.insert(topics.end(), more);
}

bool hasAuxin(const Treatment* treatment) {
    return treatment != nullptr && !treatment->auxins.empty();
}

void addOfPlant(const Plant& plant, bool hasHormone, std::vector<CautionTopic>& topics) {
    if (plant.isProtected) topics.push_back(CautionTopic::ProtectedVarieties);
    if (plant.isEdible && hasHormone) topics.push_back(CautionTopic::EdibleCrops);
    if (isKnownIrritant(plant)) topics.push_back(CautionTopic::IrritantPlants);
}

}  // namespace

bool isKnownIrritant(const Plant& plant) {
    const auto name = botanicalNameFrom(plant.botanicalName);
    if (name && (name->genus == "Ficus" || name->genus == "Euphorbia")) return true;
    const PlantReference* reference = plantReferenceFor(plant.botanicalName, plant.cultivar);
    return reference != nullptr && (reference->family == "Euphorbiaceae" || reference->family == "Araceae");
}

std::vector<CautionTopic> cautionsOnSticking(std::span<const Batch> batches, const Shelves& shelves) {
    std::vector<CautionTopic> topics;
    for (const Batch& batch : batches) {
        const bool hasHormone = hasAuxin(find(shelves.treatments, batch.treatment));
        if (hasHormone) add(topics, {CautionTopic::GrowthRegulators, CautionTopic::HormoneHygiene});
        if (const Plant* plant = find(shelves.plants, batch.plant)) addOfPlant(*plant, hasHormone, topics);
    }
    return withAdvice(std::move(topics));
}

std::vector<CautionTopic> cautionsOnTreatment(const Treatment& treatment) {
    std::vector<CautionTopic> topics;
    if (hasAuxin(&treatment))
        add(topics, {CautionTopic::GrowthRegulators, CautionTopic::HormoneHygiene, CautionTopic::EdibleCrops});
    return withAdvice(std::move(topics));
}

std::vector<CautionTopic> cautionsOnPlant(const Plant& plant) {
    std::vector<CautionTopic> topics;
    addOfPlant(plant, true, topics);
    return withAdvice(std::move(topics));
}

std::vector<CautionTopic> cautionsOnStockPlant() {
    return withAdvice({CautionTopic::WildPlants});
}

std::vector<CautionTopic> cautionsOnMedium() {
    return withAdvice({CautionTopic::MouldAndDust});
}

std::vector<CautionTopic> cautionsOnStation(std::string_view method) {
    std::vector<CautionTopic> topics{CautionTopic::Lamps, CautionTopic::HeatUnderADome};
    const std::vector<Quantity> read = usualQuantities(method);
    if (std::ranges::find(read, Quantity::SolutionEc) != read.end())
        add(topics, {CautionTopic::ElectricityNearWater, CautionTopic::BackSiphon});
    return withAdvice(std::move(topics));
}

std::vector<CautionTopic> cautionsOnDrilling() {
    return withAdvice({CautionTopic::DrillingAndHotGlue});
}

std::vector<CautionTopic> cautionsOnCare(CareKind kind) {
    switch (kind) {
        case CareKind::ToppedUp:
            return withAdvice(
                {CautionTopic::Acids, CautionTopic::Alkalis, CautionTopic::Oxidisers, CautionTopic::Concentrates});
        case CareKind::SolutionChanged:
            return withAdvice({CautionTopic::Acids, CautionTopic::ChlorineGas, CautionTopic::Alkalis,
                               CautionTopic::Oxidisers, CautionTopic::Concentrates});
        case CareKind::Sprayed:
            return withAdvice({CautionTopic::FungicidesAndPesticides});
        case CareKind::PumpOn:
        case CareKind::PumpOff:
            return withAdvice({CautionTopic::ElectricityNearWater, CautionTopic::BackSiphon});
        case CareKind::Vented:
        case CareKind::Misted:
        case CareKind::Other:
            break;
    }
    return {};
}

std::vector<CautionTopic> cautionsOnLeaving(std::span<const Batch> batches, const Shelves& shelves) {
    std::vector<CautionTopic> topics{CautionTopic::PlantHealth, CautionTopic::InvasivePlants};
    for (const Batch& batch : batches) {
        const Plant* plant = find(shelves.plants, batch.plant);
        if (plant != nullptr && plant->isProtected) topics.push_back(CautionTopic::ProtectedVarieties);
    }
    return withAdvice(std::move(topics));
}

}  // namespace core
