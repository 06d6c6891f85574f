// SPDX-License-Identifier: MIT
// strikebook-cli history LOG: what was done, and taking it back.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class HistoryCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    bool isUndo_{};
    bool isRedo_{};
    std::optional<std::string> newest_;
    bool isJson_{};
};

}  // namespace console
