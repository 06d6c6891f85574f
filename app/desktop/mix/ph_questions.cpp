// SPDX-License-Identifier: MIT
// Acid or base, from the water's alkalinity or by the grower's own titration.
#include <QCoreApplication>

#include "app/desktop/mix/mix_parts.h"
#include "app/desktop/mix/mix_questions.h"
#include "app/report/mix_words.h"

namespace desktop {

namespace {

using Kind = MixField::Kind;

struct PhQuestionWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MixQuestions)
};

const QString asCarbonate = QStringLiteral("caco3");
const QString asMilliequivalents = QStringLiteral("meq");

/// The strengths that are sold, then each acid and base at a strength of one's own: "sold 0", "phosphoric".
std::vector<MixOffer> reagentOffers() {
    std::vector<MixOffer> offers;
    int number = 0;
    for (const core::StockReagent& stock : core::stockReagents())
        offers.push_back(
            {QStringLiteral("sold %1").arg(number++), QString::fromStdString(core::nameOf(stock.reagent))});
    for (const core::ReagentFacts& facts : core::allReagents())
        offers.push_back({QString::fromUtf8(facts.word),
                          PhQuestionWords::tr("%1, another strength").arg(QString::fromUtf8(facts.name))});
    return offers;
}

core::Reagent reagentOf(const MixForm& form) {
    const QString word = form.chosen("with");
    if (word.startsWith(QStringLiteral("sold "))) return core::stockReagents()[word.mid(5).toULong()].reagent;
    return {.kind = core::reagentFrom(word.toStdString()).value_or(core::ReagentKind::Phosphoric),
            .percent = form.number("strength"),
            .kilogramsPerLitre = form.given("density")};
}

void askPh(MixForm& form) {
    form.addNumber(Kind::Volume, {"volume", PhQuestionWords::tr("&Volume"), "Volume"});
    form.addNumber(Kind::Figure, {"ph", PhQuestionWords::tr("pH &now"), "pH now"});
    form.addNumber(Kind::Figure, {"target", PhQuestionWords::tr("pH &wanted"), "pH wanted"});
    form.addNumber(Kind::Figure,
                   {"alkalinity", PhQuestionWords::tr("&Alkalinity of the water"), "Alkalinity", {}, true});
    form.addChoice({"alkalinity_in", PhQuestionWords::tr("Alkalinity &in"), "Unit of alkalinity", {}, true},
                   {{asMilliequivalents, PhQuestionWords::tr("meq/L")},
                    {asCarbonate, PhQuestionWords::tr("mg/L as CaCO3 (ppm)")}});
    form.addChoice({"with", PhQuestionWords::tr("A&cid or base"), "Acid or base"}, reagentOffers());
    form.addNumber(Kind::Figure, {"strength", PhQuestionWords::tr("&Strength, by weight"),
                                  "Strength of the acid or base", QStringLiteral("%")});
    form.addNumber(Kind::Figure, {.name = "density",
                                  .label = PhQuestionWords::tr("&Density"),
                                  .field = "Density",
                                  .after = PhQuestionWords::tr("kg/L; blank: a solid"),
                                  .mayBeBlank = true});
    form.addScale();
    form.addSyringe();
}

MixReply replyPh(MixForm& form) {
    const bool isOwnStrength = !form.chosen("with").startsWith(QStringLiteral("sold "));
    form.showField("strength", isOwnStrength);
    form.showField("density", isOwnStrength);
    core::Refusals faults;
    core::PhQuestion question{.litres = form.number("volume"),
                              .alkalinity = form.number("alkalinity"),
                              .fromPh = form.number("ph"),
                              .toPh = form.number("target"),
                              .reagent = reagentOf(form),
                              .tools = form.tools()};
    if (form.chosen("alkalinity_in") == asCarbonate) {
        const core::Result<double> alkalinity = core::alkalinityFromCalciumCarbonate(question.alkalinity);
        question.alkalinity = alkalinity.value_or(0);
        if (!alkalinity) faults = alkalinity.error();
    }
    if (faults.empty()) faults = core::faultsIn(question, form.units());
    MixReply reply =
        replyTo<core::PhQuestion, core::PhShift>(form, question, std::move(faults), core::shiftPh, report::answerOf);
    return reply;
}

void askTitration(MixForm& form) {
    form.addNumber(Kind::Volume, {"volume", PhQuestionWords::tr("&Volume of the tub"), "Volume of the tub"});
    form.addNumber(Kind::Figure, {"target", PhQuestionWords::tr("pH &wanted"), "pH wanted"});
    form.addNumber(Kind::Volume, {"sample", PhQuestionWords::tr("Volume of the &jug tried"), "Volume of the jug"});
    form.addNumber(Kind::Figure,
                   {"diluted", PhQuestionWords::tr("1 mL made up &to"), "Dilution",
                    PhQuestionWords::tr("mL for the jug; 1: not thinned")},
                   1.0);
    form.addRows({.name = "steps", .label = PhQuestionWords::tr("&Readings"), .field = "Readings", .leastLines = 2},
                 {{.title = PhQuestionWords::tr("mL gone in altogether"),
                   .objectName = QStringLiteral("mixStep"),
                   .kind = RowsEdit::Kind::Number},
                  {.title = PhQuestionWords::tr("pH read"),
                   .objectName = QStringLiteral("mixStepPh"),
                   .kind = RowsEdit::Kind::Number}},
                 PhQuestionWords::tr("&Another reading"), PhQuestionWords::tr("Reading"));
    form.addSyringe();
}

MixReply replyTitration(MixForm& form) {
    core::TitrationQuestion question{.sampleLitres = form.number("sample"),
                                     .toPh = form.number("target"),
                                     .litres = form.number("volume"),
                                     .dilutedTo = form.number("diluted"),
                                     .tools = form.tools()};
    for (const QStringList& line : form.lines("steps"))
        question.steps.push_back({.millilitres = figureOf(line[0]), .ph = figureOf(line[1])});
    return replyTo<core::TitrationQuestion, core::TitratedDose>(form, question, core::faultsIn(question, form.units()),
                                                                core::titratedDose, report::answerOf);
}

}  // namespace

std::vector<MixQuestion> phQuestions() {
    return {
        {QStringLiteral("ph"), PhQuestionWords::tr("Shift pH, from alkalinity"),
         PhQuestionWords::tr("Acid or base for a closed vessel and for a bubbled tub, as a first dose and a ceiling. "
                             "Alkalinity is on the water works' report or a test strip."),
         askPh, replyPh},
        {QStringLiteral("titration"), PhQuestionWords::tr("Shift pH, by my own trial"),
         PhQuestionWords::tr("Shift a jug of the tub's water step by step and read it: the tub takes as much in "
                             "proportion. Needs neither alkalinity nor the strength of the bottle."),
         askTitration, replyTitration}};
}

}  // namespace desktop
