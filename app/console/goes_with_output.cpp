// SPDX-License-Identifier: MIT
#include "app/console/goes_with_output.h"

#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

Json goesWithJson(const core::GoesWith& answer) {
    Json list = Json::array();
    for (const core::Association& each : answer.associations)
        list.push_back({{"name", each.name},
                        {"batches", each.batches},
                        {"odds_ratio", figure(each.oddsRatio)},
                        {"as_counted", limits(each.asCounted)},
                        {"with_spread", limits(each.withSpread)},
                        {"p_as_counted", figure(each.asCountedP)},
                        {"p_with_spread", figure(each.withSpreadP)},
                        {"p_holm", figure(each.holmP)}});
    return {{"associations", std::move(list)}, {"cannot_be_told", answer.cannotBeTold},
            {"left_out", answer.leftOut},      {"dispersion", figure(answer.dispersion)},
            {"batches", answer.batches},       {"cuttings", answer.cuttings},
            {"in_words", answer.inWords}};
}

void printGoesWith(const core::GoesWith& answer, std::ostream& out) {
    out << '\n' << tr("What went with rooting (odds ratios, all at once)") << '\n';
    if (!answer.associations.empty()) {
        TextTable table({{tr("  on record"), TextTable::Align::Left},
                         {tr("with spread"), TextTable::Align::Left},
                         {tr("as counted"), TextTable::Align::Left},
                         {tr("batches"), TextTable::Align::Right}});
        for (const core::Association& each : answer.associations)
            table.addRow({"  " + each.name,
                          each.withSpread ? plot::ratioText(each.oddsRatio, *each.withSpread).toStdString() : "–",
                          plot::ratioText(each.oddsRatio, each.asCounted).toStdString(), std::to_string(each.batches)});
        table.printTo(out);
    }
    for (const std::string& name : answer.cannotBeTold)
        out << "  " << filled(tr("%1: can't be told from the rest; left out."), {name}) << '\n';
    for (const std::string& condition : answer.leftOut)
        out << "  " << filled(tr("Not looked at, since too few batches have it or leave room for it: %1."), {condition})
            << '\n';
    out << "  " << answer.inWords << '\n';
}

}  // namespace console
