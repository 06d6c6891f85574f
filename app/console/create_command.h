// SPDX-License-Identifier: MIT
// strikebook-cli create LOG: a new, empty logbook.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class CreateCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> title_;
    std::optional<std::string> grower_;
    bool isJson_{};
};

}  // namespace console
