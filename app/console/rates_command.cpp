// SPDX-License-Identifier: MIT
#include "app/console/rates_command.h"

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/rates_figures.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "core/units/number_entry.h"

namespace console {

namespace {

constexpr int mostCuttings = 1'000'000;
constexpr std::size_t mostArms = 20;

Counts countsFrom(const std::string& text) {
    const std::size_t slash = text.find('/');
    const std::optional<int> rooted = core::countFrom(text.substr(0, slash));
    const std::optional<int> stuck =
        slash == std::string::npos ? std::nullopt : core::countFrom(text.substr(slash + 1));
    if (rooted && stuck && *rooted <= *stuck && *stuck <= mostCuttings) return {.rooted = *rooted, .stuck = *stuck};
    throw WrongArgument(filled(tr("The arm %1 is not ROOTED/STUCK; two whole numbers are allowed, STUCK from 0 to %2 "
                                  "and ROOTED from 0 to STUCK, "
                                  "such as 18/24."),
                               {shown(text), std::to_string(mostCuttings)}));
}

core::Limits limitsOf(const stats::Interval& interval) {
    return {.low = interval.low, .high = interval.high};
}

Json ratioJson(const char* estimateName, const char* limitsName, const stats::RatioEstimate& ratio) {
    return {{estimateName, figure(ratio.estimate)}, {limitsName, limits(ratio.limits)}};
}

Json jsonOf(const RateFigures& arm) {
    return {{"rooted", arm.counts.rooted},
            {"stuck", arm.counts.stuck},
            {"rate", figure(arm.rate)},
            {"intervals",
             {{"wilson", limits(arm.wilson)},
              {"wilson_continuity", limits(arm.wilsonContinuity)},
              {"clopper_pearson", limits(arm.clopperPearson)},
              {"jeffreys", limits(arm.jeffreys)},
              {"agresti_coull", limits(arm.agrestiCoull)}}}};
}

Json jsonOf(const PairFigures& pair) {
    return {{"first", pair.first},
            {"second", pair.second},
            {"difference",
             {{"value", figure(pair.difference)},
              {"newcombe", limits(pair.newcombe)},
              {"miettinen_nurminen", limits(pair.miettinenNurminen)}}},
            {"risk_ratio", ratioJson("value", "koopman", pair.riskRatio)},
            {"odds_ratio", ratioJson("conditional", "exact", pair.oddsRatio)},
            {"p",
             {{"fisher", figure(pair.fisher)},
              {"fisher_mid", figure(pair.fisherMid)},
              {"boschloo", figure(pair.boschloo)},
              {"barnard", figure(pair.barnard)}}},
            {"probability_first_better", figure(pair.probabilityFirstBetter)}};
}

Json jsonOf(const RatesFigures& figures) {
    Json json = {{"level", figures.level}, {"arms", Json::array()}, {"pairs", Json::array()}};
    for (const RateFigures& arm : figures.arms) json["arms"].push_back(jsonOf(arm));
    for (const PairFigures& pair : figures.pairs) json["pairs"].push_back(jsonOf(pair));
    return json;
}

std::string text(const QString& words) {
    return words.toStdString();
}

std::string testText(const std::optional<double>& p) {
    return p ? text(plot::pText(*p)) : tr("left out: too many cuttings to count through");
}

void printPair(const PairFigures& pair, std::ostream& out) {
    const core::Limits mn = limitsOf(pair.miettinenNurminen), newcombe = limitsOf(pair.newcombe);
    out << '\n'
        << filled(tr("Arm %1 against arm %2"), {std::to_string(pair.first + 1), std::to_string(pair.second + 1)})
        << '\n';
    if (pair.difference)
        out << filled(tr("  Difference         %1; %2 fit these counts (Miettinen-Nurminen; Newcombe: %3)"),
                      {text(plot::differenceText(*pair.difference)), text(plot::differenceLimitsText(mn)),
                       text(plot::differenceLimitsText(newcombe))})
            << '\n';
    else
        out << tr("  Difference         undefined: an arm has no cuttings") << '\n';
    out << filled(tr("  Ratio of rates     %1 (Koopman)"),
                  {text(plot::ratioText(pair.riskRatio.estimate, limitsOf(pair.riskRatio.limits)))})
        << '\n'
        << filled(tr("  Odds ratio         %1 (conditional, exact)"),
                  {text(plot::ratioText(pair.oddsRatio.estimate, limitsOf(pair.oddsRatio.limits)))})
        << '\n'
        << filled(tr("  Boschloo's test    %1"), {testText(pair.boschloo)}) << '\n'
        << filled(tr("  Barnard's test     %1"), {testText(pair.barnard)}) << '\n'
        << filled(tr("  Fisher's test      %1, mid-p %2"),
                  {text(plot::pText(pair.fisher)), text(plot::pText(pair.fisherMid))})
        << '\n'
        << filled(tr("  Arm %1 is better    with a probability of %2, if nothing was known before"),
                  {std::to_string(pair.first + 1), text(plot::chanceText(pair.probabilityFirstBetter))})
        << '\n';
}

void printText(const RatesFigures& figures, std::ostream& out) {
    using Align = TextTable::Align;
    out << filled(tr("Strike rates with their intervals at %1"), {text(plot::levelText(figures.level))}) << '\n';
    TextTable table({{tr("arm"), Align::Right},
                     {tr("strike rate"), Align::Left},
                     {tr("Wilson"), Align::Left},
                     {tr("Wilson, corrected"), Align::Left},
                     {tr("Clopper-Pearson"), Align::Left},
                     {tr("Jeffreys"), Align::Left},
                     {tr("Agresti-Coull"), Align::Left}});
    for (std::size_t i = 0; i < figures.arms.size(); ++i) {
        const RateFigures& arm = figures.arms[i];
        const auto interval = [](const stats::Interval& of) { return text(plot::limitsText(limitsOf(of))); };
        table.addRow({std::to_string(i + 1),
                      arm.rate ? text(plot::percentText(arm.counts.rooted, arm.counts.stuck)) : tr("no cuttings"),
                      interval(arm.wilson), interval(arm.wilsonContinuity), interval(arm.clopperPearson),
                      interval(arm.jeffreys), interval(arm.agrestiCoull)});
    }
    table.printTo(out);
    for (const PairFigures& pair : figures.pairs) printPair(pair, out);
    out << '\n'
        << tr("Plain counts: if cuttings of an arm shared one tub or tray, they shared its fate too, and the intervals "
              "are too narrow.")
        << '\n';
}

}  // namespace

std::string RatesCommand::name() const {
    return "rates";
}

std::string RatesCommand::summary() const {
    return tr("compare plain counts, no logbook needed");
}

void RatesCommand::declare(Options& options) {
    options.arguments("ROOTED/STUCK", tr("two arms or more, such as 18/24 11/24"), arms_);
    options.option("--level", "L", tr("of the intervals, between 0 and 1 (0.95)"), level_);
    options.flag("--json", tr("for machines"), isJson_);
}

int RatesCommand::run(const Surroundings&, std::ostream& out, std::ostream&) {
    if (arms_.size() < 2)
        throw WrongArgument(tr("There is one arm only; two or more are needed, such as 18/24 11/24."));
    if (arms_.size() > mostArms)
        throw WrongArgument(filled(tr("There are %1 arms; 2 to %2 are allowed."),
                                   {std::to_string(arms_.size()), std::to_string(mostArms)}));
    std::vector<Counts> arms;
    for (const std::string& arm : arms_) arms.push_back(countsFrom(arm));
    const RatesFigures figures = ratesFigures(arms, level_ ? levelFrom("--level", *level_) : 0.95);
    if (isJson_)
        print(jsonOf(figures), out);
    else
        printText(figures, out);
    return Done;
}

}  // namespace console
