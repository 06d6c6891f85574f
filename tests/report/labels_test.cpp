// SPDX-License-Identifier: MIT
#include "app/report/labels.h"

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/report/qr_code.h"
#include "db/logbook_error.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/report/sheet_examples.h"

namespace {

using report::LabelPrint;
using report::LabelStock;

QString outputOfTool(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished()) return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

LabelStock stock(const QString& word) {
    for (const LabelStock& each : report::labelStocks("A4"))
        if (each.word == word) return each;
    ADD_FAILURE() << "no stock " << word.toStdString();
    return {};
}

std::vector<core::Batch> someBatches(int count) {
    std::vector<core::Batch> batches;
    for (int number = 1; number <= count; ++number) {
        core::Batch batch = examples::batchChecked(0).batch;
        batch.code = QStringLiteral("B26%1K").arg(number, 4, 10, QLatin1Char('0')).toStdString();
        batches.push_back(batch);
    }
    return batches;
}

LabelPrint somePrint(const QString& word, int count, int start = 1) {
    return {
        .labels = report::labelsOf(someBatches(count), examples::smallShelves()), .stock = stock(word), .start = start};
}

/// Pages of a PDF as a printer of 300 dots an inch would draw them.
std::vector<QImage> pagesAsPrinted(const QString& file, const QTemporaryDir& folder) {
    outputOfTool("pdftoppm", {"-r", "300", "-gray", "-png", file, folder.filePath("page")});
    std::vector<QImage> pages;
    for (const QString& name : QDir(folder.path()).entryList({"page*.png"}, QDir::Files, QDir::Name))
        pages.emplace_back(folder.filePath(name));
    return pages;
}

/// What an independent reader sees on one label, cut out of its page.
QString scanned(const QImage& page, const QRectF& millimetres, const QTemporaryDir& folder) {
    const double dots = 300 / 25.4;
    const QRectF area(millimetres.topLeft() * dots, millimetres.size() * dots);
    const QString file = folder.filePath("label.png");
    EXPECT_TRUE(page.copy(area.toRect()).save(file));
    return outputOfTool("zbarimg", {"-q", "--raw", file}).trimmed();
}

}  // namespace

TEST(LabelStocks, StandWithinTheirPagesAndDoNotOverlap) {
    for (const LabelStock& each : report::labelStocks("A4")) {
        SCOPED_TRACE(each.word.toStdString());
        const QRectF page({0, 0}, each.page);
        for (int number = 0; number < each.perPage(); ++number) {
            EXPECT_TRUE(page.adjusted(-0.01, -0.01, 0.01, 0.01).contains(each.place(number)));
            for (int other = 0; other < number; ++other)
                EXPECT_FALSE(each.place(number).adjusted(0.01, 0.01, -0.01, -0.01).intersects(each.place(other)));
        }
        EXPECT_EQ(each.place(each.perPage()), each.place(0)) << "the next page begins where the first did";
    }
}

TEST(LabelStocks, OfferTheOneForTheLogbooksPaperFirst) {
    EXPECT_EQ(report::labelStocks("A4").front().word, "a4-21");
    EXPECT_EQ(report::labelStocks("Letter").front().word, "letter-30");
    EXPECT_EQ(report::labelStocks("Letter").size(), report::labelStocks("A4").size());
}

TEST(Labels, SayInPlainWhatStandsInTheBatch) {
    const std::vector<report::Label> labels = report::labelsOf(someBatches(1), examples::smallShelves());
    ASSERT_EQ(labels.size(), 1U);
    EXPECT_EQ(labels.front(), (report::Label{.code = "B260001K",
                                             .plant = "Lavandula angustifolia 'Hafod Blue'",
                                             .treatment = "IBA gel",
                                             .day = "14/03/2026",
                                             .count = "24 cuttings",
                                             .mark = ""}));
    core::Shelves invented = examples::smallShelves();
    invented.facts.isInvented = true;
    EXPECT_EQ(report::labelsOf(someBatches(1), invented).front().mark, "invented");
}

TEST(Labels, BeginWhereAHalfUsedSheetHasRoom) {
    EXPECT_EQ(somePrint("a4-21", 21).pages(), 1);
    EXPECT_EQ(somePrint("a4-21", 21, 2).pages(), 2);
    EXPECT_EQ(somePrint("roll-50x25", 3).pages(), 3);
    EXPECT_EQ(somePrint("a4-21", 0).pages(), 0);
    const QTemporaryDir folder;
    report::writePdf(somePrint("a4-21", 20, 20), folder.filePath("labels.pdf"));
    const std::vector<QImage> pages = pagesAsPrinted(folder.filePath("labels.pdf"), folder);
    ASSERT_EQ(pages.size(), 2U);
    const LabelStock a4 = stock("a4-21");
    EXPECT_EQ(scanned(pages[0], a4.place(18), folder), "");
    EXPECT_EQ(scanned(pages[0], a4.place(19), folder), "B260001K");
    EXPECT_EQ(scanned(pages[1], a4.place(0), folder), "B260003K");
}

TEST(Labels, AreReadByAScannerOnEverySheet) {
    for (const LabelStock& each : report::labelStocks("A4")) {
        SCOPED_TRACE(each.word.toStdString());
        const QTemporaryDir folder;
        const int count = std::min(each.perPage(), 21);
        report::writePdf(somePrint(each.word, count), folder.filePath("labels.pdf"));
        const std::vector<QImage> pages = pagesAsPrinted(folder.filePath("labels.pdf"), folder);
        ASSERT_EQ(pages.size(), 1U);
        for (int number = 0; number < count; number += 4)
            EXPECT_EQ(scanned(pages[0], each.place(number), folder).toStdString(),
                      someBatches(count)[static_cast<std::size_t>(number)].code);
    }
}

TEST(Labels, HaveTheCodeInPlainAtTenPointsAndMore) {
    for (const LabelStock& each : report::labelStocks("A4")) {
        SCOPED_TRACE(each.word.toStdString());
        const QTemporaryDir folder;
        report::writePdf(somePrint(each.word, 1), folder.filePath("labels.pdf"));
        const QString boxes = outputOfTool("pdftotext", {"-bbox", folder.filePath("labels.pdf"), "-"});
        const QRegularExpression word("yMin=\"([0-9.]+)\" xMax=\"[0-9.]+\" yMax=\"([0-9.]+)\">B260001K<");
        const QRegularExpressionMatch match = word.match(boxes);
        ASSERT_TRUE(match.hasMatch()) << boxes.toStdString();
        EXPECT_GE(match.captured(2).toDouble() - match.captured(1).toDouble(), 9.9);
        EXPECT_TRUE(outputOfTool("pdffonts", {folder.filePath("labels.pdf")}).contains("DejaVuSans-Bold"));
        const QString text = outputOfTool("pdftotext", {"-layout", folder.filePath("labels.pdf"), "-"});
        for (const char* said : {"Lavandula", "IBA gel", "14/03/2026", "24 cuttings"})
            EXPECT_TRUE(text.contains(said)) << said << " in " << text.toStdString();
    }
}

TEST(Labels, KeepTheWholeOfALongCodeFromElsewhere) {
    std::vector<core::Batch> batches = someBatches(1);
    batches.front().code = "north house/spring/lavender/tray-17b";
    const QTemporaryDir folder;
    report::writePdf(
        {.labels = report::labelsOf(batches, examples::smallShelves()), .stock = stock("a4-21"), .start = 1},
        folder.filePath("labels.pdf"));
    const QString text =
        outputOfTool("pdftotext", {folder.filePath("labels.pdf"), "-"}).remove(QRegularExpression("\\s"));
    EXPECT_TRUE(text.contains("northhouse/spring/lavender/tray-17b")) << text.toStdString();
}

TEST(Labels, SayWhenTheFileCannotBeWritten) {
    EXPECT_THROW(report::writePdf(somePrint("a4-21", 1), "/no such folder/labels.pdf"), db::LogbookError);
}

TEST(QrCode, IsTheSmallestForACodeOfOurs) {
    EXPECT_EQ(report::qrCodeOf("B260047K").side, 21) << "version 1";
    EXPECT_GT(report::qrCodeOf("a code of another logbook, and a long one").side, 21);
    EXPECT_EQ(report::qrCodeOf("").side, 0);
    EXPECT_EQ(report::qrCodeOf(QString(5000, QLatin1Char('x'))).side, 0);
}

TEST(QrCode, BecomesOnePathOfItsDarkModules) {
    const report::QrCode code = report::qrCodeOf("B260047K");
    const QPainterPath path = report::pathOf(code, {40, 40}, 10);
    for (int row = 0; row < code.side; ++row)
        for (int column = 0; column < code.side; ++column)
            EXPECT_EQ(path.contains(QPointF(45 + 10 * column, 45 + 10 * row)), code.isDark(row, column))
                << row << ", " << column;
    EXPECT_EQ(path.boundingRect(), QRectF(40, 40, 210, 210));
}
