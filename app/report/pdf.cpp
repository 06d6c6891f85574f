// SPDX-License-Identifier: MIT
#include "app/report/pdf.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

#include "app/plot/figure_font.h"
#include "app/plot/number_text.h"
#include "app/plot/whole_file.h"
#include "app/report/page_layout.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

using plot::Canvas;
using plot::Type;

struct PageWords {
    Q_DECLARE_TR_FUNCTIONS(PagePainter)
};

constexpr double kSideMargin = 16;  // millimetres
constexpr double kEndMargin = 13;
constexpr double kTitleScale = 1.6;
constexpr double kHeadHeight = 1.6;  // ems: grower and logbook
constexpr double kFootHeight = 1.8;
constexpr double kMarkHeight = 1.9;
constexpr int kDotsAnInch = 600;

class PagePainter {
  public:
    PagePainter(const Sheet& sheet, QPagedPaintDevice& device)
        : sheet_(sheet), device_(device), painter_(&device), width_(device.width()), height_(device.height()) {
        layOut();
    }

    int pages() const { return static_cast<int>(pages_.size()); }

    void paint() {
        for (int i = 0; i < pages(); ++i) {
            if (i > 0) device_.newPage();
            paintPage(i);
        }
    }

  private:
    void layOutWith(const Squeeze& squeeze) {
        squeeze_ = squeeze;
        painter_.setFont(plot::figureFont(squeeze.pointSize));
        const Canvas canvas(painter_, plot::Palette::onPaper());
        const double perMillimetre = width_ / device_.pageLayout().paintRect(QPageLayout::Millimeter).width();
        pieces_ = piecesOf(sheet_, canvas, width_, perMillimetre, squeeze);
        pages_ = pagesOf(pieces_, bodyHeight(canvas, true), bodyHeight(canvas, false));
    }

    // The first squeeze that makes one page of it, where the sheet wants that, with as many rows as it can then hold.
    void layOut() {
        for (const Squeeze& squeeze : squeezes()) {
            layOutWith(squeeze);
            if (!sheet_.fitsOnePage || pages() == 1) break;
        }
        constexpr int mostRowsWorthTrying = 40;
        if (!sheet_.fitsOnePage || pages() != 1 || squeeze_.mostRows >= mostRowsWorthTrying) return;
        Squeeze more = squeeze_;
        while (pages() == 1 && more.mostRows < mostRowsWorthTrying) {
            ++more.mostRows;
            layOutWith(more);
        }
        if (pages() == 1) return;
        --more.mostRows;
        layOutWith(more);
    }

    double titleHeight(const Canvas& canvas) const {
        const double subtitle = sheet_.subtitle.isEmpty() ? 0 : 1.2;
        return (kTitleScale * 1.1 + subtitle + 0.5) * canvas.em();
    }

    double bodyHeight(const Canvas& canvas, bool isFirst) const {
        const double em = canvas.em();
        const double head =
            kHeadHeight * em + (sheet_.isInvented ? kMarkHeight * em : 0) + (isFirst ? titleHeight(canvas) : 0);
        return height_ - head - kFootHeight * em;
    }

    void paintPage(int page) {
        painter_.setFont(plot::figureFont(squeeze_.pointSize));
        painter_.setRenderHint(QPainter::Antialiasing);
        Canvas canvas(painter_, plot::Palette::onPaper());
        double top = paintHead(canvas, page);
        if (page == 0) top = paintTitle(canvas, top);
        for (const PlacedPiece& placed : pages_[static_cast<std::size_t>(page)])
            placed.piece->paint(canvas, {0, top + placed.top, width_, placed.piece->height});
        paintFoot(canvas, page);
    }

    double paintHead(Canvas& canvas, int page) {
        const double em = canvas.em();
        const plot::Palette& palette = canvas.palette();
        const QString left =
            page == 0 ? sheet_.grower : PageWords::tr("%1 · %2", "grower, title").arg(sheet_.grower, sheet_.title);
        canvas.line({0, 0, 0.6 * width_, em}, Qt::AlignLeft | Qt::AlignTop, left, palette.text, Type::Small);
        canvas.line({0.62 * width_, 0, 0.38 * width_, em}, Qt::AlignRight | Qt::AlignTop, sheet_.logbook,
                    palette.quietText, Type::Small);
        canvas.stroke({0, 1.1 * em}, {width_, 1.1 * em}, palette.axis, 0.05);
        double top = kHeadHeight * em;
        if (sheet_.isInvented) {
            const QRectF mark(0, top, width_, 1.4 * em);
            QPainterPath frame;
            frame.addRect(mark);
            canvas.stroke(frame, palette.text, 0.08);
            canvas.line(mark, Qt::AlignHCenter | Qt::AlignVCenter, inventedText(), palette.text, Type::Bold);
            top += kMarkHeight * em;
        }
        return top;
    }

    double paintTitle(Canvas& canvas, double top) {
        const double em = canvas.em();
        painter_.setFont(plot::figureFont(kTitleScale * squeeze_.pointSize));
        Canvas large(painter_, plot::Palette::onPaper());
        large.line({0, top, width_, large.em()}, Qt::AlignLeft | Qt::AlignTop, sheet_.title, large.palette().text,
                   Type::Bold);
        if (!sheet_.subtitle.isEmpty())
            canvas.line({0, top + kTitleScale * 1.1 * em, width_, em}, Qt::AlignLeft | Qt::AlignTop, sheet_.subtitle,
                        canvas.palette().quietText);
        return top + titleHeight(canvas);
    }

    void paintFoot(Canvas& canvas, int page) {
        const double em = canvas.em(), top = height_ - 1.1 * em;
        const QColor& quiet = canvas.palette().quietText;
        const QRectF foot(0, top, width_, em);
        canvas.stroke({0, top - 0.2 * em}, {width_, top - 0.2 * em}, canvas.palette().axis, 0.05);
        canvas.line(foot, Qt::AlignLeft | Qt::AlignVCenter, printedText(sheet_), quiet, Type::Small);
        canvas.line(foot, Qt::AlignHCenter | Qt::AlignVCenter,
                    PageWords::tr("Page %1 of %2").arg(plot::countText(page + 1), plot::countText(pages())), quiet,
                    Type::Small);
        canvas.line(foot, Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("Strikebook " STRIKEBOOK_VERSION), quiet,
                    Type::Small);
    }

    const Sheet& sheet_;
    QPagedPaintDevice& device_;
    QPainter painter_;
    double width_;
    double height_;
    Squeeze squeeze_;
    std::vector<Piece> pieces_;
    std::vector<Page> pages_;
};

void setMargins(QPagedPaintDevice& device) {
    device.setPageMargins(QMarginsF(kSideMargin, kEndMargin, kSideMargin, kEndMargin), QPageLayout::Millimeter);
}

void preparePdf(QPdfWriter& writer, const Sheet& sheet, Paper paper) {
    writer.setTitle(sheet.title);
    writer.setCreator(QStringLiteral("Strikebook " STRIKEBOOK_VERSION));
    writer.setResolution(kDotsAnInch);
    writer.setPageSize(QPageSize(paper == Paper::Letter ? QPageSize::Letter : QPageSize::A4));
}

}  // namespace

Paper paperFrom(const QString& word) {
    return word.compare(QStringLiteral("Letter"), Qt::CaseInsensitive) == 0 ? Paper::Letter : Paper::A4;
}

void printTo(const Sheet& sheet, QPagedPaintDevice& device) {
    setMargins(device);
    PagePainter(sheet, device).paint();
}

void writePdf(const Sheet& sheet, const QString& file, Paper paper) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        preparePdf(writer, sheet, paper);
        printTo(sheet, writer);
    }
    plot::writeWholeFile(file, buffer.data());
}

int pageCount(const Sheet& sheet, Paper paper) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    preparePdf(writer, sheet, paper);
    setMargins(writer);
    return PagePainter(sheet, writer).pages();
}

}  // namespace report
