// SPDX-License-Identifier: MIT
// strikebook-cli compare LOG --by method: arms head to head.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class CompareCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> by_;
    std::optional<std::string> species_;
    std::optional<std::string> atDay_;
    std::optional<std::string> level_;
    std::optional<std::string> interval_;
    std::optional<std::string> margin_;
    bool isJson_{};
};

}  // namespace console
