// SPDX-License-Identifier: MIT
#include "app/plot/palette.h"

#include <QPalette>
#include <algorithm>
#include <cmath>

namespace plot {
namespace {

constexpr double kBandShare = 0.16;  // of the line's colour in its band
constexpr double kBoxShare = 0.3;

QColor mixed(const QColor& ink, const QColor& paper, double share) {
    const auto channel = [share](int of, int on) {
        return static_cast<int>(std::lround(share * of + (1 - share) * on));
    };
    return {channel(ink.red(), paper.red()), channel(ink.green(), paper.green()), channel(ink.blue(), paper.blue())};
}

SeriesLook lookOf(const char* line, const char* text, const QColor& paper, Qt::PenStyle dash, Marker marker) {
    const QColor ink(line);
    return {.line = ink,
            .text = QColor(text),
            .band = mixed(ink, paper, kBandShare),
            .box = mixed(ink, paper, kBoxShare),
            .dash = dash,
            .marker = marker};
}

Palette makeLight() {
    const QColor paper("#FFFFFF");
    return {.paper = paper,
            .text = QColor("#1B1E21"),
            .quietText = QColor("#5B6168"),
            .axis = QColor("#7A8188"),
            .grid = QColor("#E4E7EA"),
            .margin = QColor("#EEF0F2"),
            .overlap = QColor("#EAE0E5"),
            .boxOverlap = QColor("#B9B4AE"),
            .series = {lookOf("#0072B2", "#0072B2", paper, Qt::SolidLine, Marker::Disc),
                       lookOf("#D55E00", "#A84A00", paper, Qt::DashLine, Marker::Square),
                       lookOf("#00805D", "#006B4E", paper, Qt::DashDotLine, Marker::Triangle),
                       lookOf("#A8527F", "#94426D", paper, Qt::DotLine, Marker::Diamond),
                       lookOf("#5B6168", "#5B6168", paper, Qt::DashDotDotLine, Marker::Cross),
                       lookOf("#7E6600", "#6E5900", paper, Qt::SolidLine, Marker::Ring)}};
}

Palette makeDark(const QColor& paper) {
    return {.paper = paper,
            .text = QColor("#ECEEF0"),
            .quietText = QColor("#A9B0B7"),
            .axis = QColor("#7C848C"),
            .grid = QColor("#2B2F33"),
            .margin = QColor("#24282B"),
            .overlap = QColor("#3D3A36"),
            .boxOverlap = QColor("#5B564F"),
            .series = {lookOf("#56B4E9", "#56B4E9", paper, Qt::SolidLine, Marker::Disc),
                       lookOf("#E69F00", "#E69F00", paper, Qt::DashLine, Marker::Square),
                       lookOf("#1DB98B", "#1DB98B", paper, Qt::DashDotLine, Marker::Triangle),
                       lookOf("#D993B8", "#D993B8", paper, Qt::DotLine, Marker::Diamond),
                       lookOf("#B8BFC6", "#B8BFC6", paper, Qt::DashDotDotLine, Marker::Cross),
                       lookOf("#F0E442", "#F0E442", paper, Qt::SolidLine, Marker::Ring)}};
}

/// WCAG's AAA: 7:1 for all text; lines and marks as strong.
Palette makeHighContrast() {
    Palette palette = makeDark(Qt::black);
    palette.text = palette.axis = Qt::white;
    palette.quietText = QColor("#D8D8D8");
    palette.grid = QColor("#4A4A4A");
    return palette;
}

Palette makeOnPaper() {
    Palette palette = makeLight();
    palette.text = QColor("#000000");
    palette.quietText = QColor("#4A4F54");
    palette.axis = QColor("#5B6168");
    palette.grid = QColor("#DDE0E3");
    return palette;
}

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color) {
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

}  // namespace

const Palette& Palette::light() {
    static const Palette palette = makeLight();
    return palette;
}

const Palette& Palette::dark() {
    static const Palette palette = makeDark(QColor("#17191B"));
    return palette;
}

const Palette& Palette::highContrast() {
    static const Palette palette = makeHighContrast();
    return palette;
}

const Palette& Palette::onPaper() {
    static const Palette palette = makeOnPaper();
    return palette;
}

const Palette& paletteFor(const QPalette& desktop) {
    if (desktop.color(QPalette::Base) == Qt::black && desktop.color(QPalette::Text) == Qt::white)
        return Palette::highContrast();
    const bool isDark = luminance(desktop.color(QPalette::Base)) < luminance(desktop.color(QPalette::Text));
    return isDark ? Palette::dark() : Palette::light();
}

double contrast(const QColor& first, const QColor& second) {
    const double one = luminance(first), other = luminance(second);
    return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

}  // namespace plot
