// SPDX-License-Identifier: MIT
// strikebook-cli as a function: finds the command, reads its options, runs it. Tests call this; main() only asks the system for the words
// and the time.
#pragma once

#include <ostream>
#include <string>
#include <vector>

#include "app/console/command.h"

namespace console {

/// `words` without the program's name. Returns the exit status.
int runConsole(const std::vector<std::string>& words, const Surroundings& surroundings, std::ostream& out,
               std::ostream& err);

}  // namespace console
