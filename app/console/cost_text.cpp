// SPDX-License-Identifier: MIT
#include "app/console/cost_text.h"

#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"

namespace console {

namespace {

std::string inBytes(const QString& words) {
    return words.toStdString();
}

std::string eachOrBound(const core::CostOfEach& each, const std::string& none) {
    return inBytes(each.value ? plot::costOfEachText(each)
                              : plot::noneSucceededText(each, QString::fromStdString(none)));
}

std::string usableOrDash(const core::WorthOfMethod& method) {
    if (!method.usable) return "–";
    if (!method.perUsable.value && method.perUsable.limits.high <= 0) return "–";  // of batches without costs
    return filled(tr("%1, %2 of %3 stuck"),
                  {eachOrBound(method.perUsable, tr("none usable")), std::to_string(method.usable->succeeded),
                   std::to_string(method.usable->of)});
}

void printCosts(const core::WorthOfPair& pair, const core::Worth& worth, const std::string& currency,
                std::ostream& out) {
    TextTable table({{tr("method"), TextTable::Align::Left},
                     {tr("a cutting"), TextTable::Align::Right},
                     {tr("strike rate"), TextTable::Align::Left},
                     {tr("fits"), TextTable::Align::Left},
                     {tr("a rooted plant"), TextTable::Align::Left},
                     {tr("a usable plant"), TextTable::Align::Left},
                     {tr("half of those that root"), TextTable::Align::Left},
                     {tr("batches"), TextTable::Align::Right}});
    for (const core::WorthOfMethod* method : {&pair.dear, &pair.cheap})
        table.addRow({method->name, inBytes(plot::costAmount(method->perCutting.total())),
                      inBytes(plot::percentText(method->strike.rate, method->strike.succeeded, method->strike.of)),
                      inBytes(plot::limitsText(method->strike.limits)),
                      eachOrBound(method->perRooted, tr("none rooted")), usableOrDash(*method),
                      inBytes(plot::dayRangeText(method->medianDays)), std::to_string(method->strike.batches)});
    table.printTo(out);
    out << filled(tr("Amounts in %1; intervals at %2 allow for batches that share their fate."),
                  {currency, inBytes(plot::levelText(worth.level))})
        << "\n\n";
}

void printParts(const core::WorthOfPair& pair, std::ostream& out) {
    std::vector<TextTable::Column> columns{{tr("parts of a cutting"), TextTable::Align::Left}};
    for (const core::CostPart part : core::allCostParts)
        columns.push_back({inBytes(plot::costPartText(part)), TextTable::Align::Right});
    columns.push_back({tr("things of its own"), TextTable::Align::Right});
    columns.push_back({tr("a batch beside these"), TextTable::Align::Right});
    TextTable table(std::move(columns));
    for (const core::WorthOfMethod* method : {&pair.dear, &pair.cheap}) {
        std::vector<std::string> cells{method->name};
        for (const core::CostPart part : core::allCostParts)
            cells.push_back(inBytes(plot::costAmount(method->perCutting.of(part))));
        cells.push_back(inBytes(plot::costAmount(method->upFront)));
        cells.push_back(inBytes(plot::costAmount(method->perBatch)));
        table.addRow(std::move(cells));
    }
    table.printTo(out);
}

void printByPlant(const core::Worth& worth, std::ostream& out) {
    if (worth.byPlant.size() <= worth.methods.size()) return;
    TextTable table({{tr("plant"), TextTable::Align::Left},
                     {tr("method"), TextTable::Align::Left},
                     {tr("a cutting"), TextTable::Align::Right},
                     {tr("strike rate"), TextTable::Align::Left},
                     {tr("fits"), TextTable::Align::Left},
                     {tr("a rooted plant"), TextTable::Align::Left},
                     {tr("batches"), TextTable::Align::Right}});
    for (const core::WorthOfMethod& row : worth.byPlant)
        table.addRow({row.plantName, row.name, inBytes(plot::costAmount(row.perCutting.total())),
                      inBytes(plot::percentText(row.strike.succeeded, row.strike.of)),
                      row.rates.empty() ? "–" : inBytes(plot::limitsText(row.strike.limits)),
                      row.rates.empty() || row.pricedStuck == 0 ? "–" : eachOrBound(row.perRooted, tr("none rooted")),
                      std::to_string(row.strike.batches)});
    out << '\n';
    table.printTo(out);
}

void printEmpty(const core::Worth& worth, const std::string& currency, std::ostream& out) {
    double sum = 0;
    for (const core::StoodEmpty& empty : worth.stoodEmpty) sum += empty.amount;
    if (sum <= 0) return;
    out << '\n' << filled(tr("Standing empty, in no batch: %1."), {inBytes(plot::costText(sum, currency))}) << '\n';
}

}  // namespace

void printText(const core::Worth& worth, const std::string& currency, std::ostream& out) {
    const core::WorthOfPair& pair = worth.pairs.front();
    out << filled(tr("What a rooted plant costs by %1 and by %2, counted at day %3 (%4)"),
                  {pair.dear.name, pair.cheap.name, std::to_string(worth.horizonDay), worth.horizonReason})
        << "\n\n";
    printCosts(pair, worth, currency, out);
    printParts(pair, out);
    printByPlant(worth, out);
    printEmpty(worth, currency, out);
    const bool canBeTold =
        pair.verdict != core::WorthVerdict::TooFew && pair.verdict != core::WorthVerdict::CannotTellMethodFromStation;
    if (!pair.plants.empty() && canBeTold)
        out << '\n'
            << filled(tr("Chance that %1 is the cheaper for each rooted plant: %2."),
                      {pair.dear.name, inBytes(plot::chanceText(pair.chanceDearPays))})
            << '\n';
    if (!worth.cautions.empty() || !worth.missing.empty()) out << '\n' << tr("To be minded:") << '\n';
    for (const std::string& caution : worth.cautions) out << "- " << caution << '\n';
    for (const std::string& missing : worth.missing) out << "- " << missing << '\n';
    out << '\n' << pair.inWords << '\n';
}

}  // namespace console
