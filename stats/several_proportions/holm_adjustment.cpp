// SPDX-License-Identifier: MIT
#include "stats/several_proportions/holm_adjustment.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

#include "stats/numeric/require.h"

namespace stats {

std::vector<double> holmAdjustment(std::span<const double> p) {
    for (const double each : p) {
        if (!(each >= 0 && each <= 1)) throwDomainError("holmAdjustment", "p", each, "from 0 to 1");
    }
    std::vector<std::size_t> order(p.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [p](std::size_t a, std::size_t b) { return p[a] < p[b]; });
    std::vector<double> adjusted(p.size());
    double least = 0;
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        least = std::max(least, std::min(1.0, p[order[rank]] * static_cast<double>(p.size() - rank)));
        adjusted[order[rank]] = least;
    }
    return adjusted;
}

}  // namespace stats
