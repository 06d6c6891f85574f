// SPDX-License-Identifier: MIT
// strikebook-cli due LOG: which batches want a look.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class DueCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> on_;
    std::optional<std::string> ics_;
    bool isJson_{};
};

}  // namespace console
