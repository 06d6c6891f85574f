// SPDX-License-Identifier: MIT
// A figure as a file: whole or not at all.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>

namespace plot {

class Figure;
struct Palette;

enum class FigureFile { Svg, Pdf, Png, Csv };

/// "svg", "pdf", "png", "csv".
[[nodiscard]] QString extensionOf(FigureFile kind);
/// The file's content, on paper colours, at the figure's own size; PNG at two dots a pixel.
[[nodiscard]] QByteArray figureBytes(const Figure& figure, FigureFile kind);
/// Throws db::LogbookError when the file can't be written; an older file of that name is then still as it was.
void saveFigure(const Figure& figure, const QString& file, FigureFile kind);
/// At `scale` dots a pixel of a 96 dpi screen.
[[nodiscard]] QImage figureImage(const Figure& figure, const QSize& pixels, double scale, const Palette& palette);

}  // namespace plot
