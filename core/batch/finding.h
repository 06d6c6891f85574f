// SPDX-License-Identifier: MIT
// What a check found of cuttings: rooted, lost or withdrawn; and of the one at a certain position, where the grower looks hole by hole.
#pragma once

#include <string_view>

#include "core/id.h"
#include "core/station/position.h"

namespace core {

enum class Outcome { Rooted, Lost, Withdrawn };

struct Finding {
    Position position{};
    Outcome outcome{Outcome::Rooted};
    LossCauseId cause{};  // of a loss; may be unset: not known

    bool operator==(const Finding&) const = default;
};

/// The word that stands in files: "rooted", "lost", "withdrawn".
[[nodiscard]] std::string_view wordFor(Outcome outcome);

}  // namespace core
