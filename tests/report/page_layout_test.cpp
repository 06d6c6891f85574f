// SPDX-License-Identifier: MIT
#include "app/report/page_layout.h"

#include <QImage>
#include <QPainter>

#include "app/plot/figure_font.h"
#include "app/report/batch_summary_sheet.h"
#include "app/report/comparison_sheet.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/report/sheet_examples.h"

namespace {

report::Piece piece(double height, bool staysWithNext = false) {
    return {.height = height,
            .staysWithNext = staysWithNext,
            .paint = [](plot::Canvas&, const QRectF&) {},
            .repeated = nullptr};
}

// All pieces of a sheet below each other on one long page of 178 mm; returns its texts.
std::vector<plot::DrawnText> paintedTexts(const report::Sheet& sheet, const report::Squeeze& squeeze) {
    constexpr double dotsPerMillimetre = 96 / 25.4, width = 178 * dotsPerMillimetre;
    QImage image(static_cast<int>(width), 100, QImage::Format_RGB32);
    image.setDotsPerMeterX(3780);
    image.setDotsPerMeterY(3780);
    QPainter painter(&image);
    painter.setFont(plot::figureFont(squeeze.pointSize));
    plot::Canvas canvas(painter, plot::Palette::onPaper());
    double top = 0;
    for (const report::Piece& each : report::piecesOf(sheet, canvas, width, dotsPerMillimetre, squeeze)) {
        each.paint(canvas, {0, top, width, each.height});
        top += each.height;
    }
    return canvas.takeDrawing().texts;
}

void expectNoOverlap(const std::vector<plot::DrawnText>& texts) {
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = i + 1; j < texts.size(); ++j) {
            const QRectF shared = texts[i].area.intersected(texts[j].area);
            EXPECT_FALSE(shared.width() > 0.5 && shared.height() > 3)
                << texts[i].text.toStdString() << " | " << texts[j].text.toStdString();
        }
}

}  // namespace

TEST(Pages, TakeNoMoreThanTheyHold) {
    const std::vector<report::Piece> pieces{piece(40), piece(40), piece(40), piece(40)};
    const std::vector<report::Page> pages = report::pagesOf(pieces, 50, 90);
    ASSERT_EQ(pages.size(), 3U);
    EXPECT_EQ(pages[0].size(), 1U);
    EXPECT_EQ(pages[1].size(), 2U);
}

TEST(Pages, KeepAHeadingWithWhatFollows) {
    const std::vector<report::Piece> pieces{piece(70), piece(10, true), piece(40)};
    const std::vector<report::Page> pages = report::pagesOf(pieces, 100, 100);
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_EQ(pages[0].size(), 1U);
    EXPECT_EQ(pages[1].size(), 2U);
}

TEST(Pages, TakeAPieceThatIsTallerThanAnyPageOnAPageOfItsOwn) {
    const std::vector<report::Piece> pieces{piece(10), piece(500), piece(10)};
    EXPECT_EQ(report::pagesOf(pieces, 100, 100).size(), 3U);
}

TEST(PrintedPieces, NeverLetTwoTextsOverlap) {
    const report::Sheet batch =
        report::batchSummarySheet(examples::batchChecked(30), examples::session(), examples::batchSummary(),
                                  examples::smallShelves(), examples::printedAt());
    for (const report::Squeeze& squeeze : report::squeezes()) expectNoOverlap(paintedTexts(batch, squeeze));
    for (const core::Comparison& comparison :
         {examples::twoMethods(12), examples::longNames(), examples::manyArms(8), examples::neverChecked()})
        expectNoOverlap(
            paintedTexts(report::comparisonSheet(comparison, examples::smallShelves(), examples::printedAt()), {}));
}

TEST(PrintedPieces, StayBetweenTheMargins) {
    constexpr double width = 178 * 96 / 25.4;
    for (const plot::DrawnText& text : paintedTexts(
             report::comparisonSheet(examples::longNames(), examples::smallShelves(), examples::printedAt()), {})) {
        EXPECT_GE(text.area.left(), -0.5) << text.text.toStdString();
        EXPECT_LE(text.area.right(), width + 0.5) << text.text.toStdString();
    }
}
