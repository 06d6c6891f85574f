// SPDX-License-Identifier: MIT
// Takes a command line apart into a command's options. The one place that knows CLI11.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/console/options.h"

namespace console {

/// Fills the options' variables; else a sentence that names what is wrong.
[[nodiscard]] std::optional<std::string> readCommandLine(const Options& options, const std::vector<std::string>& words);

/// "rates ROOTED/STUCK... [--level L] [--json]"
[[nodiscard]] std::string usageOf(const std::string& command, const Options& options);
/// Each argument and option with its meaning, a line each.
[[nodiscard]] std::string meaningsOf(const Options& options);

}  // namespace console
