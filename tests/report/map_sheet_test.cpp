// SPDX-License-Identifier: MIT
#include "app/report/map_sheet.h"

#include <QTemporaryDir>

#include "app/report/batch_summary_sheet.h"
#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "core/comparison/batch_summary.h"
#include "gtest/gtest.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

/// On "bench tray 2" of 4 rows of 6: of `stuck` cuttings one rooted at its first position, one lost at its second.
core::BatchRecord placedBatch(std::int64_t id, const std::string& code, const std::string& positions, int stuck) {
    core::BatchRecord record;
    record.batch = examples::batchChecked(0).batch;
    record.batch.id = {id};
    record.batch.code = code;
    record.batch.positions = positions;
    record.batch.stuck = stuck;
    const std::vector<core::Position> places = *core::positionsFrom(positions);
    core::Check check;
    check.id = {id};
    check.batch = record.batch.id;
    check.checkedOn = core::addDays(record.batch.stuckOn, 21);
    check.rooted = 1;
    check.losses = {{.cause = {8}, .count = 1}};
    check.findings = {{.position = places[0], .outcome = core::Outcome::Rooted, .cause = {}},
                      {.position = places[1], .outcome = core::Outcome::Lost, .cause = {8}}};
    record.checks = {check};
    return record;
}

core::Station benchTray() {
    core::Station station = examples::smallShelves().stations.front();
    station.blocked = "D6";
    return station;
}

core::Shelves shelvesWithTray() {
    core::Shelves shelves = examples::smallShelves();
    shelves.stations.front() = benchTray();
    return shelves;
}

std::vector<core::BatchRecord> twoBatches() {
    return {placedBatch(100, "B260001C", "A1-A6", 6), placedBatch(101, "B260002D", "B1-B6, C1-C2", 8)};
}

}  // namespace

TEST(MapSheet, ShowsWhatStandsAtEachPosition) {
    examples::expectGolden(
        report::plainText(report::mapSheet(benchTray(), twoBatches(), {}, shelvesWithTray(), examples::printedAt())),
        "map_sheet");
}

TEST(MapSheet, OfOneBatchKeepsTheOthersApart) {
    const report::Sheet sheet =
        report::mapSheet(benchTray(), twoBatches(), {100}, shelvesWithTray(), examples::printedAt());
    EXPECT_EQ(sheet.title, "Map of bench tray 2 with batch B260001C");
    EXPECT_TRUE(report::plainText(sheet).contains("Smaller and pale: of other batches."));
}

TEST(MapSheet, SaysWhenNobodyRecordedPositions) {
    const QString text = report::plainText(
        report::mapSheet(benchTray(), {examples::batchChecked(2)}, {}, shelvesWithTray(), examples::printedAt()));
    EXPECT_TRUE(text.contains("No batch says where on it its cuttings stand.")) << text.toStdString();
    EXPECT_TRUE(text.contains("23 free, 1 blocked")) << text.toStdString();
}

TEST(MapSheet, FitsOnePage) {
    for (const report::Paper paper : {report::Paper::A4, report::Paper::Letter})
        EXPECT_EQ(report::pageCount(
                      report::mapSheet(benchTray(), twoBatches(), {}, shelvesWithTray(), examples::printedAt()), paper),
                  1);
}

TEST(BatchSummarySheet, HasTheMapOfABatchWithPositions) {
    const core::Shelves shelves = shelvesWithTray();
    const core::BatchRecord record = twoBatches().front();
    const std::vector<core::BatchRecord> all{record};
    const auto textOf = [&](const core::BatchRecord& batch) {
        return report::plainText(report::batchSummarySheet(
            batch, examples::session(), core::summaryOf(batch, shelves, all, *core::dateFromIso("2026-05-01")), shelves,
            examples::printedAt()));
    };
    EXPECT_TRUE(textOf(record).contains("WHERE THEY STOOD"));
    EXPECT_TRUE(textOf(record).contains("Dark with R: rooted."));
    core::BatchRecord unplaced = record;
    unplaced.batch.positions.clear();
    unplaced.checks.front().findings.clear();
    EXPECT_FALSE(textOf(unplaced).contains("WHERE THEY STOOD"));
}
