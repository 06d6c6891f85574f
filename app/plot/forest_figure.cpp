// SPDX-License-Identifier: MIT
#include "app/plot/forest_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <cstddef>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

constexpr double kMayDiffer = 0.1;  // agreement tests are weak: common practice reads them at one in ten

class ForestFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(ForestFigure)

  public:
    ForestFigure(const core::Comparison& comparison, int pair) : day_(comparison.horizonDay), level_(comparison.level) {
        const core::Pair* found = pairAt(comparison, pair);
        if (!found) {
            reason_ = nothingToCompare(comparison);
            return;
        }
        pair_ = *found;
        first_ = nameOf(comparison.arms[static_cast<std::size_t>(pair_.first)]);
        second_ = nameOf(comparison.arms[static_cast<std::size_t>(pair_.second)]);
        if (pair_.bySpecies.empty())
            reason_ = tr("No plant has cuttings assessed at day %1 in either arm.").arg(countText(day_));
    }

    QString sentence() const override {
        if (!reason_.isEmpty()) return tr("For which plants: nothing to show yet");
        if (pair_.bySpecies.size() == 1 && pair_.pooled.riskDifference) return ofOnePlant();
        const QString lines = inFavour();
        if (!pair_.pooled.riskDifference) return lines;
        return tr("%1; over all plants, %2 (%3)")
            .arg(lines, differenceText(*pair_.pooled.riskDifference),
                 differenceLimitsText(pair_.pooled.riskDifferenceWithSpread));
    }

    QString method() const override {
        if (!reason_.isEmpty()) return {};
        return tr("Rooted of those assessed at day %1. %2 intervals after Miettinen and Nurminen, squares by number of "
                  "cuttings; all plants: Mantel-Haenszel, diamond Sato's interval, line allowing for the spread.")
            .arg(countText(day_), levelText(level_));
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Plant"), tr("%1: rooted").arg(first_), tr("%1: assessed").arg(first_),
                                       tr("%1: rooted").arg(second_), tr("%1: assessed").arg(second_),
                                       tr("Difference, points of 100"), tr("Low"), tr("High")},
                          .rows = {}};
        for (const core::BySpecies& line : pair_.bySpecies)
            table.rows.push_back({textOf(line.species), countText(line.firstRooted), countText(line.firstAssessed),
                                  countText(line.secondRooted), countText(line.secondAssessed), points(line.difference),
                                  line.difference ? points(line.limits.low) : QString(),
                                  line.difference ? points(line.limits.high) : QString()});
        if (pair_.pooled.riskDifference) {
            const core::BySpecies sum = together();
            const auto add = [&](const QString& name, const core::Limits& limits) {
                table.rows.push_back({name, countText(sum.firstRooted), countText(sum.firstAssessed),
                                      countText(sum.secondRooted), countText(sum.secondAssessed),
                                      points(pair_.pooled.riskDifference), points(limits.low), points(limits.high)});
            };
            add(tr("All plants"), pair_.pooled.riskDifferenceLimits);
            add(tr("All plants, with spread"), pair_.pooled.riskDifferenceWithSpread);
        }
        return table;
    }

    QSizeF sizeInEms() const override {
        return {54, std::clamp(12 + 1.7 * static_cast<double>(pair_.bySpecies.size()), 16.0, 60.0)};
    }

  private:
    static QString points(std::optional<double> difference) {
        return difference ? decimalText(100 * *difference, 1) : QString();
    }

    QString inFavour() const {
        const auto known =
            std::count_if(pair_.bySpecies.begin(), pair_.bySpecies.end(), [](auto& line) { return line.difference; });
        const auto more = std::count_if(pair_.bySpecies.begin(), pair_.bySpecies.end(),
                                        [](const auto& line) { return line.difference && *line.difference > 0; });
        if (known == 0) return tr("No plant has cuttings assessed in both arms");
        return tr("%1 rooted more than %2 in %3 of %4")
            .arg(capitalised(first_), second_, countText(static_cast<int>(more)), plantsText(static_cast<int>(known)));
    }

    core::BySpecies together() const {
        core::BySpecies sum;  // only what was pooled: plants and blocks with both arms
        for (const core::StratumCounts& line : pair_.pooled.counts) {
            sum.firstRooted += line.firstRooted, sum.firstAssessed += line.firstAssessed;
            sum.secondRooted += line.secondRooted, sum.secondAssessed += line.secondAssessed;
        }
        return sum;
    }

    QString ofOnePlant() const {
        const double difference = *pair_.pooled.riskDifference;
        const QString plant = textOf(pair_.bySpecies.front().species);
        const QString limits = differenceLimitsText(pair_.pooled.riskDifferenceWithSpread);
        if (std::abs(difference) < 0.005)
            return tr("%1 and %2 rooted about as many of 100 in %3 (%4 allowing for the spread)")
                .arg(capitalised(first_), second_, plant, limits);
        return tr("%1 rooted %2 than %3 in %4 (%5 allowing for the spread)")
            .arg(capitalised(first_), differenceText(difference), second_, plant, limits);
    }

    QString agreement() const {
        if (!pair_.pooled.agreementP)
            return pair_.bySpecies.size() < 2 ? tr("With one plant there is nothing to agree with.")
                                              : tr("Whether the plants agree cannot be told from these counts.");
        const QString p = pText(*pair_.pooled.agreementP);
        if (pair_.bySpecies.size() == 1)
            return *pair_.pooled.agreementP < kMayDiffer
                       ? tr("The blocks of the trial may differ among themselves (Breslow-Day-Tarone %1).").arg(p)
                       : tr("Do the blocks of the trial agree? As far as these counts can tell, yes "
                            "(Breslow-Day-Tarone %1).")
                             .arg(p);
        if (*pair_.pooled.agreementP < kMayDiffer)
            return tr("The plants may differ among themselves (Breslow-Day-Tarone %1): read each line by itself.")
                .arg(p);
        return tr("Do they agree? As far as these counts can tell, yes (Breslow-Day-Tarone %1).").arg(p);
    }

    static QString ofText(int rooted, int assessed) {
        return tr("%1 of %2").arg(countText(rooted), countText(assessed));
    }

    IntervalRow rowOf(const core::BySpecies& line, int most) const {
        const int cuttings = line.firstAssessed + line.secondAssessed;
        IntervalRow row{.name = textOf(line.species),
                        .isPlantName = true,
                        .counts = {},
                        .value = line.difference,
                        .thick = {},
                        .thin = {},
                        .mark = RowMark::Square,
                        .series = 0,
                        .weight = cuttings / std::max(1.0, most * 1.0),
                        .figure = {},
                        .hint = {}};
        row.counts = {ofText(line.firstRooted, line.firstAssessed), ofText(line.secondRooted, line.secondAssessed)};
        if (line.difference) row.thick = line.limits;
        row.figure = line.difference ? pointsText(*line.difference, line.limits) : QStringLiteral("–");
        row.hint = tr("%1\n%2: %3\n%4: %5")
                       .arg(row.name, first_, percentText(line.firstRooted, line.firstAssessed), second_,
                            percentText(line.secondRooted, line.secondAssessed));
        if (line.difference) row.hint += u'\n' + tr("%1 points").arg(row.figure);
        return row;
    }

    IntervalRow pooledRow() const {
        const core::BySpecies sum = together();
        IntervalRow row{.name = tr("All plants"),
                        .isPlantName = false,
                        .counts = {},
                        .value = pair_.pooled.riskDifference,
                        .thick = pair_.pooled.riskDifferenceLimits,
                        .thin = pair_.pooled.riskDifferenceWithSpread,
                        .mark = RowMark::Square,
                        .series = 0,
                        .weight = 1,
                        .figure = {},
                        .hint = {}};
        row.counts = {ofText(sum.firstRooted, sum.firstAssessed), ofText(sum.secondRooted, sum.secondAssessed)};
        row.figure = pointsText(*pair_.pooled.riskDifference, pair_.pooled.riskDifferenceWithSpread);
        row.hint = tr("All plants\nwith the spread between batches %1 points\nas counted %2")
                       .arg(row.figure, pointsText(*pair_.pooled.riskDifference, pair_.pooled.riskDifferenceLimits));
        return row;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (!reason_.isEmpty()) return drawEmptyPicture(canvas, area, reason_);
        IntervalRows rows{.nameHeading = tr("Plant"),
                          .countHeadings = {first_, second_},
                          .figureHeading = tr("more of 100"),
                          .rows = {},
                          .pooled = {},
                          .scale = RowScale::Difference,
                          .lowSide = tr("%1 more", "an arm, at its side of zero").arg(second_),
                          .highSide = tr("%1 more", "an arm, at its side of zero").arg(first_),
                          .remarks = {agreement()}};
        int most = 1;
        for (const core::BySpecies& line : pair_.bySpecies)
            most = std::max(most, line.firstAssessed + line.secondAssessed);
        for (const core::BySpecies& line : pair_.bySpecies) rows.rows.push_back(rowOf(line, most));
        if (pair_.pooled.riskDifference && pair_.bySpecies.size() > 1) rows.pooled = pooledRow();
        drawIntervalRows(canvas, area, rows);
    }

    int day_{};
    double level_{};
    core::Pair pair_;
    QString first_, second_, reason_;
};

}  // namespace

std::shared_ptr<const Figure> forestFigure(const core::Comparison& comparison, int pair) {
    return std::make_shared<ForestFigure>(comparison, pair);
}

}  // namespace plot
