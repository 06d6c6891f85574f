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
    /// By place, the last one; not needed.
    void optionalArgument(const std::string& name, const std::string& meaning, std::string& target) {
        arguments_.push_back({name, meaning, &target, nullptr, true});
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
    /// With one or more values behind it, up to the next option; or given several times. `value` reads as "X/N..." or "P1 P2".
    void listOption(const std::string& name, const std::string& value, const std::string& meaning,
                    std::vector<std::string>& targets, bool isNeeded = false) {
        options_.push_back({name, value, meaning, nullptr, nullptr, isNeeded, &targets});
    }
    void flag(const std::string& name, const std::string& meaning, bool& target) {
        options_.push_back({name, {}, meaning, nullptr, &target, false});
    }

    struct Argument {
        std::string name;
        std::string meaning;
        std::string* target{};
        std::vector<std::string>* targets{};  // the one or the other
        bool isOptional{};
    };
    struct Option {
        std::string name;   // "--level"
        std::string value;  // "L"; empty for a flag
        std::string meaning;
        std::optional<std::string>* target{};
        bool* isGiven{};
        bool isNeeded{};
        std::vector<std::string>* targets{};

        [[nodiscard]] bool takesValue() const { return target != nullptr || targets != nullptr; }
        [[nodiscard]] bool isMissing() const {
            return isNeeded && (targets != nullptr ? targets->empty() : !target->has_value());
        }
    };
    [[nodiscard]] const std::vector<Argument>& allArguments() const { return arguments_; }
    [[nodiscard]] const std::vector<Option>& allOptions() const { return options_; }

  private:
    std::vector<Argument> arguments_;
    std::vector<Option> options_;
};

}  // namespace console
