// SPDX-License-Identifier: MIT
// The kind of cutting: stem tip, nodal, heel, root and so on. A new logbook knows the trade's usual ones.
#pragma once

#include <string>

#include "core/id.h"

namespace core {

struct CuttingKind {
    CuttingKindId id{};
    std::string name;  // unique
    bool isRetired{};

    bool operator==(const CuttingKind&) const = default;
};

}  // namespace core
