// SPDX-License-Identifier: MIT
// Labels onto paper.
#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plot/canvas.h"
#include "app/plot/figure_font.h"
#include "app/plot/whole_file.h"
#include "app/report/label_codes.h"
#include "app/report/labels.h"
#include "app/report/whole_page.h"

namespace report {
namespace {

using plot::Canvas;
using plot::Type;

struct LabelPaperWords {
    Q_DECLARE_TR_FUNCTIONS(LabelPaper)
};

constexpr double kMargin = 1.4;          // millimetres; sheets are rarely cut truer
constexpr int kDotsOfModule = 3;         // labelModule of the printers that it is made for
constexpr double kMostCodePoints = 16;   // of the code in plain
constexpr double kLeastCodePoints = 10;  // read at arm's length
constexpr double kTallPoints = 10;       // of the lines under the code, on labels that are tall, and on all others
constexpr double kFlatPoints = 7;
constexpr double kLeastNamePoints = 5.5;

class LabelPainter {
  public:
    LabelPainter(const LabelPrint& print, QPagedPaintDevice& device)
        : print_(print), device_(device), painter_(&device), dotsPerMillimetre_(device.logicalDpiX() / 25.4) {}

    void paint() {
        for (std::size_t i = 0; i < print_.labels.size(); ++i) {
            const int number = static_cast<int>(i) + print_.start - 1;
            if (i > 0 && number % print_.stock.perPage() == 0) device_.newPage();
            paintLabel(print_.labels[i], print_.stock.place(number).translated(print_.offset.millimetres()));
        }
    }

  private:
    void paintLabel(const Label& label, const QRectF& millimetres) {
        const QRectF area(millimetres.topLeft() * dotsPerMillimetre_, millimetres.size() * dotsPerMillimetre_);
        const double margin = kMargin * dotsPerMillimetre_;
        const double codes = paintCodes(label.code, millimetres);
        paintText(label, area.adjusted(std::max(codes, margin), margin, -margin, -margin));
    }

    /// A PDF is turned into dots later, at best by a printer for labels; any other device's own dots are known. Modules and corners fall on
    /// whole ones, or some modules come out wider than others.
    [[nodiscard]] double gridOfDots() const {
        const bool isPdf = painter_.paintEngine()->type() == QPaintEngine::Pdf;
        return isPdf ? labelModule / kDotsOfModule : 1 / dotsPerMillimetre_;
    }

    /// The width that they took, quiet zone included; 0 where none fits.
    double paintCodes(const QString& text, const QRectF& millimetres) {
        const double dot = gridOfDots();
        const LabelCodes codes = codesOn(text, millimetres.size(), std::max(1.0, std::round(labelModule / dot)) * dot);
        painter_.setRenderHint(QPainter::Antialiasing, false);
        for (const QPointF& place : codes.places) {
            const QPointF corner = millimetres.topLeft() + place;
            const QPointF onDots(std::round(corner.x() / dot) * dot, std::round(corner.y() / dot) * dot);
            painter_.fillPath(pathOf(codes.code, onDots * dotsPerMillimetre_, codes.module * dotsPerMillimetre_),
                              Qt::black);
        }
        return codes.width * dotsPerMillimetre_;
    }

    void paintText(const Label& label, const QRectF& area) {
        painter_.setRenderHint(QPainter::Antialiasing);
        double top = paintCode(label.code, area);
        points_ = area.height() > 30 * dotsPerMillimetre_ ? kTallPoints : kFlatPoints;
        painter_.setFont(plot::figureFont(points_));
        Canvas canvas(painter_, plot::Palette::onPaper());
        const double line = canvas.em();
        const auto add = [&](const QString& text) {
            if (text.isEmpty() || top + line > area.bottom() + 0.2 * line) return;
            canvas.line({area.left(), top, area.width(), line}, Qt::AlignLeft | Qt::AlignVCenter, text,
                        canvas.palette().text);
            top += line;
        };
        top += 0.1 * line;
        top = paintPlant(canvas, label.plant, {area.left(), top, area.width(), line});
        add(label.mark);  // before what may find no room: no invented record passes for a real one
        addFacts(canvas, label, area.width(), add);
        paintLicence(label.licence, QRectF(QPointF(area.left(), top), area.bottomRight()));
    }

    /// In small letters, broken between words; what finds no room is on the session's sheet.
    void paintLicence(const QString& licence, const QRectF& room) {
        painter_.setFont(plot::figureFont(kFlatPoints));
        Canvas canvas(painter_, plot::Palette::onPaper());
        const double line = canvas.em();
        double top = room.top();
        const QStringList words = licence.split(u' ', Qt::SkipEmptyParts);
        for (qsizetype next = 0; next < words.size() && top + line <= room.bottom() + 0.2 * line; top += line) {
            QString text = words[next++];
            while (next < words.size() && canvas.widthOf(text + u' ' + words[next]) <= room.width())
                text += u' ' + words[next++];
            canvas.line({room.left(), top, room.width(), line}, Qt::AlignLeft | Qt::AlignVCenter, text,
                        canvas.palette().text);
        }
    }

    /// On as few lines as the label is wide for.
    template <class Add>
    static void addFacts(const Canvas& canvas, const Label& label, double width, const Add& add) {
        const QString together = LabelPaperWords::tr("%1 · %2", "date, number of cuttings").arg(label.day, label.count);
        const QString all = LabelPaperWords::tr("%1 · %2", "treatment; date and number").arg(label.treatment, together);
        if (!label.treatment.isEmpty() && canvas.widthOf(all) <= width) return add(all);
        add(label.treatment);
        if (canvas.widthOf(together) <= width) return add(together);
        add(label.day);
        add(label.count);
    }

    /// As large as it fits; a long code of another logbook goes over several lines rather than losing its end.
    double paintCode(const QString& code, const QRectF& area) {
        const double most = std::min(kMostCodePoints, 0.2 * area.height() / dotsPerMillimetre_ / 25.4 * 72);
        double points = std::max(kLeastCodePoints, most);
        const auto widthAt = [&](double size, const QString& text) {
            painter_.setFont(plot::figureFont(size));
            return Canvas(painter_, plot::Palette::onPaper()).widthOf(text, Type::Bold);
        };
        while (points > kLeastCodePoints && widthAt(points, code) > area.width())
            points = std::max(kLeastCodePoints, points - 0.5);
        painter_.setFont(plot::figureFont(points));
        Canvas canvas(painter_, plot::Palette::onPaper());
        double top = area.top();
        for (QString rest = code; !rest.isEmpty();) {
            qsizetype length = rest.size();
            while (length > 1 && canvas.widthOf(rest.left(length), Type::Bold) > area.width()) --length;
            canvas.line({area.left(), top, area.width(), canvas.em()}, Qt::AlignLeft | Qt::AlignVCenter,
                        rest.left(length), canvas.palette().text, Type::Bold);
            rest = rest.mid(length);
            top += canvas.em();
        }
        return top;
    }

    /// On one line, or botanical name and cultivar on one each.
    double paintPlant(Canvas& canvas, const QString& plant, const QRectF& line) {
        if (plant.isEmpty()) return line.top();
        const qsizetype cut = plant.lastIndexOf(QStringLiteral(" '"));
        if (cut < 0 || canvas.plantNameWidth(plant) <= line.width()) {
            paintName(plant, line);
            return line.bottom();
        }
        paintName(plant.left(cut), line);
        canvas.line(line.translated(0, line.height()), Qt::AlignLeft | Qt::AlignVCenter, plant.mid(cut + 1),
                    canvas.palette().text);
        return line.bottom() + line.height();
    }

    /// A long name in smaller letters, as far as they can be read.
    void paintName(const QString& name, const QRectF& line) {
        for (double points = points_;; points -= 0.5) {
            painter_.setFont(plot::figureFont(points));
            Canvas canvas(painter_, plot::Palette::onPaper());
            if (points > kLeastNamePoints && canvas.plantNameWidth(name) > line.width()) continue;
            canvas.plantName(line, name);
            break;
        }
        painter_.setFont(plot::figureFont(points_));
    }

    const LabelPrint& print_;
    QPagedPaintDevice& device_;
    QPainter painter_;
    double dotsPerMillimetre_;
    double points_{};
};

}  // namespace

QPageSize pageSizeOf(const LabelStock& stock) {
    return QPageSize(stock.page, QPageSize::Millimeter, stock.name, QPageSize::FuzzyMatch);
}

void printTo(const LabelPrint& print, QPagedPaintDevice& device) {
    useWholePage(device);
    LabelPainter(print, device).paint();
}

void writePdf(const LabelPrint& print, const QString& file) {
    plot::writeWholeFile(file, wholePagePdf(pageSizeOf(print.stock), LabelPaperWords::tr("Labels"),
                                            [&](QPagedPaintDevice& device) { printTo(print, device); }));
}

}  // namespace report
