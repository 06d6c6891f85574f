// SPDX-License-Identifier: MIT
// A recipe as it was mixed, in words, kept with the session or the care of a station that it was mixed for: what was in the tub can be
// read years later, whatever the calculators say then.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/id.h"
#include "core/result.h"
#include "core/units/moment.h"

namespace core {

enum class MixKind { Nutrient, Label, Tub, Ph, Titration, Auxin, Medium };

inline constexpr std::array allMixKinds{MixKind::Nutrient,  MixKind::Label, MixKind::Tub,   MixKind::Ph,
                                        MixKind::Titration, MixKind::Auxin, MixKind::Medium};

/// In files: "nutrient", "label", "tub", "ph", "titration", "auxin", "medium".
[[nodiscard]] std::string_view wordFor(MixKind kind);
[[nodiscard]] std::optional<MixKind> mixKindFrom(std::string_view word);

struct KeptMix {
    KeptMixId id{};
    Moment madeAt{};
    MixKind kind{MixKind::Nutrient};
    std::string title{};     // "12 L at 1.2 mS/cm"
    std::string amounts{};   // one a line
    std::string workings{};  // one a line
    std::string cautions{};  // names of trade_cautions.h, one a line
    SessionId session{};     // one of the two
    CareId care{};

    bool operator==(const KeptMix&) const = default;
};

/// What it says of itself; whether its session or care is there is the caller's to know.
[[nodiscard]] Refusals faultsIn(const KeptMix& mix, Moment now);

}  // namespace core
