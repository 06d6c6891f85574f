// SPDX-License-Identifier: MIT
// mix nutrient, reading, elements, dilute, topup.
#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/mix_questions.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "core/mixing/elements.h"
#include "core/mixing/tub.h"

namespace console {

namespace {

/// "A=1.2", "A=1.2g" or "B=4mL".
std::vector<core::FeedPart> partsFrom(const QuestionOptions& options) {
    std::vector<core::FeedPart> parts;
    for (const std::string& text : options.neededList("--part")) {
        const auto [name, dose] = pairFrom("--part", text);
        const auto [figure, unit] = figureAndUnitFrom("--part", dose);
        if (!unit.empty() && unit != "g" && unit != "mL")
            throw WrongArgument(filled(tr("--part is %1; g or mL is allowed as its unit."), {shown(text)}));
        parts.push_back({.name = name,
                         .fullPerLitre = figure,
                         .unit = unit == "mL" ? core::AmountUnit::Millilitres : core::AmountUnit::Grams});
    }
    return parts;
}

core::NutrientQuestion feedFrom(const QuestionOptions& options, double litres) {
    return {.litres = litres,
            .targetEc = options.ec("--target"),
            .waterEc = options.ec("--water"),
            .fullEc = options.ec("--full"),
            .parts = partsFrom(options),
            .tools = toolsFrom(options)};
}

Json partsJson(const std::vector<core::PartDose>& parts) {
    Json json = Json::array();
    for (const core::PartDose& part : parts) {
        Json one = amountJson(part.amount);
        one["name"] = part.part.name;
        json.push_back(std::move(one));
    }
    return json;
}

void printParts(const std::vector<core::PartDose>& parts, std::ostream& out) {
    using Align = TextTable::Align;
    TextTable table({{tr("part"), Align::Left}, {tr("take"), Align::Right}, {tr("worked out"), Align::Right}});
    for (const core::PartDose& part : parts)
        table.addRow({part.part.name, measuredOf(part.amount), exactOf(part.amount)});
    table.printTo(out);
}

std::string ecRange(double low, double high) {
    const std::string text =
        amountOf(low) == amountOf(high) ? amountOf(low) : filled(tr("%1 to %2"), {amountOf(low), amountOf(high)});
    return filled(tr("As measured it comes to EC %1 mS/cm."), {text});
}

Json bandsJson(std::span<const core::FeedingBand> bands) {
    Json json = Json::array();
    for (const core::FeedingBand& band : bands)
        json.push_back({{"stage", band.stage}, {"low", band.low}, {"high", band.high}, {"source", band.source}});
    return json;
}

void printBands(std::ostream& out) {
    out << '\n';
    using Align = TextTable::Align;
    TextTable table({{tr("stage"), Align::Left}, {tr("EC in mS/cm"), Align::Left}, {tr("source"), Align::Left}});
    for (const core::FeedingBand& band : core::feedingBands())
        table.addRow({std::string(band.stage), filled(tr("%1 to %2"), {amountOf(band.low), amountOf(band.high)}),
                      std::string(band.source)});
    table.printTo(out);
}

std::vector<core::FeedIngredient> ingredientsFrom(const QuestionOptions& options) {
    std::vector<core::FeedIngredient> ingredients;
    for (const std::string& text : options.list("--salt")) {
        const auto [formula, grams] = pairFrom("--salt", text);
        ingredients.push_back(allowed(core::saltIngredient(formula, numberFrom("--salt", grams))));
    }
    if (options.given("--bag")) {
        const auto [name, grams] = pairFrom("--bag", options.needed("--bag"));
        std::vector<core::LabelFigure> label;
        for (const std::string& text : options.neededList("--label")) {
            const auto [word, percent] = pairFrom("--label", text);
            label.push_back({.word = word, .percent = numberFrom("--label", percent)});
        }
        ingredients.push_back(allowed(core::labelIngredient(name, numberFrom("--bag", grams), label)));
    } else if (!options.list("--label").empty()) {
        throw WrongArgument(tr("--label needs --bag NAME=G: the bag that it stands on."));
    }
    if (ingredients.empty()) throw WrongArgument(tr("--salt or --bag with --label is missing."));
    return ingredients;
}

std::string amountIn(const core::KnownSolution& solution, const std::string& symbol) {
    for (const core::ElementAmount& element : solution.elements)
        if (element.symbol == symbol) return amountOf(element.milligramsPerLitre);
    return {};
}

}  // namespace

void answerNutrient(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::NutrientDose dose = allowed(core::nutrientDose(feedFrom(options, options.litres("--volume"))));
    if (writer.isJson) {
        print({{"question", "nutrient"},
               {"litres", dose.question.litres},
               {"strength", figure(dose.strength)},
               {"parts", partsJson(dose.parts)},
               {"ec_as_measured", {{"low", figure(dose.ecLow)}, {"high", figure(dose.ecHigh)}}},
               {"stages", bandsJson(dose.bands)},
               {"notes", notesJson(dose.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Nutrient for %1 L at EC %2 mS/cm"),
                         {amountOf(dose.question.litres), amountOf(dose.question.targetEc)})
               << '\n';
    printParts(dose.parts, writer.out);
    writer.out << ecRange(dose.ecLow, dose.ecHigh) << '\n';
    printNotes(dose.notes, writer.out);
    printBands(writer.out);
}

void answerReading(const QuestionOptions& options, const AnswerWriter& writer) {
    core::NutrientReading reading{.litres = options.litres("--volume"),
                                  .readEc = options.ec("--read"),
                                  .waterEc = options.ec("--water"),
                                  .parts = partsFrom(options)};
    if (options.given("--full")) reading.fullEc = options.ec("--full");
    if (options.given("--meter-step")) reading.meterStep = options.ec("--meter-step");
    const core::LearntNutrient learnt = allowed(core::learnNutrient(reading));
    if (writer.isJson) {
        Json parts = Json::array();
        for (const core::LearntPart& part : learnt.parts)
            parts.push_back({{"name", part.name},
                             {"unit", core::unitOf(part.unit)},
                             {"per_litre", figure(part.perLitre)},
                             {"full_per_litre", figure(part.fullPerLitre)},
                             {"low", part.fullPerLitre ? figure(part.fullLow) : Json()},
                             {"high", part.fullPerLitre ? figure(part.fullHigh) : Json()}});
        print({{"question", "reading"},
               {"ec_per_unit", figure(learnt.ecPerUnit)},
               {"parts", parts},
               {"notes", notesJson(learnt.notes)}},
              writer.out);
        return;
    }
    for (const core::LearntPart& part : learnt.parts)
        if (part.fullPerLitre)
            writer.out << filled(tr("%1: full dose %2 %3/L; the meter's step leaves %4 to %5 open"),
                                 {part.name, amountOf(*part.fullPerLitre), core::unitOf(part.unit),
                                  amountOf(part.fullLow), amountOf(part.fullHigh)})
                       << '\n';
    writer.out << filled(
                      tr("1 %1/L of %2, and of the others in proportion, adds %3 mS/cm."),
                      {core::unitOf(learnt.parts.front().unit), learnt.parts.front().name, amountOf(learnt.ecPerUnit)})
               << '\n';
    printNotes(learnt.notes, writer.out);
}

void answerElements(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::SolutionElements solution = allowed(core::solutionElements(ingredientsFrom(options)));
    if (writer.isJson) {
        Json elements = Json::object();
        for (const core::ElementAmount& element : solution.elements)
            elements[element.symbol] = figure(element.milligramsPerLitre);
        print({{"question", "elements"},
               {"mg_per_litre", elements},
               {"stages", bandsJson(core::feedingBands())},
               {"notes", notesJson(solution.notes)}},
              writer.out);
        return;
    }
    using Align = TextTable::Align;
    std::vector<TextTable::Column> columns{{tr("element"), Align::Left}, {tr("mg/L"), Align::Right}};
    for (const core::KnownSolution& known : core::knownSolutions())
        columns.push_back({std::string(known.name), Align::Right});
    TextTable table(columns);
    for (const core::ElementAmount& element : solution.elements) {
        std::vector<std::string> row{element.symbol, amountOf(element.milligramsPerLitre)};
        for (const core::KnownSolution& known : core::knownSolutions()) row.push_back(amountIn(known, element.symbol));
        table.addRow(row);
    }
    table.printTo(writer.out);
    for (const core::KnownSolution& known : core::knownSolutions())
        writer.out << filled(tr("%1: %2"), {std::string(known.name), std::string(known.source)}) << '\n';
    printNotes(solution.notes, writer.out);
    printBands(writer.out);
}

void answerDilution(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::DilutedTub tub = allowed(core::diluteTub({.litres = options.litres("--volume"),
                                                          .ec = options.ec("--now"),
                                                          .targetEc = options.ec("--target"),
                                                          .waterEc = options.ec("--water"),
                                                          .tools = toolsFrom(options)}));
    if (writer.isJson) {
        print({{"question", "dilute"},
               {"add", amountJson(tub.add)},
               {"ec_after_adding", figure(tub.ecAfterAdding)},
               {"replace", amountJson(tub.replace)},
               {"ec_after_replacing", figure(tub.ecAfterReplacing)},
               {"notes", notesJson(tub.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Add %1 of water (%2 worked out): EC %3 mS/cm."),
                         {measuredOf(tub.add), exactOf(tub.add), amountOf(tub.ecAfterAdding)})
               << '\n'
               << filled(tr("Or take out %1 and fill up with water (%2 worked out): EC %3 mS/cm."),
                         {measuredOf(tub.replace), exactOf(tub.replace), amountOf(tub.ecAfterReplacing)})
               << '\n';
    printNotes(tub.notes, writer.out);
}

void answerTopUp(const QuestionOptions& options, const AnswerWriter& writer) {
    const double fullLitres = options.litres("--filled");
    const core::ToppedUpTub tub = allowed(core::topUpTub({.litres = options.litres("--volume"),
                                                          .ec = options.ec("--now"),
                                                          .fullLitres = fullLitres,
                                                          .feed = feedFrom(options, fullLitres)}));
    if (writer.isJson) {
        print({{"question", "topup"},
               {"water", amountJson(tub.water)},
               {"ec_with_water_alone", figure(tub.ecWithWaterAlone)},
               {"parts", partsJson(tub.parts)},
               {"ec_as_measured", {{"low", figure(tub.ecLow)}, {"high", figure(tub.ecHigh)}}},
               {"notes", notesJson(tub.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Fill up with %1 of water; without nutrient it reads EC %2 mS/cm then."),
                         {measuredOf(tub.water), amountOf(tub.ecWithWaterAlone)})
               << '\n';
    printParts(tub.parts, writer.out);
    writer.out << ecRange(tub.ecLow, tub.ecHigh) << '\n';
    printNotes(tub.notes, writer.out);
}

}  // namespace console
