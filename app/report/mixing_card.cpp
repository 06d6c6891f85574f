// SPDX-License-Identifier: MIT
#include "app/report/mixing_card.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/plot/number_text.h"
#include "app/report/sheet_words.h"

namespace report {

namespace {

struct CardWords {
    Q_DECLARE_TR_FUNCTIONS(MixingCard)
};

Sheet emptyCard(const QString& title, core::Date day, const core::LogbookFacts& facts, const QDateTime& printedAt) {
    Sheet sheet = sheetFor(facts, printedAt);
    sheet.title = title;
    sheet.subtitle = CardWords::tr("Mixing card, %1", "date").arg(plot::dateText(day));
    sheet.fitsOnePage = true;
    return sheet;
}

Table amountTable(const std::vector<MixAmount>& amounts) {
    Table table{.title = {},
                .headings = {CardWords::tr("what"), CardWords::tr("take"), CardWords::tr("worked out")},
                .aligned = {Align::Left, Align::Right, Align::Right},
                .rows = {},
                .restColumn = 0};
    for (const MixAmount& amount : amounts) table.rows.push_back({amount.what, amount.take, amount.workedOut});
    return table;
}

void addLines(Sheet& sheet, const QStringList& lines, Tone tone) {
    for (const QString& line : lines) sheet.blocks.emplace_back(Paragraph{line, tone});
}

void addMind(Sheet& sheet, const QStringList& cautions) {
    if (cautions.isEmpty()) return;
    sheet.blocks.emplace_back(Heading{CardWords::tr("Mind")});
    addLines(sheet, cautions, Tone::Caution);
}

QStringList linesOf(const std::string& lines) {
    return QString::fromStdString(lines).split(u'\n', Qt::SkipEmptyParts);
}

/// The formula, and below it the sum with whose it is.
void addWorking(Sheet& sheet, const core::Working& working) {
    sheet.blocks.emplace_back(Paragraph{QString::fromStdString(working.formula), Tone::Plain});
    sheet.blocks.emplace_back(
        Paragraph{CardWords::tr("%1. Source: %2", "a sum, whose formula it is")
                      .arg(QString::fromStdString(working.withNumbers), QString::fromStdString(working.source)),
                  Tone::Quiet});
}

/// The words of today for the cautions of then; the bare name where there is none of that name any more.
QStringList cautionsNamed(const std::string& names) {
    MixAnswer mind;
    QStringList unknown;
    for (const QString& name : linesOf(names)) {
        const auto& all = core::allTradeCautions();
        const auto* const found = std::ranges::find(
            all, name.toStdString(), [](const core::TradeCaution& one) { return std::string(one.name); });
        if (found == all.end())
            unknown << name;
        else
            mind.notes.cautions.push_back(found->topic);
    }
    return cautionsOf(mind) + unknown;
}

}  // namespace

Sheet mixingCard(const MixAnswer& answer, core::Date day, const core::LogbookFacts& facts, const QDateTime& printedAt) {
    Sheet sheet = emptyCard(answer.title, day, facts, printedAt);
    if (!answer.amounts.empty()) sheet.blocks.emplace_back(amountTable(answer.amounts));
    addLines(sheet, answer.results, Tone::Answer);
    addMind(sheet, cautionsOf(answer));
    addLines(sheet, remarksOf(answer), Tone::Plain);
    sheet.blocks.emplace_back(Heading{CardWords::tr("How it is worked out")});
    if (!answer.sumsIn.isEmpty()) sheet.blocks.emplace_back(Paragraph{answer.sumsIn, Tone::Quiet});
    for (const core::Working& working : answer.notes.workings) addWorking(sheet, working);
    for (const Table& table : answer.tables) sheet.blocks.emplace_back(table);
    return sheet;
}

Sheet mixingCard(const core::KeptMix& mix, core::Date day, const core::LogbookFacts& facts,
                 const QDateTime& printedAt) {
    Sheet sheet = emptyCard(QString::fromStdString(mix.title), day, facts, printedAt);
    addLines(sheet, linesOf(mix.amounts), Tone::Answer);
    addMind(sheet, cautionsNamed(mix.cautions));
    sheet.blocks.emplace_back(Heading{CardWords::tr("How it was worked out")});
    addLines(sheet, linesOf(mix.workings), Tone::Quiet);
    return sheet;
}

}  // namespace report
