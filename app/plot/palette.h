// SPDX-License-Identifier: MIT
// The colours of figures: on a light window, on a dark one, on one of high contrast, on paper. Every series is a colour, a dash and a marker, so
// that grey print and colour-blind eyes can tell them apart. Tints are opaque and mixed beforehand: some paper formats
// drop transparency. The line colours are Okabe and Ito's (Color Universal Design, 2008), two of them darkened to stand
// on their own tint.
#pragma once

#include <QColor>
#include <Qt>
#include <array>
#include <cstddef>

class QPalette;

namespace plot {

enum class Marker { Disc, Square, Triangle, Diamond, Cross, Ring };

struct SeriesLook {
    QColor line;  // lines and marks, at least 3:1 on the paper and on its own band
    QColor text;  // the same hue, at least 4.5:1
    QColor band;  // tint of an interval around the line
    QColor box;   // stronger tint: between two checks, where the curve is unknown
    Qt::PenStyle dash{Qt::SolidLine};
    Marker marker{Marker::Disc};
};

struct Palette {
    QColor paper;
    QColor text;
    QColor quietText;  // method, units, column headings
    QColor axis;
    QColor grid;
    QColor margin;   // the shaded stretch of a grower's own margin
    QColor overlap;  // where the bands of two series lie over each other
    QColor boxOverlap;
    std::array<SeriesLook, 6> series;

    [[nodiscard]] const SeriesLook& look(std::size_t index) const { return series[index % series.size()]; }

    [[nodiscard]] static const Palette& light();
    [[nodiscard]] static const Palette& dark();
    [[nodiscard]] static const Palette& highContrast();
    [[nodiscard]] static const Palette& onPaper();
};

/// High contrast for white on black; else light or dark, by which of ground and text is the lighter.
[[nodiscard]] const Palette& paletteFor(const QPalette& desktop);
/// WCAG 2.2's contrast ratio of two opaque colours, 1 to 21.
[[nodiscard]] double contrast(const QColor& first, const QColor& second);

}  // namespace plot
