// SPDX-License-Identifier: MIT
#include "core/climate/logger_format.h"

#include "core/field_faults.h"

namespace core {

Refusals faultsIn(const LoggerFormat& format, const std::vector<LoggerFormat>& formats) {
    constexpr int longestHeader = 10'000, longestMapping = 100'000;
    Refusals faults = faultsInName(format, formats);
    collect(faults, faultInLongText("Heading of the file", format.header, 0, longestHeader));
    collect(faults, faultInLongText("Columns of the file", format.mapping, 1, longestMapping));
    return faults;
}

}  // namespace core
