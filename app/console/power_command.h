// SPDX-License-Identifier: MIT
// strikebook-cli power --rates 0.5 0.75 --power 0.8: how many cuttings per arm, or how often a difference would be found.
#pragma once

#include <optional>
#include <vector>

#include "app/console/command.h"
#include "stats/planning/sample_size.h"

namespace console {

class PowerCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    [[nodiscard]] stats::SampleSizeQuestion question() const;
    int powerOfNumber(const stats::SampleSizeQuestion& question, std::ostream& out) const;
    int numberForPower(const stats::SampleSizeQuestion& question, std::ostream& out) const;

    std::vector<std::string> rates_;
    std::optional<std::string> perArm_, power_, test_, designEffect_, level_;
    bool isJson_{};
};

}  // namespace console
