// SPDX-License-Identifier: MIT
// strikebook-cli print LOG --batch CODE --to FILE.pdf: the batch summary on one page.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class PrintCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> code_;
    std::optional<std::string> to_;
    std::optional<std::string> paper_;
    bool isJson_{};
};

}  // namespace console
