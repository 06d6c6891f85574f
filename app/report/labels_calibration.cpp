// SPDX-License-Identifier: MIT
// The page by which the offset of labels is found.
#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>

#include "app/plot/canvas.h"
#include "app/plot/figure_font.h"
#include "app/plot/number_text.h"
#include "app/plot/whole_file.h"
#include "app/report/labels.h"
#include "app/report/whole_page.h"

namespace report {
namespace {

struct CalibrationWords {
    Q_DECLARE_TR_FUNCTIONS(LabelCalibration)
};

constexpr int kReach = 6;  // half millimetres to either side of an edge
constexpr double kHair = 0.1;
constexpr double kScalePoints = 5;
constexpr double kWordsPoints = 6.5;

class CalibrationPainter {
  public:
    CalibrationPainter(const LabelCalibration& calibration, QPagedPaintDevice& device)
        : stock_(calibration.stock),
          offset_(calibration.offset),
          painter_(&device),
          dots_(device.logicalDpiX() / 25.4) {}

    void paint() {
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.setPen(QPen(Qt::black, kHair * dots_, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        for (int number = 0; number < stock_.perPage(); ++number) {
            const QRectF label = printed(number);
            painter_.drawRect(QRectF(label.topLeft() * dots_, label.size() * dots_));
        }
        paintScales(printed(0));
        if (stock_.perPage() > 1) paintScales(printed(stock_.perPage() - 1));
        paintWords(printed(stock_.perPage() > 2 ? 1 : 0));
    }

  private:
    [[nodiscard]] QRectF printed(int number) const { return stock_.place(number).translated(offset_.millimetres()); }

    static double armOf(int half) { return half == 0 ? 3 : half % 2 == 0 ? 1.8 : 1; }

    void line(const QPointF& from, const QPointF& to) { painter_.drawLine(QLineF(from * dots_, to * dots_)); }

    /// At every second millimetre: the offset that would bring the outline to this line.
    void figure(const QRectF& area, int half, int now) {
        if ((half + now) % 4 != 0) return;
        painter_.setFont(plot::figureFont(kScalePoints));
        Canvas canvas(painter_, plot::Palette::onPaper());
        canvas.line(QRectF(area.topLeft() * dots_, area.size() * dots_), Qt::AlignCenter,
                    plot::decimalText((half + now) * 0.5, 0), canvas.palette().text);
    }

    void paintScales(const QRectF& label) {
        const double middle = label.center().y(), across = label.left() + 0.35 * label.width();
        for (int half = -kReach; half <= kReach; ++half) {
            const double x = label.left() + half * 0.5, y = label.top() + half * 0.5, arm = armOf(half);
            line({x, middle}, {x, middle + arm});
            line({across, y}, {across + arm, y});
            figure({x - 2, middle - 2.2, 4, 2}, half, offset_.right);
            figure({across - 3.6, y - 1, 3.4, 2}, half, offset_.down);
        }
        line({label.left() - kReach * 0.5, middle}, {label.left() + kReach * 0.5, middle});
        line({across, label.top() - kReach * 0.5}, {across, label.top() + kReach * 0.5});
    }

    void paintWords(const QRectF& label) {
        painter_.setFont(plot::figureFont(kWordsPoints));
        Canvas canvas(painter_, plot::Palette::onPaper());
        const QRectF area(label.left() + 0.42 * label.width(), label.top() + 1, 0.56 * label.width(),
                          label.height() - 2);
        canvas.paragraph(
            QRectF(area.topLeft() * dots_, area.size() * dots_),
            CalibrationWords::tr("Hold against the light with a label sheet. Where its left and top edge cross the "
                                 "scales, read the offset, in mm."),
            canvas.palette().text, plot::Type::Plain, 6);
    }

    using Canvas = plot::Canvas;

    const LabelStock& stock_;
    LabelOffset offset_;
    QPainter painter_;
    double dots_;  // a millimetre
};

}  // namespace

void printTo(const LabelCalibration& calibration, QPagedPaintDevice& device) {
    useWholePage(device);
    CalibrationPainter(calibration, device).paint();
}

void writePdf(const LabelCalibration& calibration, const QString& file) {
    plot::writeWholeFile(file, wholePagePdf(pageSizeOf(calibration.stock), CalibrationWords::tr("Label calibration"),
                                            [&](QPagedPaintDevice& device) { printTo(calibration, device); }));
}

}  // namespace report
