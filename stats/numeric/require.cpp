// SPDX-License-Identifier: MIT
#include "stats/numeric/require.h"

#include <sstream>
#include <stdexcept>

namespace stats {

void throwDomainError(std::string_view function, std::string_view argument, double value, std::string_view allowed) {
    std::ostringstream words;
    words << function << ": " << argument << " is " << value << ", must be " << allowed;
    throw std::domain_error(words.str());
}

void requireCounts(std::string_view function, int successes, int trials) {
    if (trials < 0) throwDomainError(function, "trials", trials, "0 or more");
    if (successes < 0 || successes > trials) throwDomainError(function, "successes", successes, "from 0 to trials");
}

void requireLevel(std::string_view function, double level) {
    if (!(level > 0 && level < 1)) throwDomainError(function, "level", level, "between 0 and 1");
}

}  // namespace stats
