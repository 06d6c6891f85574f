// SPDX-License-Identifier: MIT
// What is propagated. The accepted botanical name and the cultivar together are its name; no two plants share both.
#pragma once

#include <optional>
#include <string>

#include "core/id.h"

namespace core {

struct Plant {
    PlantId id{};
    std::string botanicalName;  // "Salvia rosmarinus", without author
    std::string cultivar;       // without quotes; empty when there is none
    std::string commonName;
    bool isProtected{};                       // breeders' rights or a licence: reports carry the caution
    std::optional<int> usualRootingDaysHigh;  // the usual upper limit of days to root: the horizon of comparisons
    CheckScheduleId checkSchedule{};          // how often to look; unset: the method's, or the logbook's
    std::string note;
    bool isRetired{};
    bool isEdible{};  // it or its fruit is eaten: hormone cautions apply

    bool operator==(const Plant&) const = default;
};

/// "Salvia rosmarinus 'Name'": as it is written in tables and files.
[[nodiscard]] std::string fullName(const Plant& plant);

}  // namespace core
