// SPDX-License-Identifier: MIT
#include "app/report/sheet_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/plot/number_text.h"
#include "core/comparison/cautions.h"

namespace report {
namespace {

struct SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

}  // namespace

QString inventedText() {
    return SheetWords::tr("Invented data: a demonstration, not a record");
}

QString citationText(const Sheet& sheet) {
    return sheet.citation.isEmpty() ? QString() : SheetWords::tr("Source of the records: %1").arg(sheet.citation);
}

QString printedText(const Sheet& sheet) {
    const QDate day = sheet.printedAt.date();
    const core::Date date{std::chrono::year(day.year()), std::chrono::month(static_cast<unsigned>(day.month())),
                          std::chrono::day(static_cast<unsigned>(day.day()))};
    return SheetWords::tr("Printed %1, %2", "date, time")
        .arg(plot::dateText(date), QLocale().toString(sheet.printedAt.time(), QLocale::ShortFormat));
}

QString leftOutText(int leftOut, int all) {
    return SheetWords::tr("%1 of %2 lines are left out here so that all fits one page; totals and curve include them.")
        .arg(plot::countText(leftOut), plot::countText(all));
}

QStringList cautionsToPrint(const std::vector<std::string>& cautions, const core::LogbookFacts& facts) {
    const std::vector<std::string> saidElsewhere = core::originCautions(facts);
    QStringList kept;
    for (const std::string& caution : cautions)
        if (std::find(saidElsewhere.begin(), saidElsewhere.end(), caution) == saidElsewhere.end())
            kept << QString::fromStdString(caution);
    return kept;
}

Sheet sheetFor(const core::LogbookFacts& facts, const QDateTime& printedAt) {
    Sheet sheet;
    sheet.grower = QString::fromStdString(facts.grower);
    sheet.logbook = QString::fromStdString(facts.name);
    sheet.citation = QString::fromStdString(facts.citation);
    sheet.isInvented = facts.isInvented;
    sheet.printedAt = printedAt;
    return sheet;
}

}  // namespace report
