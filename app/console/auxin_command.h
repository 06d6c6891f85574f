// SPDX-License-Identifier: MIT
// strikebook-cli auxin QUESTION ...: stock to working strength, powder, talc, salt to acid, how much for so many cuttings, usual ranges.
#pragma once

#include "app/console/command.h"
#include "app/console/question_options.h"

namespace console {

class AuxinCommand : public Command {
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
