// SPDX-License-Identifier: MIT
#include "app/plot/curve_panel.h"

#include <QPainterPath>
#include <algorithm>
#include <numeric>

#include "app/plot/canvas.h"

namespace plot {
namespace {

constexpr double kLineWidth = 0.14;  // ems
constexpr double kEndBarStep = 0.5;  // ems between the bars of two curves

QPainterPath stepsOf(const Panel& panel, const PanelCurve& curve) {
    QPainterPath path(QPointF(panel.days.at(0), panel.shares.at(0)));
    double share = 0;
    for (const core::DayShare& look : curve.shares) {
        path.lineTo(panel.days.at(look.day), panel.shares.at(share));
        path.lineTo(panel.days.at(look.day), panel.shares.at(look.share));
        share = look.share;
    }
    return path;
}

// Where the curve may be between two checks: from the earlier share to the later one, at any time between.
QPainterPath boxesOf(const Panel& panel, const PanelCurve& curve) {
    QPainterPath path;
    double day = 0, share = 0;
    for (const core::DayShare& look : curve.shares) {
        if (look.share > share)
            path.addRect(QRectF(QPointF(panel.days.at(day), panel.shares.at(look.share)),
                                QPointF(panel.days.at(look.day), panel.shares.at(share))));
        day = look.day, share = look.share;
    }
    return path;
}

QPainterPath bandOf(const Panel& panel, const PanelCurve& curve) {
    QPainterPath path;
    for (std::size_t i = 0; i + 1 < curve.shares.size(); ++i) {
        const core::DayShare &look = curve.shares[i], &next = curve.shares[i + 1];
        if (!look.band || look.band->high <= look.band->low) continue;
        path.addRect(QRectF(QPointF(panel.days.at(look.day), panel.shares.at(look.band->high)),
                            QPointF(panel.days.at(next.day), panel.shares.at(look.band->low))));
    }
    return path;
}

// Opaque tints, so what two areas share is drawn as an area of its own.
template <class AreaOf, class ColorOf>
void fillAreas(Canvas& canvas, const Panel& panel, AreaOf areaOf, ColorOf colorOf, const QColor& shared) {
    QPainterPath before, overlap;
    for (const PanelCurve& curve : panel.curves) {
        const QPainterPath area = areaOf(panel, curve);
        canvas.fill(area, colorOf(canvas.palette().look(curve.series)));
        overlap.addPath(before.intersected(area));
        before = before.united(area);
    }
    canvas.fill(overlap, shared);
}

void drawTints(Canvas& canvas, const Panel& panel) {
    const Palette& palette = canvas.palette();
    fillAreas(
        canvas, panel, bandOf, [](const SeriesLook& look) { return look.band; }, palette.overlap);
    fillAreas(
        canvas, panel, boxesOf, [](const SeriesLook& look) { return look.box; }, palette.boxOverlap);
}

void drawEndBar(Canvas& canvas, const Panel& panel, const PanelCurve& curve, std::size_t place) {
    const core::DayShare& last = curve.shares.back();
    if (!last.band) return;
    const double x = panel.days.at(last.day) + kEndBarStep * canvas.em() * (static_cast<double>(place) + 1);
    const double top = panel.shares.at(last.band->high), bottom = panel.shares.at(last.band->low),
                 end = 0.16 * canvas.em();
    const QColor& color = canvas.palette().look(curve.series).line;
    canvas.stroke({x, top}, {x, bottom}, color, 0.09);
    for (const double y : {top, bottom}) canvas.stroke({x - end, y}, {x + end, y}, color, 0.09);
    canvas.marker({x, panel.shares.at(last.share)}, Marker::Disc, 0.3, color);
}

// With many looks the markers would hide the line, so they keep a distance.
void drawMarkers(Canvas& canvas, const Panel& panel, const PanelCurve& curve) {
    const SeriesLook& look = canvas.palette().look(curve.series);
    double lastAt = panel.days.at(0) - 10 * canvas.em();
    for (const core::DayShare& share : curve.shares) {
        const double x = panel.days.at(share.day);
        const bool isLast = &share == &curve.shares.back();
        if (x - lastAt < 1.1 * canvas.em() && !isLast) continue;
        canvas.marker({x, panel.shares.at(share.share)}, look.marker, 0.52, look.line);
        lastAt = x;
    }
}

// Pushes labels apart downwards, then up again from the bottom: each ends as near to its curve as the others allow.
std::vector<double> apart(const std::vector<double>& wanted, double height, double top, double bottom) {
    std::vector<std::size_t> order(wanted.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t one, std::size_t other) { return wanted[one] < wanted[other]; });
    std::vector<double> places(wanted.size());
    double free = top;
    for (const std::size_t i : order) {
        places[i] = std::max(free, wanted[i] - height / 2);
        free = places[i] + height;
    }
    double limit = bottom;
    for (auto i = order.rbegin(); i != order.rend(); ++i) {
        places[*i] = std::min(places[*i], limit - height);
        limit = places[*i];
    }
    return places;
}

void drawLabels(Canvas& canvas, const Panel& panel) {
    const double line = canvas.lineHeight(Type::Plain), small = canvas.lineHeight(Type::Small);
    const double room = panel.labels.height(), count = static_cast<double>(panel.curves.size());
    const bool hasDetail = !panel.curves.front().detail.isEmpty() && count * (line + small) <= room;
    const double height = hasDetail ? line + small : line;
    if (count * height > room + 0.1 * line) return;
    std::vector<double> wanted;
    for (const PanelCurve& curve : panel.curves)
        wanted.push_back(panel.shares.at(curve.shares.empty() ? 0 : curve.shares.back().share));
    const std::vector<double> tops = apart(wanted, height, panel.labels.top(), panel.labels.bottom());
    for (std::size_t i = 0; i < panel.curves.size(); ++i) {
        const PanelCurve& curve = panel.curves[i];
        const SeriesLook& look = canvas.palette().look(curve.series);
        const double left = panel.labels.left();
        const double from = panel.days.at(curve.shares.empty() ? 0 : curve.shares.back().day) +
                            (endBarsWidth(panel.curves) + 0.2) * canvas.em();
        if (left - 0.3 * canvas.em() - from > 0.8 * canvas.em())
            canvas.stroke({from, wanted[i]}, {left - 0.3 * canvas.em(), tops[i] + line / 2}, look.line, 0.05);
        canvas.line({left, tops[i], panel.labels.width(), line}, Qt::AlignLeft | Qt::AlignVCenter,
                    hasDetail || curve.shortly.isEmpty() ? curve.label : curve.shortly, look.text,
                    hasDetail ? Type::Bold : Type::Plain);
        if (hasDetail)
            canvas.line({left, tops[i] + line, panel.labels.width(), small}, Qt::AlignLeft | Qt::AlignTop, curve.detail,
                        look.text, Type::Small);
    }
}

}  // namespace

double endBarsWidth(const std::vector<PanelCurve>& curves) {
    const bool hasBands = std::any_of(curves.begin(), curves.end(), [](const PanelCurve& curve) {
        return !curve.shares.empty() && curve.shares.back().band.has_value();
    });
    return hasBands ? kEndBarStep * (static_cast<double>(curves.size()) + 0.6) : 0.3;
}

void drawPanel(Canvas& canvas, const Panel& panel) {
    if (panel.hasTints) drawTints(canvas, panel);
    for (const PanelCurve& curve : panel.curves) {
        if (curve.shares.empty()) continue;
        const SeriesLook& look = canvas.palette().look(curve.series);
        canvas.stroke(stepsOf(panel, curve), look.line, kLineWidth, look.dash);
    }
    for (std::size_t i = 0; i < panel.curves.size(); ++i) {
        if (panel.curves[i].shares.empty()) continue;
        drawMarkers(canvas, panel, panel.curves[i]);
        drawEndBar(canvas, panel, panel.curves[i], i);
    }
    if (!panel.curves.empty()) drawLabels(canvas, panel);
}

}  // namespace plot
