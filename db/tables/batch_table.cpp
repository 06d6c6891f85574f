// SPDX-License-Identifier: MIT
#include "db/tables/batch_table.h"

#include <algorithm>
#include <optional>
#include <tuple>
#include <unordered_map>
#include <utility>

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertBatch = R"(
    INSERT INTO batches (id, code, session_id, plant_id, stock_plant_id, method_id, station_id, medium_id, treatment_id,
                         cutting_kind_id, stuck, trial_id, block, closed_on, close_reason, note, positions, licence)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18))";
constexpr const char* updateBatch = R"(
    UPDATE batches SET code = ?2, session_id = ?3, plant_id = ?4, stock_plant_id = ?5, method_id = ?6, station_id = ?7,
                       medium_id = ?8, treatment_id = ?9, cutting_kind_id = ?10, stuck = ?11, trial_id = ?12, block = ?13,
                       closed_on = ?14, close_reason = ?15, note = ?16, positions = ?17, licence = ?18
    WHERE id = ?1)";
constexpr const char* deleteBatchRow = "DELETE FROM batches WHERE id = ?1";

constexpr char batchColumns[] = R"(
    SELECT b.id, b.code, b.session_id, s.held_on, b.plant_id, b.stock_plant_id, b.method_id, b.station_id, b.medium_id,
           b.treatment_id, b.cutting_kind_id, b.stuck, b.trial_id, b.block, b.closed_on, b.close_reason, b.note, b.positions,
           b.licence)";
constexpr char batchesWithTheirDay[] = " FROM batches b JOIN sessions s ON s.id = b.session_id";
constexpr char byDayAndCode[] = " ORDER BY s.held_on, b.code";

constexpr auto selectBatch = joined(batchColumns, batchesWithTheirDay, " WHERE b.id = ?1");
constexpr auto selectBatches = joined(batchColumns, batchesWithTheirDay, byDayAndCode);
// As they lie in the file: sorting whole rows takes SQLite longer than reading them.
constexpr auto selectBatchesUnsorted =
    joined(batchColumns, " FROM batches b CROSS JOIN sessions s ON s.id = b.session_id");
constexpr auto selectBatchesOfPlant = joined(batchColumns, batchesWithTheirDay, " WHERE b.plant_id = ?1", byDayAndCode);
constexpr auto selectBatchesAt = joined(batchColumns, batchesWithTheirDay, " WHERE b.station_id = ?1", byDayAndCode);
constexpr auto selectBatchesStandingAt = joined(batchColumns, batchesWithTheirDay, R"(
    WHERE b.station_id = ?1 AND b.positions <> '' AND b.closed_on IS NULL
      AND b.stuck > (SELECT COALESCE(SUM(rooted + withdrawn), 0) FROM checks WHERE batch_id = b.id)
                    + (SELECT COALESCE(SUM(l.lost), 0) FROM checks k JOIN check_losses l ON l.check_id = k.id
                       WHERE k.batch_id = b.id))",
                                                byDayAndCode);
// Both in the order in which their rows lie in the file.
constexpr const char* selectCountsOfChecks =
    "SELECT id, batch_id, rooted, withdrawn, checked_on FROM checks ORDER BY id";
constexpr const char* selectCountsOfLosses = "SELECT check_id, lost FROM check_losses ORDER BY check_id";
constexpr auto selectBatchLine = joined(batchColumns, R"(,
           (SELECT COALESCE(SUM(rooted), 0) FROM checks WHERE batch_id = b.id),
           (SELECT COALESCE(SUM(l.lost), 0) FROM checks k JOIN check_losses l ON l.check_id = k.id WHERE k.batch_id = b.id),
           (SELECT COALESCE(SUM(withdrawn), 0) FROM checks WHERE batch_id = b.id),
           (SELECT MAX(checked_on) FROM checks WHERE batch_id = b.id))",
                                        batchesWithTheirDay, " WHERE b.id = ?1");
constexpr const char* selectBatchesOfSession = "SELECT id FROM batches WHERE session_id = ?1 ORDER BY code";
constexpr const char* findBatchCoded = "SELECT id FROM batches WHERE code = ?1";
constexpr const char* selectCodes = "SELECT code FROM batches WHERE code >= ?1 AND code < ?2 ORDER BY code DESC";
constexpr const char* findBatchWithSession = "SELECT id FROM batches WHERE session_id = ?1 LIMIT 1";
constexpr const char* findBatchWithPlant = "SELECT id FROM batches WHERE plant_id = ?1 LIMIT 1";
constexpr const char* findBatchWithStockPlant = "SELECT id FROM batches WHERE stock_plant_id = ?1 LIMIT 1";
constexpr const char* findBatchWithMethod = "SELECT id FROM batches WHERE method_id = ?1 LIMIT 1";
constexpr const char* findBatchWithStation = "SELECT id FROM batches WHERE station_id = ?1 LIMIT 1";
constexpr const char* findBatchWithMedium = "SELECT id FROM batches WHERE medium_id = ?1 LIMIT 1";
constexpr const char* findBatchWithTreatment = "SELECT id FROM batches WHERE treatment_id = ?1 LIMIT 1";
constexpr const char* findBatchWithCuttingKind = "SELECT id FROM batches WHERE cutting_kind_id = ?1 LIMIT 1";
constexpr const char* findBatchWithTrial = "SELECT id FROM batches WHERE trial_id = ?1 LIMIT 1";

core::Batch batchFrom(const Query& row) {
    return {.id = row.id<core::BatchId>(0),
            .code = row.text(1),
            .session = row.id<core::SessionId>(2),
            .stuckOn = row.date(3),
            .plant = row.id<core::PlantId>(4),
            .stockPlant = row.id<core::StockPlantId>(5),
            .method = row.id<core::MethodId>(6),
            .station = row.id<core::StationId>(7),
            .medium = row.id<core::MediumId>(8),
            .treatment = row.id<core::TreatmentId>(9),
            .cuttingKind = row.id<core::CuttingKindId>(10),
            .stuck = row.number(11),
            .positions = row.text(17),
            .trial = row.id<core::TrialId>(12),
            .block = row.text(13),
            .closedOn = row.optionalDate(14),
            .closeReason = row.text(15),
            .note = row.text(16),
            .licence = row.text(18)};
}

/// Nothing has become of the cuttings yet. By day and code.
std::vector<core::BatchLine> linesWithoutCounts(Connection& connection) {
    std::vector<core::Batch> batches;
    for (Query row = connection.query(selectBatchesUnsorted.data()); row.step();) batches.push_back(batchFrom(row));
    std::vector<core::Batch*> inOrder;
    inOrder.reserve(batches.size());
    for (core::Batch& batch : batches) inOrder.push_back(&batch);
    std::ranges::sort(inOrder, {}, [](const core::Batch* batch) { return std::tie(batch->stuckOn, batch->code); });
    std::vector<core::BatchLine> lines;
    lines.reserve(batches.size());
    for (core::Batch* batch : inOrder) {
        lines.push_back({.batch = std::move(*batch), .tally = {}});
        lines.back().tally.stuck = lines.back().batch.stuck;
    }
    return lines;
}

/// What became of the cuttings. Two walks over the file side by side: looking up the checks of each batch, and the losses of each check,
/// takes several times as long.
void count(std::vector<core::BatchLine>& lines, Connection& connection) {
    std::unordered_map<core::BatchId, core::Tally*> tallies;
    tallies.reserve(lines.size());
    for (core::BatchLine& line : lines) tallies.emplace(line.batch.id, &line.tally);
    core::Tally ofNoBatch;  // of a damaged file; verify tells of it
    Query loss = connection.query(selectCountsOfLosses);
    bool hasLoss = loss.step();
    for (Query check = connection.query(selectCountsOfChecks); check.step();) {
        const std::int64_t id = check.bigNumber(0);
        const auto found = tallies.find(check.id<core::BatchId>(1));
        core::Tally& tally = found == tallies.end() ? ofNoBatch : *found->second;
        tally.rooted += check.number(2);
        tally.withdrawn += check.number(3);
        tally.lastCheckedOn = std::max(tally.lastCheckedOn, std::optional(check.date(4)));
        for (; hasLoss && loss.bigNumber(0) <= id; hasLoss = loss.step())
            if (loss.bigNumber(0) == id) tally.lost += loss.number(1);
    }
}

core::BatchLine batchLineFrom(const Query& row) {
    return {.batch = batchFrom(row),
            .tally = {.stuck = row.number(11),
                      .rooted = row.number(19),
                      .lost = row.number(20),
                      .withdrawn = row.number(21),
                      .lastCheckedOn = row.optionalDate(22)}};
}

int runBatch(Connection& connection, const char* sql, const core::Batch& batch) {
    return connection.run(sql, batch.id, batch.code, batch.session, batch.plant, batch.stockPlant, batch.method,
                          batch.station, batch.medium, batch.treatment, batch.cuttingKind, batch.stuck, batch.trial,
                          batch.block, batch.closedOn, batch.closeReason, batch.note, batch.positions, batch.licence);
}

}  // namespace

void insertRow(Connection& connection, const core::Batch& batch) {
    runBatch(connection, insertBatch, batch);
}

bool updateRow(Connection& connection, const core::Batch& batch) {
    return runBatch(connection, updateBatch, batch) == 1;
}

bool deleteRow(Connection& connection, core::BatchId id) {
    return connection.run(deleteBatchRow, id) == 1;
}

std::optional<core::Batch> batchIn(Connection& connection, core::BatchId id) {
    Query row = connection.query(selectBatch.data(), id);
    if (!row.step()) return std::nullopt;
    return batchFrom(row);
}

core::BatchId batchCoded(Connection& connection, const std::string& code) {
    Query row = connection.query(findBatchCoded, code);
    return row.step() ? row.id<core::BatchId>(0) : core::BatchId{};
}

void forEachBatch(Connection& connection, const std::function<void(core::Batch)>& visit) {
    for (Query row = connection.query(selectBatches.data()); row.step();) visit(batchFrom(row));
}

void forEachBatchOf(Connection& connection, core::PlantId plant, const std::function<void(core::Batch)>& visit) {
    for (Query row = connection.query(selectBatchesOfPlant.data(), plant); row.step();) visit(batchFrom(row));
}

std::vector<core::Batch> batchesAt(Connection& connection, core::StationId station) {
    std::vector<core::Batch> all;
    for (Query row = connection.query(selectBatchesAt.data(), station); row.step();) all.push_back(batchFrom(row));
    return all;
}

std::vector<core::Batch> batchesStandingAt(Connection& connection, core::StationId station) {
    std::vector<core::Batch> all;
    for (Query row = connection.query(selectBatchesStandingAt.data(), station); row.step();)
        all.push_back(batchFrom(row));
    return all;
}

std::vector<core::BatchId> batchesOf(Connection& connection, core::SessionId session) {
    std::vector<core::BatchId> all;
    for (Query row = connection.query(selectBatchesOfSession, session); row.step();)
        all.push_back(row.id<core::BatchId>(0));
    return all;
}

std::vector<core::BatchLine> allBatchLines(Connection& connection) {
    std::vector<core::BatchLine> lines = linesWithoutCounts(connection);
    count(lines, connection);
    return lines;
}

std::optional<core::BatchLine> batchLineIn(Connection& connection, core::BatchId id) {
    Query row = connection.query(selectBatchLine.data(), id);
    if (!row.step()) return std::nullopt;
    return batchLineFrom(row);
}

void forEachCode(Connection& connection, const std::string& start,
                 const std::function<bool(const std::string&)>& goesOn) {
    // U+10FFFF sorts after whatever may follow.
    Query row = connection.query(selectCodes, start, start + "\xF4\x8F\xBF\xBF");
    while (row.step() && goesOn(row.text(0))) {
    }
}

bool hasBatches(Connection& connection, core::SessionId id) {
    return connection.query(findBatchWithSession, id).step();
}

bool hasBatches(Connection& connection, core::PlantId id) {
    return connection.query(findBatchWithPlant, id).step();
}

bool hasBatches(Connection& connection, core::StockPlantId id) {
    return connection.query(findBatchWithStockPlant, id).step();
}

bool hasBatches(Connection& connection, core::MethodId id) {
    return connection.query(findBatchWithMethod, id).step();
}

bool hasBatches(Connection& connection, core::StationId id) {
    return connection.query(findBatchWithStation, id).step();
}

bool hasBatches(Connection& connection, core::MediumId id) {
    return connection.query(findBatchWithMedium, id).step();
}

bool hasBatches(Connection& connection, core::TreatmentId id) {
    return connection.query(findBatchWithTreatment, id).step();
}

bool hasBatches(Connection& connection, core::CuttingKindId id) {
    return connection.query(findBatchWithCuttingKind, id).step();
}

bool hasBatches(Connection& connection, core::TrialId id) {
    return connection.query(findBatchWithTrial, id).step();
}

}  // namespace db
