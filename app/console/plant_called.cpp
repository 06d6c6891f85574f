// SPDX-License-Identifier: MIT
#include "app/console/plant_called.h"

#include <algorithm>

#include "app/console/words.h"

namespace console {

namespace {

std::vector<const core::Plant*> plantsCalled(const std::string& name, const core::Shelves& shelves) {
    std::vector<const core::Plant*> called;
    for (const core::Plant& plant : shelves.plants) {
        if (core::fullName(plant) == name) return {&plant};
        if (plant.botanicalName == name || plant.commonName == name) called.push_back(&plant);
    }
    return called;
}

std::string namesOf(const std::vector<const core::Plant*>& plants) {
    std::string names;
    for (const core::Plant* plant : plants) names += (names.empty() ? "" : ", ") + core::fullName(*plant);
    return names;
}

}  // namespace

const core::Plant* plantCalled(const std::string& name, const core::Shelves& shelves, const std::string& file,
                               std::ostream& err) {
    const std::vector<const core::Plant*> plants = plantsCalled(name, shelves);
    if (plants.size() == 1) return plants.front();
    err << (plants.empty()
                ? filled(tr("There is no plant %1 in %2."), {shown(name), file})
                : filled(tr("--species is %1, which several plants are called: %2. Give the whole name of one."),
                         {shown(name), namesOf(plants)}))
        << '\n';
    return nullptr;
}

const core::Method* methodCalled(const std::string& name, const core::Shelves& shelves, const std::string& file,
                                 std::ostream& err) {
    const auto found = std::ranges::find(shelves.methods, name, &core::Method::name);
    if (found != shelves.methods.end()) return &*found;
    err << filled(tr("There is no method %1 in %2."), {shown(name), file}) << '\n';
    return nullptr;
}

}  // namespace console
