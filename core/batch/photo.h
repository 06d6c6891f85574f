// SPDX-License-Identifier: MIT
// A picture of a batch on a day. The picture itself is a JPEG or PNG, scaled down before it is kept.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

using ImageBytes = std::vector<std::uint8_t>;

inline constexpr std::size_t largestImage = 4'000'000;  // bytes

struct Photo {
    PhotoId id{};
    BatchId batch{};
    Date takenOn{};
    std::string caption{};

    bool operator==(const Photo&) const = default;
};

struct PhotoRecord {
    Photo photo;
    ImageBytes image;

    bool operator==(const PhotoRecord&) const = default;
};

}  // namespace core
