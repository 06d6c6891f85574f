// SPDX-License-Identifier: MIT
// What was done to the cut ends before sticking: auxins with their dose, carrier, seconds, wounding.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/id.h"

namespace core {

enum class AuxinForm { Acid, Salt };
enum class Carrier { None, Gel, Powder, LiquidDip };

struct Auxin {
    std::string name;  // "IBA", "NAA"
    AuxinForm form{AuxinForm::Acid};
    double milligramsPerLitre{};  // >= 0; for powders the same figure means mg/kg

    bool operator==(const Auxin&) const = default;
};

struct Treatment {
    TreatmentId id{};
    std::string name;  // unique
    std::vector<Auxin> auxins;
    Carrier carrier{Carrier::None};
    int seconds{};  // of dipping; 0: not timed
    bool isWounded{};
    std::string note;
    bool isRetired{};

    bool operator==(const Treatment&) const = default;
};

/// "IBA 1000 mg/L, gel, 5 s, wounded"; "none" when nothing was done.
[[nodiscard]] std::string description(const Treatment& treatment);
/// The word that stands in files: "none", "gel", "powder", "liquid dip"; "acid", "salt".
[[nodiscard]] std::string_view wordFor(Carrier carrier);
[[nodiscard]] std::string_view wordFor(AuxinForm form);

}  // namespace core
