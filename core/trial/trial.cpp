// SPDX-License-Identifier: MIT
#include "core/trial/trial.h"

#include <array>

namespace core {

namespace {

constexpr std::array allBlocks{BlockedBy::Nothing, BlockedBy::Plant, BlockedBy::StockPlant, BlockedBy::Session,
                               BlockedBy::StationSide};
constexpr std::array allTrialMeasures{TrialMeasure::MoreRooted, TrialMeasure::AsGoodAs};

}  // namespace

std::string_view wordFor(BlockedBy blocks) {
    switch (blocks) {
        case BlockedBy::Nothing:
            return "nothing";
        case BlockedBy::Plant:
            return "plant";
        case BlockedBy::StockPlant:
            return "stock plant";
        case BlockedBy::Session:
            return "session";
        case BlockedBy::StationSide:
            return "station side";
    }
    return "";
}

std::optional<BlockedBy> blockedByFrom(std::string_view word) {
    for (const BlockedBy blocks : allBlocks)
        if (wordFor(blocks) == word) return blocks;
    return {};
}

std::string_view wordFor(TrialMeasure measure) {
    switch (measure) {
        case TrialMeasure::MoreRooted:
            return "more rooted";
        case TrialMeasure::AsGoodAs:
            return "as good as";
    }
    return "";
}

std::optional<TrialMeasure> trialMeasureFrom(std::string_view word) {
    for (const TrialMeasure measure : allTrialMeasures)
        if (wordFor(measure) == word) return measure;
    return {};
}

}  // namespace core
