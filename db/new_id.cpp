// SPDX-License-Identifier: MIT
#include "db/new_id.h"

#include <random>

namespace db {

std::int64_t drawId() {
    std::random_device device;
    std::int64_t id = 0;
    while (id == 0) id = static_cast<std::int64_t>(((std::uint64_t{device()} << 32) | device()) >> 1);
    return id;
}

}  // namespace db
