// SPDX-License-Identifier: MIT
// Hormone for the day.
#include <QCoreApplication>

#include "app/desktop/mix/mix_questions.h"
#include "app/report/mix_words.h"

namespace desktop {

namespace {

using Kind = MixField::Kind;

struct AuxinWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MixQuestions)
};

void addAuxin(MixForm& form) {
    std::vector<MixOffer> offers;
    for (const core::AuxinFacts& facts : core::allAuxins())
        offers.push_back({QString::fromUtf8(facts.word), QString::fromUtf8(facts.word)});
    form.addChoice({"auxin", AuxinWords::tr("Au&xin"), "Auxin", {}, true}, offers);
}

void addForm(MixForm& form, const MixFieldText& text) {
    form.addChoice(text, {{QStringLiteral("acid"), AuxinWords::tr("the acid")},
                          {QStringLiteral("salt"), AuxinWords::tr("the potassium salt")}});
}

void addStrength(MixForm& form, const char* name, const QString& label, const char* field) {
    form.addNumber(Kind::Auxin, {name, label, field, AuxinWords::tr("mg/L, or with %")});
}

void addThinner(MixForm& form) {
    form.addChoice(
        {"thinner", AuxinWords::tr("Dissol&ved in"), "Dissolved in"},
        {{QStringLiteral("water"), AuxinWords::tr("water")}, {QStringLiteral("alcohol"), AuxinWords::tr("alcohol")}});
}

core::AuxinKind auxinOf(const MixForm& form) {
    return core::auxinFrom(form.chosen("auxin").toStdString()).value_or(core::AuxinKind::Iba);
}

core::AuxinForm formOf(const MixForm& form, const char* name) {
    return form.chosen(name) == QStringLiteral("salt") ? core::AuxinForm::Salt : core::AuxinForm::Acid;
}

bool isInAlcohol(const MixForm& form) {
    return form.chosen("thinner") == QStringLiteral("alcohol");
}

void askThin(MixForm& form) {
    form.addNumber(Kind::Figure, {"volume", AuxinWords::tr("&Volume to make"), "Volume", AuxinWords::tr("mL")});
    addStrength(form, "wanted", AuxinWords::tr("Strength &wanted"), "Strength wanted");
    addForm(form, {"wanted_is", AuxinWords::tr("That cou&nts"), "Strength wanted counts"});
    addStrength(form, "stock", AuxinWords::tr("&Stock"), "Stock");
    addForm(form, {"stock_is", AuxinWords::tr("The stock &counts"), "Stock counts"});
    addAuxin(form);
    addThinner(form);
    form.addSyringe();
}

MixReply replyThin(MixForm& form) {
    const core::StockDilution question{.kind = auxinOf(form),
                                       .stock = {form.number("stock"), formOf(form, "stock_is")},
                                       .wanted = {form.number("wanted"), formOf(form, "wanted_is")},
                                       .millilitres = form.number("volume"),
                                       .inAlcohol = isInAlcohol(form),
                                       .tools = form.tools()};
    return replyTo<core::StockDilution, core::WorkingSolution>(form, question, core::faultsIn(question),
                                                               core::thinStock, report::answerOf);
}

void askWeigh(MixForm& form) {
    form.addNumber(Kind::Figure, {"volume", AuxinWords::tr("&Volume to make"), "Volume", AuxinWords::tr("mL")});
    addStrength(form, "wanted", AuxinWords::tr("Strength &wanted"), "Strength wanted");
    addForm(form, {"wanted_is", AuxinWords::tr("That cou&nts"), "Strength wanted counts"});
    addAuxin(form);
    addForm(form, {"powder_is", AuxinWords::tr("In the &jar is"), "Powder is"});
    form.addNumber(Kind::Figure, {"purity", AuxinWords::tr("&Purity of it"), "Purity", QStringLiteral("%")}, 100.0);
    addThinner(form);
    form.addScale();
}

MixReply replyWeigh(MixForm& form) {
    const core::PowderToWeigh question{.kind = auxinOf(form),
                                       .powder = formOf(form, "powder_is"),
                                       .purityPercent = form.number("purity"),
                                       .wanted = {form.number("wanted"), formOf(form, "wanted_is")},
                                       .millilitres = form.number("volume"),
                                       .inAlcohol = isInAlcohol(form),
                                       .tools = form.tools()};
    return replyTo<core::PowderToWeigh, core::WeighedPowder>(form, question, core::faultsIn(question),
                                                             core::weighPowder, report::answerOf);
}

void askTalc(MixForm& form) {
    form.addNumber(Kind::Figure, {"grams", AuxinWords::tr("A&mount to make"), "Amount", AuxinWords::tr("g")});
    form.addNumber(Kind::Figure,
                   {"wanted", AuxinWords::tr("Strength &wanted"), "Strength wanted", QStringLiteral("%")});
    form.addNumber(Kind::Figure, {"powder", AuxinWords::tr("&Powder that is there"), "Powder", QStringLiteral("%")});
    form.addScale();
}

MixReply replyTalc(MixForm& form) {
    const core::TalcDilution question{.powderPercent = form.number("powder"),
                                      .wantedPercent = form.number("wanted"),
                                      .grams = form.number("grams"),
                                      .tools = form.tools()};
    return replyTo<core::TalcDilution, core::ThinnedTalc>(form, question, core::faultsIn(question), core::thinTalc,
                                                          report::answerOf);
}

void askDip(MixForm& form) {
    const core::DipAmount usual;
    form.addNumber(Kind::Count, {"cuttings", AuxinWords::tr("&Cuttings"), "Cuttings"});
    form.addNumber(Kind::Figure, {"each", AuxinWords::tr("For &each"), "For each cutting", AuxinWords::tr("mL")},
                   usual.millilitresEach);
    form.addNumber(Kind::Figure,
                   {"least", AuxinWords::tr("&Least to dip into"), "Least to dip into", AuxinWords::tr("mL")},
                   usual.leastMillilitres);
    form.addSyringe();
}

MixReply replyDip(MixForm& form) {
    const core::DipAmount question{.cuttings = form.count("cuttings"),
                                   .millilitresEach = form.number("each"),
                                   .leastMillilitres = form.number("least"),
                                   .tools = form.tools()};
    return replyTo<core::DipAmount, core::DipNeeded>(form, question, core::faultsIn(question), core::dipNeeded,
                                                     report::answerOf);
}

void askConvert(MixForm& form) {
    addStrength(form, "strength", AuxinWords::tr("&Strength"), "Strength");
    addForm(form, {"is", AuxinWords::tr("That cou&nts"), "That counts"});
    addAuxin(form);
}

MixReply replyConvert(MixForm& form) {
    const core::AuxinConversion question{.kind = auxinOf(form), .given = {form.number("strength"), formOf(form, "is")}};
    return replyTo<core::AuxinConversion, core::CountedAuxin>(form, question, core::faultsIn(question),
                                                              core::countOtherWay, report::answerOf);
}

}  // namespace

std::vector<MixQuestion> auxinQuestions() {
    return {{QStringLiteral("thin"), AuxinWords::tr("Auxin: thin a stock"),
             AuxinWords::tr("From the stock bottle to working strength."), askThin, replyThin},
            {QStringLiteral("weigh"), AuxinWords::tr("Auxin: weigh powder"),
             AuxinWords::tr("How much powder for so much solution."), askWeigh, replyWeigh},
            {QStringLiteral("talc"), AuxinWords::tr("Auxin: thin talc"),
             AuxinWords::tr("A weaker talc from a stronger one."), askTalc, replyTalc},
            {QStringLiteral("dip"), AuxinWords::tr("Auxin: enough for the cuttings"),
             AuxinWords::tr("How much to pour out for so many cuttings."), askDip, replyDip},
            {QStringLiteral("convert"), AuxinWords::tr("Auxin: salt and acid"),
             AuxinWords::tr("What a potassium salt's figure is as acid, and the other way round."), askConvert,
             replyConvert}};
}

}  // namespace desktop
