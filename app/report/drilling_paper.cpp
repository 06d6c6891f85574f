// SPDX-License-Identifier: MIT
// A drilling template onto paper.
#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <algorithm>

#include "app/plot/canvas.h"
#include "app/plot/figure_font.h"
#include "app/plot/number_text.h"
#include "app/plot/whole_file.h"
#include "app/report/drilling_page.h"
#include "app/report/drilling_template.h"
#include "app/report/sheet_words.h"
#include "app/report/whole_page.h"

namespace report {
namespace {

using plot::Canvas;
using plot::Type;

struct DrillingPaperWords {
    Q_DECLARE_TR_FUNCTIONS(DrillingPaper)
};

constexpr double kPlainPoints = 8;
constexpr double kNamePoints = 8;
constexpr double kSmallNamePoints = 5;
constexpr double kHoleForName = 14;  // mm; smaller ones have their name below
constexpr double kThin = 0.1;        // mm
constexpr double kCircle = 0.25;
constexpr double kCross = 3;     // arm of a centre cross
constexpr double kMark = 5;      // arm of a mark to join sheets by
constexpr double kMarkRing = 2;  // its radius

class TemplatePainter {
  public:
    TemplatePainter(const DrillingTemplate& drilling, QPagedPaintDevice& device, Paper paper)
        : drilling_(drilling),
          layout_(drilling.layout),
          device_(device),
          painter_(&device),
          dots_(device.logicalDpiX() / 25.4),
          paper_(paper),
          tiles_(tilesOf(drilling.layout, paper)) {}

    void paint() {
        for (std::size_t number = 0; number < tiles_.tiles.size(); ++number) {
            if (number > 0) device_.newPage();
            paintSheet(tiles_.tiles[number]);
        }
    }

  private:
    [[nodiscard]] int count() const { return static_cast<int>(tiles_.tiles.size()); }
    [[nodiscard]] int numberAt(int row, int column) const { return row * tiles_.columns + column + 1; }
    [[nodiscard]] QRectF inDots(const QRectF& millimetres) const {
        return {millimetres.topLeft() * dots_, millimetres.size() * dots_};
    }
    void penOf(double millimetres, Qt::PenStyle style = Qt::SolidLine) {
        painter_.setPen(QPen(Qt::black, millimetres * dots_, style, Qt::FlatCap, Qt::MiterJoin));
    }
    void line(const QPointF& from, const QPointF& to) { painter_.drawLine(QLineF(from * dots_, to * dots_)); }
    void circle(const QPointF& centre, double diameter) {
        painter_.drawEllipse(centre * dots_, diameter / 2 * dots_, diameter / 2 * dots_);
    }
    void write(const QRectF& millimetres, Qt::Alignment alignment, const QString& text, double points,
               Type type = Type::Plain) {
        painter_.setFont(plot::figureFont(points));
        Canvas canvas(painter_, plot::Palette::onPaper());
        canvas.line(inDots(millimetres), alignment, text, canvas.palette().text, type);
    }

    void paintSheet(const TemplateTile& tile) {
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.setBrush(Qt::NoBrush);
        painter_.save();
        painter_.setClipRect(inDots(tile.lid.translated(tile.origin)));
        paintLid(tile);
        for (const core::LidHole& hole : layout_.holes) paintHole(tile, hole);
        painter_.restore();
        paintJoins(tile);
        paintHead(tile);
        paintFoot();
    }

    void paintLid(const TemplateTile& tile) {
        penOf(kCircle);
        const QRectF lid(tile.origin, QSizeF(layout_.across, layout_.down));
        if (drilling_.lid.isRound)
            circle(lid.center(), layout_.across);
        else
            painter_.drawRect(inDots(lid));
    }

    void paintHole(const TemplateTile& tile, const core::LidHole& hole) {
        const double size = drilling_.lid.hole;
        const QPointF onLid(hole.across, hole.down), centre = onLid + tile.origin;
        if (!tile.lid.intersects(QRectF(onLid.x() - size / 2, onLid.y() - size / 2, size, size))) return;
        penOf(kCircle);
        circle(centre, size);
        const double arm = std::min(kCross, 0.4 * size);
        penOf(kThin);
        line(centre - QPointF(arm, 0), centre + QPointF(arm, 0));
        line(centre - QPointF(0, arm), centre + QPointF(0, arm));
        const QString name = QString::fromStdString(core::nameOf(hole.position));
        if (size >= kHoleForName)
            return write({centre.x() - size / 2, centre.y() + arm, size, size / 2 - arm}, Qt::AlignCenter, name,
                         kNamePoints, Type::Bold);
        const double below = std::max(drilling_.lid.web, drilling_.lid.edge);
        write({centre.x() - size, centre.y() + size / 2, 2 * size, std::max(below, 1.5)},
              Qt::AlignHCenter | Qt::AlignTop, name, kSmallNamePoints);
    }

    /// Dashed along the joins, with marks that lie on both sheets and the number of the neighbour beyond.
    void paintJoins(const TemplateTile& tile) {
        const QRectF core = tile.core.translated(tile.origin), shown = tile.lid.translated(tile.origin);
        if (tile.column > 0) joinAcross(core.left(), core, shown, -1, numberAt(tile.row, tile.column - 1));
        if (tile.column + 1 < tiles_.columns)
            joinAcross(core.right(), core, shown, 1, numberAt(tile.row, tile.column + 1));
        if (tile.row > 0) joinDown(core.top(), core, shown, -1, numberAt(tile.row - 1, tile.column));
        if (tile.row + 1 < tiles_.rows) joinDown(core.bottom(), core, shown, 1, numberAt(tile.row + 1, tile.column));
    }

    void joinAcross(double across, const QRectF& core, const QRectF& shown, int side, int neighbour) {
        penOf(kThin, Qt::DashLine);
        line({across, shown.top()}, {across, shown.bottom()});
        for (const double part : {0.2, 0.8}) paintMark({across, core.top() + part * core.height()});
        painter_.save();
        painter_.translate(QPointF(across + side * templateOverlap / 2, core.center().y()) * dots_);
        painter_.rotate(-90);
        paintNeighbour(neighbour);
        painter_.restore();
    }

    void joinDown(double down, const QRectF& core, const QRectF& shown, int side, int neighbour) {
        penOf(kThin, Qt::DashLine);
        line({shown.left(), down}, {shown.right(), down});
        for (const double part : {0.2, 0.8}) paintMark({core.left() + part * core.width(), down});
        painter_.save();
        painter_.translate(QPointF(core.center().x(), down + side * templateOverlap / 2) * dots_);
        paintNeighbour(neighbour);
        painter_.restore();
    }

    void paintNeighbour(int number) {
        write({-20, -2, 40, 4}, Qt::AlignCenter,
              DrillingPaperWords::tr("sheet %1 joins here").arg(plot::countText(number)), kPlainPoints);
    }

    void paintMark(const QPointF& place) {
        penOf(kThin);
        circle(place, 2 * kMarkRing);
        line(place - QPointF(kMark, 0), place + QPointF(kMark, 0));
        line(place - QPointF(0, kMark), place + QPointF(0, kMark));
    }

    void paintHead(const TemplateTile& tile) {
        const QSizeF page = millimetresOf(paper_);
        const double width = page.width() - 2 * templateMargin;
        const QString title = drilling_.station.isEmpty()
                                  ? DrillingPaperWords::tr("Drilling template")
                                  : DrillingPaperWords::tr("Drilling template, %1", "station").arg(drilling_.station);
        write({templateMargin, templateMargin, width - 60, 6}, Qt::AlignLeft | Qt::AlignVCenter, title, 11, Type::Bold);
        paintOverview(tile, {templateMargin + width - 16, templateMargin, 16, templateHead - 3});
        write({templateMargin + width - 60, templateMargin, 42, 6}, Qt::AlignRight | Qt::AlignVCenter,
              DrillingPaperWords::tr("Sheet %1 of %2")
                  .arg(plot::countText(numberAt(tile.row, tile.column)), plot::countText(count())),
              11, Type::Bold);
        const QString size = lidSizeText(drilling_.lid, drilling_.unit);
        const QString holes = holesText(drilling_.lid, layout_, drilling_.unit);
        const QString lies = layout_.isTurned ? DrillingPaperWords::tr("A1 is at the back left; the lid lies turned")
                                              : DrillingPaperWords::tr("A1 is at the back left");
        write({templateMargin, templateMargin + 6.5, width - 18, 4}, Qt::AlignLeft | Qt::AlignVCenter,
              DrillingPaperWords::tr("Lid %1: %2. %3.", "size, holes, how it lies").arg(size, holes, lies),
              kPlainPoints);
    }

    /// All sheets as they lie, this one filled.
    void paintOverview(const TemplateTile& tile, const QRectF& area) {
        if (count() == 1) return;
        const double cell = std::min(area.width() / tiles_.columns, area.height() / tiles_.rows);
        const QPointF corner(area.right() - cell * tiles_.columns, area.top());
        penOf(kThin);
        for (const TemplateTile& each : tiles_.tiles) {
            const QRectF place(corner.x() + each.column * cell, corner.y() + each.row * cell, cell, cell);
            const bool isThis = each.row == tile.row && each.column == tile.column;
            if (isThis) painter_.fillRect(inDots(place), Qt::darkGray);
            painter_.drawRect(inDots(place));
        }
    }

    void paintFoot() {
        const QSizeF page = millimetresOf(paper_);
        const double top = page.height() - templateMargin - templateFoot + 4, left = templateMargin;
        paintControlLine({left, top + 2});
        const QRectF check(left + controlLineLength + 4, top - 2,
                           page.width() - 2 * templateMargin - controlLineLength - 4, 12);
        painter_.setFont(plot::figureFont(kPlainPoints));
        Canvas canvas(painter_, plot::Palette::onPaper());
        canvas.paragraph(inDots(check),
                         DrillingPaperWords::tr("Print at 100 %, no fitting to page. This line must measure %1; "
                                                "where it does not, do not drill by this sheet.")
                             .arg(measureText(controlLineLength, drilling_.unit)),
                         canvas.palette().text, Type::Bold, 4);
        canvas.paragraph(inDots({left, top + 10.5, page.width() - 2 * templateMargin, 12}), cautions(),
                         canvas.palette().text, Type::Plain, 4);
        Sheet sheet;
        sheet.printedAt = drilling_.printedAt;
        const QRectF last(left, page.height() - templateMargin - 3, page.width() - 2 * templateMargin, 3.2);
        write(last, Qt::AlignLeft | Qt::AlignVCenter, printedText(sheet), 6.5);
        write(last, Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("Strikebook " STRIKEBOOK_VERSION), 6.5);
    }

    void paintControlLine(const QPointF& left) {
        penOf(kCircle);
        line(left, left + QPointF(controlLineLength, 0));
        for (int tick = 0; tick <= 10; ++tick) {
            const double arm = tick % 10 == 0 ? 2.5 : tick % 5 == 0 ? 1.6 : 1;
            const QPointF place = left + QPointF(tick * controlLineLength / 10, 0);
            penOf(kThin);
            line(place - QPointF(0, arm), place + QPointF(0, arm));
        }
        write({left.x(), left.y() + 2.8, controlLineLength, 3.5}, Qt::AlignCenter,
              DrillingPaperWords::tr("100 mm to check the scale by"), kPlainPoints);
    }

    [[nodiscard]] QString cautions() const {
        QString words = DrillingPaperWords::tr(
            "Before drilling: unplug pump and lights, take the lid off the tub, clamp it on scrap wood, protect your "
            "eyes. Drill a small hole at each cross first, then the hole saw, slowly. Afterwards take the sharp edges "
            "off and rinse out the chips (common practice, no source).");
        if (count() > 1)
            words.prepend(
                DrillingPaperWords::tr("Lay the sheets over one another so that the ringed crosses on the "
                                       "dashed lines meet, and tape them down. "));
        return words;
    }

    const DrillingTemplate& drilling_;
    const core::LidLayout& layout_;
    QPagedPaintDevice& device_;
    QPainter painter_;
    double dots_;  // a millimetre
    Paper paper_;
    TemplateTiles tiles_;
};

}  // namespace

void printTo(const DrillingTemplate& drilling, QPagedPaintDevice& device, Paper paper) {
    useWholePage(device);
    TemplatePainter(drilling, device, paper).paint();
}

void writePdf(const DrillingTemplate& drilling, const QString& file, Paper paper) {
    const QPageSize page(paper == Paper::Letter ? QPageSize::Letter : QPageSize::A4);
    plot::writeWholeFile(file, wholePagePdf(page, DrillingPaperWords::tr("Drilling template"),
                                            [&](QPagedPaintDevice& device) { printTo(drilling, device, paper); }));
}

}  // namespace report
