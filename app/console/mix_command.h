// SPDX-License-Identifier: MIT
// strikebook-cli mix QUESTION ...: nutrient for a volume, what a reading tells of a nutrient, elements, dilution and top-up, pH, medium.
#pragma once

#include "app/console/command.h"
#include "app/console/question_options.h"

namespace console {

class MixCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    std::string question_;
    QuestionOptions options_;
    bool isJson_{};
};

}  // namespace console
