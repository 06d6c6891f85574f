// SPDX-License-Identifier: MIT
#include "app/desktop/look/look.h"

#include <QPainter>

#include "app/plot/palette.h"
#include "gtest/gtest.h"

namespace {

using desktop::Theme;

constexpr Theme everyLook[] = {Theme::Light, Theme::Dark, Theme::HighContrast};

struct RolePair {
    QPalette::ColorRole text, ground;
};

/// Every pair that a widget may draw, text on ground.
constexpr RolePair textPairs[] = {{QPalette::WindowText, QPalette::Window},
                                  {QPalette::WindowText, QPalette::Base},
                                  {QPalette::WindowText, QPalette::AlternateBase},
                                  {QPalette::WindowText, QPalette::Button},
                                  {QPalette::Text, QPalette::Base},
                                  {QPalette::Text, QPalette::AlternateBase},
                                  {QPalette::Text, QPalette::Window},
                                  {QPalette::Text, QPalette::Button},
                                  {QPalette::BrightText, QPalette::Window},
                                  {QPalette::BrightText, QPalette::Base},
                                  {QPalette::ButtonText, QPalette::Button},
                                  {QPalette::ButtonText, QPalette::Window},
                                  {QPalette::HighlightedText, QPalette::Highlight},
                                  {QPalette::PlaceholderText, QPalette::Base},
                                  {QPalette::PlaceholderText, QPalette::AlternateBase},
                                  {QPalette::PlaceholderText, QPalette::Window},
                                  {QPalette::Link, QPalette::Base},
                                  {QPalette::Link, QPalette::Window},
                                  {QPalette::Link, QPalette::ToolTipBase},
                                  {QPalette::LinkVisited, QPalette::Base},
                                  {QPalette::LinkVisited, QPalette::Window},
                                  {QPalette::ToolTipText, QPalette::ToolTipBase}};

constexpr QPalette::ColorRole grounds[] = {QPalette::Window, QPalette::Base, QPalette::AlternateBase};

// WCAG 2.2's AA: 4.5:1 for text, 3:1 for what shows where a control is, which has the focus, and what is selected.
constexpr double forText = 4.5;
constexpr double forMarks = 3.0;

class Contrast : public testing::TestWithParam<Theme> {
  protected:
    QPalette palette_ = desktop::paletteFor(GetParam());
};

TEST_P(Contrast, OfEveryTextOnItsGroundIsEnough) {
    for (const QPalette::ColorGroup group : {QPalette::Active, QPalette::Inactive})
        for (const auto& [text, ground] : textPairs)
            EXPECT_GE(plot::contrast(palette_.color(group, text), palette_.color(group, ground)), forText)
                << "role " << text << " on role " << ground;
}

TEST_P(Contrast, OfTextThatCantBeUsedNowIsEnoughToReadIt) {
    // WCAG asks nothing of it; a grower still wants to know what would stand there.
    for (const auto& [text, ground] : textPairs)
        EXPECT_GE(plot::contrast(palette_.color(QPalette::Disabled, text), palette_.color(QPalette::Disabled, ground)),
                  forMarks)
            << "role " << text << " on role " << ground;
}

TEST_P(Contrast, OfColoursWithAMeaningIsEnoughOnEveryGround) {
    const QColor note = desktop::noteBackground(palette_);
    for (const QColor& colour :
         {desktop::faultColour(palette_), desktop::quietColour(palette_), desktop::accentColour(palette_)}) {
        for (const QPalette::ColorRole ground : grounds)
            EXPECT_GE(plot::contrast(colour, palette_.color(ground)), forText) << colour.name().toStdString();
        EXPECT_GE(plot::contrast(colour, note), forText) << colour.name().toStdString();
    }
    EXPECT_GE(plot::contrast(palette_.color(QPalette::WindowText), note), forText);
}

TEST_P(Contrast, OfEdgesFocusAndSelectionIsEnoughOnEveryGround) {
    const QColor marks[] = {desktop::edgeColour(palette_), desktop::focusColour(palette_),
                            palette_.color(QPalette::Highlight)};
    for (const QPalette::ColorRole ground : grounds)
        for (const QColor& mark : marks)
            EXPECT_GE(plot::contrast(mark, palette_.color(ground)), forMarks)
                << mark.name().toStdString() << " on role " << ground;
    for (const QColor& mark : {desktop::edgeColour(palette_), desktop::focusColour(palette_)}) {
        EXPECT_GE(plot::contrast(mark, palette_.color(QPalette::Button)), forMarks) << mark.name().toStdString();
        EXPECT_GE(plot::contrast(mark, desktop::noteBackground(palette_)), forMarks) << mark.name().toStdString();
    }
}

TEST_P(Contrast, OfFiguresIsEnoughInEveryLook) {
    const plot::Palette& figures = plot::paletteFor(palette_);
    EXPECT_GE(plot::contrast(figures.text, figures.paper), forText);
    EXPECT_GE(plot::contrast(figures.quietText, figures.paper), forText);
    EXPECT_GE(plot::contrast(figures.axis, figures.paper), forMarks);
    // A figure stands on the window as a sheet of its own: nothing of it may drown in what is around.
    EXPECT_GE(plot::contrast(figures.text, palette_.color(QPalette::Window)), forText);
    for (const plot::SeriesLook& look : figures.series) {
        EXPECT_GE(plot::contrast(look.text, figures.paper), forText) << look.text.name().toStdString();
        for (const QColor& ground : {figures.paper, look.band})
            EXPECT_GE(plot::contrast(look.line, ground), forMarks) << look.line.name().toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(EveryLook, Contrast, testing::ValuesIn(everyLook),
                         [](const auto& look) { return desktop::wordFor(look.param).toStdString(); });

TEST(HighContrast, HasSevenToOneAndYellowFocus) {
    const QPalette palette = desktop::paletteFor(Theme::HighContrast);
    // WCAG 2.2's AAA.
    for (const auto& [text, ground] : textPairs)
        EXPECT_GE(plot::contrast(palette.color(text), palette.color(ground)), 7.0)
            << "role " << text << " on role " << ground;
    EXPECT_TRUE(desktop::isHighContrast(palette));
    EXPECT_EQ(&plot::paletteFor(palette), &plot::Palette::highContrast()) << "figures, too";
    EXPECT_FALSE(desktop::isHighContrast(desktop::paletteFor(Theme::Dark)));
    EXPECT_NE(desktop::focusColour(palette), desktop::edgeColour(palette));
}

TEST(Look, KnowsItsThemesByTheirWords) {
    for (const Theme theme : {Theme::System, Theme::Light, Theme::Dark, Theme::HighContrast})
        EXPECT_EQ(desktop::themeFrom(desktop::wordFor(theme)), theme);
    EXPECT_EQ(desktop::themeFrom("purple"), std::nullopt);
}

TEST(Look, DrawsEveryIconOfTheProgram) {
    for (const char* name : {"batches", "bench", "close", "done", "fault", "head_to_head", "history", "new_logbook",
                             "print", "redo", "round", "sample", "session", "tables", "undo"}) {
        const QImage image = desktop::icon(name).pixmap(32).toImage();
        int inked = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) inked += qAlpha(image.pixel(x, y)) > 128;
        EXPECT_GT(inked, 40) << name;
    }
}

}  // namespace
