// SPDX-License-Identifier: MIT
// What the bench shows, worked out from plain records: what is due, station by station with the longest overdue first, and what each station
// holds. Texts are ready to show; the models and the page only place them.
#pragma once

#include <QString>
#include <optional>
#include <span>
#include <vector>

#include "app/desktop/bench/attention_view.h"
#include "core/due/due_today.h"
#include "core/records.h"

namespace desktop {

struct DueRow {
    core::BatchId batch;
    QString code;
    QString plant;
    QString day;     // since sticking
    QString counts;  // "9 of 24 rooted, 13 undecided"
    QString due;     // "today", "3 days overdue"
    bool isOverdue{};
};

struct DueGroup {
    QString station;
    QString summary;  // "5 batches due, 2 overdue"
    std::vector<DueRow> rows;
};

struct StationRow {
    core::StationId id;
    QString name;
    QString method;
    int openBatches{};
    int undecided{};
    QString places;                    // "18 of 60 free"; what it holds where its layout isn't described
    std::optional<double> takenShare;  // of its positions; absent where its layout isn't described
    ReadingsGlance readings;           // the newest of each quantity
    QString plants;                    // what it holds, by botanical names: a glance has no room for more
    QString plantsInFull;              // with cultivars
    QString since;                     // day of the oldest open batch; empty when it is free
};

struct BenchView {
    std::vector<DueGroup> due;  // in walking order
    int dueCount{};
    int overdueCount{};
    QString nextDue;  // the day of the next look when nothing is due; empty when none is waited for
    std::vector<StationRow> stations;
};

/// `readings`: the newest of each station and quantity.
[[nodiscard]] BenchView benchView(std::span<const core::BatchLine> lines, const core::Shelves& shelves,
                                  core::Date today, std::span<const core::Reading> readings = {});

/// "9 of 24 rooted, 2 lost, 13 undecided"
[[nodiscard]] QString countsText(const core::Tally& tally);

}  // namespace desktop
