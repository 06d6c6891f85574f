// SPDX-License-Identifier: MIT
#include "stats/planning/random_allocation.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

#include "stats/numeric/require.h"

namespace stats {

std::vector<int> allocateWithinBlocks(std::span<const int> blockSizes, int arms, SeededRandom& random) {
    if (arms < 1) throwDomainError("allocateWithinBlocks", "arms", arms, "1 or more");
    for (const int size : blockSizes) {
        if (size < 0) throwDomainError("allocateWithinBlocks", "block size", size, "0 or more");
    }
    // One round of the arms, drawn once: whoever is left over in a block goes to the next ones of this round, so that
    // no arm is a second time before all the others have been.
    std::vector<int> round(static_cast<std::size_t>(arms));
    std::iota(round.begin(), round.end(), 0);
    random.shuffle(std::span<int>(round));
    std::size_t nextLeftOver = 0;

    std::vector<int> allocation;
    for (const int size : blockSizes) {
        const std::size_t start = allocation.size();
        for (int unit = 0; unit < size - size % arms; ++unit) allocation.push_back(unit % arms);
        for (int unit = 0; unit < size % arms; ++unit) {
            allocation.push_back(round[nextLeftOver]);
            nextLeftOver = (nextLeftOver + 1) % round.size();
        }
        random.shuffle(std::span<int>(allocation).subspan(start));
    }
    return allocation;
}

std::vector<int> allocateInBlocks(int units, int arms, int blockSize, SeededRandom& random) {
    if (units < 0) throwDomainError("allocateInBlocks", "units", units, "0 or more");
    if (blockSize < 1) throwDomainError("allocateInBlocks", "blockSize", blockSize, "1 or more");
    std::vector<int> sizes(static_cast<std::size_t>(units / blockSize), blockSize);
    if (units % blockSize > 0) sizes.push_back(units % blockSize);
    return allocateWithinBlocks(sizes, arms, random);
}

}  // namespace stats
