// SPDX-License-Identifier: MIT
// strikebook-cli climate QUESTION ...: vapour pressure deficit and dew point, light of a day, oxygen in water, EC at 25 C, degree-days; and
// strikebook-cli climate LOG --station NAME: what was read at a station over a span.
#pragma once

#include "app/console/command.h"
#include "app/console/question_options.h"

namespace console {

class ClimateCommand : public Command {
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
