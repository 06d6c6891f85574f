// SPDX-License-Identifier: MIT
// The shelves while a folder is read: things are found by their name, or made on the spot where the folder has no table of them.
#pragma once

#include <filesystem>
#include <stop_token>
#include <string>
#include <unordered_map>

#include "core/records.h"
#include "db/exchange/fault_list.h"
#include "db/exchange/table_reader.h"

namespace db {

/// One list with its names. A name that has no line break can be a key, so two names with one between are a key of two parts.
template <class Thing>
class NamedList {
  public:
    explicit NamedList(std::vector<Thing>& things) : things_(things) {}

    [[nodiscard]] Thing* find(const std::string& key) {
        const auto found = places_.find(key);
        return found == places_.end() ? nullptr : &things_[found->second];
    }
    [[nodiscard]] const Thing* find(const std::string& key) const {
        const auto found = places_.find(key);
        return found == places_.end() ? nullptr : &things_[found->second];
    }
    Thing& add(const std::string& key, Thing thing) {
        places_.emplace(key, things_.size());
        return things_.emplace_back(std::move(thing));
    }
    bool hasTable{};  // the folder lists them: a name that isn't there is a mistake

  private:
    std::vector<Thing>& things_;
    std::unordered_map<std::string, std::size_t> places_;
};

[[nodiscard]] inline std::string plantKey(const std::string& species, const std::string& cultivar) {
    return species + '\n' + cultivar;
}
[[nodiscard]] inline std::string stockPlantKey(core::PlantId plant, const std::string& label) {
    return std::to_string(plant.value) + '\n' + label;
}

struct FolderShelves {
    core::Shelves shelves;
    NamedList<core::Plant> plants{shelves.plants};
    NamedList<core::StockPlant> stockPlants{shelves.stockPlants};
    NamedList<core::Method> methods{shelves.methods};
    NamedList<core::Station> stations{shelves.stations};
    NamedList<core::Medium> media{shelves.media};
    NamedList<core::Treatment> treatments{shelves.treatments};
    NamedList<core::CuttingKind> cuttingKinds{shelves.cuttingKinds};
    NamedList<core::LossCause> lossCauses{shelves.lossCauses};
    NamedList<core::Trial> trials{shelves.trials};
    NamedList<core::CheckSchedule> checkSchedules{shelves.checkSchedules};
    std::unordered_map<std::string, int> rowOfTrial;  // of trials.csv

    FolderShelves() = default;
    FolderShelves(const FolderShelves&) = delete;  // the lists point into `shelves`
    FolderShelves& operator=(const FolderShelves&) = delete;
};

/// Reads every table of the shelves that the folder has. True when logbook.csv, the facts, was one of them.
bool readShelves(const std::filesystem::path& folder, FolderShelves& into, FaultList& faults,
                 const std::stop_token& stop);

}  // namespace db
