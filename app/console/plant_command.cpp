// SPDX-License-Identifier: MIT
#include "app/console/plant_command.h"

#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/plant_called.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/report/plant_words.h"
#include "core/comparison/spread.h"

namespace console {

namespace {

Json endOrNull(const std::optional<double>& end) {
    return end ? Json(*end) : Json();
}

Json rangeJson(const core::ReferenceRange& range) {
    return {{"low", endOrNull(range.low)}, {"high", endOrNull(range.high)}, {"source", core::sourceWords(range)}};
}

Json printedJson(const core::PlantReference& reference) {
    Json water = Json::array();
    for (const std::string_view key : core::sourceKeys(reference.waterSources)) water.push_back(key);
    return {{"species", reference.botanicalName},           {"form", reference.form},
            {"common_name", reference.commonName},          {"family", reference.family},
            {"cutting_kinds", reference.cuttingKinds},      {"season", reference.season},
            {"auxin_mg_per_l", rangeJson(reference.auxin)}, {"days_to_root", rangeJson(reference.days)},
            {"strike_of_100", rangeJson(reference.strike)}, {"water_culture_sources", std::move(water)}};
}

Json ownJson(const core::PlantFacts& facts) {
    const bool hasCurve = facts.rooting.restsOn == core::DaysRestOn::OwnCurve;
    return {{"batches", facts.batches},
            {"cuttings", facts.cuttings},
            {"rooted", facts.records.rooted},
            {"assessed", facts.records.assessed},
            {"watched_batches", facts.records.batches.size()},
            {"at_day", facts.records.horizonDay},
            {"level", figure(facts.level)},
            {"interval", limits(facts.asCounted)},
            {"interval_with_spread", limits(facts.withSpread)},
            {"half_by_day", hasCurve ? Json(facts.rooting.middle) : Json()},
            {"most_by_day", hasCurve ? Json(facts.rooting.upper) : Json()}};
}

Json plantJson(const core::PlantFacts& facts) {
    return {{"plant", facts.records.plantName},
            {"printed", facts.reference != nullptr ? printedJson(*facts.reference) : Json()},
            {"own", ownJson(facts)},
            {"planned_by",
             {{"own_weight", figure(facts.records.ownWeight)},
              {"own_counts_like", figure(facts.ownCounts)},
              {"printed_counts_like", facts.records.band ? figure(facts.bandCounts) : Json()},
              {"days_rest_on", core::wordFor(facts.rooting.restsOn)},
              {"rate_in_words", facts.rateInWords},
              {"days_in_words", facts.daysInWords}}}};
}

void printLines(const std::vector<report::PlantFactLine>& lines, const std::string& source, std::ostream& out) {
    using Align = TextTable::Align;
    TextTable table({{tr("what"), Align::Left}, {tr("figure"), Align::Left}, {source, Align::Left}});
    for (const report::PlantFactLine& line : lines)
        table.addRow({line.what.toStdString(), line.figure.toStdString(), line.source.toStdString()});
    table.printTo(out);
}

void printPlant(const core::PlantFacts& facts, std::ostream& out) {
    const report::PlantWords words = report::plantWords(facts);
    out << facts.records.plantName << '\n'
        << filled(tr("What is printed of it: %1"), {words.heading.toStdString()}) << '\n';
    if (!words.printed.empty()) printLines(words.printed, tr("how it is known"), out);
    for (const QString& citation : words.citations) out << citation.toStdString() << '\n';
    out << '\n' << tr("Your own records") << '\n';
    printLines(words.own, tr("rests on"), out);
    out << '\n';
    for (const QString& sentence : words.plannedBy) out << sentence.toStdString() << '\n';
}

}  // namespace

std::string PlantCommand::name() const {
    return "plant";
}

std::string PlantCommand::summary() const {
    return tr("what is printed of a plant beside one's own records, and which of the two plans go by");
}

void PlantCommand::declare(Options& options) {
    options.optionalArgument("LOG", tr("the logbook; without it the reference table alone"), file_);
    options.neededOption("--species", "NAME", tr("the plant"), species_);
    options.flag("--json", tr("for machines"), isJson_);
}

std::optional<core::PlantFacts> PlantCommand::ofLogbook(const Surroundings& surroundings, std::ostream& err) const {
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    const core::Plant* plant = plantCalled(*species_, shelves, file_, err);
    if (plant == nullptr) return {};
    const std::vector<core::BatchRecord> batches = logbook.batchRecords();
    return core::plantFactsOf(plant->id, shelves, batches,
                              core::pooledSpreadOf(batches, shelves.facts.horizonDay, shelves.facts.level));
}

std::optional<core::PlantFacts> PlantCommand::ofTable(std::ostream& err) const {
    if (core::plantReferenceFor(*species_) == nullptr) {
        err << filled(tr("The reference table has no plant %1."), {shown(*species_)}) << '\n';
        return {};
    }
    core::Shelves shelves;
    core::Plant plant;
    plant.id = core::PlantId{1};
    plant.botanicalName = *species_;
    shelves.plants.push_back(plant);
    return core::plantFactsOf(plant.id, shelves, {},
                              core::pooledSpreadOf({}, shelves.facts.horizonDay, shelves.facts.level));
}

int PlantCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const std::optional<core::PlantFacts> facts = file_.empty() ? ofTable(err) : ofLogbook(surroundings, err);
    if (!facts) return Refused;
    if (isJson_)
        print(plantJson(*facts), out);
    else
        printPlant(*facts, out);
    return Done;
}

}  // namespace console
