// SPDX-License-Identifier: MIT
#include "app/desktop/look/look.h"

#include <QPainter>

#include "app/plot/palette.h"
#include "gtest/gtest.h"

namespace {

using desktop::Theme;

constexpr Theme everyLook[] = {Theme::Light, Theme::Dark, Theme::HighContrast};

TEST(Look, SetsTextApartFromWhatItStandsOn) {
    for (const Theme theme : everyLook) {
        SCOPED_TRACE(desktop::wordFor(theme).toStdString());
        const QPalette palette = desktop::paletteFor(theme);
        const QColor window = palette.color(QPalette::Window);
        const QColor base = palette.color(QPalette::Base);
        // 4.5:1 is WCAG 2.2's AA for text.
        EXPECT_GE(plot::contrast(palette.color(QPalette::WindowText), window), 4.5);
        EXPECT_GE(plot::contrast(palette.color(QPalette::Text), palette.color(QPalette::AlternateBase)), 4.5);
        EXPECT_GE(plot::contrast(palette.color(QPalette::ButtonText), palette.color(QPalette::Button)), 4.5);
        EXPECT_GE(plot::contrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight)), 4.5);
        EXPECT_GE(plot::contrast(palette.color(QPalette::PlaceholderText), base), 4.5);
        EXPECT_GE(plot::contrast(palette.color(QPalette::Link), base), 4.5);
        EXPECT_GE(plot::contrast(palette.color(QPalette::ToolTipText), palette.color(QPalette::ToolTipBase)), 4.5);
        for (const QColor& colour :
             {desktop::faultColour(palette), desktop::quietColour(palette), desktop::accentColour(palette)}) {
            EXPECT_GE(plot::contrast(colour, window), 4.5) << colour.name().toStdString();
            EXPECT_GE(plot::contrast(colour, base), 4.5) << colour.name().toStdString();
        }
        // 3:1 is its AA for what shows where a control is.
        for (const QColor& colour : {desktop::edgeColour(palette), desktop::focusColour(palette)}) {
            EXPECT_GE(plot::contrast(colour, window), 3.0);
            EXPECT_GE(plot::contrast(colour, base), 3.0);
        }
        EXPECT_GE(plot::contrast(palette.color(QPalette::WindowText), desktop::noteBackground(palette)), 4.5);
        EXPECT_GE(plot::contrast(desktop::faultColour(palette), desktop::noteBackground(palette)), 4.5);
    }
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
