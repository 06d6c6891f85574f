// SPDX-License-Identifier: MIT
// What arms differ in, of a trial as of a comparison of records.
#pragma once

#include <optional>
#include <string_view>

namespace core {

enum class Factor { Method, Treatment, Medium, CuttingKind };

[[nodiscard]] std::string_view wordFor(Factor factor);  // "method", "treatment", "medium", "cutting"
[[nodiscard]] std::optional<Factor> factorFrom(std::string_view word);

}  // namespace core
