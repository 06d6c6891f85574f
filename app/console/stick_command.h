// SPDX-License-Identifier: MIT
// strikebook-cli stick --need 24 --assurance 0.9 --past 18/24: how many to stick, and when.
#pragma once

#include <optional>
#include <vector>

#include "app/console/command.h"
#include "app/console/stick_answer.h"

namespace console {

class StickCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    [[nodiscard]] core::HowManyQuestion question() const;
    [[nodiscard]] std::optional<core::WhenQuestion> dayQuestion() const;
    void requireOneBasis() const;
    [[nodiscard]] StickAnswer fromRate(const core::HowManyQuestion& question) const;
    [[nodiscard]] StickAnswer fromCounts(const core::HowManyQuestion& question) const;
    /// nullopt when the plant or method isn't there; `err` says so.
    [[nodiscard]] std::optional<StickAnswer> fromLogbook(core::HowManyQuestion question,
                                                         const Surroundings& surroundings, std::ostream& err) const;
    [[nodiscard]] std::optional<StickAnswer> fromReference(core::HowManyQuestion question,
                                                           const Surroundings& surroundings, std::ostream& err) const;
    [[nodiscard]] StickAnswer fromShelves(core::HowManyQuestion question, const core::Plant& plant,
                                          core::MethodId method, const core::Shelves& shelves,
                                          std::span<const core::BatchRecord> batches, core::Date today) const;

    std::optional<std::string> need_, assurance_, rate_, log_, species_, method_;
    std::vector<std::string> past_;
    std::optional<std::string> pottedLive_, tray_, by_, hardening_, potting_, ics_;
    bool isJson_{};
};

}  // namespace console
