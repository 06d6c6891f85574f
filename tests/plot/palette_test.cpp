// SPDX-License-Identifier: MIT
#include "app/plot/palette.h"

#include <QPalette>

#include "gtest/gtest.h"

namespace {

const std::vector<const plot::Palette*>& palettes() {
    static const std::vector<const plot::Palette*> all{&plot::Palette::light(), &plot::Palette::dark(),
                                                       &plot::Palette::highContrast(), &plot::Palette::onPaper()};
    return all;
}

}  // namespace

TEST(Contrast, GivesTheEndsOfTheScale) {
    EXPECT_NEAR(plot::contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(plot::contrast(Qt::red, Qt::red), 1, 1e-12);
    // Okabe and Ito's blue on white, computed independently: 5.19.
    EXPECT_NEAR(plot::contrast(QColor("#0072B2"), Qt::white), 5.19, 0.005);
}

TEST(Palette, KeepsTextReadable) {
    for (const plot::Palette* palette : palettes()) {
        EXPECT_GE(plot::contrast(palette->text, palette->paper), 7);
        EXPECT_GE(plot::contrast(palette->quietText, palette->paper), 4.5);
        for (const plot::SeriesLook& look : palette->series)
            EXPECT_GE(plot::contrast(look.text, palette->paper), 4.5) << look.text.name().toStdString();
    }
}

TEST(Palette, KeepsMarksVisibleOnThePaperAndOnTheirBand) {
    for (const plot::Palette* palette : palettes()) {
        EXPECT_GE(plot::contrast(palette->axis, palette->paper), 3);
        for (const plot::SeriesLook& look : palette->series) {
            EXPECT_GE(plot::contrast(look.line, palette->paper), 3) << look.line.name().toStdString();
            EXPECT_GE(plot::contrast(look.line, look.band), 3) << look.line.name().toStdString();
        }
    }
}

TEST(Palette, KeepsLinesVisibleWhereTwoBandsLieOverEachOther) {
    for (const plot::Palette* palette : palettes())
        for (const std::size_t series : {0U, 1U}) {  // bands are of two at most
            EXPECT_GE(plot::contrast(palette->series[series].line, palette->overlap), 3);
            EXPECT_GE(plot::contrast(palette->text, palette->boxOverlap), 4.5);
        }
}

TEST(Palette, HasSevenToOneForAllTextInHighContrast) {
    const plot::Palette& palette = plot::Palette::highContrast();
    for (const QColor& ink : {palette.text, palette.quietText, palette.axis})
        EXPECT_GE(plot::contrast(ink, palette.paper), 7) << ink.name().toStdString();
    for (const plot::SeriesLook& look : palette.series) {
        EXPECT_GE(plot::contrast(look.text, palette.paper), 7) << look.text.name().toStdString();
        EXPECT_GE(plot::contrast(look.line, look.box), 4.5) << look.line.name().toStdString();
    }
}

TEST(Palette, TellsSeriesApartWithoutColour) {
    for (const plot::Palette* palette : palettes())
        for (std::size_t i = 0; i < palette->series.size(); ++i)
            for (std::size_t j = i + 1; j < palette->series.size(); ++j)
                EXPECT_NE(palette->series[i].marker, palette->series[j].marker);
}

TEST(Palette, HasOpaqueTints) {
    for (const plot::Palette* palette : palettes())
        for (const plot::SeriesLook& look : palette->series) {
            EXPECT_EQ(look.band.alpha(), 255);
            EXPECT_EQ(look.box.alpha(), 255);
        }
    EXPECT_EQ(plot::Palette::light().look(0).band, QColor("#D6E8F3"));
}

TEST(Palette, FollowsTheDesktop) {
    EXPECT_EQ(&plot::paletteFor(QPalette(Qt::black, Qt::white, Qt::white, Qt::gray, Qt::gray, Qt::black, Qt::white)),
              &plot::Palette::light());
    EXPECT_EQ(&plot::paletteFor(QPalette(Qt::white, Qt::black, Qt::gray, Qt::black, Qt::gray, Qt::white, "#202020")),
              &plot::Palette::dark());
    EXPECT_EQ(&plot::paletteFor(QPalette(Qt::white, Qt::black, Qt::gray, Qt::black, Qt::gray, Qt::white, Qt::black)),
              &plot::Palette::highContrast());
}
