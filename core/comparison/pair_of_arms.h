// SPDX-License-Identifier: MIT
// Two arms against each other: every figure of core::Pair, and the verdict.
#pragma once

#include <cstdint>
#include <optional>
#include <stop_token>
#include <string>
#include <unordered_map>

#include "core/comparison/arm_records.h"

namespace core {

struct PairSettings {
    Factor factor{};
    int horizonDay{};
    double level{};
    int permutations{};
    int allocationsDrawn{100'000};  // of whole batches to arms, where they are too many to enumerate
    int exactTrials{};              // Boschloo and Barnard up to so many cuttings in both arms together
    std::uint64_t seed{};
    std::optional<double> margin{};  // "as good as, within"
    double likelyDesignEffect{1};    // the same where no like batches are on record: then as is usual
    double designEffect{1};          // for how many more cuttings would settle it
    const std::unordered_map<PlantId, std::string>* plantNames{};
};

/// Everything but the verdict and the words. A stop request ends it early with what is computed so far.
[[nodiscard]] Pair pairOf(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings,
                          const std::stop_token& stop = {});

/// The verdict and the words, once it is known how many pairs were looked at and the tests are adjusted for them (several_arms.h).
void conclude(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings, Pair& pair);

}  // namespace core
