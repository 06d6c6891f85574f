// SPDX-License-Identifier: MIT
#include "app/plot/rooted_by_day_figure.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/curve_picture.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct RootedWords {
    Q_DECLARE_TR_FUNCTIONS(RootedByDayFigure)
};

constexpr std::size_t kMostCurves = 6;
constexpr std::size_t kMostInSentence = 3;

class RootedByDayFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(RootedByDayFigure)

  public:
    RootedByDayFigure(CurvePicture all, QString sentence, double level)
        : all_(std::move(all)), sentence_(std::move(sentence)), level_(level) {
        shown_ = all_;
        if (shown_.curves.size() > kMostCurves) shown_.curves.resize(kMostCurves);
    }

    QString sentence() const override { return sentence_; }

    QString method() const override {
        if (!hasLooks()) return {};
        QString text = tr("Share of those stuck, losses counted as a fate of their own; nonparametric.");
        if (hasTints(shown_)) text += u' ' + tr("Light boxes: between two checks the day is unknown.");
        if (hasBands())
            text += u' ' + (hasTints(shown_) ? tr("Bands and bars: %1, whole batches resampled.")
                                             : tr("Bars: %1, whole batches resampled."))
                               .arg(levelText(level_));
        if (all_.curves.size() > kMostCurves)
            text += u' ' + tr("Drawn: the %1 largest arms.").arg(countText(static_cast<int>(kMostCurves)));
        return text;
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence_,
                          .headings = {tr("Arm"), tr("Stuck"), tr("Day"), tr("Rooted, %"), tr("Low"), tr("High"),
                                       tr("Lost, %"), tr("Waiting"), tr("Rooted"), tr("Lost")},
                          .rows = {}};
        for (const Curve& curve : all_.curves)
            for (std::size_t i = 0; i < curve.rooted.size(); ++i) table.rows.push_back(rowOf(curve, i));
        return table;
    }

    QSizeF sizeInEms() const override { return {54, 30}; }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }

    static QStringList rowOf(const Curve& curve, std::size_t i) {
        const core::DayShare& look = curve.rooted[i];
        QStringList row{curve.name, countText(curve.stuck), countText(static_cast<int>(std::lround(look.day))),
                        percent(look.share)};
        row << (look.band ? percent(look.band->low) : QString()) << (look.band ? percent(look.band->high) : QString());
        row << (i < curve.lost.size() ? percent(curve.lost[i].share) : QString());
        if (i >= curve.looks.size()) return row << QString() << QString() << QString();
        const core::LookCounts& counts = curve.looks[i];
        return row << countText(counts.waiting) << countText(counts.rooted) << countText(counts.lost);
    }

    bool hasLooks() const {
        return std::any_of(all_.curves.begin(), all_.curves.end(),
                           [](const Curve& curve) { return !curve.rooted.empty(); });
    }

    bool hasBands() const {
        return std::any_of(shown_.curves.begin(), shown_.curves.end(), [](const Curve& curve) {
            return std::any_of(curve.rooted.begin(), curve.rooted.end(),
                               [](const core::DayShare& look) { return look.band.has_value(); });
        });
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (hasLooks())
            drawCurvePicture(canvas, area, shown_);
        else
            drawEmptyPicture(canvas, area,
                             tr("Nobody has looked at these cuttings yet. The curve begins with the first check."));
    }

    CurvePicture all_, shown_;
    QString sentence_;
    double level_{};
};

QString halfText(const core::Arm& arm) {
    if (arm.rootedByDay.empty()) return RootedWords::tr("%1 not looked at yet").arg(nameOf(arm));
    if (arm.ofStuck.p50) return RootedWords::tr("%1 %2", "arm, day").arg(nameOf(arm), dayRangeText(*arm.ofStuck.p50));
    return RootedWords::tr("%1 not by %2").arg(nameOf(arm), dayText(arm.rootedByDay.back().day));
}

QString sentenceOf(const core::Comparison& comparison) {
    const auto looked = std::count_if(comparison.arms.begin(), comparison.arms.end(),
                                      [](auto& arm) { return !arm.rootedByDay.empty(); });
    if (looked == 0) return RootedWords::tr("How fast: no checks yet");
    QStringList arms;
    for (const core::Arm& arm : comparison.arms)
        if (arms.size() < static_cast<qsizetype>(kMostInSentence)) arms << halfText(arm);
    const QString list = arms.join(QStringLiteral("; "));
    if (comparison.arms.size() <= kMostInSentence)
        return RootedWords::tr("When half of those stuck had rooted: %1").arg(list);
    return RootedWords::tr("When half of those stuck had rooted: %1; and so on for %2 arms")
        .arg(list, countText(static_cast<int>(comparison.arms.size())));
}

QString betweenText(const core::DayRange& range) {
    const int after = static_cast<int>(std::lround(range.after)), by = static_cast<int>(std::lround(range.by));
    if (after <= 0) return RootedWords::tr("by day %1").arg(countText(by));
    return RootedWords::tr("between day %1 and day %2").arg(countText(after), countText(by));
}

QString sentenceOf(const core::BatchSummary& summary, const QString& code) {
    const QString rate = percentText(summary.tally.rooted, summary.tally.stuck);
    if (summary.rootedByDay.empty()) return RootedWords::tr("%1: not looked at yet").arg(code);
    if (!summary.ofStuck.p50) return RootedWords::tr("%1: %2 rooted so far").arg(code, rate);
    return RootedWords::tr("%1: %2 rooted so far; half of those stuck had rooted %3", "code, rate, day")
        .arg(code, rate, betweenText(*summary.ofStuck.p50));
}

}  // namespace

std::shared_ptr<const Figure> rootedByDayFigure(const core::Comparison& comparison) {
    CurvePicture picture{.curves = {}, .horizonDay = comparison.horizonDay};
    for (const core::Arm& arm : comparison.arms)
        picture.curves.push_back({.name = nameOf(arm),
                                  .series = picture.curves.size(),
                                  .stuck = arm.stuck,
                                  .rooted = arm.rootedByDay,
                                  .lost = arm.lostByDay,
                                  .looks = arm.looks});
    return std::make_shared<RootedByDayFigure>(std::move(picture), sentenceOf(comparison), comparison.level);
}

std::shared_ptr<const Figure> rootedByDayFigure(const core::BatchSummary& summary, const QString& batchCode) {
    CurvePicture picture;
    picture.curves.push_back({.name = batchCode,
                              .series = 0,
                              .stuck = summary.tally.stuck,
                              .rooted = summary.rootedByDay,
                              .lost = summary.lostByDay,
                              .looks = summary.looks});
    if (!summary.past.rootedByDay.empty())
        picture.curves.push_back({.name = RootedWords::tr("own past"),
                                  .series = 1,
                                  .stuck = summary.past.assessed,
                                  .counted = summary.past.rate,
                                  .rooted = summary.past.rootedByDay,
                                  .lost = {},
                                  .looks = {}});
    return std::make_shared<RootedByDayFigure>(std::move(picture), sentenceOf(summary, batchCode), summary.level);
}

}  // namespace plot
