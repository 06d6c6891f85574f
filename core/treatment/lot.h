// SPDX-License-Identifier: MIT
// One bottle, tub or bag of a treatment's hormone or of a medium: which batches had which, and how old it was, is what tells a spent one
// from bad luck.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

struct Lot {
    LotId id{};
    std::string
        name{};  // what stands on it, or what the grower calls it; unique among those of its treatment or medium
    TreatmentId treatment{};  // one of the two
    MediumId medium{};
    Date usedFrom{};               // the first day; it is used up to the day before the next one's first
    std::optional<Date> madeOn{};  // mixed or packed
    std::string note{};

    bool operator==(const Lot&) const = default;
};

/// The lot that was in use on that day, or nullptr. An unset id has none.
[[nodiscard]] const Lot* lotInUse(std::span<const Lot> lots, TreatmentId treatment, Date day);
[[nodiscard]] const Lot* lotInUse(std::span<const Lot> lots, MediumId medium, Date day);

}  // namespace core
