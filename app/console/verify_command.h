// SPDX-License-Identifier: MIT
// strikebook-cli verify LOG: looks through the whole file.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class VerifyCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    bool isJson_{};
};

}  // namespace console
