// SPDX-License-Identifier: MIT
#include "app/report/batch_summary_sheet.h"

#include <utility>

#include "app/plot/local_time.h"
#include "app/report/plain_text.h"
#include "app/report/sheet_words.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/plot/more_examples.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

std::string printed(const core::BatchRecord& record, const core::BatchSummary& summary, const core::Shelves& shelves) {
    return report::plainText(
               report::batchSummarySheet(record, examples::session(), summary, shelves, examples::printedAt()))
        .toStdString();
}

}  // namespace

TEST(BatchSummarySheet, SaysAllThatTheBenchKnows) {
    core::BatchSummary summary = examples::batchSummary();
    summary.cautions = {"This batch is still open: 2 cuttings are undecided, so the rate so far is not its last word."};
    examples::expectGolden(
        report::plainText(report::batchSummarySheet(examples::batchChecked(4), examples::session(), summary,
                                                    examples::smallShelves(), examples::printedAt())),
        "batch_summary");
}

TEST(BatchSummarySheet, SaysOfABatchThatNobodyLookedAtThatThereIsNothingYet) {
    core::BatchSummary summary;
    summary.tally.stuck = 24;
    summary.asCounted = {0, 0.14};
    const std::string text = printed(examples::batchChecked(0), summary, examples::smallShelves());
    EXPECT_THAT(text, testing::HasSubstr("Nobody has looked at this batch yet."));
    EXPECT_THAT(text, testing::HasSubstr("no earlier batch of this plant by this method"));
    EXPECT_THAT(text, testing::HasSubstr("none lost"));
}

TEST(BatchSummarySheet, MarksInventedDataAndPrintsCitations) {
    core::Shelves shelves = examples::smallShelves();
    shelves.facts.isInvented = true;
    shelves.facts.citation = "Bartlett (1935)";
    const std::string text = printed(examples::batchChecked(4), examples::batchSummary(), shelves);
    EXPECT_THAT(text, testing::HasSubstr("Invented data: a demonstration, not a record"));
    EXPECT_THAT(text, testing::HasSubstr("Source of the records: Bartlett (1935)"));
}

TEST(BatchSummarySheet, PutsUpWithThingsThatAreNotOnTheShelves) {
    const std::string text = printed(examples::batchChecked(2), examples::batchSummary(), core::Shelves{});
    EXPECT_THAT(text, testing::HasSubstr("Plant: not recorded"));
    EXPECT_THAT(text, testing::HasSubstr("Medium: not recorded"));
}

TEST(BatchSummarySheet, SaysWhyABatchWasClosedByHand) {
    core::BatchRecord record = examples::batchChecked(4);
    record.batch.closedOn = core::dateFromIso("2026-04-11");
    record.batch.closeReason = "tray needed";
    EXPECT_THAT(printed(record, examples::batchSummary(), examples::smallShelves()),
                testing::HasSubstr("closed 11 April 2026: tray needed"));
}

TEST(BatchSummarySheet, SetsTheBatchBesideTheOthers) {
    core::BatchSummary summary = examples::batchSummary();
    summary.chart = examples::strikeChart(12);
    summary.chart.batches[5].code = "B260047K";
    summary.againstPast = core::AgainstThePast{};
    summary.againstPast->inWords =
        "By day 28 6 earlier batches would foretell 10 to 20 rooted of 24 nine times in ten.";
    const std::string text = printed(examples::batchChecked(4), summary, examples::smallShelves());
    EXPECT_THAT(text, testing::HasSubstr("would foretell 10 to 20 rooted of 24"));
    EXPECT_THAT(text, testing::HasSubstr("B260047K: 0"));
    EXPECT_THAT(text, testing::HasSubstr("fewer than luck would explain"));
    EXPECT_THAT(text, testing::HasSubstr("beta-binomial, with the likeness within batches"));
}

TEST(BatchSummarySheet, TellsWhatHappenedAroundTheBatch) {
    const core::BatchRecord record = examples::batchChecked(4);
    const auto on = [&](int day) { return plot::momentOf(core::addDays(record.batch.stuckOn, day), 9 * 60); };
    report::BatchEvents events;
    events.life.station = QStringLiteral("bench tray 2");
    events.life.until = core::addDays(record.batch.stuckOn, 28);
    events.life.bands = plot::bandsOf(record, examples::smallShelves());
    for (const int day : {0, 14})
        for (const auto& [quantity, value] : {std::pair(core::Quantity::AirTemperature, 15.0 + day / 2.0),
                                              std::pair(core::Quantity::RelativeHumidity, 91.0)})
            events.life.readings.push_back({.quantity = quantity, .readAt = on(day), .value = value});
    events.life.care.push_back({.doneAt = on(3), .kind = core::CareKind::Misted, .note = "morning and evening"});
    QImage image(40, 30, QImage::Format_RGB32);
    image.fill(Qt::gray);
    events.photos = {{image, QStringLiteral("day 2, 16 March 2026"), QStringLiteral("stuck")},
                     {image, QStringLiteral("day 28, 11 April 2026"), QStringLiteral("potted on")}};
    events.life.expenses.push_back({.spentOn = record.batch.stuckOn, .what = "rooting gel", .hundredths = 1250});
    events.cost.emplace();
    events.cost->cost.parts.add(core::CostPart::Lasting, 3.25);
    events.cost->cost.parts.add(core::CostPart::WrittenDown, 12.5);
    events.cost->cost.lines = {{.part = core::CostPart::Lasting, .what = "air pump", .amount = 3.25},
                               {.part = core::CostPart::WrittenDown, .what = "rooting gel", .amount = 12.5}};
    events.cost->missing = {"No tariff holds on 2026-03-14, so the electricity of air pump isn't in it."};
    const report::Sheet sheet = report::batchSummarySheet(record, examples::session(), examples::batchSummary(),
                                                          examples::smallShelves(), examples::printedAt(), events);
    EXPECT_FALSE(sheet.fitsOnePage);
    examples::expectGolden(report::plainText(sheet), "batch_summary_events");
}

TEST(BatchSummarySheet, DrawsNoChartOfASingleBatch) {
    core::BatchSummary summary = examples::batchSummary();
    summary.chart = examples::strikeChart(1);
    EXPECT_THAT(printed(examples::batchChecked(4), summary, examples::smallShelves()),
                testing::Not(testing::HasSubstr("luck alone")));
}
