// SPDX-License-Identifier: MIT
// Measures templates from the PDF, with tools of others: paths as pdftocairo gives them, dots as pdftoppm draws them at 600 an inch.
#include "app/report/drilling_template.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "db/logbook_error.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/report/sheet_examples.h"

namespace {

using report::DrillingTemplate;
using report::Paper;

constexpr double millimetresPerPoint = 25.4 / 72;
constexpr double closeEnough = 0.1;  // mm

QString toolOutput(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished()) return {};
    return QString::fromUtf8(process.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);  // ligatures
}

DrillingTemplate templateOf(const core::Lid& lid, core::RowPattern pattern) {
    return {.lid = lid,
            .layout = core::layoutOf(lid, pattern),
            .unit = core::LengthUnit::Millimetres,
            .station = QStringLiteral("Tub 1"),
            .printedAt = examples::printedAt()};
}

core::Lid smallLid() {
    return {.isRound = false, .length = 180, .width = 200, .hole = 44, .web = 6, .edge = 15};
}

core::Lid largeLid() {
    return {.isRound = false, .length = 600, .width = 400, .hole = 44, .web = 6, .edge = 20};
}

core::Lid roundLid() {
    return {.isRound = true, .length = 290, .width = 0, .hole = 35, .web = 8, .edge = 12};
}

struct DrawnCircle {
    QPointF centre;
    double diameter{};
};

struct DrawnPage {
    std::vector<DrawnCircle> circles;
    std::vector<QRectF> lines;  // straight ones, as the box around them
    std::vector<QRectF> boxes;
};

std::vector<double> numbersIn(const QString& text) {
    static const QRegularExpression number(QStringLiteral("-?[0-9]+\\.?[0-9]*(e-?[0-9]+)?"));
    std::vector<double> numbers;
    for (auto match = number.globalMatch(text); match.hasNext();) numbers.push_back(match.next().captured().toDouble());
    return numbers;
}

QRectF boxAround(const std::vector<QPointF>& points) {
    const auto [left, right] = std::ranges::minmax(points, {}, &QPointF::x);
    const auto [top, bottom] = std::ranges::minmax(points, {}, &QPointF::y);
    return {QPointF(left.x(), top.y()), QPointF(right.x(), bottom.y())};
}

/// The corners of a path on paper, in millimetres; of a curve those where one piece meets the next.
std::vector<QPointF> cornersOf(const QString& path, const std::vector<double>& matrix) {
    static const QRegularExpression piece(QStringLiteral("([MLC])([^MLCZ]*)"));
    std::vector<QPointF> corners;
    for (auto match = piece.globalMatch(path); match.hasNext();) {
        const std::vector<double> n = numbersIn(match.next().captured(2));
        if (n.size() < 2) continue;
        const double x = n[n.size() - 2], y = n[n.size() - 1];
        corners.push_back(
            QPointF(matrix[0] * x + matrix[2] * y + matrix[4], matrix[1] * x + matrix[3] * y + matrix[5]) *
            millimetresPerPoint);
    }
    return corners;
}

DrawnPage pageOf(const QString& file, int page, const QTemporaryDir& folder) {
    const QString svg = folder.filePath("page.svg"), number = QString::number(page);
    toolOutput("pdftocairo", {"-svg", "-f", number, "-l", number, file, svg});
    QFile drawn(svg);
    EXPECT_TRUE(drawn.open(QIODevice::ReadOnly));
    QString text = QString::fromUtf8(drawn.readAll());
    text.remove(QRegularExpression("<defs>.*</defs>", QRegularExpression::DotMatchesEverythingOption));
    static const QRegularExpression path(QStringLiteral("<path ([^>]*)/>"));
    static const QRegularExpression shape(QStringLiteral(" d=\"([^\"]*)\"")),
        turned(QStringLiteral("matrix\\(([^)]*)\\)"));
    DrawnPage found;
    for (auto match = path.globalMatch(text); match.hasNext();) {
        const QString attributes = u' ' + match.next().captured(1);
        const QString d = shape.match(attributes).captured(1);
        std::vector<double> matrix = numbersIn(turned.match(attributes).captured(1));
        if (matrix.size() != 6) matrix = {1, 0, 0, 1, 0, 0};
        const std::vector<QPointF> corners = cornersOf(d, matrix);
        if (corners.size() < 2) continue;
        const QRectF box = boxAround(corners);
        const qsizetype curves = d.count(u'C');
        if (curves >= 4 && std::abs(box.width() - box.height()) < 0.01)
            found.circles.push_back({box.center(), box.width()});
        else if (curves == 0 && corners.size() == 2)
            found.lines.push_back(box);
        else if (curves == 0)
            found.boxes.push_back(box);
    }
    return found;
}

std::vector<DrawnCircle> ofDiameter(const DrawnPage& page, double diameter) {
    std::vector<DrawnCircle> circles;
    std::ranges::copy_if(page.circles, std::back_inserter(circles), [diameter](const DrawnCircle& circle) {
        return std::abs(circle.diameter - diameter) < closeEnough;
    });
    return circles;
}

bool hasCircleAt(const std::vector<DrawnCircle>& circles, const QPointF& place) {
    return std::ranges::any_of(circles, [&](const DrawnCircle& circle) {
        return std::hypot(circle.centre.x() - place.x(), circle.centre.y() - place.y()) < closeEnough;
    });
}

bool hasCrossAt(const DrawnPage& page, const QPointF& place) {
    const auto isThere = [&](bool isAcross) {
        return std::ranges::any_of(page.lines, [&](const QRectF& line) {
            return QLineF(line.center(), place).length() < closeEnough && (line.width() > line.height()) == isAcross;
        });
    };
    return isThere(true) && isThere(false);
}

QRectF onPage(const core::LidHole& hole, double size) {
    return {hole.across - size / 2, hole.down - size / 2, size, size};
}

/// Every hole on every sheet that shows any of it, where the sheet says that the lid lies.
void expectHolesOnTheirSheets(const DrillingTemplate& drilling, Paper paper) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("lid.pdf");
    report::writePdf(drilling, file, paper);
    const report::TemplateTiles tiles = report::tilesOf(drilling.layout, paper);
    std::vector<int> whole(drilling.layout.holes.size());
    for (std::size_t number = 0; number < tiles.tiles.size(); ++number) {
        const report::TemplateTile& tile = tiles.tiles[number];
        const DrawnPage page = pageOf(file, static_cast<int>(number) + 1, folder);
        const std::vector<DrawnCircle> circles = ofDiameter(page, drilling.lid.hole);
        int expected = 0;
        for (std::size_t hole = 0; hole < drilling.layout.holes.size(); ++hole) {
            const core::LidHole& each = drilling.layout.holes[hole];
            const QRectF area = onPage(each, drilling.lid.hole);
            if (!tile.lid.intersects(area)) continue;
            ++expected;
            const QPointF centre = QPointF(each.across, each.down) + tile.origin;
            EXPECT_TRUE(hasCircleAt(circles, centre)) << core::nameOf(each.position) << " on sheet " << number + 1;
            if (!tile.lid.contains(QPointF(each.across, each.down))) continue;
            EXPECT_TRUE(hasCrossAt(page, centre)) << core::nameOf(each.position) << " on sheet " << number + 1;
            ++whole[hole];
        }
        EXPECT_EQ(static_cast<int>(circles.size()), expected) << "sheet " << number + 1;
    }
    for (std::size_t hole = 0; hole < whole.size(); ++hole)
        EXPECT_GE(whole[hole], 1) << core::nameOf(drilling.layout.holes[hole].position)
                                  << " can be drilled by no sheet";
}

/// Ink along a ray from a centre between two radii, as the radius of its middle.
double ringAlong(const QImage& page, const QPointF& centre, double angle, double from, double to) {
    constexpr double dots = 600 / 25.4, step = 0.005;
    double first = 0, last = 0;
    for (double radius = from; radius <= to; radius += step) {
        const QPointF at = (centre + radius * QPointF(std::cos(angle), std::sin(angle))) * dots;
        const bool isInk = qGray(page.pixel(static_cast<int>(at.x()), static_cast<int>(at.y()))) < 128;
        if (isInk && first == 0) first = radius;
        if (isInk) last = radius;
    }
    return first == 0 ? 0 : (first + last) / 2;
}

}  // namespace

TEST(DrillingTemplate, HasItsHolesAtTrueScaleOnOneSheet) {
    const DrillingTemplate drilling = templateOf(smallLid(), core::RowPattern::Square);
    ASSERT_EQ(drilling.layout.count(), 9);
    EXPECT_EQ(report::tilesOf(drilling.layout, Paper::A4).tiles.size(), 1U);
    const QTemporaryDir folder;
    report::writePdf(drilling, folder.filePath("lid.pdf"), Paper::A4);
    const DrawnPage page = pageOf(folder.filePath("lid.pdf"), 1, folder);
    const std::vector<DrawnCircle> circles = ofDiameter(page, 44);
    ASSERT_EQ(circles.size(), 9U);
    // From the outline of the lid, which the grower lays on the lid, not from what the program says of its page.
    const auto lid = std::ranges::find_if(page.boxes, [](const QRectF& box) {
        return std::abs(box.width() - 180) < closeEnough && std::abs(box.height() - 200) < closeEnough;
    });
    ASSERT_NE(lid, page.boxes.end());
    for (const core::LidHole& hole : drilling.layout.holes)
        EXPECT_TRUE(hasCircleAt(circles, lid->topLeft() + QPointF(hole.across, hole.down)))
            << core::nameOf(hole.position);
}

TEST(DrillingTemplate, MeasuresTheSameInDotsOfAPrinter) {
    const DrillingTemplate drilling = templateOf(smallLid(), core::RowPattern::Square);
    const QTemporaryDir folder;
    report::writePdf(drilling, folder.filePath("lid.pdf"), Paper::A4);
    toolOutput("pdftoppm",
               {"-r", "600", "-gray", "-png", "-singlefile", folder.filePath("lid.pdf"), folder.filePath("page")});
    constexpr int wholePage = 256;  // megabytes
    QImageReader::setAllocationLimit(wholePage);
    const QImage page(folder.filePath("page.png"));
    ASSERT_FALSE(page.isNull());
    const report::TemplateTile tile = report::tilesOf(drilling.layout, Paper::A4).tiles.front();
    ASSERT_EQ(drilling.layout.count(), 9);
    for (const core::LidHole& hole : drilling.layout.holes) {
        SCOPED_TRACE(core::nameOf(hole.position));
        const QPointF centre = QPointF(hole.across, hole.down) + tile.origin;
        QPointF middle;
        constexpr int rays = 16;
        for (int ray = 0; ray < rays; ++ray) {
            const double angle = (ray + 0.5) * 2 * std::numbers::pi / rays;
            const double radius = ringAlong(page, centre, angle, 20, 24);
            EXPECT_NEAR(radius, 22, closeEnough / 2) << "ray " << ray;
            middle += radius * QPointF(std::cos(angle), std::sin(angle)) * 2 / rays;
        }
        EXPECT_LT(std::hypot(middle.x(), middle.y()), closeEnough);
    }
}

TEST(DrillingTemplate, ShowsEveryHoleOfALargeLidOnItsSheets) {
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        expectHolesOnTheirSheets(templateOf(largeLid(), core::RowPattern::Staggered), paper);
        expectHolesOnTheirSheets(templateOf(largeLid(), core::RowPattern::Square), paper);
        expectHolesOnTheirSheets(templateOf(roundLid(), core::RowPattern::Staggered), paper);
    }
}

TEST(DrillingTemplate, JoinsItsSheetsByMarksThatLieOnBoth) {
    const DrillingTemplate drilling = templateOf(largeLid(), core::RowPattern::Staggered);
    const QTemporaryDir folder;
    const QString file = folder.filePath("lid.pdf");
    report::writePdf(drilling, file, Paper::A4);
    const report::TemplateTiles tiles = report::tilesOf(drilling.layout, Paper::A4);
    ASSERT_GT(tiles.rows, 1);
    ASSERT_GT(tiles.columns, 1);
    const DrawnPage first = pageOf(file, 1, folder), second = pageOf(file, 2, folder),
                    below = pageOf(file, tiles.columns + 1, folder);
    // Laid so that the marks at the join meet, the holes that both sheets show must meet.
    for (const auto& [page, next, isBeside] : {std::tuple(&first, &second, true), std::tuple(&first, &below, false)}) {
        const auto atJoin = [isBeside = isBeside](const DrawnPage& sheet, bool isLast) {
            std::vector<DrawnCircle> marks = ofDiameter(sheet, 4);
            const auto along = [isBeside](const DrawnCircle& mark) {
                return isBeside ? mark.centre.x() : mark.centre.y();
            };
            const double edge =
                isLast ? along(std::ranges::max(marks, {}, along)) : along(std::ranges::min(marks, {}, along));
            std::erase_if(marks, [&](const DrawnCircle& mark) { return std::abs(along(mark) - edge) > closeEnough; });
            std::ranges::sort(marks, {}, [isBeside](const DrawnCircle& mark) {
                return isBeside ? mark.centre.y() : mark.centre.x();
            });
            return marks;
        };
        const std::vector<DrawnCircle> here = atJoin(*page, true), there = atJoin(*next, false);
        ASSERT_EQ(here.size(), 2U);
        ASSERT_EQ(there.size(), 2U);
        const QPointF shift = there[0].centre - here[0].centre;
        EXPECT_LT(QLineF(here[1].centre + shift, there[1].centre).length(), closeEnough);
        int shared = 0;
        const std::vector<DrawnCircle> holes = ofDiameter(*next, 44);
        for (const DrawnCircle& hole : ofDiameter(*page, 44)) shared += hasCircleAt(holes, hole.centre + shift) ? 1 : 0;
        EXPECT_GE(shared, 2);
    }
}

TEST(DrillingTemplate, HasALineOf100MillimetresOnEverySheet) {
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const DrillingTemplate drilling = templateOf(largeLid(), core::RowPattern::Square);
        const QTemporaryDir folder;
        const QString file = folder.filePath("lid.pdf");
        report::writePdf(drilling, file, paper);
        const auto sheets = static_cast<int>(report::tilesOf(drilling.layout, paper).tiles.size());
        for (int number = 1; number <= sheets; ++number) {
            const DrawnPage page = pageOf(file, number, folder);
            EXPECT_EQ(std::ranges::count_if(page.lines,
                                            [](const QRectF& line) {
                                                return std::abs(line.width() - 100) < closeEnough &&
                                                       line.height() < 0.01;
                                            }),
                      1)
                << "sheet " << number;
            const QString at = QString::number(number);
            const QString text = toolOutput("pdftotext", {"-f", at, "-l", at, file, "-"}).simplified();
            EXPECT_TRUE(text.contains("Print at 100 %, no fitting to page.")) << text.toStdString();
            EXPECT_TRUE(text.contains("100 mm to check the scale by"));
            EXPECT_TRUE(text.contains(QString("Sheet %1 of %2").arg(number).arg(sheets)));
            for (const char* caution : {"unplug pump", "eyes", "sharp edges", "common practice, no source"})
                EXPECT_TRUE(text.contains(caution)) << caution;
        }
    }
}

TEST(DrillingTemplate, NamesEveryHole) {
    const DrillingTemplate drilling = templateOf(largeLid(), core::RowPattern::Staggered);
    const QTemporaryDir folder;
    report::writePdf(drilling, folder.filePath("lid.pdf"), Paper::A4);
    const QStringList words =
        toolOutput("pdftotext", {folder.filePath("lid.pdf"), "-"}).split(QRegularExpression("\\s+"));
    for (const core::LidHole& hole : drilling.layout.holes)
        EXPECT_TRUE(words.contains(QString::fromStdString(core::nameOf(hole.position)))) << core::nameOf(hole.position);
    EXPECT_TRUE(words.contains("joins"));
}

TEST(DrillingTemplate, StaysWithinTheAreaThatPrintersReach) {
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const QRectF page = paper == Paper::A4 ? QRectF(0, 0, 210, 297) : QRectF(0, 0, 215.9, 279.4);
        for (const core::Lid& lid : {smallLid(), largeLid(), roundLid()})
            for (const report::TemplateTile& tile : report::tilesOf(core::bestLayout(lid), paper).tiles)
                EXPECT_TRUE(page.adjusted(8, 8, -8, -8).contains(tile.lid.translated(tile.origin)));
    }
}

TEST(DrillingTemplate, SpeaksTheGrowersUnit) {
    DrillingTemplate drilling = templateOf(smallLid(), core::RowPattern::Square);
    drilling.unit = core::LengthUnit::Inches;
    EXPECT_EQ(report::holesText(drilling.lid, drilling.layout, drilling.unit), "9 holes of 1.73 in in square rows");
    EXPECT_EQ(report::lidSizeText(drilling.lid, drilling.unit), "7.09 × 7.87 in");
    EXPECT_EQ(report::lidSizeText(roundLid(), core::LengthUnit::Millimetres), "round, 290 mm");
}

TEST(DrillingTemplate, SaysWhenTheFileCannotBeWritten) {
    EXPECT_THROW(
        report::writePdf(templateOf(smallLid(), core::RowPattern::Square), "/no such folder/lid.pdf", Paper::A4),
        db::LogbookError);
}
