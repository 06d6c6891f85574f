// SPDX-License-Identifier: MIT
// Blocks into pieces, all but tables.
#include <algorithm>
#include <cstddef>
#include <memory>
#include <utility>

#include "app/plot/palette.h"
#include "app/report/page_layout.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

using plot::Canvas;
using plot::Type;

constexpr double kBlockGap = 0.55;  // ems after a block
constexpr double kColumnGap = 1.6;
constexpr int wholeCaution = 30;  // lines
constexpr double kCautionIndent = 0.9;

Piece gap(double height) {
    return {.height = height, .staysWithNext = false, .paint = [](Canvas&, const QRectF&) {}, .repeated = nullptr};
}

void paintFact(Canvas& canvas, const Fact& fact, const QRectF& area, double label, int mostLines) {
    const double em = canvas.em();
    canvas.line({area.left(), area.top(), label, em}, Qt::AlignLeft | Qt::AlignVCenter, fact.label,
                canvas.palette().quietText, Type::Small);
    const QRectF value = area.adjusted(label, 0, 0, 0);
    if (fact.isPlantName && canvas.plantNameWidth(fact.value) <= value.width())
        canvas.plantName({value.left(), value.top(), value.width(), em}, fact.value);
    else
        canvas.paragraph(value, fact.value, canvas.palette().text, Type::Plain, mostLines);
}

class PieceMaker {
  public:
    PieceMaker(const Canvas& canvas, double width, double dotsPerMillimetre, const Squeeze& squeeze)
        : canvas_(canvas), em_(canvas.em()), width_(width), dotsPerMillimetre_(dotsPerMillimetre), squeeze_(squeeze) {}

    void operator()(const Heading& heading) {
        pieces_.push_back({.height = 1.75 * em_,
                           .staysWithNext = true,
                           .paint =
                               [text = heading.text](Canvas& canvas, const QRectF& area) {
                                   const double em = canvas.em();
                                   canvas.line(area.adjusted(0, 0.45 * em, 0, -0.2 * em),
                                               Qt::AlignLeft | Qt::AlignVCenter, text, canvas.palette().text,
                                               Type::Bold);
                                   canvas.stroke({area.left(), area.bottom() - 0.1 * em},
                                                 {area.right(), area.bottom() - 0.1 * em}, canvas.palette().grid, 0.06);
                               },
                           .repeated = nullptr});
    }

    void operator()(const Paragraph& paragraph) {
        const Type type = paragraph.tone == Tone::Answer  ? Type::Bold
                          : paragraph.tone == Tone::Quiet ? Type::Small
                                                          : Type::Plain;
        const double indent = paragraph.tone == Tone::Caution ? kCautionIndent * em_ : 0;
        // A caution that was cut short would be none.
        const int most = paragraph.tone == Tone::Caution ? wholeCaution : squeeze_.mostLines;
        const double height = canvas_.paragraphHeight(width_ - indent, paragraph.text, type, most);
        pieces_.push_back({.height = height,
                           .staysWithNext = true,
                           .paint =
                               [paragraph, type, indent, lines = most](Canvas& canvas, const QRectF& area) {
                                   const bool isQuiet = paragraph.tone == Tone::Quiet;
                                   if (paragraph.tone == Tone::Caution)
                                       canvas.fill(QRectF(area.left(), area.top() + 0.1 * canvas.em(),
                                                          0.28 * canvas.em(), area.height() - 0.2 * canvas.em()),
                                                   canvas.palette().text);
                                   canvas.paragraph(area.adjusted(indent, 0, 0, 0), paragraph.text,
                                                    isQuiet ? canvas.palette().quietText : canvas.palette().text, type,
                                                    lines);
                               },
                           .repeated = nullptr});
        pieces_.push_back(gap(kBlockGap * em_));
    }

    // Two columns, read down the left one and then down the right.
    void operator()(const Facts& facts) {
        const std::size_t rows = (facts.facts.size() + 1) / 2;
        const double column = (width_ - kColumnGap * em_) / 2;
        const double left = labelWidth(facts, 0, rows), right = labelWidth(facts, rows, facts.facts.size());
        for (std::size_t row = 0; row < rows; ++row) {
            const Fact first = facts.facts[row];
            const Fact second = row + rows < facts.facts.size() ? facts.facts[row + rows] : Fact{};
            const double height = std::max(factHeight(first, column, left), factHeight(second, column, right));
            pieces_.push_back(
                {.height = height,
                 .staysWithNext = row + 1 < rows,
                 .paint =
                     [=, lines = squeeze_.mostLines](Canvas& canvas, const QRectF& area) {
                         paintFact(canvas, first, {area.left(), area.top(), column, area.height()}, left, lines);
                         paintFact(canvas, second, {area.right() - column, area.top(), column, area.height()}, right,
                                   lines);
                     },
                 .repeated = nullptr});
        }
        pieces_.push_back(gap(kBlockGap * em_));
    }

    void operator()(const Table& table) {
        for (Piece& piece : piecesOfTable(table, canvas_, width_, squeeze_)) pieces_.push_back(std::move(piece));
        pieces_.push_back(gap(kBlockGap * em_));
    }

    void operator()(const Picture& picture) {
        if (!picture.figure) return;
        if (picture.mayBeOnlyItsSentence && squeeze_.leavesPicturesOut)
            return (*this)(Paragraph{picture.figure->sentence() + u'.', Tone::Plain});
        pieces_.push_back(
            {.height = picture.heightInMillimetres * squeeze_.pictureScale * dotsPerMillimetre_,
             .staysWithNext = true,
             .paint = [figure = picture.figure](Canvas& canvas, const QRectF& area) { canvas.figure(*figure, area); },
             .repeated = nullptr});
        pieces_.push_back(gap(kBlockGap * em_));
    }

    void operator()(const SignatureLine& signature) {
        pieces_.push_back({.height = 3.4 * em_,
                           .staysWithNext = false,
                           .paint =
                               [labels = signature.labels](Canvas& canvas, const QRectF& area) {
                                   const double em = canvas.em(), space = 2 * em;
                                   const double count = static_cast<double>(labels.size());
                                   const double width = (area.width() - (count - 1) * space) / count,
                                                y = area.bottom() - 1.1 * em;
                                   for (qsizetype i = 0; i < labels.size(); ++i) {
                                       const double left = area.left() + static_cast<double>(i) * (width + space);
                                       canvas.stroke({left, y}, {left + width, y}, canvas.palette().text, 0.06);
                                       canvas.line({left, y + 0.1 * em, width, em}, Qt::AlignLeft | Qt::AlignTop,
                                                   labels[i], canvas.palette().quietText, Type::Small);
                                   }
                               },
                           .repeated = nullptr});
        pieces_.push_back(gap(kBlockGap * em_));
    }

    std::vector<Piece> take() { return std::move(pieces_); }

  private:
    double labelWidth(const Facts& facts, std::size_t first, std::size_t end) const {
        double width = 0;
        for (std::size_t i = first; i < end; ++i)
            width = std::max(width, canvas_.widthOf(facts.facts[i].label, Type::Small));
        return width + 0.8 * em_;
    }

    double factHeight(const Fact& fact, double column, double label) const {
        if (fact.isPlantName && canvas_.plantNameWidth(fact.value) <= column - label) return 1.12 * em_;
        return canvas_.paragraphHeight(column - label, fact.value, Type::Plain, squeeze_.mostLines) + 0.12 * em_;
    }

    const Canvas& canvas_;
    double em_;
    double width_;
    double dotsPerMillimetre_;
    Squeeze squeeze_;
    std::vector<Piece> pieces_;
};

}  // namespace

std::vector<Piece> piecesOf(const Sheet& sheet, const plot::Canvas& canvas, double width, double dotsPerMillimetre,
                            const Squeeze& squeeze) {
    PieceMaker maker(canvas, width, dotsPerMillimetre, squeeze);
    const QString citation = citationText(sheet);
    for (const Block& block : sheet.blocks) std::visit(maker, block);
    if (!citation.isEmpty()) maker(Paragraph{citation, Tone::Quiet});
    return maker.take();
}

}  // namespace report
