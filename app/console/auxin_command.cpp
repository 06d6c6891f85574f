// SPDX-License-Identifier: MIT
#include "app/console/auxin_command.h"

#include <array>

#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/words.h"
#include "app/report/mix_words.h"

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
    cardOption,
    paperOption,
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
    say(report::answerOf(solution),
        {{"question", "thin"},
         {"stock", amountJson(solution.stock)},
         {"diluent", amountJson(solution.diluent)},
         {"as_measured", strengthJson(solution.asMeasured)},
         {"notes", notesJson(solution.notes)}},
        options, writer);
}

void answerWeigh(const QuestionOptions& options, const AnswerWriter& writer) {
    core::PowderToWeigh question{.kind = kindFrom(options),
                                 .powder = formFrom(options, "--powder-is"),
                                 .wanted = {strengthFrom(options, "--wanted"), formFrom(options, "--wanted-is")},
                                 .millilitres = options.number("--volume"),
                                 .tools = toolsFrom(options)};
    question.purityPercent = options.numberOr("--purity", question.purityPercent);
    const core::WeighedPowder weighed = allowed(core::weighPowder(question));
    say(report::answerOf(weighed),
        {{"question", "weigh"},
         {"powder", amountJson(weighed.powder)},
         {"as_measured", strengthJson(weighed.asMeasured)},
         {"least_ml_for_this_scale", figure(weighed.leastMillilitres)},
         {"notes", notesJson(weighed.notes)}},
        options, writer);
}

void answerTalc(const QuestionOptions& options, const AnswerWriter& writer) {
    const auto percent = [&](const char* name) {
        return allowed(core::percentFromMilligrams(strengthFrom(options, name)));
    };
    const core::ThinnedTalc thinned = allowed(core::thinTalc({.powderPercent = percent("--powder"),
                                                              .wantedPercent = percent("--wanted"),
                                                              .grams = options.number("--grams"),
                                                              .tools = toolsFrom(options)}));
    say(report::answerOf(thinned),
        {{"question", "talc"},
         {"powder", amountJson(thinned.powder)},
         {"talc", amountJson(thinned.talc)},
         {"percent_as_measured", figure(thinned.percentAsMeasured)},
         {"notes", notesJson(thinned.notes)}},
        options, writer);
}

void answerDip(const QuestionOptions& options, const AnswerWriter& writer) {
    constexpr int most = 100'000;
    core::DipAmount question{.cuttings = options.whole("--cuttings", 1, most), .tools = toolsFrom(options)};
    question.millilitresEach = options.numberOr("--each", question.millilitresEach);
    question.leastMillilitres = options.numberOr("--least", question.leastMillilitres);
    const core::DipNeeded needed = allowed(core::dipNeeded(question));
    say(report::answerOf(needed),
        {{"question", "dip"}, {"amount", amountJson(needed.amount)}, {"notes", notesJson(needed.notes)}}, options,
        writer);
}

void answerConvert(const QuestionOptions& options, const AnswerWriter& writer) {
    const core::AuxinKind kind = kindFrom(options);
    const core::CountedAuxin counted = allowed(
        core::countOtherWay({.kind = kind, .given = {strengthFrom(options, "--strength"), formFrom(options, "--is")}}));
    say(report::answerOf(counted),
        {{"question", "convert"},
         {"given", strengthJson(counted.question.given)},
         {"percent", figure(counted.percent)},
         {"the_same", strengthJson(counted.same)},
         {"acid_equivalent", figure(core::acidEquivalent(kind))},
         {"molar_masses",
          {{"acid", core::molarMassOf(kind, core::AuxinForm::Acid)},
           {"salt", core::molarMassOf(kind, core::AuxinForm::Salt)}}},
         {"notes", notesJson(counted.notes)}},
        options, writer);
}

void answerRanges(const QuestionOptions&, const AnswerWriter& writer) {
    if (!writer.isJson) {
        printTable(report::auxinRangeTable(), writer.out);
        return;
    }
    Json ranges = Json::array();
    for (const core::AuxinRange& range : core::auxinRanges())
        ranges.push_back({{"wood", range.wood},
                          {"way", range.way},
                          {"low", range.low},
                          {"high", range.high},
                          {"source", range.source}});
    print({{"question", "ranges"}, {"ranges", ranges}}, writer.out);
}

const std::vector<Question>& auxinQuestions() {
    static const std::vector<Question> questions{
        {"thin",
         answerThin,
         {"--auxin", "--stock", "--stock-is", "--wanted", "--wanted-is", "--volume", "--syringe", "--card", "--paper"}},
        {"weigh",
         answerWeigh,
         {"--auxin", "--wanted", "--wanted-is", "--volume", "--powder-is", "--purity", "--scale", "--card", "--paper"}},
        {"talc", answerTalc, {"--powder", "--wanted", "--grams", "--scale", "--card", "--paper"}},
        {"dip", answerDip, {"--cuttings", "--each", "--least", "--syringe", "--card", "--paper"}},
        {"convert", answerConvert, {"--auxin", "--strength", "--is", "--card", "--paper"}},
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

int AuxinCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream&) {
    answerQuestion(name(), question_, auxinQuestions(), options_,
                   {.isJson = isJson_, .out = out, .surroundings = &surroundings});
    return Done;
}

}  // namespace console
