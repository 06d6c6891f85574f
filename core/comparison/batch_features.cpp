// SPDX-License-Identifier: MIT
#include "core/comparison/batch_features.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace core {
namespace {

using Batches = std::span<const BatchRecord* const>;

int othersThanZero(const std::vector<double>& values) {
    return static_cast<int>(values.size() - static_cast<std::size_t>(std::count(values.begin(), values.end(), 0.0)));
}

void addFeature(std::string name, std::vector<double> values, std::vector<Feature>& features) {
    constexpr int fewestBatches = 2;
    const int with = othersThanZero(values), without = static_cast<int>(values.size()) - with;
    const bool differs =
        std::any_of(values.begin(), values.end(), [&](double value) { return value != values.front(); });
    if (!differs || with < fewestBatches || (without > 0 && without < fewestBatches)) return;
    features.push_back({.name = std::move(name), .isPlant = false, .values = std::move(values), .batches = with});
}

template <class Thing, class NameOf>
std::map<std::int64_t, std::string> namesOfAll(const std::vector<Thing>& things, NameOf nameOf) {
    std::map<std::int64_t, std::string> names;
    for (const Thing& thing : things) names[thing.id.value] = nameOf(thing);
    return names;
}

std::string plainName(const auto& thing) {
    return thing.name;
}

// Each level against the commonest one. Batches with nothing on record are a level of their own, or they would stand for the commonest.
void addLevels(const std::string& sort, const std::map<std::int64_t, std::string>& names, Batches batches,
               const std::function<std::int64_t(const Batch&)>& levelOf, std::vector<Feature>& features) {
    std::map<std::int64_t, int> count;
    for (const BatchRecord* record : batches) ++count[levelOf(record->batch)];
    const auto commonest =
        std::max_element(count.begin(), count.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    if (commonest == count.end()) return;
    const auto nameOf = [&names](std::int64_t id) {
        const auto found = names.find(id);
        return found == names.end() ? std::string("not recorded") : found->second;
    };
    for (const auto& [level, number] : count) {
        if (level == commonest->first) continue;
        std::vector<double> values;
        for (const BatchRecord* record : batches) values.push_back(levelOf(record->batch) == level ? 1 : 0);
        addFeature(sort + " " + nameOf(level) + ", against " + nameOf(commonest->first), std::move(values), features);
    }
}

void addTreatments(const Shelves& shelves, Batches batches, std::vector<Feature>& features) {
    std::vector<double> treated, wounded, unrecorded;
    std::map<std::string, std::vector<double>> logDoses;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const Treatment* treatment = find(shelves.treatments, batches[i]->batch.treatment);
        unrecorded.push_back(treatment == nullptr ? 1 : 0);
        double isTreated = 0;
        if (treatment != nullptr) {
            for (const Auxin& auxin : treatment->auxins) {
                if (auxin.milligramsPerLitre <= 0) continue;
                isTreated = 1;
                std::vector<double>& doses = logDoses[auxin.name];
                doses.resize(batches.size(), NAN);
                doses[i] = std::log10(auxin.milligramsPerLitre);
            }
        }
        treated.push_back(isTreated);
        wounded.push_back(treatment != nullptr && treatment->isWounded ? 1 : 0);
    }
    addFeature("treatment not recorded, against recorded", std::move(unrecorded), features);
    addFeature("auxin, against none", std::move(treated), features);
    for (auto& [auxin, doses] : logDoses) {
        // About the middle of those treated with it; the others stand at 0, so that only differences of dose speak.
        double sum = 0;
        int count = 0;
        for (const double dose : doses)
            if (!std::isnan(dose)) sum += dose, ++count;
        for (double& dose : doses) dose = std::isnan(dose) ? 0 : dose - sum / count;
        addFeature(auxin + ", each tenfold dose", std::move(doses), features);
    }
    addFeature("wounded, against not", std::move(wounded), features);
}

}  // namespace

std::vector<Feature> featuresOf(const Shelves& shelves, Batches batches) {
    std::vector<Feature> features;
    addLevels(
        "plant", namesOfAll(shelves.plants, [](const Plant& plant) { return fullName(plant); }), batches,
        [](const Batch& batch) { return batch.plant.value; }, features);
    for (Feature& feature : features) feature.isPlant = true;
    addLevels(
        "method", namesOfAll(shelves.methods, plainName<Method>), batches,
        [](const Batch& batch) { return batch.method.value; }, features);
    addLevels(
        "medium", namesOfAll(shelves.media, plainName<Medium>), batches,
        [](const Batch& batch) { return batch.medium.value; }, features);
    addLevels(
        "cutting", namesOfAll(shelves.cuttingKinds, plainName<CuttingKind>), batches,
        [](const Batch& batch) { return batch.cuttingKind.value; }, features);
    addTreatments(shelves, batches, features);
    return features;
}

}  // namespace core
