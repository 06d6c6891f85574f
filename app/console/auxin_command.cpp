// SPDX-License-Identifier: MIT
#include "app/console/auxin_command.h"

#include <array>

#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "core/mixing/auxin_mix.h"

namespace console {

namespace {

constexpr std::array auxinOptions = std::to_array<QuestionOption>({
    {"--auxin", "NAME", "IBA, NAA or IAA (IBA)"},
    {"--stock", "S", "thin: strength of the stock, in mg/L or per cent: 10000, 1%"},
    {"--stock-is", "FORM", "thin: acid or salt, what the stock's figure counts (acid)"},
    {"--wanted", "S", "strength wanted, in mg/L or per cent"},
    {"--wanted-is", "FORM", "acid or salt, what that figure counts (acid)"},
    {"--volume", "ML", "thin, weigh: of solution to make, in mL"},
    {"--powder-is", "FORM", "weigh: acid or salt, what is in the jar (acid)"},
    {"--purity", "PERCENT", "weigh: of the powder (100)"},
    {"--powder", "S", "talc: strength of the talc that is there"},
    {"--grams", "G", "talc: of thinned talc to make"},
    {"--cuttings", "N", "dip: how many"},
    {"--each", "ML", "dip: for each cutting (0.5)"},
    {"--least", "ML", "dip: that can be dipped into (10)"},
    {"--strength", "S", "convert: in mg/L or per cent"},
    {"--is", "FORM", "convert: acid or salt, what that figure counts"},
    scaleOption,
    syringeOption,
});

constexpr const char* strengthExample = "mg/L or %";

core::AuxinKind kindFrom(const QuestionOptions& options) {
    if (!options.given("--auxin")) return core::AuxinKind::Iba;
    if (const std::optional<core::AuxinKind> kind = core::auxinFrom(options.needed("--auxin"))) return *kind;
    throw WrongArgument(filled(tr("--auxin is %1; IBA, NAA or IAA is allowed."), {shown(options.needed("--auxin"))}));
}

core::AuxinForm formFrom(const QuestionOptions& options, const std::string& name) {
    if (!options.given(name) || options.needed(name) == "acid") return core::AuxinForm::Acid;
    if (options.needed(name) == "salt") return core::AuxinForm::Salt;
    throw WrongArgument(filled(tr("%1 is %2; acid or salt is allowed."), {name, shown(options.needed(name))}));
}

double strengthFrom(const QuestionOptions& options, const std::string& name) {
    const auto [figure, unit] = figureAndUnitFrom(name, options.needed(name));
    if (unit.empty() || unit == "mg/L" || unit == "ppm") return figure;
    if (unit == "%") return allowed(core::milligramsFromPercent(figure));
    throw WrongArgument(filled(tr("%1 is %2; a number in %3 is allowed, such as 3000 or 0.3%."),
                               {name, shown(options.needed(name)), strengthExample}));
}

std::string strengthOf(core::AuxinKind kind, const core::AuxinStrength& strength) {
    return filled(tr("%1 mg/L %2"), {amountOf(strength.milligramsPerLitre), core::nameOf(kind, strength.form)});
}

Json strengthJson(const core::AuxinStrength& strength) {
    return {{"mg_per_litre", figure(strength.milligramsPerLitre)}, {"counted_as", core::wordFor(strength.form)}};
}

void answerThin(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::AuxinKind kind = kindFrom(options);
    const core::WorkingSolution solution =
        allowed(core::thinStock({.kind = kind,
                                 .stock = {strengthFrom(options, "--stock"), formFrom(options, "--stock-is")},
                                 .wanted = {strengthFrom(options, "--wanted"), formFrom(options, "--wanted-is")},
                                 .millilitres = options.number("--volume"),
                                 .tools = toolsFrom(options)}));
    if (writer.isJson) {
        print({{"question", "thin"},
               {"stock", amountJson(solution.stock)},
               {"diluent", amountJson(solution.diluent)},
               {"as_measured", strengthJson(solution.asMeasured)},
               {"notes", notesJson(solution.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Stock %1 (%2 worked out), thinned with %3 (%4): as measured %5."),
                         {measuredOf(solution.stock), exactOf(solution.stock), measuredOf(solution.diluent),
                          exactOf(solution.diluent), strengthOf(kind, solution.asMeasured)})
               << '\n';
    printNotes(solution.notes, writer.out);
}

void answerWeigh(const QuestionOptions& options, const AnswerWriter& writer) {
    core::PowderToWeigh question{.kind = kindFrom(options),
                                 .powder = formFrom(options, "--powder-is"),
                                 .wanted = {strengthFrom(options, "--wanted"), formFrom(options, "--wanted-is")},
                                 .millilitres = options.number("--volume"),
                                 .tools = toolsFrom(options)};
    question.purityPercent = options.numberOr("--purity", question.purityPercent);
    const core::WeighedPowder weighed = allowed(core::weighPowder(question));
    if (writer.isJson) {
        print({{"question", "weigh"},
               {"powder", amountJson(weighed.powder)},
               {"as_measured", strengthJson(weighed.asMeasured)},
               {"least_ml_for_this_scale", figure(weighed.leastMillilitres)},
               {"notes", notesJson(weighed.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Weigh %1 of %2 (%3 worked out) for %4 mL: as measured %5."),
                         {measuredOf(weighed.powder), core::nameOf(question.kind, question.powder),
                          exactOf(weighed.powder), amountOf(question.millilitres),
                          strengthOf(question.kind, weighed.asMeasured)})
               << '\n';
    printNotes(weighed.notes, writer.out);
}

void answerTalc(const QuestionOptions& options, const AnswerWriter& writer) {
    const auto percent = [&](const char* name) {
        return allowed(core::percentFromMilligrams(strengthFrom(options, name)));
    };
    const core::ThinnedTalc thinned = allowed(core::thinTalc({.powderPercent = percent("--powder"),
                                                              .wantedPercent = percent("--wanted"),
                                                              .grams = options.number("--grams"),
                                                              .tools = toolsFrom(options)}));
    if (writer.isJson) {
        print({{"question", "talc"},
               {"powder", amountJson(thinned.powder)},
               {"talc", amountJson(thinned.talc)},
               {"percent_as_measured", figure(thinned.percentAsMeasured)},
               {"notes", notesJson(thinned.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Powder %1 (%2 worked out) and plain talc %3 (%4): as measured %5 %."),
                         {measuredOf(thinned.powder), exactOf(thinned.powder), measuredOf(thinned.talc),
                          exactOf(thinned.talc), amountOf(thinned.percentAsMeasured)})
               << '\n';
    printNotes(thinned.notes, writer.out);
}

void answerDip(const QuestionOptions& options, const AnswerWriter& writer) {
    constexpr int most = 100'000;
    core::DipAmount question{.cuttings = options.whole("--cuttings", 1, most), .tools = toolsFrom(options)};
    question.millilitresEach = options.numberOr("--each", question.millilitresEach);
    question.leastMillilitres = options.numberOr("--least", question.leastMillilitres);
    const core::DipNeeded needed = allowed(core::dipNeeded(question));
    if (writer.isJson) {
        print({{"question", "dip"}, {"amount", amountJson(needed.amount)}, {"notes", notesJson(needed.notes)}},
              writer.out);
        return;
    }
    writer.out << filled(tr("Pour out %1."), {measuredOf(needed.amount)}) << '\n';
    printNotes(needed.notes, writer.out);
}

void answerConvert(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::AuxinKind kind = kindFrom(options);
    const core::AuxinStrength given{strengthFrom(options, "--strength"), formFrom(options, "--is")};
    const core::AuxinForm other = given.form == core::AuxinForm::Acid ? core::AuxinForm::Salt : core::AuxinForm::Acid;
    const core::AuxinStrength counted = allowed(core::countedAs(other, kind, given));
    const double percent = allowed(core::percentFromMilligrams(given.milligramsPerLitre));
    if (writer.isJson) {
        print({{"question", "convert"},
               {"given", strengthJson(given)},
               {"percent", figure(percent)},
               {"the_same", strengthJson(counted)},
               {"acid_equivalent", figure(core::acidEquivalent(kind))},
               {"molar_masses",
                {{"acid", core::molarMassOf(kind, core::AuxinForm::Acid)},
                 {"salt", core::molarMassOf(kind, core::AuxinForm::Salt)}}}},
              writer.out);
        return;
    }
    writer.out << filled(tr("%1 (%2 %) is %3: the acid is %4 of the potassium salt."),
                         {strengthOf(kind, given), amountOf(percent), strengthOf(kind, counted),
                          core::briefText(core::acidEquivalent(kind))})
               << '\n';
}

void answerRanges(const QuestionOptions&, const AnswerWriter& writer) {
    using Align = TextTable::Align;
    Json ranges = Json::array();
    TextTable table({{tr("wood"), Align::Left},
                     {tr("way"), Align::Left},
                     {tr("mg/L, in talc mg/kg"), Align::Left},
                     {tr("source"), Align::Left}});
    for (const core::AuxinRange& range : core::auxinRanges()) {
        ranges.push_back({{"wood", range.wood},
                          {"way", range.way},
                          {"low", range.low},
                          {"high", range.high},
                          {"source", range.source}});
        table.addRow({std::string(range.wood), std::string(range.way),
                      filled(tr("%1 to %2"), {amountOf(range.low), amountOf(range.high)}), std::string(range.source)});
    }
    if (writer.isJson) {
        print({{"question", "ranges"}, {"ranges", ranges}}, writer.out);
        return;
    }
    table.printTo(writer.out);
    writer.out << tr("Ways can't be swapped at the same figure: talc does less than a dip. The label comes first.")
               << '\n';
}

const std::vector<Question>& auxinQuestions() {
    static const std::vector<Question> questions{
        {"thin", answerThin, {"--auxin", "--stock", "--stock-is", "--wanted", "--wanted-is", "--volume", "--syringe"}},
        {"weigh",
         answerWeigh,
         {"--auxin", "--wanted", "--wanted-is", "--volume", "--powder-is", "--purity", "--scale"}},
        {"talc", answerTalc, {"--powder", "--wanted", "--grams", "--scale"}},
        {"dip", answerDip, {"--cuttings", "--each", "--least", "--syringe"}},
        {"convert", answerConvert, {"--auxin", "--strength", "--is"}},
        {"ranges", answerRanges, {}}};
    return questions;
}

}  // namespace

std::string AuxinCommand::name() const {
    return "auxin";
}

std::string AuxinCommand::summary() const {
    return tr("hormone for the day: stock, powder, talc, salt and acid, how much for so many cuttings");
}

void AuxinCommand::declare(Options& options) {
    options.argument("QUESTION", tr("thin, weigh, talc, dip, convert or ranges"), question_);
    options_.declare(options, auxinOptions);
    options.flag("--json", tr("for machines"), isJson_);
}

int AuxinCommand::run(const Surroundings&, std::ostream& out, std::ostream&) {
    answerQuestion(name(), question_, auxinQuestions(), options_, {.isJson = isJson_, .out = out});
    return Done;
}

}  // namespace console
