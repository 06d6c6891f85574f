// SPDX-License-Identifier: MIT
#include "app/plot/save_figure.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <cmath>

#include "app/plot/figure.h"
#include "app/plot/figure_font.h"
#include "app/plot/palette.h"
#include "app/plot/whole_file.h"

namespace plot {
namespace {

constexpr double kPointSize = 9;
constexpr double kPointsAnEm = 10.5;  // line height of the figures' typeface at 9 pt
constexpr double kPixelsAPoint = 96.0 / 72.0;
constexpr double kMarginInEms = 0.7;
constexpr double kPngScale = 2;

QSizeF sizeInPoints(const Figure& figure) {
    return figure.sizeInEms() * kPointsAnEm;
}

void paintOn(QPaintDevice& device, const Figure& figure, const QSizeF& size, const Palette& palette) {
    QPainter painter(&device);
    painter.setFont(figureFont(kPointSize));
    painter.fillRect(QRectF(QPointF(), size), palette.paper);
    const double margin = kMarginInEms * QFontMetricsF(painter.font(), &device).height();
    figure.paint(painter, QRectF(QPointF(), size).adjusted(margin, margin, -margin, -margin), palette);
}

QByteArray svgBytes(const Figure& figure) {
    constexpr int dotsAnInch = 96;
    QBuffer buffer;
    const QSizeF size = sizeInPoints(figure) * kPixelsAPoint;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(dotsAnInch);
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF(QPointF(), size));
    generator.setTitle(figure.sentence());
    generator.setDescription(figure.method());
    paintOn(generator, figure, size, Palette::onPaper());
    return buffer.data();
}

QByteArray pdfBytes(const Figure& figure) {
    constexpr int dotsAnInch = 600;
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(figure.sentence());
    writer.setCreator(QStringLiteral("Strikebook " STRIKEBOOK_VERSION));
    writer.setResolution(dotsAnInch);
    writer.setPageMargins(QMarginsF());
    const QSizeF points = sizeInPoints(figure);
    writer.setPageSize(QPageSize(points, QPageSize::Point, QString(), QPageSize::ExactMatch));
    paintOn(writer, figure, QSizeF(writer.width(), writer.height()), Palette::onPaper());
    return buffer.data();
}

QByteArray pngBytes(const Figure& figure) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    const QSize pixels = (sizeInPoints(figure) * kPixelsAPoint).toSize();
    figureImage(figure, pixels, kPngScale, Palette::onPaper()).save(&buffer, "PNG");
    return buffer.data();
}

}  // namespace

QString extensionOf(FigureFile kind) {
    switch (kind) {
        case FigureFile::Svg:
            return QStringLiteral("svg");
        case FigureFile::Pdf:
            return QStringLiteral("pdf");
        case FigureFile::Png:
            return QStringLiteral("png");
        case FigureFile::Csv:
            return QStringLiteral("csv");
    }
    return {};
}

QByteArray figureBytes(const Figure& figure, FigureFile kind) {
    switch (kind) {
        case FigureFile::Svg:
            return svgBytes(figure);
        case FigureFile::Pdf:
            return pdfBytes(figure);
        case FigureFile::Png:
            return pngBytes(figure);
        case FigureFile::Csv:
            return csvText(figure.table());
    }
    return {};
}

void saveFigure(const Figure& figure, const QString& file, FigureFile kind) {
    writeWholeFile(file, figureBytes(figure, kind));
}

QImage figureImage(const Figure& figure, const QSize& pixels, double scale, const Palette& palette) {
    constexpr int dotsAMetre = 3780;  // 96 an inch
    QImage image((QSizeF(pixels) * scale).toSize(), QImage::Format_RGB32);
    image.setDotsPerMeterX(dotsAMetre);
    image.setDotsPerMeterY(dotsAMetre);
    image.setDevicePixelRatio(scale);
    paintOn(image, figure, QSizeF(pixels), palette);
    return image;
}

}  // namespace plot
