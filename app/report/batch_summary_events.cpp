// SPDX-License-Identifier: MIT
#include "app/report/batch_summary_events.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <utility>

#include "app/plot/batch_strip_figure.h"
#include "app/plot/cost_text.h"
#include "app/plot/local_time.h"
#include "app/plot/money_text.h"
#include "app/plot/number_text.h"
#include "app/plot/readings_text.h"
#include "app/plot/station_charts.h"
#include "app/report/climate_sheet.h"
#include "db/logbook.h"

namespace report {
namespace {

struct EventsWords {
    Q_DECLARE_TR_FUNCTIONS(BatchSummaryEvents)
};

constexpr double kStripHeight = 96;   // millimetres
constexpr double kPhotosHeight = 62;  // millimetres
constexpr int kPrintedPixels = 1000;  // of a photo half a page wide: about 280 to the inch

QString oneLine(const std::string& text) {
    return QString::fromStdString(text).simplified();
}

QString dayCell(const core::Batch& batch, core::Date day) {
    return plot::countText(core::daysBetween(batch.stuckOn, day));
}

Table careTable(const BatchEvents& events, const core::Batch& batch, const core::DisplayUnits& units) {
    Table table{
        .title = {},
        .headings = {EventsWords::tr("Day"), EventsWords::tr("Date"), EventsWords::tr("Care"), EventsWords::tr("Note")},
        .aligned = {Align::Right, Align::Right, Align::Left, Align::Left},
        .rows = {},
        .mayBeShortened = true};
    for (const core::Care& care : events.life.care) {
        const core::Date day = plot::localDay(care.doneAt);
        table.rows.push_back(
            {dayCell(batch, day), plot::shortDateText(day), plot::careWithVolume(care, units), oneLine(care.note)});
    }
    return table;
}

Table expenseTable(const BatchEvents& events, const core::Batch& batch, const std::string& currency) {
    Table table{.title = {},
                .headings = {EventsWords::tr("Day"), EventsWords::tr("Date"), EventsWords::tr("What for"),
                             EventsWords::tr("Amount")},
                .aligned = {Align::Right, Align::Right, Align::Left, Align::Right},
                .rows = {},
                .mayBeShortened = true};
    for (const core::Expense& expense : events.life.expenses)
        table.rows.push_back({dayCell(batch, expense.spentOn), plot::shortDateText(expense.spentOn),
                              oneLine(expense.what), plot::moneyText(expense.hundredths, currency)});
    return table;
}

std::vector<Block> costBlocks(const BatchEvents& events, const core::Batch& batch, const core::Tally& tally,
                              const std::string& currency) {
    if (!events.cost || events.cost->cost.lines.empty()) return {};
    std::vector<Block> blocks;
    blocks.emplace_back(Heading{EventsWords::tr("What it cost")});
    blocks.emplace_back(
        Paragraph{EventsWords::tr("%1: %2.", "a sum; its parts")
                      .arg(costsInWords(events.cost->cost, tally, core::isClosed(batch, tally), currency),
                           costPartsInWords(events.cost->cost)),
                  Tone::Plain});
    for (const std::string& sentence : events.cost->missing)
        blocks.emplace_back(Paragraph{QString::fromStdString(sentence), Tone::Caution});
    Table table{.title = {},
                .headings = {EventsWords::tr("Part"), EventsWords::tr("What for"),
                             EventsWords::tr("Its share, %1", "currency").arg(QString::fromStdString(currency))},
                .aligned = {Align::Left, Align::Left, Align::Right},
                .rows = {},
                .mayBeShortened = true};
    for (const core::CostLine& line : events.cost->cost.lines)
        table.rows.push_back({plot::costPartText(line.part), oneLine(line.what), plot::costAmount(line.amount)});
    blocks.emplace_back(std::move(table));
    return blocks;
}

}  // namespace

bool BatchEvents::isEmpty() const {
    return life.readings.empty() && lived.empty() && life.care.empty() && photos.empty() && life.expenses.empty();
}

plot::ShownPhoto shownPhoto(const db::Logbook& logbook, const core::Photo& photo, core::Date stuckOn, int most) {
    const core::ImageBytes bytes = logbook.photoImage(photo.id);
    QByteArray data(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    const QSize size = reader.size();
    if (size.width() > most || size.height() > most) reader.setScaledSize(size.scaled(most, most, Qt::KeepAspectRatio));
    const int day = core::daysBetween(stuckOn, photo.takenOn);
    return {.image = reader.read(),
            .day = EventsWords::tr("day %1, %2", "day 14, 28 March 2026")
                       .arg(plot::countText(day), plot::dateText(photo.takenOn)),
            .caption = oneLine(photo.caption)};
}

BatchEvents batchEventsOf(const db::Logbook& logbook, const core::BatchRecord& record, const core::Shelves& shelves,
                          core::Date today, core::Moment now) {
    BatchEvents events{.life = plot::batchLifeOf(logbook, record, shelves, today), .photos = {}};
    events.lived = plot::livedThroughOf(logbook, record, shelves, today, now);
    const std::vector<core::Photo>& photos = events.life.photos;
    if (!photos.empty())
        events.photos.push_back(shownPhoto(logbook, photos.front(), record.batch.stuckOn, kPrintedPixels));
    if (photos.size() > 1)
        events.photos.push_back(shownPhoto(logbook, photos.back(), record.batch.stuckOn, kPrintedPixels));
    return events;
}

std::vector<Block> eventBlocks(const BatchEvents& events, const core::BatchSummary& summary, const core::Batch& batch,
                               const core::Shelves& shelves) {
    std::vector<Block> blocks;
    if (!events.life.readings.empty()) {
        blocks.emplace_back(Heading{EventsWords::tr("What it went through at %1").arg(events.life.station)});
        blocks.emplace_back(
            Picture{plot::batchStripFigure(summary, batch, events.life, shelves.facts.units), kStripHeight});
    }
    if (!events.lived.empty()) {
        blocks.emplace_back(Heading{EventsWords::tr("What it lived through at %1").arg(events.life.station)});
        blocks.emplace_back(livedTable(events.lived, shelves.facts.units));
        blocks.emplace_back(Paragraph{livedMethod(), Tone::Quiet});
    }
    if (!events.life.care.empty()) {
        blocks.emplace_back(Heading{EventsWords::tr("Care of %1 in this time").arg(events.life.station)});
        blocks.emplace_back(careTable(events, batch, shelves.facts.units));
    }
    if (!events.photos.empty()) {
        blocks.emplace_back(Heading{EventsWords::tr("Photos")});
        blocks.emplace_back(Picture{plot::photosFigure(events.photos), kPhotosHeight});
    }
    if (!events.life.expenses.empty()) {
        blocks.emplace_back(Heading{EventsWords::tr("Expenses")});
        blocks.emplace_back(expenseTable(events, batch, shelves.facts.currency));
    }
    for (Block& block : costBlocks(events, batch, summary.tally, shelves.facts.currency))
        blocks.push_back(std::move(block));
    return blocks;
}

}  // namespace report
