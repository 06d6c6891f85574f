// SPDX-License-Identifier: MIT
#include "app/console/mix_output.h"

#include "app/console/arguments.h"
#include "app/console/painting_application.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/report/mixing_card.h"
#include "app/report/pdf.h"

namespace console {

namespace {

void printLines(const QStringList& lines, std::ostream& out) {
    for (const QString& line : lines) out << line.toStdString() << '\n';
}

void printAnswer(const report::MixAnswer& answer, std::ostream& out) {
    using Align = TextTable::Align;
    out << answer.title.toStdString() << '\n';
    TextTable table({{tr("what"), Align::Left}, {tr("take"), Align::Right}, {tr("worked out"), Align::Right}});
    for (const report::MixAmount& amount : answer.amounts)
        table.addRow({amount.what.toStdString(), amount.take.toStdString(), amount.workedOut.toStdString()});
    if (!answer.amounts.empty()) table.printTo(out);
    printLines(answer.results, out);
    printLines(report::remarksOf(answer), out);
    out << '\n' << tr("How it is worked out") << '\n';
    for (const core::Working& working : answer.notes.workings) printWorking(working, out);
    out << '\n' << tr("Mind") << '\n';
    for (const QString& caution : report::cautionsOf(answer)) out << "  " << caution.toStdString() << '\n';
    for (const report::Table& each : answer.tables) {
        out << '\n';
        printTable(each, out);
    }
}

void printCard(const report::MixAnswer& answer, const std::string& file, const QuestionOptions& options,
               const Surroundings& surroundings) {
    requirePdfName(file, cardOption.name);
    const std::string paper = options.given("--paper").value_or("A4");
    if (paper != "A4" && paper != "Letter")
        throw WrongArgument(filled(tr("--paper is %1; A4 or Letter is allowed."), {shown(paper)}));
    const PaintingApplication application;
    report::writePdf(report::mixingCard(answer, surroundings.today, {}, momentFrom(surroundings.clock)),
                     QString::fromStdString(file), report::paperFrom(QString::fromStdString(paper)));
}

}  // namespace

core::MeasuringTools toolsFrom(const QuestionOptions& options) {
    core::MeasuringTools tools;
    tools.scale = options.numberOr(scaleOption.name, tools.scale);
    tools.syringe = options.numberOr(syringeOption.name, tools.syringe);
    tools.jug = options.numberOr(jugOption.name, tools.jug);
    return tools;
}

Json amountJson(const core::MeasuredAmount& amount) {
    return {{"exact", figure(amount.exact)},
            {"measured", figure(amount.measured)},
            {"step", figure(amount.step)},
            {"unit", core::unitOf(amount.unit)}};
}

Json workingJson(const core::Working& working) {
    return {{"formula", working.formula}, {"with_numbers", working.withNumbers}, {"source", working.source}};
}

Json notesJson(const core::MixNotes& notes) {
    Json json = {{"workings", Json::array()}, {"remarks", notes.remarks}, {"cautions", Json::array()}};
    for (const core::Working& working : notes.workings) json["workings"].push_back(workingJson(working));
    for (const core::CautionTopic topic : notes.cautions) {
        const core::TradeCaution& caution = core::tradeCaution(topic);
        json["cautions"].push_back({{"topic", caution.name}, {"text", caution.text}, {"source", caution.source}});
    }
    return json;
}

void printWorking(const core::Working& working, std::ostream& out) {
    out << "  " << working.formula << "\n    " << working.withNumbers << "\n    "
        << filled(tr("Source: %1"), {working.source}) << '\n';
}

void printTable(const report::Table& table, std::ostream& out) {
    out << table.title.toStdString() << (table.title.isEmpty() ? "" : "\n");
    std::vector<TextTable::Column> columns;
    for (std::size_t column = 0; column < table.aligned.size(); ++column)
        columns.push_back(
            {table.headings[static_cast<qsizetype>(column)].toStdString(),
             table.aligned[column] == report::Align::Right ? TextTable::Align::Right : TextTable::Align::Left});
    TextTable text(std::move(columns));
    for (const QStringList& row : table.rows) {
        std::vector<std::string> cells;
        for (const QString& cell : row) cells.push_back(cell.toStdString());
        text.addRow(std::move(cells));
    }
    text.printTo(out);
}

void say(const report::MixAnswer& answer, Json json, const QuestionOptions& options, const AnswerWriter& writer) {
    const std::string file = options.given("--card").value_or("");
    if (!file.empty()) printCard(answer, file, options, *writer.surroundings);
    if (writer.isJson) {
        if (!file.empty()) json["card"] = file;
        print(json, writer.out);
        return;
    }
    printAnswer(answer, writer.out);
    if (!file.empty()) writer.out << '\n' << filled(tr("Printed the mixing card to %1."), {file}) << '\n';
}

}  // namespace console
