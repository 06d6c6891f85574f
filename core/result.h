// SPDX-License-Identifier: MIT
// Either a value or every reason why there is none. A caller can't overlook it: the class is [[nodiscard]].
#pragma once

#include <tl/expected.hpp>
#include <utility>
#include <vector>

#include "core/refusal.h"

namespace core {

using Refusals = std::vector<Refusal>;

template <class T>
class [[nodiscard]] Result : public tl::expected<T, Refusals> {
  public:
    using tl::expected<T, Refusals>::expected;
};

[[nodiscard]] inline tl::unexpected<Refusals> refused(Refusals reasons) {
    return tl::unexpected<Refusals>(std::move(reasons));
}

}  // namespace core
