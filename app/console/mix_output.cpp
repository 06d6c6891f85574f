// SPDX-License-Identifier: MIT
#include "app/console/mix_output.h"

#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

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

std::string amountOf(double value) {
    return plot::amountText(value).toStdString();
}

std::string measuredOf(const core::MeasuredAmount& amount) {
    return plot::decimalText(amount.measured, core::decimalsOf(amount)).toStdString() + ' ' + core::unitOf(amount.unit);
}

std::string exactOf(const core::MeasuredAmount& amount) {
    return amountOf(amount.exact) + ' ' + core::unitOf(amount.unit);
}

void printWorking(const core::Working& working, std::ostream& out) {
    out << "  " << working.formula << "\n    " << working.withNumbers << "\n    "
        << filled(tr("Source: %1"), {working.source}) << '\n';
}

void printNotes(const core::MixNotes& notes, std::ostream& out) {
    for (const std::string& remark : notes.remarks) out << remark << '\n';
    out << '\n' << tr("How it is worked out") << '\n';
    for (const core::Working& working : notes.workings) printWorking(working, out);
    out << '\n' << tr("Mind") << '\n';
    for (const core::CautionTopic topic : notes.cautions) {
        const core::TradeCaution& caution = core::tradeCaution(topic);
        out << "  " << caution.name << ": " << caution.text << '\n';
    }
}

}  // namespace console
