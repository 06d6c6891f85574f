// SPDX-License-Identifier: MIT
#include "app/report/batch_summary_sheet.h"

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

TEST(BatchSummarySheet, DrawsNoChartOfASingleBatch) {
    core::BatchSummary summary = examples::batchSummary();
    summary.chart = examples::strikeChart(1);
    EXPECT_THAT(printed(examples::batchChecked(4), summary, examples::smallShelves()),
                testing::Not(testing::HasSubstr("luck alone")));
}
