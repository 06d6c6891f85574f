// SPDX-License-Identifier: MIT
// Everything that happened to a batch, in order of time, as the rows of its timeline.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/plot/batch_life.h"
#include "core/records.h"

namespace desktop {

enum class EventKind { Stuck, Check, Readings, Care, Mix, Photo, Expense, Potted, Closed };

struct BatchEvent {
    EventKind kind{};
    core::Date day{};
    QString time;  // "10:42"; empty where only the day is known
    QString what;  // "7 rooted, 1 lost (rot)"
    QString note;
    std::optional<core::Tally> after;     // of a check: where every cutting was then
    std::int64_t id{};                    // of the check, care, mix, photo, expense or count after potting
    std::vector<core::Reading> readings;  // of that day, or a single one

    /// The same row before and after something changed.
    [[nodiscard]] bool isSameAs(const BatchEvent& other) const;
};

[[nodiscard]] QString nameOf(EventKind kind);
/// "hormone: 4.50 EUR, 30 min"
[[nodiscard]] QString spentText(const core::Expense& expense, const std::string& currency);

/// `only`: one kind; readings are then told one by one, and else summed up by day.
[[nodiscard]] std::vector<BatchEvent> eventsOf(const core::BatchRecord& record, const core::Session& session,
                                               const plot::BatchLife& life, const std::vector<core::KeptMix>& mixes,
                                               const core::Shelves& shelves, std::optional<EventKind> only = {});

}  // namespace desktop
