// SPDX-License-Identifier: MIT
#include "app/report/check_sheet.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/plot/number_text.h"
#include "app/plot/unit_text.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

struct CheckWords {
    Q_DECLARE_TR_FUNCTIONS(CheckSheet)
};

Table emptyCheckTable() {
    Table table;
    table.headings = {CheckWords::tr("Batch"), CheckWords::tr("Plant"),          CheckWords::tr("rooted so far"),
                      CheckWords::tr("left"),  CheckWords::tr("rooted"),         CheckWords::tr("lost"),
                      CheckWords::tr("cause"), CheckWords::tr("note, withdrawn")};
    table.aligned = {Align::Left, Align::Left, Align::Left, Align::Right,
                     Align::Left, Align::Left, Align::Left, Align::Left};
    table.plantColumn = 1;
    table.breaksPlantNames = true;
    table.wholeColumns = {0};
    table.penColumns = {4, 5, 6, 7};
    table.restColumn = 7;
    return table;
}

QStringList checkRow(const core::BatchLine& line, const core::Shelves& shelves) {
    const core::Plant* plant = core::find(shelves.plants, line.batch.plant);
    QStringList cells{QString::fromStdString(line.batch.code),
                      plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                      CheckWords::tr("%1 of %2", "rooted, of those stuck")
                          .arg(plot::countText(line.tally.rooted), plot::countText(line.batch.stuck)),
                      plot::countText(line.tally.undecided())};
    while (cells.size() < 8) cells << QString();
    return cells;
}

QString causesText(const core::Shelves& shelves) {
    QStringList causes;
    for (const core::LossCause& cause : shelves.lossCauses)
        if (cause.key != '\0' && !cause.isRetired)
            causes << CheckWords::tr("%1 %2", "letter, cause of loss")
                          .arg(QLatin1Char(cause.key))
                          .arg(QString::fromStdString(cause.name));
    return causes.join(CheckWords::tr(", ", "between causes of loss"));
}

void addStations(Sheet& sheet, std::span<const core::DueBatch> rows, const core::Shelves& shelves) {
    for (std::size_t first = 0; first < rows.size();) {
        const core::StationId at = rows[first].line.batch.station;
        const core::Station* station = core::find(shelves.stations, at);
        Table table = emptyCheckTable();
        std::size_t row = first;
        for (; row < rows.size() && rows[row].line.batch.station == at; ++row)
            table.rows.push_back(checkRow(rows[row].line, shelves));
        sheet.blocks.emplace_back(
            Heading{station == nullptr ? CheckWords::tr("Without a station") : QString::fromStdString(station->name)});
        sheet.blocks.emplace_back(std::move(table));
        first = row;
    }
}

}  // namespace

Sheet checkSheet(std::span<const core::DueBatch> rows, core::Date day, const core::Shelves& shelves,
                 const QDateTime& printedAt) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    sheet.title = CheckWords::tr("Check sheet, %1", "date").arg(plot::dateText(day));
    sheet.subtitle = CheckWords::tr("%1 in walking order").arg(plot::batchesText(static_cast<int>(rows.size())));
    if (rows.empty()) {
        sheet.blocks.emplace_back(Paragraph{CheckWords::tr("Nothing is due."), Tone::Answer});
        return sheet;
    }
    sheet.blocks.emplace_back(Paragraph{
        CheckWords::tr(
            "Write what is new since the look before. A stroke through the boxes says that you looked and "
            "nothing was new; empty boxes say that nobody looked. Left: cuttings still undecided. Withdrawn: w and "
            "their number, in the note."),
        Tone::Plain});
    addStations(sheet, rows, shelves);
    const QString causes = causesText(shelves);
    if (!causes.isEmpty())
        sheet.blocks.emplace_back(Paragraph{CheckWords::tr("Causes of loss: %1.").arg(causes), Tone::Answer});
    sheet.blocks.emplace_back(
        Paragraph{CheckWords::tr("Rooted: at least one root of %1. Withdrawn: taken away alive and unrooted.")
                      .arg(plot::rootLengthText(shelves.facts)),
                  Tone::Quiet});
    sheet.blocks.emplace_back(SignatureLine{{CheckWords::tr("Looked by"), CheckWords::tr("Date")}});
    return sheet;
}

}  // namespace report
