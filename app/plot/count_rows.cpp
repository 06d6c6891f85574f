// SPDX-License-Identifier: MIT
#include "app/plot/count_rows.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <optional>

#include "app/plot/canvas.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct CountWords {
    Q_DECLARE_TR_FUNCTIONS(CountRows)
};

constexpr double kMostName = 11.0;  // ems for an arm's name in the gutter

std::vector<const Curve*> counted(const CurvePicture& picture) {
    std::vector<const Curve*> curves;
    for (const Curve& curve : picture.curves)
        if (!curve.looks.empty()) curves.push_back(&curve);
    return curves;
}

// The counts as last seen on or before the day; nothing when nobody has looked for a whole step.
std::optional<core::LookCounts> countsAt(const Curve& curve, int day, int step) {
    if (day == 0) return core::LookCounts{.day = 0, .waiting = curve.stuck, .rooted = 0, .lost = 0};
    std::optional<core::LookCounts> counts(core::LookCounts{.day = 0, .waiting = curve.stuck, .rooted = 0, .lost = 0});
    for (const core::LookCounts& look : curve.looks)
        if (look.day <= day) counts = look;
    if (curve.looks.back().day + step <= day) return std::nullopt;
    return counts;
}

QString tripleText(const core::LookCounts& counts) {
    return countText(counts.waiting) + QStringLiteral(" / ") + countText(counts.rooted) + QStringLiteral(" / ") +
           countText(counts.lost);
}

double widestTriple(const Canvas& canvas, const Curve& curve) {
    double widest = canvas.widthOf(tripleText({.day = 0, .waiting = curve.stuck, .rooted = 0, .lost = 0}), Type::Small);
    for (const core::LookCounts& look : curve.looks)
        widest = std::max(widest, canvas.widthOf(tripleText(look), Type::Small));
    return widest;
}

QStringList rowNames() {
    return {CountWords::tr("waiting"), CountWords::tr("rooted"), CountWords::tr("lost")};
}

std::vector<int> thinned(const std::vector<int>& ticks, const Scale& days, double widest) {
    std::size_t every = 1;
    const double distance = ticks.size() > 1 ? days.at(ticks[1]) - days.at(ticks[0]) : widest;
    while (static_cast<double>(every) * distance < widest && every < ticks.size()) every *= 2;
    std::vector<int> kept;
    for (std::size_t i = 0; i < ticks.size(); i += every) kept.push_back(ticks[i]);
    return kept;
}

void drawOneLine(Canvas& canvas, const QRectF& area, const std::vector<const Curve*>& curves, const Scale& days,
                 const std::vector<int>& ticks) {
    const double line = canvas.lineHeight(Type::Small), em = canvas.em();
    double widest = 0;
    for (const Curve* curve : curves) widest = std::max(widest, widestTriple(canvas, *curve));
    const std::vector<int> kept = thinned(ticks, days, widest + 0.6 * em);
    const int step = kept.size() > 1 ? kept[1] - kept[0] : 7;
    canvas.line({days.start - widest / 2, area.top(), area.right() - days.start + widest / 2, line},
                Qt::AlignLeft | Qt::AlignVCenter, CountWords::tr("waiting / rooted / lost"), canvas.palette().quietText,
                Type::Small);
    double top = area.top() + line;
    for (const Curve* curve : curves) {
        const SeriesLook& look = canvas.palette().look(curve->series);
        canvas.sample({area.left(), top, 1.6 * em, line}, look);
        canvas.line({area.left() + 2 * em, top, days.start - widest / 2 - 0.5 * em - area.left() - 2 * em, line},
                    Qt::AlignLeft | Qt::AlignVCenter, curve->name, look.text, Type::Small);
        for (const int day : kept)
            if (const auto counts = countsAt(*curve, day, step))
                canvas.line({days.at(day) - widest, top, 2 * widest, line}, Qt::AlignHCenter | Qt::AlignVCenter,
                            tripleText(*counts), canvas.palette().text, Type::Small);
        top += line;
    }
}

void drawThreeLines(Canvas& canvas, const QRectF& area, const std::vector<const Curve*>& curves, const Scale& days,
                    const std::vector<int>& ticks) {
    const double line = canvas.lineHeight(Type::Small), em = canvas.em();
    int most = 0;
    for (const Curve* curve : curves) most = std::max(most, curve->stuck);
    const double widest = canvas.widthOf(countText(most), Type::Small);
    const std::vector<int> kept = thinned(ticks, days, widest + 0.6 * em);
    const int step = kept.size() > 1 ? kept[1] - kept[0] : 7;
    double top = area.top();
    for (const Curve* curve : curves) {
        const SeriesLook& look = canvas.palette().look(curve->series);
        canvas.sample({area.left(), top, 1.6 * em, line}, look);
        canvas.line({area.left() + 2 * em, top, area.width() - 2 * em, line}, Qt::AlignLeft | Qt::AlignVCenter,
                    curve->name, look.text, Type::Small);
        top += line;
        for (int row = 0; row < 3; ++row) {
            canvas.line({area.left(), top, days.start - area.left() - widest, line}, Qt::AlignRight | Qt::AlignVCenter,
                        rowNames()[row], canvas.palette().quietText, Type::Small);
            for (const int day : kept)
                if (const auto counts = countsAt(*curve, day, step)) {
                    const int count = row == 0 ? counts->waiting : row == 1 ? counts->rooted : counts->lost;
                    canvas.line({days.at(day) - widest, top, 2 * widest, line}, Qt::AlignHCenter | Qt::AlignVCenter,
                                countText(count), canvas.palette().text, Type::Small);
                }
            top += line;
        }
        top += 0.4 * line;
    }
}

}  // namespace

double countRowsHeight(const Canvas& canvas, const CurvePicture& picture, RowsShape shape) {
    const double arms = static_cast<double>(counted(picture).size()), line = canvas.lineHeight(Type::Small);
    if (arms == 0 || shape == RowsShape::None) return 0;
    return (shape == RowsShape::OneLineAnArm ? 1 + arms : 4.4 * arms - 0.4) * line + 0.3 * canvas.em();
}

double countRowsGutter(const Canvas& canvas, const CurvePicture& picture, RowsShape shape) {
    const double em = canvas.em();
    double widest = 0;
    for (const Curve* curve : counted(picture)) {
        if (shape == RowsShape::OneLineAnArm) {
            const double half = widestTriple(canvas, *curve) / 2;
            widest =
                std::max(widest, std::min(canvas.widthOf(curve->name, Type::Small), kMostName * em) + half + 2.5 * em);
        }
        if (shape == RowsShape::ThreeLinesAnArm)
            for (const QString& name : rowNames())
                widest = std::max(
                    widest, canvas.widthOf(name, Type::Small) + canvas.widthOf(countText(curve->stuck), Type::Small));
    }
    return widest;
}

void drawCountRows(Canvas& canvas, const QRectF& area, const CurvePicture& picture, RowsShape shape, const Scale& days,
                   const std::vector<int>& ticks) {
    const std::vector<const Curve*> curves = counted(picture);
    if (curves.empty() || shape == RowsShape::None) return;
    const QRectF below = area.adjusted(0, 0.3 * canvas.em(), 0, 0);
    if (shape == RowsShape::OneLineAnArm)
        drawOneLine(canvas, below, curves, days, ticks);
    else
        drawThreeLines(canvas, below, curves, days, ticks);
}

}  // namespace plot
