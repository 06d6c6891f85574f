// SPDX-License-Identifier: MIT
// Two logbooks with the same content have other ids. With plain ids, given by name and code, they are equal as values.
#pragma once

#include "core/records.h"

namespace support {

/// Every id is replaced by the place of the thing when sorted by what people know it by; lists are in that order, causes of loss as made.
[[nodiscard]] core::Records withPlainIds(core::Records records);

}  // namespace support
