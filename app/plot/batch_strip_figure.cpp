// SPDX-License-Identifier: MIT
#include "app/plot/batch_strip_figure.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/plot/batch_strip_bands.h"
#include "app/plot/batch_strip_picture.h"
#include "app/plot/climate_text.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"
#include "app/plot/readings_text.h"
#include "core/climate/stage_bands.h"

namespace plot {
namespace {

struct StripFigureWords {
    Q_DECLARE_TR_FUNCTIONS(BatchStripFigure)
};

/// What was read of one quantity, and how much of it lies outside its band.
struct StripSeries {
    core::Quantity quantity{};
    std::vector<const core::Reading*> readings;
    std::vector<core::BandFrom> bands;
    int outside{};

    /// Of the day on which it was read.
    [[nodiscard]] const core::StageBand* bandAt(core::Moment moment) const {
        return core::bandOn(bands, localDay(moment));
    }
    [[nodiscard]] bool isOutside(const core::Reading& reading) const {
        const core::StageBand* band = bandAt(reading.readAt);
        return band != nullptr && core::isOutside(band->band, reading.value);
    }
};

struct StripFacts {
    core::BatchSummary summary;
    core::Batch batch;
    BatchLife life;
    core::DisplayUnits units;
};

std::vector<StripSeries> seriesOf(const BatchLife& life) {
    std::vector<StripSeries> all;
    for (const core::Quantity quantity : core::allQuantities) {
        const auto bands = life.bands.find(quantity);
        StripSeries series{.quantity = quantity,
                           .readings = {},
                           .bands = bands == life.bands.end() ? std::vector<core::BandFrom>() : bands->second,
                           .outside = 0};
        for (const core::Reading& reading : life.readings) {
            if (reading.quantity != quantity) continue;
            series.readings.push_back(&reading);
            if (series.isOutside(reading)) ++series.outside;
        }
        if (!series.readings.empty()) all.push_back(std::move(series));
    }
    return all;
}

QString readingsCounted(int count) {
    return count == 1 ? StripFigureWords::tr("1 reading") : StripFigureWords::tr("%n readings", nullptr, count);
}

int dayOfRow(double day) {
    return static_cast<int>(std::floor(day));
}

class BatchStripFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(BatchStripFigure)

  public:
    explicit BatchStripFigure(StripFacts facts) : facts_(std::move(facts)), series_(seriesOf(facts_.life)) {
        picture_ = makePicture();
    }

    QString sentence() const override {
        const core::Tally& tally = facts_.summary.tally;
        const QString found =
            facts_.summary.rootedByDay.empty()
                ? tr("%1: not looked at yet").arg(code())
                : tr("%1: %2 rooted so far", "code, rate").arg(code(), percentText(tally.rooted, tally.stuck));
        if (series_.empty()) return tr("%1; nothing was read where it stands").arg(found);
        QStringList outside;
        for (const StripSeries& series : series_)
            if (series.outside > 0)
                outside << tr("%1 in %2 of %3", "a quantity, how many readings of how many")
                               .arg(quantityName(series.quantity), countText(series.outside),
                                    countText(static_cast<int>(series.readings.size())));
        const QString all = readingsCounted(static_cast<int>(facts_.life.readings.size()));
        if (outside.isEmpty()) return tr("%1; %2, none outside its good band").arg(found, all);
        return tr("%1; outside the good band: %2").arg(found, outside.join(tr(", ")));
    }

    QString method() const override {
        QString text = tr("Days since sticking. Light boxes: between two checks the day is unknown.");
        if (!series_.empty())
            text += u' ' + tr("Shaded: where cuttings of that stage do well, a diamond lies outside; lines between "
                              "readings only lead the eye. Sources: with the figures.");
        return text;
    }

    FigureTable table() const override {
        std::vector<std::pair<double, QStringList>> rows;
        addLooks(rows);
        for (const StripSeries& series : series_)
            for (const core::Reading* reading : series.readings) rows.push_back(rowOf(series, *reading));
        for (const core::Care& care : facts_.life.care)
            rows.emplace_back(dayOf(care.doneAt), QStringList{dayCell(dayOf(care.doneAt)), dateCell(care.doneAt),
                                                              careWithVolume(care, facts_.units), QString(), QString(),
                                                              QString::fromStdString(care.note).simplified()});
        for (const core::Photo& photo : facts_.life.photos) {
            const double day = core::daysBetween(facts_.batch.stuckOn, photo.takenOn);
            rows.emplace_back(day, QStringList{dayCell(day), shortDateText(photo.takenOn), tr("photo"), QString(),
                                               QString(), QString::fromStdString(photo.caption)});
        }
        std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
        FigureTable table{.title = sentence(),
                          .headings = {tr("Day"), tr("Date"), tr("What"), tr("Figure"), tr("Unit"), tr("Remark")},
                          .rows = {}};
        for (auto& [day, row] : rows) table.rows.push_back(std::move(row));
        return table;
    }

    QSizeF sizeInEms() const override { return {54, std::clamp(stripHeightInEms(picture_), 18.0, 60.0)}; }

  private:
    QString code() const { return QString::fromStdString(facts_.batch.code); }
    double dayOf(core::Moment moment) const { return daysSince(facts_.batch.stuckOn, moment); }
    static QString dayCell(double day) { return countText(dayOfRow(day)); }
    static QString dateCell(core::Moment moment) { return shortDateText(localDay(moment)); }

    void addLooks(std::vector<std::pair<double, QStringList>>& rows) const {
        const std::vector<core::DayShare>& rooted = facts_.summary.rootedByDay;
        for (std::size_t i = 0; i < rooted.size(); ++i) {
            const QString of = tr("of %1 stuck").arg(countText(facts_.summary.tally.stuck));
            const core::Date date = core::addDays(facts_.batch.stuckOn, static_cast<int>(std::lround(rooted[i].day)));
            rows.emplace_back(rooted[i].day, QStringList{dayCell(rooted[i].day), shortDateText(date),
                                                         tr("rooted so far"), rootedCell(i), of, QString()});
        }
    }

    QString rootedCell(std::size_t look) const {
        return look < facts_.summary.looks.size() ? countText(facts_.summary.looks[look].rooted)
                                                  : shareText(facts_.summary.rootedByDay[look].share);
    }

    std::pair<double, QStringList> rowOf(const StripSeries& series, const core::Reading& reading) const {
        QString remark = QString::fromStdString(reading.note).simplified();
        if (series.isOutside(reading))
            remark = tr("outside %1 (%2)", "a band and its source")
                         .arg(bandText(series.bandAt(reading.readAt)->band, series.quantity),
                              bandSource(*series.bandAt(reading.readAt))) +
                     (remark.isEmpty() ? QString() : QStringLiteral("; ") + remark);
        return {dayOf(reading.readAt),
                {dayCell(dayOf(reading.readAt)), dateCell(reading.readAt), quantityName(series.quantity),
                 readingNumber(reading.value, series.quantity, facts_.units),
                 quantityUnit(series.quantity, facts_.units), remark}};
    }

    QString bandText(const core::Band& band, core::Quantity quantity) const {
        return bandNumbers(band, core::climateQuantityOf(quantity), facts_.units);
    }

    StripPicture makePicture() const {
        const core::BatchSummary& summary = facts_.summary;
        StripPicture picture;
        const double share = summary.rootedByDay.empty() ? 0 : summary.rootedByDay.back().share;
        picture.curve = {
            .shares = summary.rootedByDay,
            .series = 0,
            .label = code(),
            .detail = tr("%1 of %2", "a share and of how many").arg(shareText(share), countText(summary.tally.stuck)),
            .shortly = {}};
        picture.lastDay = std::max(7, core::daysBetween(facts_.batch.stuckOn, facts_.life.until));
        for (const core::DayShare& look : summary.rootedByDay)
            picture.lastDay = std::max(picture.lastDay, static_cast<int>(std::ceil(look.day)));
        for (std::size_t i = 0; i < summary.rootedByDay.size(); ++i) picture.looks.push_back(lookMark(i));
        addMarks(picture);
        for (const StripSeries& series : series_) picture.panels.push_back(panelOf(series, picture));
        picture.emptyText = facts_.life.station.isEmpty()
                                ? tr("The batch has no station on record, so no readings belong to it. \u201cEdit "
                                     "batch\u201d sets one.")
                                : tr("Nothing was read at %1 in this time. \u201cNew reading\u201d (Ctrl+E) adds some.")
                                      .arg(facts_.life.station);
        return picture;
    }

    StripMark lookMark(std::size_t i) const {
        const core::DayShare& look = facts_.summary.rootedByDay[i];
        QString hint = tr("%1: %2 of %3 stuck had rooted", "day 14, 7, 24")
                           .arg(dayText(look.day), rootedCell(i), countText(facts_.summary.tally.stuck));
        if (i < facts_.summary.looks.size())
            hint += tr(", %1 lost, %2 waiting")
                        .arg(countText(facts_.summary.looks[i].lost), countText(facts_.summary.looks[i].waiting));
        return {.day = look.day, .word = {}, .hint = hint};
    }

    void addMarks(StripPicture& picture) const {
        for (const core::Care& care : facts_.life.care) {
            QString hint =
                tr("day %1 (%2): %3", "day 12 (14 March 2026, 10:42): topped up")
                    .arg(dayCell(dayOf(care.doneAt)), momentText(care.doneAt), careWithVolume(care, facts_.units));
            if (!care.note.empty()) hint += u'\n' + QString::fromStdString(care.note);
            const bool isNamed = care.kind != core::CareKind::Other;
            picture.care.push_back(
                {.day = dayOf(care.doneAt),
                 .word = isNamed ? careText(care.kind) : QString::fromStdString(care.note).simplified().left(24),
                 .hint = hint});
        }
        for (const core::Photo& photo : facts_.life.photos) {
            const int day = core::daysBetween(facts_.batch.stuckOn, photo.takenOn);
            QString hint = tr("photo, day %1 (%2)").arg(countText(day), dateText(photo.takenOn));
            if (!photo.caption.empty()) hint += u'\n' + QString::fromStdString(photo.caption);
            picture.photos.push_back({.day = static_cast<double>(day), .word = {}, .hint = hint});
        }
    }

    StripPanel panelOf(const StripSeries& series, const StripPicture& picture) const {
        const QString unit = quantityUnit(series.quantity, facts_.units);
        const QString count = readingsCounted(static_cast<int>(series.readings.size()));
        StripPanel panel;
        panel.caption = unit.isEmpty()
                            ? tr("%1; %2", "quantity, n").arg(quantityName(series.quantity), count)
                            : tr("%1, %2; %3", "quantity, unit, n").arg(quantityName(series.quantity), unit, count);
        panel.bandWords = goodBandsText(series.bands, series.quantity, facts_.units);
        panel.bands = stripBands(series.bands, series.readings, facts_.batch.stuckOn, picture.lastDay, facts_.units);
        for (const core::Reading* reading : series.readings) panel.points.push_back(pointOf(series, *reading, count));
        panel.last = quantityText(series.quantity, series.readings.back()->value, facts_.units);
        return panel;
    }

    StripPoint pointOf(const StripSeries& series, const core::Reading& reading, const QString& count) const {
        const bool isOutside = series.isOutside(reading);
        QString hint =
            tr("day %1 (%2): %3 %4; %5", "day, moment, quantity, figure with unit, n")
                .arg(dayCell(dayOf(reading.readAt)), momentText(reading.readAt), quantityName(series.quantity),
                     quantityText(series.quantity, reading.value, facts_.units), count);
        if (isOutside)
            hint += u'\n' + tr("outside %1").arg(bandText(series.bandAt(reading.readAt)->band, series.quantity));
        if (!reading.note.empty()) hint += u'\n' + QString::fromStdString(reading.note);
        return {.day = dayOf(reading.readAt),
                .value = core::shownValue(reading.value, series.quantity, facts_.units),
                .isOutside = isOutside,
                .hint = hint};
    }

    void draw(Canvas& canvas, const QRectF& area) const override { drawStripPicture(canvas, area, picture_); }

    StripFacts facts_;
    std::vector<StripSeries> series_;
    StripPicture picture_;
};

}  // namespace

std::shared_ptr<const Figure> batchStripFigure(const core::BatchSummary& summary, const core::Batch& batch,
                                               const BatchLife& life, const core::DisplayUnits& units) {
    return std::make_shared<BatchStripFigure>(StripFacts{summary, batch, life, units});
}

}  // namespace plot
