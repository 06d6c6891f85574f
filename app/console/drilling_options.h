// SPDX-License-Identifier: MIT
// The lid to drill as it stands on the command line: --lid 600x400 --hole 44 --web 6 --edge 20, in millimetres.
#pragma once

#include <optional>
#include <string>

#include "app/console/options.h"
#include "app/report/drilling_template.h"

namespace console {

class DrillingOptions {
  public:
    void declare(Options& options);
    [[nodiscard]] bool isWanted() const { return isWanted_; }
    /// Throws WrongArgument when one is missing, can't be read or makes no lid that can be drilled, and when there are some without --template.
    [[nodiscard]] std::optional<report::DrillingTemplate> read() const;

  private:
    [[nodiscard]] core::Lid lid() const;

    bool isWanted_{};
    std::optional<std::string> lid_;
    std::optional<std::string> hole_;
    std::optional<std::string> web_;
    std::optional<std::string> edge_;
    bool isStaggered_{};
    bool isSquare_{};
};

}  // namespace console
