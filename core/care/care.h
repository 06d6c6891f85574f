// SPDX-License-Identifier: MIT
// A thing done to a station: topped up, solution changed, vented, misted, sprayed.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/id.h"
#include "core/units/moment.h"

namespace core {

enum class CareKind { ToppedUp, SolutionChanged, Vented, Misted, Sprayed, PumpOn, PumpOff, Other };

inline constexpr std::array allCareKinds{
    CareKind::ToppedUp, CareKind::SolutionChanged, CareKind::Vented,  CareKind::Misted,
    CareKind::Sprayed,  CareKind::PumpOn,          CareKind::PumpOff, CareKind::Other};

inline constexpr double mostCareLitres = 100'000;

struct Care {
    CareId id{};
    StationId station{};
    Moment doneAt{};
    CareKind kind{CareKind::ToppedUp};
    std::string note{};              // what and how much; needed where the kind is Other
    std::optional<double> litres{};  // of what went in; above 0

    bool operator==(const Care&) const = default;
};

/// In files and for people: "topped up", "solution changed", "vented", "misted", "sprayed", "pump on", "pump off", "other".
[[nodiscard]] std::string_view wordFor(CareKind kind);
[[nodiscard]] std::optional<CareKind> careKindFrom(std::string_view word);

}  // namespace core
