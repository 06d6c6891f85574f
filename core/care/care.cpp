// SPDX-License-Identifier: MIT
#include "core/care/care.h"

namespace core {

std::string_view wordFor(CareKind kind) {
    constexpr std::array<std::string_view, allCareKinds.size()> words{
        "topped up", "solution changed", "vented", "misted", "sprayed", "pump on", "pump off", "other"};
    return words[static_cast<std::size_t>(kind)];
}

std::optional<CareKind> careKindFrom(std::string_view word) {
    for (const CareKind kind : allCareKinds)
        if (wordFor(kind) == word) return kind;
    return {};
}

}  // namespace core
