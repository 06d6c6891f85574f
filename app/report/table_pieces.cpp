// SPDX-License-Identifier: MIT
// A table into pieces: title, headings that repeat on a new page, one piece a row.
#include <algorithm>
#include <cstddef>
#include <numeric>
#include <utility>

#include "app/plot/palette.h"
#include "app/report/page_layout.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

using plot::Canvas;
using plot::Type;

constexpr double kCellGap = 1.0;  // ems between columns
constexpr double kPenGap = 0.7;   // the frames of boxes keep columns apart
constexpr double kLeastCell = 3.5;
constexpr double kPenCell = 3.2;    // a box for three digits and a letter
constexpr double kPenHeight = 1.8;  // of rows that are written into by hand

bool isRight(const Table& table, qsizetype column) {
    return column < std::ssize(table.aligned) && table.aligned[static_cast<std::size_t>(column)] == Align::Right;
}

bool isForPen(const Table& table, qsizetype column) {
    return std::ranges::find(table.penColumns, static_cast<int>(column)) != table.penColumns.end();
}

bool isWhole(const Table& table, qsizetype column) {
    return std::ranges::find(table.wholeColumns, static_cast<int>(column)) != table.wholeColumns.end();
}

/// A plant's name over two lines: botanical name, cultivar; the second may be empty.
std::pair<QString, QString> plantLines(const QString& name) {
    const qsizetype cut = name.lastIndexOf(QStringLiteral(" '"));
    return cut < 0 ? std::pair(name, QString()) : std::pair(name.left(cut), name.mid(cut + 1));
}

double plantWidth(const Canvas& canvas, const Table& table, const QString& name) {
    if (!table.breaksPlantNames) return canvas.plantNameWidth(name);
    const auto [botanical, cultivar] = plantLines(name);
    return std::max(canvas.plantNameWidth(botanical), canvas.widthOf(cultivar));
}

double cellWidth(const Canvas& canvas, const Table& table, const QString& text, qsizetype column) {
    return column == table.plantColumn ? plantWidth(canvas, table, text) : canvas.widthOf(text);
}

double gapOf(const Table& table, const Canvas& canvas) {
    return (table.penColumns.empty() ? kCellGap : kPenGap) * canvas.em();
}

// The width at which a heading takes two lines, its words whole.
double twoLineWidth(const Canvas& canvas, const QString& heading) {
    double least = canvas.widthOf(heading, Type::Small);
    for (qsizetype blank = heading.indexOf(u' '); blank >= 0; blank = heading.indexOf(u' ', blank + 1))
        least = std::min(least, std::max(canvas.widthOf(heading.left(blank), Type::Small),
                                         canvas.widthOf(heading.mid(blank + 1), Type::Small)));
    return least + 0.1 * canvas.em();  // a hair more: line breaking works in whole fractions of a dot
}

// What a column wants, and what it needs at least: figures are never broken, headings only between words.
struct Width {
    double heading{}, cells{}, least{};
};

std::vector<Width> wantedWidths(const Table& table, const Canvas& canvas) {
    std::vector<Width> widths;
    for (qsizetype column = 0; column < table.headings.size(); ++column) {
        Width width{.heading = canvas.widthOf(table.headings[column], Type::Small), .cells = 0, .least = 0};
        for (const QStringList& row : table.rows)
            if (column < row.size()) width.cells = std::max(width.cells, cellWidth(canvas, table, row[column], column));
        width.cells = std::max(width.cells, twoLineWidth(canvas, table.headings[column]));
        if (isWhole(table, column)) width.cells += 0.1 * canvas.em();  // as for headings: never broken by a hair
        if (isForPen(table, column)) width.cells = std::max(width.cells, kPenCell * canvas.em());
        const bool isPlant = table.breaksPlantNames && column == table.plantColumn;
        const bool isFixed = isRight(table, column) || isForPen(table, column) || isWhole(table, column) || isPlant;
        width.least = isFixed ? width.cells : std::min(width.cells, kLeastCell * canvas.em());
        widths.push_back(width);
    }
    return widths;
}

// As wide as their texts; where that is too much, headings go over two lines, then the widest text columns give.
std::vector<double> columnWidthsFitting(const Table& table, const Canvas& canvas, double width) {
    const std::vector<Width> wanted = wantedWidths(table, canvas);
    const double gaps = gapOf(table, canvas) * (static_cast<double>(wanted.size()) - 1);
    std::vector<double> widths;
    for (const Width& one : wanted) widths.push_back(std::max(one.heading, one.cells));
    if (std::accumulate(widths.begin(), widths.end(), gaps) <= width) return widths;
    for (std::size_t i = 0; i < wanted.size(); ++i) widths[i] = wanted[i].cells;
    for (double excess = std::accumulate(widths.begin(), widths.end(), gaps) - width; excess > 0.01;) {
        std::size_t widest = wanted.size();
        for (std::size_t i = 0; i < wanted.size(); ++i)
            if (widths[i] > wanted[i].least + 0.01 && (widest == wanted.size() || widths[i] > widths[widest]))
                widest = i;
        if (widest == wanted.size()) break;
        const double give = std::min({excess, widths[widest] - wanted[widest].least, 0.5 * canvas.em()});
        widths[widest] -= give;
        excess -= give;
    }
    return widths;
}

std::vector<double> columnWidths(const Table& table, const Canvas& canvas, double width) {
    std::vector<double> widths = columnWidthsFitting(table, canvas, width);
    if (table.restColumn < 0 || std::cmp_greater_equal(table.restColumn, widths.size())) return widths;
    const double gaps = gapOf(table, canvas) * (static_cast<double>(widths.size()) - 1);
    const double left = width - std::accumulate(widths.begin(), widths.end(), gaps);
    widths[static_cast<std::size_t>(table.restColumn)] += std::max(0.0, left);
    return widths;
}

// A frame to write in.
void paintPenBox(Canvas& on, const QRectF& cell) {
    QPainterPath frame;
    frame.addRect(cell.adjusted(0, 0.1 * on.em(), 0, -0.15 * on.em()));
    on.stroke(frame, on.palette().axis, 0.05);
}

struct Columns {
    std::vector<double> widths;
    double gap{};

    template <class Act>
    void forEach(const QRectF& area, Act act) const {
        double left = area.left();
        for (std::size_t i = 0; i < widths.size(); ++i) {
            act(static_cast<qsizetype>(i), QRectF(left, area.top(), widths[i], area.height()));
            left += widths[i] + gap;
        }
    }
    double total() const {
        return std::accumulate(widths.begin(), widths.end(), gap * static_cast<double>(widths.size() - 1));
    }
};

Piece headingPiece(const Table& table, const Canvas& canvas, const Columns& columns) {
    double height = 0;
    for (std::size_t i = 0; i < columns.widths.size(); ++i)
        height = std::max(height, canvas.paragraphHeight(columns.widths[i], table.headings[static_cast<qsizetype>(i)],
                                                         Type::Small, 2));
    return {.height = height + 0.3 * canvas.em(),
            .staysWithNext = true,
            .paint =
                [table, columns](Canvas& on, const QRectF& area) {
                    columns.forEach(area, [&](qsizetype column, const QRectF& cell) {
                        const double own = on.paragraphHeight(cell.width(), table.headings[column], Type::Small, 2);
                        const double bottom = area.bottom() - 0.3 * on.em();
                        on.paragraph({cell.left(), bottom - own, cell.width(), own}, table.headings[column],
                                     on.palette().quietText, Type::Small, 2,
                                     isRight(table, column) ? Qt::AlignRight : Qt::AlignLeft);
                    });
                    const double y = area.bottom() - 0.18 * on.em();
                    on.stroke({area.left(), y}, {area.left() + columns.total(), y}, on.palette().axis, 0.05);
                },
            .repeated = nullptr};
}

void paintPlant(Canvas& on, const QRectF& line, const QString& name, double drop) {
    const auto [botanical, cultivar] = plantLines(name);
    if (cultivar.isEmpty() || on.plantNameWidth(name) <= line.width())
        return on.plantName(line.translated(0, drop), name);
    on.plantName(line, botanical);
    on.line(line.translated(0, on.em()), Qt::AlignLeft | Qt::AlignVCenter, cultivar, on.palette().text);
}

void paintRow(Canvas& on, const QRectF& area, const Table& table, const QStringList& row, const Columns& columns,
              int mostLines) {
    const double drop = table.penColumns.empty() ? 0 : (kPenHeight - 1) / 2 * on.em();
    columns.forEach(area, [&](qsizetype column, const QRectF& cell) {
        if (isForPen(table, column)) return paintPenBox(on, cell);
        if (column >= row.size()) return;
        if (column == table.plantColumn)
            paintPlant(on, {cell.left(), cell.top(), cell.width(), on.em()}, row[column], drop);
        else
            on.paragraph(cell.adjusted(0, drop, 0, 0), row[column], on.palette().text, Type::Plain, mostLines,
                         isRight(table, column) ? Qt::AlignRight : Qt::AlignLeft);
    });
}

Piece rowPiece(const Table& table, const QStringList& row, const Canvas& canvas, const Columns& columns,
               int mostLines) {
    double height = canvas.em();
    for (std::size_t i = 0; i < columns.widths.size() && static_cast<qsizetype>(i) < row.size(); ++i)
        if (std::cmp_not_equal(i, table.plantColumn))
            height = std::max(height, canvas.paragraphHeight(columns.widths[i], row[static_cast<qsizetype>(i)],
                                                             Type::Plain, mostLines));
    if (table.breaksPlantNames && std::cmp_less(table.plantColumn, row.size()) && table.plantColumn >= 0 &&
        canvas.plantNameWidth(row[table.plantColumn]) > columns.widths[static_cast<std::size_t>(table.plantColumn)])
        height = std::max(height, 2 * canvas.em());
    if (!table.penColumns.empty()) height = std::max(height, kPenHeight * canvas.em());
    return {.height = height + 0.1 * canvas.em(),
            .staysWithNext = false,
            .paint = [table, row, columns, mostLines](
                         Canvas& on, const QRectF& area) { paintRow(on, area, table, row, columns, mostLines); },
            .repeated = nullptr};
}

Piece linePiece(const QString& text, const Canvas& canvas, double width, Type type, bool staysWithNext) {
    const double height = canvas.paragraphHeight(width, text, type, 2);
    return {.height = height + 0.15 * canvas.em(),
            .staysWithNext = staysWithNext,
            .paint =
                [text, type](Canvas& on, const QRectF& area) {
                    on.paragraph(area, text, type == Type::Small ? on.palette().quietText : on.palette().text, type, 2);
                },
            .repeated = nullptr};
}

}  // namespace

std::vector<Piece> piecesOfTable(const Table& table, const plot::Canvas& canvas, double width, const Squeeze& squeeze) {
    const Columns columns{.widths = columnWidths(table, canvas, width), .gap = gapOf(table, canvas)};
    std::vector<Piece> pieces;
    if (!table.title.isEmpty()) pieces.push_back(linePiece(table.title, canvas, width, Type::Plain, true));
    const auto headings = std::make_shared<const Piece>(headingPiece(table, canvas, columns));
    pieces.push_back(*headings);

    const std::size_t rows = table.rows.size(), most = static_cast<std::size_t>(squeeze.mostRows);
    const bool isShortened = table.mayBeShortened && rows > most;
    const std::size_t first = isShortened ? most - most / 2 : rows, last = isShortened ? rows - most / 2 : rows;
    for (std::size_t i = 0; i < rows; ++i) {
        if (i == first)
            pieces.push_back(linePiece(leftOutText(static_cast<int>(last - first), static_cast<int>(rows)), canvas,
                                       width, Type::Small, false));
        if (i >= first && i < last) continue;
        const int mostLines = table.mostCellLines > 0 ? table.mostCellLines : squeeze.mostCellLines;
        pieces.push_back(rowPiece(table, table.rows[i], canvas, columns, mostLines));
        if (i > 0) pieces.back().repeated = headings;
    }
    return pieces;
}

}  // namespace report
