// SPDX-License-Identifier: MIT
// Offsets of labels and the page to find them by, measured on the print.
#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <cmath>

#include "app/report/labels.h"
#include "gtest/gtest.h"
#include "tests/report/sheet_examples.h"

namespace {

using report::LabelOffset;
using report::LabelStock;

constexpr int offsetDots = 300;
constexpr double dotsAMillimetre = offsetDots / 25.4;

QImage firstPage(const QString& file, const QTemporaryDir& folder) {
    QProcess process;
    process.start("pdftoppm",
                  {"-r", QString::number(offsetDots), "-gray", "-png", "-singlefile", file, folder.filePath("page")});
    EXPECT_TRUE(process.waitForFinished());
    return QImage(folder.filePath("page.png"));
}

/// Where the leftmost and the topmost ink is, in millimetres.
QPointF firstInk(const QImage& page) {
    int left = page.width(), top = page.height();
    for (int y = 0; y < page.height(); ++y)
        for (int x = 0; x < page.width(); ++x)
            if (qGray(page.pixel(x, y)) < 128) left = std::min(left, x), top = std::min(top, y);
    return QPointF(left, top) / dotsAMillimetre;
}

QPointF inkOfLabel(LabelOffset offset) {
    const QTemporaryDir folder;
    const std::vector<core::Batch> batches{examples::batchChecked(0).batch};
    report::writePdf({.labels = report::labelsOf(batches, examples::smallShelves()),
                      .stock = report::labelStocks("A4").front(),
                      .start = 1,
                      .offset = offset},
                     folder.filePath("labels.pdf"));
    return firstInk(firstPage(folder.filePath("labels.pdf"), folder));
}

bool hasInk(const QImage& page, const QRectF& millimetres) {
    const QRect area =
        QRectF(millimetres.topLeft() * dotsAMillimetre, millimetres.size() * dotsAMillimetre).toAlignedRect();
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x)
            if (page.rect().contains(x, y) && qGray(page.pixel(x, y)) < 128) return true;
    return false;
}

}  // namespace

TEST(LabelOffset, MovesEverythingByHalfMillimetres) {
    const QPointF still = inkOfLabel({}), moved = inkOfLabel({.right = 3, .down = -4});
    EXPECT_NEAR(moved.x() - still.x(), 1.5, 0.1);
    EXPECT_NEAR(moved.y() - still.y(), -2, 0.1);
}

TEST(LabelCalibration, DrawsTheOutlineOfEveryLabelWhereItWouldBePrinted) {
    for (const LabelStock& stock : report::labelStocks("A4")) {
        SCOPED_TRACE(stock.word.toStdString());
        const QTemporaryDir folder;
        const LabelOffset offset{.right = 1, .down = 2};
        report::writePdf(report::LabelCalibration{.stock = stock, .offset = offset}, folder.filePath("page.pdf"));
        const QImage page = firstPage(folder.filePath("page.pdf"), folder);
        for (int number = 0; number < stock.perPage(); ++number) {
            const QRectF label = stock.place(number).translated(0.5, 1);
            const double across = label.left() + 0.9 * label.width(), down = label.top() + 0.1 * label.height();
            EXPECT_TRUE(hasInk(page, {across, label.top() - 0.12, 0.5, 0.24})) << number;
            EXPECT_TRUE(hasInk(page, {label.left() - 0.12, down, 0.24, 0.3})) << number;
        }
    }
}

TEST(LabelCalibration, HasItsFiguresAtTheOffsetThatTheyName) {
    const LabelStock stock = report::labelStocks("A4").front();
    const QTemporaryDir folder;
    report::writePdf(report::LabelCalibration{.stock = stock, .offset = {.right = 2, .down = 0}},
                     folder.filePath("page.pdf"));
    QProcess process;
    process.start("pdftotext", {"-bbox", folder.filePath("page.pdf"), "-"});
    ASSERT_TRUE(process.waitForFinished());
    const QString boxes =
        QString::fromUtf8(process.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);  // ligatures
    // The outline is 1 mm to the right of the label's own place: the line that says 4 lies 4 mm to the right of that place.
    static const QRegularExpression four(
        QStringLiteral("xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\"[^>]*>4<"));
    bool isThere = false;
    for (auto match = four.globalMatch(boxes); match.hasNext();) {
        const QRegularExpressionMatch figure = match.next();
        const double middle = (figure.captured(1).toDouble() + figure.captured(3).toDouble()) / 2 * 25.4 / 72;
        isThere = isThere || std::abs(middle - stock.place(0).left() - 4) < 0.2;
    }
    EXPECT_TRUE(isThere) << boxes.toStdString();
    EXPECT_TRUE(boxes.contains("offset"));
}
