// SPDX-License-Identifier: MIT
// What cuttings are stuck in: components and their parts by volume, e.g. coir 3 : perlite 2. Empty for water.
#pragma once

#include <string>
#include <vector>

#include "core/id.h"

namespace core {

struct MediumComponent {
    std::string name;
    double parts{};  // by volume, > 0

    bool operator==(const MediumComponent&) const = default;
};

struct Medium {
    MediumId id{};
    std::string name;  // unique
    std::vector<MediumComponent> components;
    std::string note;
    bool isRetired{};

    bool operator==(const Medium&) const = default;
};

/// "coir 3 : perlite 2"
[[nodiscard]] std::string recipe(const Medium& medium);

}  // namespace core
