// SPDX-License-Identifier: MIT
// Two limits of an interval. What is between them, and with what guarantee, says the function that returns it.
#pragma once

namespace stats {

struct Interval {
    double low{};
    double high{};
};

}  // namespace stats
