// SPDX-License-Identifier: MIT
// A lid or a tray seen from above: round holes or square cells, rows with letters and columns with numbers from the marked corner, A1.
// What stands at a position is told by shape and letter as well as by colour. The window draws its map place by place with the same
// strokes; a print-out takes the whole as a figure.
#pragma once

#include <QRectF>
#include <QString>
#include <memory>
#include <vector>

#include "app/plot/figure.h"

class QPainter;

namespace plot {

struct Palette;

enum class PlaceState { Free, Blocked, Undecided, Rooted, Lost, Withdrawn };

struct MapPlace {
    PlaceState state{PlaceState::Free};
    QString letter{};  // R, W, that of a cause of loss; of an undecided one the number of a trial's arm
    QString day{};     // of the look that decided it; empty: not decided, or just now
    bool isDimmed{};   // of another batch than the map is about

    bool operator==(const MapPlace&) const = default;
};

struct PositionMap {
    int rows{};
    int columns{};
    bool isStaggered{};              // every second row half a step to the right
    bool isRound{};                  // the holes of a lid; else the cells of a tray
    std::vector<MapPlace> places{};  // row by row
};

/// Where the cell of a position lies when `step` is the width of one, from the corner of A1.
[[nodiscard]] QRectF placeArea(int row, int column, double step, bool isStaggered);
/// The same of all cells together.
[[nodiscard]] QRectF bodyArea(int rows, int columns, double step, bool isStaggered);

/// The lid or tray itself; the corner of A1 is cut off and marked.
void drawMapBody(QPainter& painter, const QRectF& body, double step, const Palette& palette);
/// One position, sized by its cell.
void drawPlace(QPainter& painter, const QRectF& cell, const MapPlace& place, bool isRound, const Palette& palette);
/// The word at the edge that the grower stands at.
void drawFrontMark(QPainter& painter, const QRectF& area, const Palette& palette);
/// "front", as the map writes it.
[[nodiscard]] QString frontWord();

/// Row letter and column number as they stand at the edges.
[[nodiscard]] QString rowLetter(int row);
[[nodiscard]] QString columnNumber(int column);

/// For paper. `table` says in words what the picture shows.
[[nodiscard]] std::shared_ptr<const Figure> positionMapFigure(PositionMap map, QString sentence, QString method,
                                                              FigureTable table);

}  // namespace plot
