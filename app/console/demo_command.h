// SPDX-License-Identifier: MIT
// strikebook-cli demo LOG: a new logbook with invented records.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class DemoCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> batches_;
    std::optional<std::string> seed_;
    std::optional<std::string> on_;
    bool isJson_{};
};

}  // namespace console
