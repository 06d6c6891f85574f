// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

/// What cuttings were lost to over a span of days, when and where, and which batches are out of the ordinary.
class LossesCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::optional<std::string> from_, until_, species_, method_;
    bool isJson_{};
};

}  // namespace console
