// SPDX-License-Identifier: MIT
#include "app/console/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "app/console/words.h"

namespace console {

namespace {

const Options::Option* optionNamed(const Options& options, const std::string& word) {
    const std::string name = word.substr(0, word.find('='));
    const auto found = std::ranges::find(options.allOptions(), name, &Options::Option::name);
    return found == options.allOptions().end() ? nullptr : &*found;
}

bool isOptionLike(const std::string& word) {
    return word.starts_with("--") && word.size() > 2;
}

/// A list's values, each as one word with its option, from the word behind the option on. The last word that was taken.
std::size_t joinList(const Options::Option& option, const std::vector<std::string>& words, std::size_t at,
                     std::vector<std::string>& joined) {
    if (at + 1 == words.size() || isOptionLike(words[at + 1])) joined.push_back(option.name);
    for (; at + 1 < words.size() && !isOptionLike(words[at + 1]); ++at) {
        if (words[at + 1].empty())
            joined.insert(joined.end(), {option.name, ""});
        else
            joined.push_back(option.name + "=" + words[at + 1]);
    }
    return at;
}

/// An option and its value as one word, so that a value that begins with a minus sign isn't taken for an option. But an empty
/// value stays a word of its own: with nothing behind its sign of equality, an option would take the next word.
std::vector<std::string> withValuesJoined(const Options& options, const std::vector<std::string>& words) {
    std::vector<std::string> joined;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Options::Option* option = optionNamed(options, words[i]);
        if (option != nullptr && option->targets != nullptr && words[i] == option->name) {
            i = joinList(*option, words, i, joined);
            continue;
        }
        const bool takesNext =
            option != nullptr && option->target != nullptr && words[i] == option->name && i + 1 < words.size();
        if (option != nullptr && option->target != nullptr && words[i] == option->name + "=") {
            joined.insert(joined.end(), {option->name, ""});
        } else if (takesNext && !words[i + 1].empty()) {
            joined.push_back(words[i] + "=" + words[i + 1]);
            ++i;
        } else {
            joined.push_back(words[i]);
            if (takesNext) joined.push_back(words[++i]);
        }
    }
    return joined;
}

void declareTo(CLI::App& app, const Options& options) {
    app.set_help_flag();
    for (const Options::Argument& argument : options.allArguments()) {
        if (argument.target != nullptr)
            app.add_option(argument.name, *argument.target)->required(!argument.isOptional);
        else
            app.add_option(argument.name, *argument.targets)->required();
    }
    for (const Options::Option& option : options.allOptions()) {
        if (option.target != nullptr)
            app.add_option(option.name, *option.target);
        else if (option.targets != nullptr)
            app.add_option(option.name, *option.targets)->allow_extra_args(false);
        else
            app.add_flag(option.name, *option.isGiven);
    }
}

std::string namesOf(const std::vector<Options::Option>& options) {
    std::string names;
    for (const Options::Option& option : options) names += (names.empty() ? "" : ", ") + option.name;
    return names;
}

std::string needsValueText(const Options::Option& option) {
    return filled(tr("%1 needs a value behind it: %1 %2."), {option.name, option.value});
}

/// A list without values, for which the parser would take what comes next.
std::optional<std::string> complaintAboutLists(const Options& options, const std::vector<std::string>& words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Options::Option* option = optionNamed(options, words[i]);
        if (option == nullptr || option->targets == nullptr || words[i] != option->name) continue;
        if (i + 1 == words.size() || !words[i + 1].empty()) return needsValueText(*option);
    }
    return {};
}

/// The parser has said no; this finds out what it stumbled over, in our words.
std::string complaintAbout(const Options& options, const std::vector<std::string>& words) {
    std::size_t byPlace = 0;
    const bool takesMore = !options.allArguments().empty() && options.allArguments().back().targets != nullptr;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        const Options::Option* option = optionNamed(options, word);
        if (option != nullptr && option->takesValue() && word == option->name && ++i == words.size())
            return needsValueText(*option);
        if (option != nullptr) continue;
        if (word.starts_with("-") && word.size() > 1)
            return options.allOptions().empty()
                       ? filled(tr("\"%1\" is not known here."), {word})
                       : filled(tr("\"%1\" is not known here; known are %2."), {word, namesOf(options.allOptions())});
        if (++byPlace > options.allArguments().size() && !takesMore)
            return filled(tr("\"%1\" is one argument too many."), {word});
    }
    if (byPlace < options.allArguments().size() && !options.allArguments()[byPlace].isOptional)
        return filled(tr("%1 is missing."), {options.allArguments()[byPlace].name});
    return tr("An option is given twice.");
}

}  // namespace

std::optional<std::string> readCommandLine(const Options& options, const std::vector<std::string>& words) {
    const std::vector<std::string> joined = withValuesJoined(options, words);
    if (auto complaint = complaintAboutLists(options, joined)) return complaint;
    CLI::App app;
    declareTo(app, options);
    try {
        app.parse(std::vector<std::string>(joined.rbegin(), joined.rend()));  // CLI11 takes them from the back
    } catch (const CLI::ParseError&) {
        return complaintAbout(options, joined);
    }
    for (const Options::Option& option : options.allOptions())
        if (option.isMissing()) return filled(tr("%1 %2 is missing."), {option.name, option.value});
    return {};
}

std::string usageOf(const std::string& command, const Options& options) {
    std::string usage = command;
    for (const Options::Argument& argument : options.allArguments())
        usage += (argument.isOptional ? " [" : " ") + argument.name + (argument.targets != nullptr ? "..." : "") +
                 (argument.isOptional ? "]" : "");
    for (const Options::Option& option : options.allOptions())
        usage += (option.isNeeded ? " " : " [") + option.name + (option.value.empty() ? "" : " " + option.value) +
                 (option.isNeeded ? "" : "]");
    return usage;
}

std::string meaningsOf(const Options& options) {
    std::vector<std::pair<std::string, std::string>> lines;
    for (const Options::Argument& argument : options.allArguments())
        lines.emplace_back(argument.name, argument.meaning);
    for (const Options::Option& option : options.allOptions())
        lines.emplace_back(option.name + (option.value.empty() ? "" : " " + option.value), option.meaning);
    std::size_t widest = 0;
    for (const auto& [name, meaning] : lines) widest = std::max(widest, name.size());
    std::string text;
    for (const auto& [name, meaning] : lines)
        text += "  " + name + std::string(widest - name.size() + 2, ' ') + meaning + "\n";
    return text;
}

}  // namespace console
