// SPDX-License-Identifier: MIT
// How the columns of a logger's files are to be read, remembered so that they are matched only once.
#pragma once

#include <string>
#include <vector>

#include "core/id.h"
#include "core/result.h"

namespace core {

struct LoggerFormat {
    LoggerFormatId id{};
    std::string name{};
    std::string header{};  // the line of such a file that names its columns, in the one form that it is compared in
    std::string
        mapping{};  // which column is what, as the program's import writes and reads it; nobody else looks into it

    bool operator==(const LoggerFormat&) const = default;
};

/// `formats` are those of the logbook; it may be among them under its id.
[[nodiscard]] Refusals faultsIn(const LoggerFormat& format, const std::vector<LoggerFormat>& formats);

}  // namespace core
