// SPDX-License-Identifier: MIT
#include "app/plot/season_rates_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

bool hasRate(const core::Arm& arm) {
    return arm.rate.has_value();
}

class SeasonRatesFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(SeasonRatesFigure)

  public:
    explicit SeasonRatesFigure(const SeasonRates& rates) : level_(rates.level), interval_(rates.interval) {
        for (const core::PlantInReview& plant : rates.plants) {
            if (std::ranges::none_of(plant.methods, hasRate)) continue;
            plants_.push_back(plant);
            for (const core::Arm& arm : plant.methods) {
                if (!hasRate(arm)) continue;
                rooted_ += arm.rooted;
                assessed_ += arm.assessed;
                batches_ += arm.batches;
                series_.emplace(arm.name, series_.size());
            }
        }
    }

    QString sentence() const override {
        if (plants_.empty()) return tr("Strike rates by plant and method: nothing to show yet");
        return tr("Of those whose fate is known, %1 rooted, in %2 of %3", "share with counts, batches, plants")
            .arg(percentText(rooted_, assessed_), batchesText(batches_), plantsText(static_cast<int>(plants_.size())));
    }

    QString method() const override {
        if (plants_.empty()) return {};
        const QString counted =
            tr("Rooted of those assessed at the day behind the plant's name. Thick: %1 interval, as counted (%2).")
                .arg(levelText(level_), QString::fromUtf8(core::nameOf(interval_)));
        return hasSpread() ? counted + u' ' + tr("Thin: allowing for the spread between batches.") : counted;
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Plant"), tr("Method"), tr("At day"), tr("Batches"), tr("Rooted"),
                                       tr("Assessed"), tr("Rate, %"), tr("As counted, low"), tr("As counted, high"),
                                       tr("With spread, low"), tr("With spread, high")},
                          .rows = {}};
        for (const core::PlantInReview& plant : plants_)
            for (const core::Arm& arm : plant.methods)
                if (hasRate(arm)) table.rows.push_back(rowOf(plant, arm));
        return table;
    }

    QSizeF sizeInEms() const override {
        int lines = 0;
        for (const core::PlantInReview& plant : plants_) lines += linesOfSeasonRates(plant);
        return {54, std::clamp(8.5 + 1.9 * lines, 11.0, 60.0)};
    }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }
    bool hasSpread() const {
        return std::ranges::any_of(plants_, [](const core::PlantInReview& plant) {
            return std::ranges::any_of(plant.methods, [](const core::Arm& arm) { return arm.withSpread.has_value(); });
        });
    }

    static QStringList rowOf(const core::PlantInReview& plant, const core::Arm& arm) {
        return {textOf(plant.name),
                nameOf(arm),
                countText(plant.horizonDay),
                countText(arm.batches),
                countText(arm.rooted),
                countText(arm.assessed),
                percent(*arm.rate),
                percent(arm.asCounted->low),
                percent(arm.asCounted->high),
                arm.withSpread ? percent(arm.withSpread->low) : QString(),
                arm.withSpread ? percent(arm.withSpread->high) : QString()};
    }

    IntervalRow methodRow(const core::Arm& arm) const {
        IntervalRow row{.name = nameOf(arm),
                        .isPlantName = false,
                        .counts = {countText(arm.batches)},
                        .value = arm.rate,
                        .thick = arm.asCounted,
                        .thin = arm.withSpread,
                        .mark = RowMark::Series,
                        .series = series_.at(arm.name),
                        .weight = 1,
                        .figure = rateText(arm),
                        .hint = {}};
        row.hint = tr("%1: %2").arg(row.name, row.figure) + u'\n' + tr("as counted %1").arg(limitsText(*arm.asCounted));
        if (row.thin) row.hint += u'\n' + tr("with the spread between batches %1").arg(limitsText(*row.thin));
        return row;
    }

    static IntervalRow plantRow(const core::PlantInReview& plant) {
        return {.name = textOf(plant.name),
                .isPlantName = true,
                .counts = {},
                .value = {},
                .thick = {},
                .thin = {},
                .mark = RowMark::Point,
                .series = 0,
                .weight = 1,
                .figure = tr("at day %1").arg(countText(plant.horizonDay)),
                .hint = {}};
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (plants_.empty())
            return drawEmptyPicture(canvas, area, tr("No batch of this span has been watched to the end yet."));
        IntervalRows rows{.nameHeading = tr("Plant and method"),
                          .countHeadings = {tr("batches")},
                          .figureHeading = tr("rooted of assessed"),
                          .rows = {},
                          .pooled = {},
                          .scale = RowScale::Share,
                          .lowSide = {},
                          .highSide = {},
                          .remarks = {}};
        for (const core::PlantInReview& plant : plants_) {
            rows.rows.push_back(plantRow(plant));
            for (const core::Arm& arm : plant.methods)
                if (hasRate(arm)) rows.rows.push_back(methodRow(arm));
        }
        drawIntervalRows(canvas, area, rows);
    }

    std::vector<core::PlantInReview> plants_;
    std::map<std::string, std::size_t> series_;  // the same look for a method with every plant
    int rooted_{}, assessed_{}, batches_{};
    double level_{};
    core::RateInterval interval_{};
};

}  // namespace

std::shared_ptr<const Figure> seasonRatesFigure(const SeasonRates& rates) {
    return std::make_shared<SeasonRatesFigure>(rates);
}

int linesOfSeasonRates(const core::PlantInReview& plant) {
    const auto methods = static_cast<int>(std::ranges::count_if(plant.methods, hasRate));
    return methods == 0 ? 0 : methods + 1;
}

}  // namespace plot
