// SPDX-License-Identifier: MIT
// What can be said of one position, and the letter that says it. R rooted, L lost with no cause known, W withdrawn and U undecided again are
// the same in every logbook. A cause of loss keeps its own letter unless that is one of these; then, as one without a letter, it gets the
// first letter of its name that is free. The screen always shows the letters that are in force.
#pragma once

#include <QChar>
#include <QString>
#include <optional>
#include <span>
#include <vector>

#include "core/batch/finding.h"
#include "core/batch/loss_cause.h"

namespace plot {

/// No outcome: undecided.
struct Mark {
    std::optional<core::Outcome> outcome{};
    core::LossCauseId cause{};

    bool operator==(const Mark&) const = default;
};

struct MarkKey {
    QChar letter;  // upper case; null: no letter was left for it
    Mark mark;
    QString name;  // "rooted", "rotted"
};

/// Rooted first, then the causes in the logbook's order, lost, withdrawn, undecided. Causes that are retired get none.
[[nodiscard]] std::vector<MarkKey> markKeysFor(std::span<const core::LossCause> causes);

/// What the letter says, small or capital; nothing when it says nothing.
[[nodiscard]] std::optional<Mark> markFor(std::span<const MarkKey> keys, QChar letter);
/// The letter that stands beside the shape on the map: a cause without one is drawn as lost.
[[nodiscard]] QChar letterFor(std::span<const MarkKey> keys, const Mark& mark);

}  // namespace plot
