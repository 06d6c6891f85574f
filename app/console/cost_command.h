// SPDX-License-Identifier: MIT
// strikebook-cli cost LOG --between METHOD METHOD: is the dearer one worth it?
#pragma once

#include <optional>
#include <vector>

#include "app/console/command.h"

namespace console {

class CostCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::vector<std::string> between_;
    std::optional<std::string> species_;
    std::optional<std::string> atDay_;
    std::optional<std::string> level_;
    bool isJson_{};
};

}  // namespace console
