// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

/// What may have gone wrong with one batch: suspects from the records, each with what speaks for it and against it.
class SuspectsCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> code_;
    bool isJson_{};
};

}  // namespace console
