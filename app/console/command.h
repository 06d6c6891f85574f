// SPDX-License-Identifier: MIT
// One thing that strikebook-cli does; one class and one file each. The same command serves people (text) and machines (--json) from the same
// value.
#pragma once

#include <ostream>
#include <string>

#include "app/console/options.h"
#include "app/console/surroundings.h"

namespace console {

/// What the program ends with.
enum Status : int { Done = 0, Refused = 1, WrongUse = 2 };

class Command {
  public:
    virtual ~Command() = default;

    [[nodiscard]] virtual std::string name() const = 0;
    [[nodiscard]] virtual std::string summary() const = 0;  // half a line
    virtual void declare(Options& options) = 0;
    /// After declare() and the reading of the command line. May throw db::LogbookError.
    virtual int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) = 0;
};

}  // namespace console
