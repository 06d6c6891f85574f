// SPDX-License-Identifier: MIT
// What happened around a batch beside its checks: readings and care of its station while it stood there, its photos, what it cost, what became of it in pots.
#pragma once

#include <QString>
#include <map>
#include <vector>

#include "core/climate/stage_bands.h"
#include "core/records.h"

namespace db {
class Logbook;
}

namespace plot {

struct BatchLife {
    QString station;     // its name; empty: the batch has none on record
    core::Date until{};  // the day on which it ended, or today
    std::vector<core::Reading> readings;
    std::vector<core::Care> care;
    std::vector<core::Photo> photos;
    std::vector<core::Expense> expenses;
    std::vector<core::Expense> sharedExpenses{};  // of its session
    std::vector<core::Potting> pottings{};
    std::map<core::Quantity, std::vector<core::BandFrom>> bands{};  // of the stages that it went through
};

[[nodiscard]] std::map<core::Quantity, std::vector<core::BandFrom>> bandsOf(const core::BatchRecord& record,
                                                                            const core::Shelves& shelves);

/// The last day of a batch: closed by hand, or nothing left undecided, or today.
[[nodiscard]] core::Date lastDayOf(const core::BatchRecord& record, core::Date today);
[[nodiscard]] BatchLife batchLifeOf(const db::Logbook& logbook, const core::BatchRecord& record,
                                    const core::Shelves& shelves, core::Date today);

}  // namespace plot
