// SPDX-License-Identifier: MIT
// Turns what stands on the command line into values, or says which argument is wrong, what it is, and what is allowed. All of them throw
// WrongArgument, which the program answers with status 2.
#pragma once

#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>

#include "core/units/days.h"

namespace console {

class WrongArgument : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

/// Between 0 and 1, both left out.
[[nodiscard]] double levelFrom(const std::string& option, const std::string& text);
/// Points of 100 as a share: "10" is 0.1.
[[nodiscard]] double marginFrom(const std::string& option, const std::string& text);
/// From 0 to 1, both allowed.
[[nodiscard]] double shareFrom(const std::string& option, const std::string& text);
/// More than 0 and up to 100, as a share: "90" is 0.9.
[[nodiscard]] double percentFrom(const std::string& option, const std::string& text);
[[nodiscard]] std::int64_t wholeFrom(const std::string& option, const std::string& text, std::int64_t low,
                                     std::int64_t high);
[[nodiscard]] core::Date dateFrom(const std::string& option, const std::string& text);

}  // namespace console
