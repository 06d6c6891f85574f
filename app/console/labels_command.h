// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "app/console/command.h"

namespace console {

class LabelsCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    [[nodiscard]] int calibrate(const Surroundings& surroundings, std::ostream& out) const;

    std::string file_;
    std::optional<std::string> session_;
    std::optional<std::string> to_;
    std::optional<std::string> sheet_;
    std::optional<std::string> start_;
    std::optional<std::string> offset_;
    bool isCalibration_{};
    bool isJson_{};
};

}  // namespace console
