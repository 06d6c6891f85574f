// SPDX-License-Identifier: MIT
// strikebook-cli rates 18/24 11/24 ...: compares plain counts, no logbook needed.
#pragma once

#include <vector>

#include "app/console/command.h"

namespace console {

class RatesCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::vector<std::string> arms_;
    std::optional<std::string> level_;
    bool isJson_{};
};

}  // namespace console
