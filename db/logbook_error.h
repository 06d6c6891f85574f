// SPDX-License-Identifier: MIT
// The world failed: a file is missing, damaged, locked, of another program, of a newer version; the disk is full. `what()` is one plain
// sentence that a grower understands and says what to do. Caught in two places: the desktop's action runner, the console's main.
#pragma once

#include <stdexcept>

namespace db {

class LogbookError : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

}  // namespace db
