// SPDX-License-Identifier: MIT
#include "tests/core/comparison_examples.h"

#include <gtest/gtest.h>

#include <iterator>

namespace examples {

using support::aBatch;

std::vector<core::BatchRecord> tubsAndTrays() {
    using namespace support;
    return {
        aBatch().at(tubNorth).stuck(24).looked(7, {3, 1}).looked(14, {6, 0, 1}).looked(21, {5, 2}),
        aBatch().at(tubSouth).stuck(20).looked(10, {4, 2}).looked(20, {7, 1}),
        aBatch().at(tubSouth).stuck(22).looked(14, {5}).looked(30, {6, 3}),
        aBatch().at(benchWest).stuck(24).looked(7, {6}).looked(14, {8, 1}).looked(28, {4, 1, 1}),
        aBatch().at(benchWest).stuck(18).looked(7, {2}).looked(21, {9, 1}),
        aBatch().at(benchEast).stuck(26).looked(14, {15, 2, 2}).looked(27, {3}).looked(35, {1, 1}),
    };
}

std::vector<core::BatchRecord> rootCuttingsOf1935() {
    using namespace support;
    const auto counts = [](core::TreatmentId planted, const char* length, int alive) {
        return aBatch().stuck(240).at({}).treated(planted).block(length).looked(28, {alive, 240 - alive});
    };
    return {counts(nothing, "long", 156), counts(nothing, "short", 107), counts(weakGel, "long", 84),
            counts(weakGel, "short", 31)};
}

std::vector<core::BatchRecord> batchesAt(core::StationId station, std::vector<int> rooted) {
    std::vector<core::BatchRecord> batches;
    for (const int count : rooted)
        batches.push_back(aBatch().at(station).stuck(20).looked(14, {count / 2}).looked(28, {count - count / 2}));
    return batches;
}

std::vector<core::BatchRecord> together(std::vector<std::vector<core::BatchRecord>> lists) {
    std::vector<core::BatchRecord> all;
    for (auto& list : lists) std::move(list.begin(), list.end(), std::back_inserter(all));
    return all;
}

core::Comparison compared(const std::vector<core::BatchRecord>& batches, core::ComparisonQuestion question,
                          const core::Shelves& shelves) {
    if (!question.horizonDay && !question.trial) question.horizonDay = 28;
    question.bootstrapReplicates = std::min(question.bootstrapReplicates, 100);
    question.permutations = std::min(question.permutations, 200);
    auto result = core::compare(question, shelves, batches);
    EXPECT_TRUE(result.has_value());
    return result.value_or(core::Comparison{});
}

}  // namespace examples
