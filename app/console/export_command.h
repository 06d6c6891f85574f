// SPDX-License-Identifier: MIT
// strikebook-cli export LOG FOLDER: the whole logbook as plain tables.
#pragma once

#include <optional>

#include "app/console/command.h"

namespace console {

class ExportCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::string folder_;
    bool isJson_{};
};

}  // namespace console
