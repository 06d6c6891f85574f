// SPDX-License-Identifier: MIT
// mix ph, titration, medium.
#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/mix_questions.h"
#include "app/console/words.h"
#include "app/report/mix_words.h"

namespace console {

namespace {

/// "2", "2meq", or "100ppm" as CaCO3.
double alkalinityFrom(const QuestionOptions& options) {
    const auto [figure, unit] = figureAndUnitFrom("--alkalinity", options.needed("--alkalinity"));
    if (unit.empty() || unit == "meq" || unit == "meq/L") return figure;
    if (unit == "ppm" || unit == "mg/L") return allowed(core::alkalinityFromCalciumCarbonate(figure));
    throw WrongArgument(filled(tr("--alkalinity is %1; a number in meq/L, or in mg/L as CaCO3 with ppm behind it, is "
                                  "allowed."),
                               {shown(options.needed("--alkalinity"))}));
}

core::Reagent reagentFrom(const QuestionOptions& options) {
    const std::optional<core::ReagentKind> kind = core::reagentFrom(options.needed("--with"));
    if (!kind) {
        std::string words;
        for (const core::ReagentFacts& facts : core::allReagents())
            words += (words.empty() ? "" : ", ") + std::string(facts.word);
        throw WrongArgument(filled(tr("--with is %1; known are %2."), {shown(options.needed("--with")), words}));
    }
    core::Reagent reagent{.kind = *kind};
    reagent.percent = options.numberOr("--strength", reagent.percent);
    if (options.given("--density")) reagent.kilogramsPerLitre = options.number("--density");
    return reagent;
}

Json doseJson(const core::PhDose& dose) {
    return {{"meq_per_litre", figure(dose.milliequivalents)}, {"amount", amountJson(dose.amount)}};
}

/// Of --volume, or of so many trays.
double mediumLitresFrom(const QuestionOptions& options) {
    constexpr int most = 100'000;
    const bool isByTrays = options.given("--trays") || options.given("--cells") || options.given("--cell-volume");
    if (options.given("--volume").has_value() == isByTrays)
        throw WrongArgument(
            tr("Of --volume V and --trays N --cells N --cell-volume ML one is needed, and no more than one."));
    if (!isByTrays) return options.litres("--volume");
    return allowed(core::trayLitres(options.whole("--trays", 1, most), options.whole("--cells", 1, most),
                                    options.number("--cell-volume")));
}

}  // namespace

void answerPh(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::PhShift shift = allowed(core::shiftPh({.litres = options.litres("--volume"),
                                                       .alkalinity = alkalinityFrom(options),
                                                       .fromPh = options.number("--ph"),
                                                       .toPh = options.number("--target-ph"),
                                                       .reagent = reagentFrom(options),
                                                       .tools = toolsFrom(options)}));
    say(report::answerOf(shift),
        {{"question", "ph"},
         {"alkalinity", figure(shift.question.alkalinity)},
         {"start", amountJson(shift.start)},
         {"first", doseJson(shift.first)},
         {"ceiling", doseJson(shift.ceiling)},
         {"closed", doseJson(shift.closed)},
         {"bubbled", doseJson(shift.bubbled)},
         {"ph_of_first", figure(shift.phOfFirst)},
         {"ph_of_first_bubbled", figure(shift.phOfFirstBubbled)},
         {"ph_untreated_bubbled", figure(shift.phUntreated)},
         {"notes", notesJson(shift.notes)}},
        options, writer);
}

void answerTitration(const QuestionOptions& options, const AnswerWriter& writer) {
    core::TitrationQuestion question{.sampleLitres = options.litres("--sample"),
                                     .toPh = options.number("--target-ph"),
                                     .litres = options.litres("--volume"),
                                     .dilutedTo = options.numberOr("--diluted-to", 1),
                                     .tools = toolsFrom(options)};
    for (const std::string& text : options.neededList("--step")) {
        const auto [millilitres, ph] = pairFrom("--step", text);
        question.steps.push_back({.millilitres = numberFrom("--step", millilitres), .ph = numberFrom("--step", ph)});
    }
    const core::TitratedDose dose = allowed(core::titratedDose(question));
    say(report::answerOf(dose),
        {{"question", "titration"},
         {"sample_ml", figure(dose.sampleMillilitres)},
         {"amount", amountJson(dose.amount)},
         {"low", figure(dose.low)},
         {"high", figure(dose.high)},
         {"start", amountJson(dose.start)},
         {"notes", notesJson(dose.notes)}},
        options, writer);
}

void answerMedium(const QuestionOptions& options, const AnswerWriter& writer) {
    core::MediumQuestion question{.litres = mediumLitresFrom(options), .tools = toolsFrom(options)};
    question.lossPercent = options.numberOr("--loss", question.lossPercent);
    for (const std::string& text : options.neededList("--part")) {
        const auto [name, parts] = pairFrom("--part", text);
        question.components.push_back({.name = name, .parts = numberFrom("--part", parts)});
    }
    const core::MixedMedium mixed = allowed(core::mixMedium(question));
    Json components = Json::array();
    for (const core::ComponentAmount& component : mixed.components) {
        Json one = amountJson(component.amount);
        one["name"] = component.component.name;
        components.push_back(std::move(one));
    }
    say(report::answerOf(mixed),
        {{"question", "medium"},
         {"litres", figure(question.litres)},
         {"components", components},
         {"litres_as_measured", figure(mixed.litresAsMeasured)},
         {"notes", notesJson(mixed.notes)}},
        options, writer);
}

}  // namespace console
