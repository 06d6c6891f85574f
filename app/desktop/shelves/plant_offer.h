// SPDX-License-Identifier: MIT
// What the reference table could fill in of a plant that is being typed: only what is still blank, and only when the grower takes it.
#pragma once

#include <QString>
#include <functional>
#include <optional>

#include "core/plants/plant.h"

class QLineEdit;

namespace desktop {

struct PlantOffer {
    QString commonName;       // empty: none, or there is one already
    std::optional<int> days;  // usual upper limit of days to root

    [[nodiscard]] bool isEmpty() const { return commonName.isEmpty() && !days; }
    /// "Take from the reference table: rosemary, usually rooted by day 28"
    [[nodiscard]] QString words() const;
};

[[nodiscard]] PlantOffer offerFor(const core::Plant& typed);

/// Calls `act` when Enter is pressed in the line; where it answers true the key is used up, else it goes on to the form.
void onEnter(QLineEdit& line, std::function<bool()> act);

}  // namespace desktop
