// SPDX-License-Identifier: MIT
// The reading half of Logbook.
#include <algorithm>
#include <tuple>
#include <utility>

#include "core/batch/batch_code.h"
#include "db/inside.h"
#include "db/tables/batch_table.h"
#include "db/tables/care_table.h"
#include "db/tables/check_schedule_table.h"
#include "db/tables/check_table.h"
#include "db/tables/cutting_kind_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/facts_table.h"
#include "db/tables/logger_day_table.h"
#include "db/tables/logger_format_table.h"
#include "db/tables/loss_cause_table.h"
#include "db/tables/lot_table.h"
#include "db/tables/medium_table.h"
#include "db/tables/method_table.h"
#include "db/tables/mix_table.h"
#include "db/tables/own_band_table.h"
#include "db/tables/photo_table.h"
#include "db/tables/plan_table.h"
#include "db/tables/plant_table.h"
#include "db/tables/potting_table.h"
#include "db/tables/price_table.h"
#include "db/tables/reading_table.h"
#include "db/tables/session_table.h"
#include "db/tables/station_table.h"
#include "db/tables/stock_plant_table.h"
#include "db/tables/treatment_table.h"
#include "db/tables/trial_table.h"
#include "db/transaction.h"

namespace db {

namespace {

core::BatchRecord recordOf(Connection& connection, core::Batch batch) {
    std::vector<core::Check> checks = checksOf(connection, batch.id);
    return {.batch = std::move(batch), .checks = std::move(checks)};
}

core::Shelves shelvesIn(Connection& connection) {
    return {.facts = factsOf(connection),
            .plants = allPlants(connection),
            .stockPlants = allStockPlants(connection),
            .methods = allMethods(connection),
            .stations = allStations(connection),
            .media = allMedia(connection),
            .treatments = allTreatments(connection),
            .cuttingKinds = allCuttingKinds(connection),
            .lossCauses = allLossCauses(connection),
            .trials = allTrials(connection),
            .checkSchedules = allCheckSchedules(connection),
            .plans = allPlans(connection),
            .ownBands = allOwnBands(connection),
            .prices = allPrices(connection),
            .lots = allLots(connection)};
}

std::vector<core::BatchRecord> recordsIn(Connection& connection) {
    auto checks = checksByBatch(connection);
    std::vector<core::BatchRecord> records;
    forEachBatch(connection, [&](core::Batch batch) {
        std::vector<core::Check>& ofBatch = checks[batch.id];
        records.push_back({.batch = std::move(batch), .checks = std::move(ofBatch)});
    });
    return records;
}

std::vector<core::PhotoRecord> photosIn(Connection& connection) {
    std::vector<core::PhotoRecord> photos;
    for (core::Photo& photo : allPhotos(connection)) {
        core::ImageBytes image = imageOf(connection, photo.id);
        photos.push_back({.photo = std::move(photo), .image = std::move(image)});
    }
    return photos;
}

std::vector<core::LoggerDay> loggerDaysIn(Connection& connection) {
    std::vector<core::LoggerDay> days;
    forEachLoggerDay(connection, [&](core::LoggerDay day) { days.push_back(std::move(day)); });
    return days;
}

}  // namespace

core::Shelves Logbook::shelves() const {
    return inside_->with([](Connection& connection) {
        const ReadTransaction reading(connection);
        return shelvesIn(connection);
    });
}

std::vector<core::Session> Logbook::sessions() const {
    return inside_->with(allSessions);
}

std::vector<core::BatchLine> Logbook::batchLines() const {
    return inside_->with([](Connection& connection) {
        const ReadTransaction reading(connection);
        return allBatchLines(connection);
    });
}

std::vector<core::BatchLine> Logbook::batchLinesOf(const std::vector<core::BatchId>& batches) const {
    auto lines = inside_->with([&](Connection& connection) {
        const ReadTransaction reading(connection);
        std::vector<core::BatchLine> found;
        for (const core::BatchId id : batches)
            if (auto line = batchLineIn(connection, id)) found.push_back(std::move(*line));
        return found;
    });
    std::sort(lines.begin(), lines.end(), [](const core::BatchLine& a, const core::BatchLine& b) {
        return std::tie(a.batch.stuckOn, a.batch.code) < std::tie(b.batch.stuckOn, b.batch.code);
    });
    return lines;
}

std::optional<core::BatchRecord> Logbook::batch(core::BatchId id) const {
    return inside_->with([&](Connection& connection) -> std::optional<core::BatchRecord> {
        const ReadTransaction reading(connection);
        auto found = batchIn(connection, id);
        if (!found) return std::nullopt;
        return recordOf(connection, std::move(*found));
    });
}

core::BatchId Logbook::batchWithCode(const std::string& code) const {
    return inside_->with([&](Connection& connection) { return batchCoded(connection, code); });
}

std::vector<core::BatchRecord> Logbook::batchRecords() const {
    return inside_->with([](Connection& connection) {
        const ReadTransaction reading(connection);
        return recordsIn(connection);
    });
}

std::vector<core::BatchRecord> Logbook::batchRecords(core::PlantId plant) const {
    return inside_->with([&](Connection& connection) {
        const ReadTransaction reading(connection);
        std::vector<core::BatchRecord> records;
        forEachBatchOf(connection, plant,
                       [&](core::Batch batch) { records.push_back(recordOf(connection, std::move(batch))); });
        return records;
    });
}

core::Records Logbook::records() const {
    return inside_->with([](Connection& connection) {
        const ReadTransaction reading(connection);
        return core::Records{.shelves = shelvesIn(connection),
                             .sessions = allSessions(connection),
                             .batches = recordsIn(connection),
                             .readings = allReadings(connection),
                             .care = db::allCare(connection),
                             .expenses = db::allExpenses(connection),
                             .photos = photosIn(connection),
                             .mixes = allMixes(connection),
                             .loggerDays = loggerDaysIn(connection),
                             .loggerFormats = allLoggerFormats(connection),
                             .pottings = db::allPottings(connection)};
    });
}

std::vector<core::BatchRecord> Logbook::batchRecordsAt(core::StationId station) const {
    return inside_->with([&](Connection& connection) {
        const ReadTransaction reading(connection);
        std::vector<core::BatchRecord> records;
        for (core::Batch& batch : batchesAt(connection, station))
            records.push_back(recordOf(connection, std::move(batch)));
        return records;
    });
}

std::vector<core::Reading> Logbook::readings(core::StationId station, core::Moment from, core::Moment until) const {
    return inside_->with([&](Connection& connection) { return readingsOf(connection, station, from, until); });
}

std::vector<core::Reading> Logbook::newestReadings() const {
    return inside_->with([](Connection& connection) { return db::newestReadings(connection); });
}

std::vector<core::Care> Logbook::care(core::StationId station, core::Moment from, core::Moment until) const {
    return inside_->with([&](Connection& connection) { return careOf(connection, station, from, until); });
}

std::vector<core::Photo> Logbook::photos(core::BatchId batch) const {
    return inside_->with([&](Connection& connection) { return photosOf(connection, batch); });
}

core::ImageBytes Logbook::photoImage(core::PhotoId photo) const {
    return inside_->with([&](Connection& connection) { return imageOf(connection, photo); });
}

std::vector<core::LossCauseUse> Logbook::lossCauseUses() const {
    return inside_->with([](Connection& connection) { return usesOfLossCauses(connection); });
}

int Logbook::lastBatchNumber(int year) const {
    const std::string start = core::batchCode(year, 1).substr(0, 3);  // the letter and the year
    return inside_->with([&](Connection& connection) {
        int last = 0;
        forEachCode(connection, start, [&](const std::string& code) {
            last = std::max(last, core::runningNumber(code, year));
            return last == 0;  // an imported code may only look like one of ours
        });
        return last;
    });
}

}  // namespace db
