// SPDX-License-Identifier: MIT
// The faults of files that were to be brought in, as text and for machines.
#pragma once

#include <cstdint>
#include <ostream>
#include <vector>

#include "db/exchange/import_folder.h"

namespace console {

/// `more`: how many there are besides; -1 where nobody counted them.
void printFaults(const std::vector<db::ImportFault>& faults, std::int64_t more, bool isJson, std::ostream& out,
                 std::ostream& err);

}  // namespace console
