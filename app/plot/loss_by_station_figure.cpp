// SPDX-License-Identifier: MIT
#include "app/plot/loss_by_station_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/empty_picture.h"
#include "app/plot/interval_rows.h"
#include "app/plot/loss_words.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class LossByStationFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(LossByStationFigure)

  public:
    explicit LossByStationFigure(core::Losses losses) : losses_(std::move(losses)) {}

    QString sentence() const override {
        if (losses_.stations.empty()) return tr("Losses by station: no cuttings stood");
        const core::StationOfLosses& most = losses_.stations.front();
        if (most.count.lost == 0) return tr("Losses by station: nothing was lost at any");
        if (losses_.stations.size() == 1)
            return tr("Lost at %1: %2").arg(lossStationText(most), lossRateText(most.count));
        const core::StationOfLosses& least = losses_.stations.back();
        return tr("Lost of those that stood: from %1 at %2 to %3 at %4")
            .arg(lossRateText(least.count), lossStationText(least), lossRateText(most.count), lossStationText(most));
    }

    QString method() const override {
        if (losses_.stations.empty()) return {};
        return tr("Found lost in this time, of the cuttings that stood at the station in it. Line: %1 interval as "
                  "counted (Wilson), which takes cuttings as independent: those of one batch share their luck.")
            .arg(levelText(losses_.level));
    }

    FigureTable table() const override {
        FigureTable table{.title = sentence(),
                          .headings = {tr("Station"), tr("Batches"), tr("Lost"), tr("Stood"), tr("Rate, %"),
                                       tr("As counted, low"), tr("As counted, high")},
                          .rows = {}};
        for (const core::LossRow& row : losses_.rows) table.headings << lossCauseText(row.cause, row.loss.cause);
        for (const core::StationOfLosses& station : losses_.stations) {
            const core::LossCount& count = station.count;
            QStringList row{lossStationText(station), countText(count.batches), countText(count.lost),
                            countText(count.stood)};
            row << (count.rate ? percent(*count.rate) : QString());
            row << (count.rate ? percent(count.asCounted.low) : QString());
            row << (count.rate ? percent(count.asCounted.high) : QString());
            for (const int lost : count.byCause) row << countText(lost);
            table.rows.push_back(row);
        }
        return table;
    }

    QSizeF sizeInEms() const override {
        if (losses_.stations.empty()) return {54, 9};
        return {54, std::clamp(9.5 + 1.9 * static_cast<double>(losses_.stations.size()), 13.0, 40.0)};
    }

  private:
    static QString percent(double share) { return decimalText(100 * share, 1); }

    QString hintOf(const core::StationOfLosses& station) const {
        QString hint =
            tr("%1: %2 lost", "station, share with counts").arg(lossStationText(station), lossRateText(station.count));
        if (station.count.rate) hint += u'\n' + tr("as counted %1").arg(limitsText(station.count.asCounted));
        for (std::size_t i = 0; i < losses_.rows.size() && i < station.count.byCause.size(); ++i)
            if (station.count.byCause[i] > 0)
                hint += u'\n' + tr("%1: %2", "cause, cuttings")
                                    .arg(lossCauseText(losses_.rows[i].cause, losses_.rows[i].loss.cause),
                                         countText(station.count.byCause[i]));
        return hint;
    }

    IntervalRow rowOf(const core::StationOfLosses& station) const {
        IntervalRow row{.name = lossStationText(station),
                        .isPlantName = false,
                        .counts = {countText(station.count.batches)},
                        .value = station.count.rate,
                        .thick = {},
                        .thin = {},
                        .mark = RowMark::Point,
                        .series = 0,
                        .weight = 1,
                        .figure = lossRateText(station.count),
                        .hint = hintOf(station)};
        if (station.count.rate) row.thick = station.count.asCounted;
        return row;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (losses_.stations.empty()) return drawEmptyPicture(canvas, area, nothingLostText(losses_));
        IntervalRows rows{.nameHeading = tr("Station"),
                          .countHeadings = {tr("batches")},
                          .figureHeading = tr("lost of those that stood"),
                          .rows = {},
                          .pooled = {},
                          .scale = RowScale::Share,
                          .lowSide = {},
                          .highSide = {},
                          .remarks = {tr("Plants and methods differ from station to station: a station isn't to blame "
                                         "for what stood there.")}};
        for (const core::StationOfLosses& station : losses_.stations) rows.rows.push_back(rowOf(station));
        drawIntervalRows(canvas, area, rows);
    }

    core::Losses losses_;
};

}  // namespace

std::shared_ptr<const Figure> lossByStationFigure(const core::Losses& losses) {
    return std::make_shared<LossByStationFigure>(losses);
}

}  // namespace plot
