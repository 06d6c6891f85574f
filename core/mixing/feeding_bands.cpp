// SPDX-License-Identifier: MIT
#include "core/mixing/feeding_bands.h"

#include <array>

#include "core/working.h"

namespace core {

namespace {

constexpr std::array feedingStages = std::to_array<FeedingBand>({
    {"cuttings before roots", 0.0, 0.5, commonPractice},
    {"cuttings once rooted", 0.5, 1.0, commonPractice},
    {"leafy greens and herbs", 1.0, 1.5, commonPractice},
    {"fruiting plants", 2.0, 2.5, commonPractice},
});

}  // namespace

std::span<const FeedingBand> feedingBands() {
    return feedingStages;
}

std::vector<FeedingBand> feedingBandsAt(double ec) {
    std::vector<FeedingBand> holding;
    for (const FeedingBand& band : feedingStages)
        if (ec >= band.low && ec <= band.high) holding.push_back(band);
    return holding;
}

}  // namespace core
