// SPDX-License-Identifier: MIT
#include "app/console/question_options.h"

#include <algorithm>
#include <string_view>

#include "app/console/arguments.h"
#include "app/console/words.h"
#include "core/units/display_units.h"
#include "core/units/number_entry.h"

namespace console {

namespace {

[[noreturn]] void refuseUnit(const std::string& option, const std::string& text, const std::string& allowed) {
    throw WrongArgument(
        filled(tr("%1 is %2; a number with the unit %3 is allowed, or without one."), {option, shown(text), allowed}));
}

}  // namespace

void QuestionOptions::declare(Options& options, std::span<const QuestionOption> all) {
    for (const QuestionOption& option : all) {
        if (option.isList)
            options.listOption(option.name, option.value, tr(option.meaning), lists_[option.name]);
        else
            options.option(option.name, option.value, tr(option.meaning), values_[option.name]);
    }
}

void QuestionOptions::restrictTo(const std::string& question, std::span<const char* const> taken) const {
    const auto isTaken = [&](const std::string& name) {
        return std::ranges::any_of(taken, [&](const char* one) { return name == one; });
    };
    const auto refuse = [&](const std::string& name) {
        std::string all;
        for (const char* one : taken) all += (all.empty() ? "" : ", ") + std::string(one);
        throw WrongArgument(filled(tr("%1 doesn't belong to %2, which takes %3."),
                                   {name, question, all.empty() ? tr("none of them") : all}));
    };
    for (const auto& [name, value] : values_)
        if (value && !isTaken(name)) refuse(name);
    for (const auto& [name, values] : lists_)
        if (!values.empty() && !isTaken(name)) refuse(name);
}

const std::string& QuestionOptions::needed(const std::string& name) const {
    if (const std::optional<std::string>& value = values_.at(name)) return *value;
    throw WrongArgument(filled(tr("%1 is missing."), {name}));
}

const std::vector<std::string>& QuestionOptions::neededList(const std::string& name) const {
    if (const std::vector<std::string>& values = lists_.at(name); !values.empty()) return values;
    throw WrongArgument(filled(tr("%1 is missing."), {name}));
}

double QuestionOptions::number(const std::string& name) const {
    return numberFrom(name, needed(name));
}

double QuestionOptions::numberOr(const std::string& name, double otherwise) const {
    const auto value = values_.find(name);
    return value != values_.end() && value->second ? number(name) : otherwise;
}

double QuestionOptions::litres(const std::string& name) const {
    const auto [figure, unit] = figureAndUnitFrom(name, needed(name));
    if (unit.empty()) return figure;
    if (const std::optional<core::VolumeUnit> volume = core::volumeUnitFrom(unit))
        return core::storedVolume(figure, *volume);
    refuseUnit(name, needed(name), "L, gal");
}

double QuestionOptions::ec(const std::string& name) const {
    const auto [figure, unit] = figureAndUnitFrom(name, needed(name));
    if (unit.empty()) return figure;
    if (const std::optional<core::EcUnit> ec = core::ecUnitFrom(unit))
        return core::storedValue(figure, core::Quantity::SolutionEc, {.ec = *ec});
    refuseUnit(name, needed(name), "mS/cm, uS/cm, ppm500, ppm640, ppm700");
}

double QuestionOptions::celsius(const std::string& name) const {
    const auto [figure, unit] = figureAndUnitFrom(name, needed(name));
    if (unit.empty()) return figure;
    if (const std::optional<core::TemperatureUnit> temperature = core::temperatureUnitFrom(unit))
        return core::storedValue(figure, core::Quantity::AirTemperature, {.temperature = *temperature});
    refuseUnit(name, needed(name), "C, F");
}

int QuestionOptions::whole(const std::string& name, int low, int high) const {
    return static_cast<int>(wholeFrom(name, needed(name), low, high));
}

void answerQuestion(const std::string& command, const std::string& word, std::span<const Question> questions,
                    const QuestionOptions& options, const AnswerWriter& writer) {
    std::string words;
    for (const Question& question : questions) {
        words += (words.empty() ? "" : ", ") + std::string(question.word);
        if (word != question.word) continue;
        options.restrictTo(command + ' ' + word, question.taken);
        question.answer(options, writer);
        return;
    }
    throw WrongArgument(filled(tr("There is no question %1; known are %2."), {shown(word), words}));
}

double numberFrom(const std::string& option, const std::string& text) {
    if (const std::optional<double> number = core::numberFrom(text)) return *number;
    throw WrongArgument(filled(tr("%1 is %2; a number is allowed, such as 1.2."), {option, shown(text)}));
}

FigureAndUnit figureAndUnitFrom(const std::string& option, const std::string& text) {
    constexpr std::string_view beginsUnit = "%abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    const std::size_t at = std::min(text.find_first_of(beginsUnit), text.size());
    std::string unit = text.substr(at);
    unit.erase(unit.find_last_not_of(' ') + 1);
    if (const std::optional<double> figure = core::numberFrom(text.substr(0, at)))
        return {.figure = *figure, .unit = unit};
    throw WrongArgument(filled(tr("%1 is %2; a number is allowed, such as 1.2."), {option, shown(text)}));
}

std::pair<std::string, std::string> pairFrom(const std::string& option, const std::string& text) {
    const std::size_t sign = text.find('=');
    if (sign != std::string::npos && sign > 0) return {text.substr(0, sign), text.substr(sign + 1)};
    throw WrongArgument(filled(tr("%1 is %2; a name, a sign of equality and a figure are allowed, such as A=1.2."),
                               {option, shown(text)}));
}

void throwRefusals(const core::Refusals& refusals) {
    std::string lines = linesOf(refusals);
    if (!lines.empty()) lines.pop_back();  // the last line's end
    throw WrongArgument(lines);
}

}  // namespace console
