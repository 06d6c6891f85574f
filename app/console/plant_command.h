// SPDX-License-Identifier: MIT
// strikebook-cli plant LOG --species NAME: what is printed of a plant beside what one's own records say, and which of the two plans go by.
#pragma once

#include <optional>

#include "app/console/command.h"
#include "core/planning/plant_facts.h"

namespace console {

class PlantCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    /// nullopt when there is no such plant; `err` says so.
    [[nodiscard]] std::optional<core::PlantFacts> ofLogbook(const Surroundings& surroundings, std::ostream& err) const;
    [[nodiscard]] std::optional<core::PlantFacts> ofTable(std::ostream& err) const;

    std::string file_;
    std::optional<std::string> species_;
    bool isJson_{};
};

}  // namespace console
