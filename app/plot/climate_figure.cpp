// SPDX-License-Identifier: MIT
#include "app/plot/climate_figure.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <utility>

#include "app/plot/climate_picture.h"
#include "app/plot/climate_text.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/readings_text.h"

namespace plot {
namespace {

/// More, and the table goes by days: nobody reads a million rows.
constexpr std::size_t mostRows = 500;

QString gapText(std::chrono::seconds gap) {
    constexpr std::chrono::hours few{48};
    if (gap > few) return daysText(static_cast<int>(std::chrono::duration_cast<std::chrono::days>(gap).count()));
    return hoursText(static_cast<double>(std::chrono::duration_cast<std::chrono::hours>(gap).count()));
}

using TimedRow = std::pair<core::Moment, QStringList>;

class ClimateFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(ClimateFigure)

  public:
    /// The table at once: whoever makes the figure is away from the window's thread where there is much to add up.
    explicit ClimateFigure(ClimateChart chart) : chart_(std::move(chart)), table_(makeTable()) {}

    QString sentence() const override {
        QString name = climateName(chart_.quantity);
        name[0] = name[0].toUpper();
        const QString head =
            tr("%1 at %2: %3", "quantity, station, how often read").arg(name, chart_.station, countedText(chart_));
        if (!chart_.figures || (chart_.figures->readings == 0 && chart_.figures->hoursCovered == 0)) return head;
        const core::LivedFigures& figures = *chart_.figures;
        const QString mean = climateText(figures.mean, chart_.quantity, chart_.units);
        return tr("%1, mean %2; %3", "head, figure, hours outside").arg(head, mean, outsideText(chart_));
    }

    QString method() const override {
        QStringList parts;
        if (chart_.figures && chart_.quantity != core::ClimateQuantity::DailyLight)
            parts << tr("%1; straight lines between readings no farther apart than %2, gaps left open.")
                         .arg(coveredText(*chart_.figures), gapText(core::longestGapOf(chart_.quantity)));
        if (chart_.quantity == core::ClimateQuantity::DailyLight)
            parts << tr(
                "Sum of the light of each local day; hollow: less than nine tenths of the day covered, the rest "
                "is missing in it.");
        if (!chart_.bands.empty())
            parts << tr("Shaded: where cuttings of that stage do well; sources with the figures.");
        return parts.join(u' ');
    }

    FigureTable table() const override { return table_; }

    QSizeF sizeInEms() const override { return {54, 20}; }

  private:
    FigureTable makeTable() const {
        std::vector<TimedRow> rows;
        if (chart_.quantity == core::ClimateQuantity::DailyLight)
            addLightDays(rows);
        else if (chart_.values->size() <= mostRows)
            addValues(rows);
        else
            addDays(rows);
        for (const core::Care& care : chart_.care)
            rows.emplace_back(care.doneAt, rowOf(momentText(care.doneAt), careInWords(care, chart_.units), {}));
        addBands(rows);
        std::ranges::stable_sort(rows, {}, &TimedRow::first);
        FigureTable table{.title = sentence(),
                          .headings = {tr("When"), tr("What"), tr("Figure"), tr("Lowest"), tr("Highest"),
                                       tr("Readings"), tr("Remark")},
                          .rows = {}};
        for (TimedRow& row : rows) table.rows.push_back(std::move(row.second));
        return table;
    }

    QStringList rowOf(const QString& when, const QString& what, const QString& remark) const {
        return {when, what, {}, {}, {}, {}, remark};
    }
    QString number(double value) const { return climateNumber(value, chart_.quantity, chart_.units); }
    QString what() const {
        const QString unit = climateUnit(chart_.quantity, chart_.units);
        return unit.isEmpty() ? climateName(chart_.quantity)
                              : tr("%1, %2", "quantity, unit").arg(climateName(chart_.quantity), unit);
    }

    const core::StageBand* bandAt(core::Moment moment) const {
        for (const BandStretch& stretch : chart_.bands)
            if (moment >= stretch.from && moment < stretch.to) return &stretch.band;
        return nullptr;
    }
    QString remarkOn(core::Moment at, double value) const {
        const core::StageBand* band = bandAt(at);
        if (band == nullptr || !core::isOutside(band->band, value)) return {};
        return tr("outside %1").arg(bandText(band->band, band->quantity, chart_.units));
    }

    void addValues(std::vector<TimedRow>& rows) const {
        for (const core::TimedValue& value : core::valuesWithin(*chart_.values, chart_.from, chart_.to))
            rows.emplace_back(value.at, QStringList{momentText(value.at),
                                                    what(),
                                                    number(value.value),
                                                    {},
                                                    {},
                                                    countText(1),
                                                    remarkOn(value.at, value.value)});
    }

    void addDays(std::vector<TimedRow>& rows) const {
        const core::BandsInTime bands = bandsInTime(chart_);
        for (core::Date day = localDay(chart_.from); momentOf(day, 0) < chart_.to; day = core::addDays(day, 1)) {
            const core::Moment from = std::max(chart_.from, momentOf(day, 0));
            const core::Moment to = std::min(chart_.to, momentOf(core::addDays(day, 1), 0));
            if (to <= from) continue;
            const auto figures = core::figuresOver(*chart_.values, chart_.quantity, bands, from, to, 0);
            if (!figures) continue;
            rows.emplace_back(from,
                              QStringList{dateText(day), what(), number(figures->mean), number(figures->lowest),
                                          number(figures->highest), countText(figures->readings), dayRemark(*figures)});
        }
    }

    QString dayRemark(const core::LivedFigures& figures) const {
        const QString covered = coveredText(figures);
        if (figures.hoursWithBand <= 0) return covered;
        return tr("%1; %2 outside", "share of the day, hours").arg(covered, hoursText(figures.hoursOutside()));
    }

    void addLightDays(std::vector<TimedRow>& rows) const {
        for (const core::LightOfDay& day : chart_.days) {
            const QString remark = day.isWellCovered() ? remarkOn(day.from, day.moles)
                                                       : tr("%1 of the day covered").arg(shareText(day.covered));
            rows.emplace_back(day.from, QStringList{dateText(day.day), what(), number(day.moles), {}, {}, {}, remark});
        }
    }

    void addBands(std::vector<TimedRow>& rows) const {
        for (const BandStretch& stretch : chart_.bands)
            rows.emplace_back(stretch.from,
                              rowOf(momentText(stretch.from),
                                    tr("good from here: %1, %2, %3", "band, stage, whose it is")
                                        .arg(bandText(stretch.band.band, stretch.band.quantity, chart_.units),
                                             stageName(stretch.band.stage), ownerText(stretch.band.owner)),
                                    bandSource(stretch.band)));
    }

    void draw(Canvas& canvas, const QRectF& area) const override { drawClimatePicture(canvas, area, chart_); }

    ClimateChart chart_;
    FigureTable table_;
};

}  // namespace

std::shared_ptr<const Figure> climateFigure(ClimateChart chart) {
    if (!chart.values) chart.values = std::make_shared<const std::vector<core::TimedValue>>();
    return std::make_shared<ClimateFigure>(std::move(chart));
}

}  // namespace plot
