// SPDX-License-Identifier: MIT
// A plant or a method by what a person calls it on the command line.
#pragma once

#include <ostream>
#include <string>

#include "core/records.h"

namespace console {

/// By the whole name, or by the botanical or common one where only one plant has it. nullptr when there is none or several: `err` then says
/// so, naming the logbook's `file`.
[[nodiscard]] const core::Plant* plantCalled(const std::string& name, const core::Shelves& shelves,
                                             const std::string& file, std::ostream& err);

/// By its name. nullptr when there is none: `err` then says so.
[[nodiscard]] const core::Method* methodCalled(const std::string& name, const core::Shelves& shelves,
                                               const std::string& file, std::ostream& err);

}  // namespace console
