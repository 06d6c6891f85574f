// SPDX-License-Identifier: MIT
// Which cutting goes to which arm, by chance and yet evenly: the deal of a batch over methods, or of positions over
// treatments.
#pragma once

#include <span>
#include <vector>

#include "stats/numeric/seeded_random.h"

namespace stats {

/// Deals units to arms at random within blocks of the given sizes (one block for each station, tray row, ...).
///
/// Within each block the arms' counts differ by at most one, and so do they over all blocks together: which arms get
/// the units that are left over follows one order drawn by chance, going round from block to block.
///
/// Domain    arms >= 1, sizes >= 0; else std::domain_error.
/// Returns   for each unit, block after block, its arm in 0 .. arms - 1. The same seed gives the same deal.
/// Source    permuted blocks: Matts and Lachin (1988), Control. Clin. Trials 9, 327-344.
[[nodiscard]] std::vector<int> allocateWithinBlocks(std::span<const int> blockSizes, int arms, SeededRandom& random);

/// The same for `units` in a row cut into blocks of `blockSize`, the last one being whatever is left.
/// Domain    units >= 0, arms >= 1, blockSize >= 1; else std::domain_error. A block size that is no multiple of
///           `arms` is allowed.
[[nodiscard]] std::vector<int> allocateInBlocks(int units, int arms, int blockSize, SeededRandom& random);

}  // namespace stats
