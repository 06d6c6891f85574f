// SPDX-License-Identifier: MIT
// From a sheet to pages: blocks become pieces that no page break may cut, and pieces are placed on pages. Inside report only.
#pragma once

#include <QRectF>
#include <functional>
#include <memory>
#include <vector>

#include "app/plot/canvas.h"
#include "app/report/sheet.h"

namespace report {

/// How much a sheet is squeezed to fit one page.
struct Squeeze {
    double pointSize{9};
    double pictureScale{1};
    int mostRows{1 << 20};  // of tables that may be shortened
    int mostLines{12};      // of a paragraph or a fact
    int mostCellLines{3};
    bool leavesPicturesOut{};  // those that may be only their sentence
};

/// Something that stays whole. `paint` is told where: left, top, width and height in the canvas' units.
struct Piece {
    double height{};
    bool staysWithNext{};
    std::function<void(plot::Canvas&, const QRectF&)> paint;
    std::shared_ptr<const Piece> repeated;  // drawn first where a page begins with this piece: a table's headings
};

struct PlacedPiece {
    const Piece* piece{};
    double top{};
};

using Page = std::vector<PlacedPiece>;

/// Every block in order, then the citation. `dotsPerMillimetre` is the device's.
[[nodiscard]] std::vector<Piece> piecesOf(const Sheet& sheet, const plot::Canvas& canvas, double width,
                                          double dotsPerMillimetre, const Squeeze& squeeze);
[[nodiscard]] std::vector<Piece> piecesOfTable(const Table& table, const plot::Canvas& canvas, double width,
                                               const Squeeze& squeeze);

/// `firstHeight` is what the first page offers, `height` each one after. The pages point into `pieces`.
[[nodiscard]] std::vector<Page> pagesOf(const std::vector<Piece>& pieces, double firstHeight, double height);

/// The squeezes to try in turn, from none to the last resort.
[[nodiscard]] const std::vector<Squeeze>& squeezes();

}  // namespace report
