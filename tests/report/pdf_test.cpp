// SPDX-License-Identifier: MIT
#include "app/report/pdf.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/report/batch_summary_sheet.h"
#include "app/report/comparison_sheet.h"
#include "app/report/sheet.h"
#include "db/logbook_error.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/plot/more_examples.h"
#include "tests/report/sheet_examples.h"

namespace {

using report::Paper;

report::Sheet batchSheet(int checks) {
    return report::batchSummarySheet(examples::batchChecked(checks), examples::session(), examples::batchSummary(),
                                     examples::smallShelves(), examples::printedAt());
}

// The worst that a batch can bring along.
report::Sheet crowdedSheet() {
    core::BatchRecord record = examples::batchChecked(60);
    core::Session session = examples::session();
    for (int i = 0; i < 300; ++i) {
        record.batch.note += "a long note ";
        session.note += "a long day ";
    }
    for (core::Check& check : record.checks)
        check.note = "new leaves on most of them, some yellow, water low, topped up with rain water";
    core::BatchSummary summary = examples::batchSummary();
    for (int i = 0; i < 6; ++i)
        summary.cautions.push_back(
            "A caution of some length that goes on for more than one line, as cautions do that are written with care, "
            "and "
            "then says one thing more.");
    summary.chart = examples::strikeChart(40);
    summary.againstPast = core::AgainstThePast{};
    summary.againstPast->inWords =
        "By day 28 39 earlier batches of this plant by this method would foretell 9 to 20 rooted of 24 nine times in "
        "ten; here it was 18. That is nothing out of the ordinary.";
    core::Shelves shelves = examples::smallShelves();
    shelves.facts.isInvented = true;
    shelves.facts.citation =
        "A citation with several authors, a year, a title, a journal, a volume and pages, which takes more than one "
        "line here.";
    return report::batchSummarySheet(record, session, summary, shelves, examples::printedAt());
}

QString outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished()) return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

}  // namespace

TEST(BatchSummaryPdf, IsOnePageOnBothPapersHoweverManyChecks) {
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        for (const int checks : {0, 1, 4, 12, 30, 200})
            EXPECT_EQ(report::pageCount(batchSheet(checks), paper), 1) << checks;
        EXPECT_EQ(report::pageCount(crowdedSheet(), paper), 1);
    }
}

TEST(BatchSummaryPdf, SaysHowManyLinesItLeftOutAndKeepsFirstAndLast) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("batch.pdf");
    report::writePdf(batchSheet(60), file, Paper::A4);
    const QString text = outputOf("pdftotext", {"-layout", file, "-"});
    EXPECT_TRUE(text.contains(QRegularExpression("\\d+ of 60 lines are left out here"))) << text.toStdString();
    EXPECT_TRUE(text.contains("21/03/2026")) << "the first check";
    EXPECT_TRUE(text.contains("06/06/2026")) << "the last check: " << text.toStdString();
}

TEST(BatchSummaryPdf, KeepsTheSentenceOfAChartThatHasNoRoom) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("batch.pdf");
    report::writePdf(crowdedSheet(), file, Paper::A4);
    EXPECT_TRUE(outputOf("pdftotext", {"-layout", file, "-"}).contains("batches outside their limits"));
}

TEST(WrittenPdf, EmbedsItsFontsAndCanBeSearched) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("batch.pdf");
    report::writePdf(batchSheet(4), file, Paper::A4);
    const QStringList fonts = outputOf("pdffonts", {file}).split(u'\n', Qt::SkipEmptyParts).mid(2);
    EXPECT_GE(fonts.size(), 2);
    for (const QString& font : fonts) {
        EXPECT_TRUE(font.contains("DejaVuSans")) << font.toStdString();
        EXPECT_TRUE(font.contains(QRegularExpression("Identity-H\\s+yes"))) << font.toStdString();
    }
    const QString text = outputOf("pdftotext", {"-layout", file, "-"});
    for (const char* words : {"Batch B260047K", "Lavandula angustifolia", "18 of 24", "Page 1 of 1",
                              "Printed 12 April 2026", "Signature", "E. Marsh", "own past"})
        EXPECT_TRUE(text.contains(words)) << words << " in " << text.toStdString();
    EXPECT_TRUE(outputOf("pdfinfo", {file}).contains(QRegularExpression("Title:\\s+Batch B260047K")));
}

TEST(WrittenPdf, HasThePaperThatWasAskedFor) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("sheet.pdf");
    report::writePdf(batchSheet(4), file, Paper::Letter);
    EXPECT_TRUE(outputOf("pdfinfo", {file}).contains("612 x 792"));
    report::writePdf(batchSheet(4), file, Paper::A4);
    EXPECT_TRUE(outputOf("pdfinfo", {file}).contains("A4"));
}

TEST(WrittenPdf, MarksInventedDataOnEveryPage) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("report.pdf");
    core::Shelves shelves = examples::smallShelves();
    shelves.facts.isInvented = true;
    const report::Sheet sheet = report::comparisonSheet(examples::twoMethods(12), shelves, examples::printedAt());
    report::writePdf(sheet, file, Paper::A4);
    const int pages = report::pageCount(sheet, Paper::A4);
    ASSERT_GE(pages, 2);
    const QString text = outputOf("pdftotext", {"-layout", file, "-"});
    EXPECT_EQ(text.count("Invented data: a demonstration, not a record"), pages);
    EXPECT_EQ(text.count(QRegularExpression("Page \\d of \\d")), pages);
}

TEST(WrittenPdf, IsNotWrittenByHalves) {
    const QTemporaryDir folder;
    EXPECT_THROW(report::writePdf(batchSheet(4), folder.filePath("nowhere/batch.pdf"), Paper::A4), db::LogbookError);
}

TEST(LongTable, RepeatsItsHeadingsOnEachPage) {
    report::Sheet sheet;
    sheet.title = "Long";
    sheet.printedAt = examples::printedAt();
    report::Table table{.title = {},
                        .headings = {"count", "words"},
                        .aligned = {report::Align::Right, report::Align::Left},
                        .rows = {},
                        .mayBeShortened = false,
                        .plantColumn = -1};
    for (int i = 0; i < 150; ++i) table.rows.push_back({QString::number(i), "row " + QString::number(i)});
    sheet.blocks.emplace_back(table);
    const QTemporaryDir folder;
    const QString file = folder.filePath("long.pdf");
    report::writePdf(sheet, file, Paper::A4);
    const QString text = outputOf("pdftotext", {"-layout", file, "-"});
    EXPECT_EQ(text.count(QRegularExpression("count\\s+words")), report::pageCount(sheet, Paper::A4));
    for (int i = 0; i < 150; ++i) EXPECT_TRUE(text.contains("row " + QString::number(i))) << i;
}

TEST(Paper, ComesFromTheLogbooksWord) {
    EXPECT_EQ(report::paperFrom("Letter"), Paper::Letter);
    EXPECT_EQ(report::paperFrom("A4"), Paper::A4);
    EXPECT_EQ(report::paperFrom("anything"), Paper::A4);
}
