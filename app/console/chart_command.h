// SPDX-License-Identifier: MIT
// chart LOG: the batches of one plant by one method in order of sticking, with the limits between which luck alone keeps each, and where
// the newest lies against what those before it foretold.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class ChartCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> species_, method_, atDay_, falseAlarms_;
    bool isJson_{};
};

}  // namespace console
