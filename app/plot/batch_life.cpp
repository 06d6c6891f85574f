// SPDX-License-Identifier: MIT
#include "app/plot/batch_life.h"

#include <algorithm>
#include <tuple>

#include "app/plot/local_time.h"
#include "db/logbook.h"

namespace plot {

core::Date lastDayOf(const core::BatchRecord& record, core::Date today) {
    if (record.batch.closedOn) return *record.batch.closedOn;
    const core::Tally tally = core::tallyOf(record.batch, record.checks);
    return tally.undecided() == 0 && !record.checks.empty() ? record.checks.back().checkedOn : today;
}

std::map<core::Quantity, std::vector<core::BandFrom>> bandsOf(const core::BatchRecord& record,
                                                              const core::Shelves& shelves) {
    std::map<core::Quantity, std::vector<core::BandFrom>> bands;
    for (const core::Quantity quantity : core::allQuantities)
        bands[quantity] = core::bandsOver(shelves, record, core::climateQuantityOf(quantity));
    return bands;
}

BatchLife batchLifeOf(const db::Logbook& logbook, const core::BatchRecord& record, const core::Shelves& shelves,
                      core::Date today) {
    const core::Batch& batch = record.batch;
    BatchLife life;
    life.until = lastDayOf(record, today);
    life.photos = logbook.photos(batch.id);
    life.expenses = logbook.expenses(batch.id);
    life.sharedExpenses = logbook.expenses(batch.session);
    life.pottings = logbook.pottings(batch.id);
    life.bands = bandsOf(record, shelves);
    const core::Station* station = core::find(shelves.stations, batch.station);
    if (station == nullptr) return life;
    life.station = QString::fromStdString(station->name);
    const core::Moment from = momentOf(batch.stuckOn, 0);
    const core::Moment until = momentOf(core::addDays(life.until, 1), 0) - std::chrono::seconds{1};
    life.readings = logbook.readings(station->id, from, until);
    // What was read at one moment stands in one order everywhere.
    std::ranges::stable_sort(life.readings, [](const core::Reading& one, const core::Reading& other) {
        return std::tie(one.readAt, one.quantity) < std::tie(other.readAt, other.quantity);
    });
    life.care = logbook.care(station->id, from, until);
    return life;
}

}  // namespace plot
