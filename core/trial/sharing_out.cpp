// SPDX-License-Identifier: MIT
#include "core/trial/sharing_out.h"

#include <algorithm>
#include <cstddef>

namespace core {

std::vector<int> Turns::shared(int cuttings, int set) {
    std::vector<int> shares(static_cast<std::size_t>(parts_));
    for (; cuttings > 0; cuttings -= set) shares[static_cast<std::size_t>(turn())] += std::min(set, cuttings);
    return shares;
}

int Turns::turn() {
    const int now = next_;
    next_ = (next_ + 1) % parts_;
    return now;
}

std::optional<std::vector<int>> PlacesLeft::shared(int cuttings, int set, const std::vector<int>& eligible,
                                                   std::size_t& next) {
    std::vector<int> shares(room_.size());
    while (cuttings > 0) {
        std::optional<int> place = nextWith(std::min(set, cuttings), eligible, next);
        if (!place) place = nextWith(1, eligible, next);
        if (!place) return {};
        int& room = room_[static_cast<std::size_t>(*place)];
        const int taken = std::min({set, cuttings, room});
        shares[static_cast<std::size_t>(*place)] += taken;
        room -= taken;
        cuttings -= taken;
    }
    return shares;
}

std::optional<int> PlacesLeft::nextWith(int wanted, const std::vector<int>& eligible, std::size_t& next) const {
    for (std::size_t tried = 0; tried < eligible.size(); ++tried) {
        const int place = eligible[(next + tried) % eligible.size()];
        if (room_[static_cast<std::size_t>(place)] < wanted) continue;
        next = (next + tried + 1) % eligible.size();
        return place;
    }
    return {};
}

}  // namespace core
