// SPDX-License-Identifier: MIT
#include "app/report/labels.h"

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <map>

#include "app/report/label_codes.h"
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

/// What an independent reader sees on one label, cut out of its page: the same from each of its symbols, which is then said once.
QString scanned(const QImage& page, const QRectF& millimetres, const QTemporaryDir& folder) {
    const double dots = 300 / 25.4;
    const QRectF area(millimetres.topLeft() * dots, millimetres.size() * dots);
    const QString file = folder.filePath("label.png");
    EXPECT_TRUE(page.copy(area.toRect()).save(file));
    QStringList seen = outputOfTool("zbarimg", {"-q", "--raw", file}).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    seen.removeDuplicates();
    return seen.join(QLatin1Char(' '));
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
                                             .mark = "",
                                             .licence = "protected: no licence written down"}));
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
    EXPECT_EQ(report::qrCodeOf("B260047K", 2).side, 25) << "no smaller than asked for";
}

TEST(LabelCodes, StandAsOftenAsThereIsRoomBesideTheText) {
    const std::map<QString, std::size_t> symbols{
        {"a4-21", 6}, {"a4-65", 2}, {"letter-30", 6}, {"roll-50x25", 4}, {"stake-100x16", 5}};
    for (const LabelStock& each : report::labelStocks("A4")) {
        SCOPED_TRACE(each.word.toStdString());
        const report::LabelCodes codes = report::codesOn("B260047K", each.label);
        ASSERT_EQ(codes.places.size(), symbols.at(each.word));
        EXPECT_GE(each.label.width() - codes.width, 26);
        const double light = 4 * codes.module - 1e-9;
        for (std::size_t number = 0; number < codes.places.size(); ++number) {
            const QRectF withLight = codes.symbol(number).adjusted(-light, -light, light, light);
            EXPECT_TRUE(QRectF(0, 0, codes.width, each.label.height()).contains(withLight));
            for (std::size_t other = 0; other < number; ++other)
                EXPECT_FALSE(withLight.intersects(codes.symbol(other))) << number << " and " << other;
        }
    }
}

TEST(LabelCodes, AreNoneWhereTheCodeIsTooLongForTheLabel) {
    EXPECT_EQ(report::codesOn("", {63.5, 38.1}).places.size(), 0U);
    const report::LabelCodes none = report::codesOn(QString(200, QLatin1Char('x')), {38.1, 21.2});
    EXPECT_TRUE(none.places.empty());
    EXPECT_EQ(none.width, 0);
    EXPECT_GE(report::codesOn("north house/spring/lavender/tray-17b", {63.5, 38.1}).places.size(), 1U);
}

TEST(LabelCodes, StandOnWholeDotsOfAPrinterOf203DotsAnInch) {
    const QTemporaryDir folder;
    report::writePdf(somePrint("roll-50x25", 1), folder.filePath("labels.pdf"));
    outputOfTool("pdftoppm", {"-r", "203", "-gray", "-png", folder.filePath("labels.pdf"), folder.filePath("page")});
    const QImage page = QImage(folder.filePath("page-1.png")).convertToFormat(QImage::Format_Grayscale8);
    ASSERT_FALSE(page.isNull());
    const report::LabelCodes codes = report::codesOn("B260001K", stock("roll-50x25").label);
    // A printer for labels prints a dot or none: every module is three dots wide and high, and all nine are alike.
    for (const QPointF& place : codes.places) {
        const QPoint corner = (place * 203 / 25.4).toPoint();
        for (int y = 0; y < 3 * codes.code.side; ++y)
            for (int x = 0; x < 3 * codes.code.side; ++x)
                ASSERT_EQ(page.constScanLine(corner.y() + y)[corner.x() + x] < 128, codes.code.isDark(y / 3, x / 3))
                    << x << ", " << y;
    }
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
