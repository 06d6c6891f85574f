// SPDX-License-Identifier: MIT
// What a command asks of its command line: arguments by their place and options by their name, each bound to a variable of the command. All
// come as text; a command turns them into numbers itself, so that it can say what would be right. Knows no parser.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace console {

class Options {
  public:
    /// Needed, by place.
    void argument(const std::string& name, const std::string& meaning, std::string& target) {
        arguments_.push_back({name, meaning, &target, nullptr});
    }
    /// One or more, after all other arguments.
    void arguments(const std::string& name, const std::string& meaning, std::vector<std::string>& targets) {
        arguments_.push_back({name, meaning, nullptr, &targets});
    }
    void option(const std::string& name, const std::string& value, const std::string& meaning,
                std::optional<std::string>& target) {
        options_.push_back({name, value, meaning, &target, nullptr, false});
    }
    /// The command can't do without.
    void neededOption(const std::string& name, const std::string& value, const std::string& meaning,
                      std::optional<std::string>& target) {
        options_.push_back({name, value, meaning, &target, nullptr, true});
    }
    void flag(const std::string& name, const std::string& meaning, bool& target) {
        options_.push_back({name, {}, meaning, nullptr, &target, false});
    }

    struct Argument {
        std::string name;
        std::string meaning;
        std::string* target{};
        std::vector<std::string>* targets{};  // the one or the other
    };
    struct Option {
        std::string name;   // "--level"
        std::string value;  // "L"; empty for a flag
        std::string meaning;
        std::optional<std::string>* target{};
        bool* isGiven{};
        bool isNeeded{};
    };
    [[nodiscard]] const std::vector<Argument>& allArguments() const { return arguments_; }
    [[nodiscard]] const std::vector<Option>& allOptions() const { return options_; }

  private:
    std::vector<Argument> arguments_;
    std::vector<Option> options_;
};

}  // namespace console
