// SPDX-License-Identifier: MIT
// Chemical formulas as the bag prints them: molar masses and what share of the mass each element is. Everything else that needs a molar
// mass asks here.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.h"

namespace core {

inline constexpr const char* atomicMassesSource = "IUPAC abridged standard atomic weights, from memory";

/// g/mol. Source: IUPAC abridged standard atomic weights, from memory.
[[nodiscard]] std::optional<double> atomicMass(std::string_view symbol);

struct ElementCount {
    std::string symbol{};
    int count{};

    bool operator==(const ElementCount&) const = default;
};

struct ElementShare {
    std::string symbol{};
    double share{};  // of the mass, 0 to 1

    bool operator==(const ElementShare&) const = default;
};

/// "Ca(NO3)2.4H2O" or "5Ca(NO3)2.NH4NO3.10H2O": symbols, counts from 1 to 999, brackets within brackets, and parts joined by points, each
/// with a number before it or none. In order of their symbols. Refused: anything else, and elements that no feed and no auxin has.
[[nodiscard]] Result<std::vector<ElementCount>> elementsOf(std::string_view formula);
/// g/mol, within 0.01 of tables that round atomic masses otherwise.
[[nodiscard]] Result<double> molarMass(std::string_view formula);
/// They add up to 1.
[[nodiscard]] Result<std::vector<ElementShare>> elementSharesOf(std::string_view formula);

}  // namespace core
