// SPDX-License-Identifier: MIT
// The one place for the window's colours and icons. Fusion with our own full palettes, light, dark and high contrast;
// System follows the desktop. Nothing here is used on paper or in figures: plot has palettes of its own and takes light
// or dark from the widget's palette.
#pragma once

#include <QColor>
#include <QIcon>
#include <QPalette>
#include <QString>
#include <optional>

class QApplication;

namespace desktop {

enum class Theme { System, Light, Dark, HighContrast };

[[nodiscard]] std::optional<Theme> themeFrom(const QString& word);  // "system", "light", "dark", "contrast"
[[nodiscard]] QString wordFor(Theme theme);
[[nodiscard]] QPalette paletteFor(Theme theme);
/// Sets style and palette; may be called again at any time.
void applyTheme(QApplication& application, Theme theme);

[[nodiscard]] bool isDark(const QPalette& palette);
[[nodiscard]] bool isHighContrast(const QPalette& palette);
/// Colours with a meaning, each at least 4.5:1 on the window and base colours of `palette`. Never the only sign of
/// anything.
[[nodiscard]] QColor faultColour(const QPalette& palette);
[[nodiscard]] QColor quietColour(const QPalette& palette);     // secondary text
[[nodiscard]] QColor accentColour(const QPalette& palette);    // headings that lead, marks of what is due
[[nodiscard]] QColor edgeColour(const QPalette& palette);      // outlines, at least 3:1
[[nodiscard]] QColor focusColour(const QPalette& palette);     // the outline of what has the focus
[[nodiscard]] QColor noteBackground(const QPalette& palette);  // bars and marks

/// :/icons/NAME.svg drawn in the palette's own text colour, so that it is seen in light and dark.
[[nodiscard]] QIcon icon(const QString& name);

}  // namespace desktop
