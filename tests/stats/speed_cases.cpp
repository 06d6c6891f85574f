// SPDX-License-Identifier: MIT
#include "tests/stats/speed_cases.h"

namespace {
constexpr double never = std::numeric_limits<double>::infinity();
}

SpeedBatches quickBatches() {
    return {{{0, 7, 1, 1}, {7, 10, 1, 7}, {10, 14, 1, 5}, {17, 21, 1, 2}, {28, never, 0, 5}},
            {{0, 6, 1, 1}, {6, 9, 1, 8}, {9, 12, 1, 5}, {12, 15, 1, 3}, {15, 18, 1, 1}, {24, never, 0, 2}},
            {{0, 7, 1, 2}, {7, 11, 1, 11}, {11, 14, 1, 2}, {14, 18, 1, 1}, {18, 21, 1, 1}, {28, never, 0, 3}},
            {{0, 8, 1, 3}, {8, 10, 1, 3}, {10, 13, 1, 5}, {13, 16, 1, 5}, {16, 20, 1, 2}, {20, 26, 1, 2}},
            {{5, 10, 1, 5}, {10, 15, 1, 6}, {15, 20, 1, 3}, {20, 25, 1, 1}, {30, never, 0, 5}}};
}

SpeedBatches slowBatches() {
    return {{{0, 7, 1, 1},
             {7, 10, 1, 1},
             {10, 14, 1, 2},
             {14, 17, 1, 4},
             {17, 21, 1, 1},
             {21, 28, 1, 5},
             {28, never, 0, 6}},
            {{9, 12, 1, 3}, {12, 15, 1, 3}, {15, 18, 1, 3}, {18, 24, 1, 4}, {24, never, 0, 7}},
            {{7, 11, 1, 5}, {11, 14, 1, 3}, {14, 18, 1, 3}, {18, 21, 1, 1}, {21, 25, 1, 1}, {28, never, 0, 7}},
            {{0, 8, 1, 1}, {10, 13, 1, 2}, {13, 16, 1, 4}, {16, 20, 1, 1}, {20, 26, 1, 4}, {26, never, 0, 8}},
            {{5, 10, 1, 3}, {10, 15, 1, 8}, {15, 20, 1, 2}, {20, 25, 1, 1}, {30, never, 0, 6}}};
}

SpeedBatches withDaysTimes(SpeedBatches batches, double factor) {
    for (auto& batch : batches) {
        for (stats::Observation& row : batch) {
            row.after *= factor;
            row.by *= factor;
        }
    }
    return batches;
}
