// SPDX-License-Identifier: MIT
// mix nutrient, reading, elements, dilute, topup.
#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/mix_questions.h"
#include "app/console/words.h"
#include "app/report/mix_words.h"

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

Json bandsJson(std::span<const core::FeedingBand> bands) {
    Json json = Json::array();
    for (const core::FeedingBand& band : bands)
        json.push_back({{"stage", band.stage}, {"low", band.low}, {"high", band.high}, {"source", band.source}});
    return json;
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

}  // namespace

void answerNutrient(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::NutrientDose dose = allowed(core::nutrientDose(feedFrom(options, options.litres("--volume"))));
    say(report::answerOf(dose),
        {{"question", "nutrient"},
         {"litres", dose.question.litres},
         {"strength", figure(dose.strength)},
         {"parts", partsJson(dose.parts)},
         {"ec_as_measured", {{"low", figure(dose.ecLow)}, {"high", figure(dose.ecHigh)}}},
         {"stages", bandsJson(dose.bands)},
         {"notes", notesJson(dose.notes)}},
        options, writer);
}

void answerReading(const QuestionOptions& options, const AnswerWriter& writer) {
    core::NutrientReading reading{.litres = options.litres("--volume"),
                                  .readEc = options.ec("--read"),
                                  .waterEc = options.ec("--water"),
                                  .parts = partsFrom(options)};
    if (options.given("--full")) reading.fullEc = options.ec("--full");
    if (options.given("--meter-step")) reading.meterStep = options.ec("--meter-step");
    const core::LearntNutrient learnt = allowed(core::learnNutrient(reading));
    Json parts = Json::array();
    for (const core::LearntPart& part : learnt.parts)
        parts.push_back({{"name", part.name},
                         {"unit", core::unitOf(part.unit)},
                         {"per_litre", figure(part.perLitre)},
                         {"full_per_litre", figure(part.fullPerLitre)},
                         {"low", part.fullPerLitre ? figure(part.fullLow) : Json()},
                         {"high", part.fullPerLitre ? figure(part.fullHigh) : Json()}});
    say(report::answerOf(learnt),
        {{"question", "reading"},
         {"ec_per_unit", figure(learnt.ecPerUnit)},
         {"parts", parts},
         {"notes", notesJson(learnt.notes)}},
        options, writer);
}

void answerElements(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::SolutionElements solution = allowed(core::solutionElements(ingredientsFrom(options)));
    Json elements = Json::object();
    for (const core::ElementAmount& element : solution.elements)
        elements[element.symbol] = figure(element.milligramsPerLitre);
    say(report::answerOf(solution),
        {{"question", "elements"},
         {"mg_per_litre", elements},
         {"stages", bandsJson(core::feedingBands())},
         {"notes", notesJson(solution.notes)}},
        options, writer);
}

void answerDilution(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::DilutedTub tub = allowed(core::diluteTub({.litres = options.litres("--volume"),
                                                          .ec = options.ec("--now"),
                                                          .targetEc = options.ec("--target"),
                                                          .waterEc = options.ec("--water"),
                                                          .tools = toolsFrom(options)}));
    say(report::answerOf(tub),
        {{"question", "dilute"},
         {"add", amountJson(tub.add)},
         {"ec_after_adding", figure(tub.ecAfterAdding)},
         {"replace", amountJson(tub.replace)},
         {"ec_after_replacing", figure(tub.ecAfterReplacing)},
         {"notes", notesJson(tub.notes)}},
        options, writer);
}

void answerTopUp(const QuestionOptions& options, const AnswerWriter& writer) {
    const double fullLitres = options.litres("--filled");
    const core::ToppedUpTub tub = allowed(core::topUpTub({.litres = options.litres("--volume"),
                                                          .ec = options.ec("--now"),
                                                          .fullLitres = fullLitres,
                                                          .feed = feedFrom(options, fullLitres)}));
    say(report::answerOf(tub),
        {{"question", "topup"},
         {"water", amountJson(tub.water)},
         {"ec_with_water_alone", figure(tub.ecWithWaterAlone)},
         {"parts", partsJson(tub.parts)},
         {"ec_as_measured", {{"low", figure(tub.ecLow)}, {"high", figure(tub.ecHigh)}}},
         {"notes", notesJson(tub.notes)}},
        options, writer);
}

}  // namespace console
