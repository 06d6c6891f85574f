// SPDX-License-Identifier: MIT
// What a page, a sheet and a command say of losses, worked out of a whole logbook. Takes long with many batches: a window asks for it away
// from its own thread, on copies.
#pragma once

#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/causes/losses.h"
#include "core/causes/out_of_the_ordinary.h"
#include "core/causes/suspects.h"
#include "core/comparison/condition_features.h"
#include "core/comparison/goes_with.h"
#include "core/comparison/turning_point.h"

namespace db {
class Logbook;
}

namespace report {

struct LossesRecords {
    core::Shelves shelves;
    std::vector<core::BatchRecord> batches;
    core::ConditionsOnRecord conditions;
};
[[nodiscard]] LossesRecords lossesRecordsOf(const db::Logbook& logbook);

/// Batches of one plant by one method, which a chart can show.
struct ChartChoice {
    core::PlantId plant{};
    core::MethodId method{};
    int batches{};

    bool operator==(const ChartChoice&) const = default;
};

struct LossesAnswer {
    core::LossQuestion question{};
    core::Losses losses{};
    std::vector<core::UnusualBatch> unusual{};  // rarest first
    std::vector<ChartChoice> charts{};          // of the question's plant and method, most batches first
    core::GoesWith goesWith{};                  // of batches stuck in the span
    int goesWithHorizon{};
};
[[nodiscard]] LossesAnswer lossesAnswerOf(const LossesRecords& records, const core::LossQuestion& question,
                                          const std::stop_token& stop = {});

struct BatchChart {
    core::StrikeChart chart{};
    std::optional<core::TurningPoint> turn{};  // absent with fewer than three batches with a known fate
};
/// Over all its time, whatever the span: what has turned is seen against what went before. The newest 200 batches.
[[nodiscard]] BatchChart chartOf(const LossesRecords& records, const ChartChoice& choice);

/// Everything that speaks for and against what may have harmed one batch. Absent where there is no such batch.
[[nodiscard]] std::optional<core::Suspects> suspectsOf(const db::Logbook& logbook, core::BatchId batch,
                                                       const std::stop_token& stop = {});

}  // namespace report
