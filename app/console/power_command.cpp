// SPDX-License-Identifier: MIT
#include "app/console/power_command.h"

#include <cmath>

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"
#include "stats/planning/exact_power.h"

namespace console {

namespace {

constexpr int mostPerArm = 900;  // worth as many cuttings with luck of their own
constexpr int mostInTrays = 100'000;

stats::ExactPower exactPowerOf(const stats::SampleSizeQuestion& question, int perArm) {
    const stats::PlannedArms arms{
        .trials1 = perArm, .trials2 = perArm, .rate1 = question.rate1, .rate2 = question.rate2};
    return question.test == stats::PlannedTest::Fisher
               ? stats::fisherPower(arms, question.alpha, stats::FisherSide::TwoSided)
               : stats::boschlooPower(arms, question.alpha, stats::BoschlooKind::Central);
}

/// The first number that has the power, though one more may lose it again.
int firstPerArm(const stats::SampleSizeQuestion& question, int enough) {
    constexpr int sawTooth = 12;  // as far back as the teeth reach at these sizes
    int first = enough;
    for (int perArm = enough - 1; perArm >= std::max(1, enough - sawTooth); --perArm)
        if (exactPowerOf(question, perArm).power >= question.power) first = perArm;
    return first;
}

double designEffectFrom(const std::string& text) {
    constexpr double most = 1000;
    const std::optional<double> effect = core::numberFrom(text);
    if (effect && *effect >= 1 && *effect <= most) return *effect;
    throw WrongArgument(filled(tr("--design-effect is %1; a number from 1 to 1000 is allowed, such as 2.9 for trays of "
                                  "20 whose cuttings share a tenth of their luck."),
                               {shown(text)}));
}

stats::PlannedTest plannedTestFrom(const std::string& text) {
    if (text == "boschloo") return stats::PlannedTest::Boschloo;
    if (text == "fisher") return stats::PlannedTest::Fisher;
    throw WrongArgument(filled(tr("--test is %1; boschloo or fisher is allowed."), {shown(text)}));
}

std::string testWord(const stats::SampleSizeQuestion& question) {
    return question.test == stats::PlannedTest::Fisher ? "fisher" : "boschloo";
}

std::string testName(const stats::SampleSizeQuestion& question) {
    return question.test == stats::PlannedTest::Fisher ? tr("Fisher's exact test") : tr("Boschloo's test");
}

Json jsonOf(const stats::SampleSizeQuestion& question) {
    return {{"rates", {question.rate1, question.rate2}},
            {"test", testWord(question)},
            {"alpha", question.alpha},
            {"design_effect", question.designEffect}};
}

std::string chanceOf(double probability) {
    return plot::chanceText(probability).toStdString();
}

std::string spreadNote(const stats::SampleSizeQuestion& question, int independent) {
    if (question.designEffect == 1)
        return tr("That is for cuttings each with luck of its own; where trays share it, give --design-effect.");
    return filled(tr("With a design effect of %1 they are worth %2 cuttings each with luck of its own."),
                  {core::figureText(question.designEffect), std::to_string(independent)});
}

}  // namespace

std::string PowerCommand::name() const {
    return "power";
}

std::string PowerCommand::summary() const {
    return tr("how often a trial of two arms would find a difference, or how many cuttings that takes");
}

void PowerCommand::declare(Options& options) {
    options.listOption("--rates", "P1 P2", tr("strike rates supposed, from 0 to 1, such as 0.5 0.75"), rates_, true);
    options.option("--per-arm", "N", tr("cuttings of each arm: how often is it found?"), perArm_);
    options.option("--power", "P", tr("chance of finding it, between 0 and 1: how many cuttings?"), power_);
    options.option("--test", "TEST", tr("boschloo or fisher, two-sided (boschloo)"), test_);
    options.option("--design-effect", "D", tr("by which trays that share luck make cuttings count for less (1)"),
                   designEffect_);
    options.option("--level", "L", tr("of the test, between 0 and 1 (0.95)"), level_);
    options.flag("--json", tr("for machines"), isJson_);
}

stats::SampleSizeQuestion PowerCommand::question() const {
    if (rates_.size() != 2)
        throw WrongArgument(filled(tr("--rates has %1 values; two are needed, such as --rates 0.5 0.75."),
                                   {std::to_string(rates_.size())}));
    if (perArm_.has_value() == power_.has_value())
        throw WrongArgument(tr("Of --per-arm N and --power P one is needed, and no more than one."));
    stats::SampleSizeQuestion question;
    question.rate1 = shareFrom("--rates", rates_[0]);
    question.rate2 = shareFrom("--rates", rates_[1]);
    question.mostPerArm = mostPerArm;
    if (test_) question.test = plannedTestFrom(*test_);
    if (designEffect_) question.designEffect = designEffectFrom(*designEffect_);
    if (level_) question.alpha = 1 - levelFrom("--level", *level_);
    if (power_) question.power = levelFrom("--power", *power_);
    return question;
}

int PowerCommand::powerOfNumber(const stats::SampleSizeQuestion& question, std::ostream& out) const {
    const int perArm = static_cast<int>(wholeFrom("--per-arm", *perArm_, 1, mostInTrays));
    const double worth = std::floor(perArm / question.designEffect + 1e-9);
    if (worth > mostPerArm)
        throw WrongArgument(
            filled(tr("--per-arm is %1; up to %2 can be counted through%3."),
                   {std::to_string(perArm), std::to_string(static_cast<int>(mostPerArm * question.designEffect)),
                    question.designEffect > 1 ? tr(" with this design effect") : ""}));
    const int independent = static_cast<int>(worth);
    const stats::ExactPower power = exactPowerOf(question, independent);
    if (isJson_) {
        Json json = jsonOf(question);
        json["per_arm"] = perArm;
        json["independent_per_arm"] = independent;
        json["power"] = figure(power.power);
        json["size"] = figure(power.size);
        print(json, out);
        return Done;
    }
    out << filled(tr("With %1 per arm %2 finds %3 against %4 with a chance of %5."),
                  {std::to_string(perArm), testName(question), plot::shareText(question.rate1).toStdString(),
                   plot::shareText(question.rate2).toStdString(), chanceOf(power.power)})
        << '\n'
        << spreadNote(question, independent) << '\n';
    return Done;
}

int PowerCommand::numberForPower(const stats::SampleSizeQuestion& question, std::ostream& out) const {
    const stats::SampleSize size = stats::sampleSize(question);
    if (isJson_) {
        Json json = jsonOf(question);
        json["power_wanted"] = question.power;
        json["per_arm"] = size.perArm ? Json(*size.perArm) : Json();
        json["independent_per_arm"] = size.independentPerArm ? Json(*size.independentPerArm) : Json();
        json["first_independent_per_arm"] =
            size.independentPerArm ? Json(firstPerArm(question, *size.independentPerArm)) : Json();
        json["power"] = figure(size.achieved);
        json["normal_per_arm"] = figure(size.normalPerArm);
        print(json, out);
        return size.perArm ? Done : Refused;
    }
    if (!size.perArm) {
        out << (question.rate1 == question.rate2
                    ? tr("The two rates are the same: there is nothing to find.")
                    : filled(tr("More than %1 cuttings per arm would be needed."),
                             {std::to_string(static_cast<int>(mostPerArm * question.designEffect))}))
            << '\n';
        return Refused;
    }
    out << filled(tr("%1 per arm: then %2 finds %3 against %4 with a chance of %5, and no less with a few more."),
                  {std::to_string(*size.perArm), testName(question), plot::shareText(question.rate1).toStdString(),
                   plot::shareText(question.rate2).toStdString(), chanceOf(*size.achieved)})
        << '\n'
        << spreadNote(question, *size.independentPerArm) << '\n';
    return Done;
}

int PowerCommand::run(const Surroundings&, std::ostream& out, std::ostream&) {
    const stats::SampleSizeQuestion asked = question();
    return perArm_ ? powerOfNumber(asked, out) : numberForPower(asked, out);
}

}  // namespace console
