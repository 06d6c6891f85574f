// SPDX-License-Identifier: MIT
// Cuttings by hole or cell: which positions a batch has, what stands in each now, and what both must obey. The counts of a check lead;
// findings say of some or all of them where they were.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/batch/batch.h"
#include "core/batch/check.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

/// What is known of one position of a batch; no finding: nobody has decided yet.
struct PositionState {
    Position position{};
    std::optional<Finding> finding{};
    Date foundOn{};  // of the finding

    bool operator==(const PositionState&) const = default;
};

/// Row by row; empty when the batch has no positions. With `untilDay`, as it was at the end of that day.
[[nodiscard]] std::vector<PositionState> positionStates(const BatchRecord& record, std::optional<Date> untilDay = {});

/// A position that can't be given away, and the batch whose cutting stands there.
struct HeldPosition {
    Position position{};
    std::string code{};
};

/// Those of an open batch whose cutting is undecided, or rooted and not yet potted on; none of a closed one.
[[nodiscard]] std::vector<HeldPosition> heldPositions(const BatchRecord& record);

/// The first `count` positions of the station, row by row, that nobody holds; fewer when it has fewer.
[[nodiscard]] std::vector<Position> freePositions(const Station& station, std::span<const HeldPosition> held,
                                                  int count);

/// Every fault of where a batch stands: readable, as many as stuck, on its station's layout, none missing that a check of its own names;
/// of an open batch also: none blocked, and none where its cutting still stands held by another batch (`held` are the others').
[[nodiscard]] Refusals faultsInPositions(const Batch& batch, std::span<const Check> checks, const Shelves& shelves,
                                         std::span<const HeldPosition> held);
/// Why a station can't have this layout: batches that are recorded there (`batches` are all of them) would be outside of it, or stand on
/// a blocked position.
[[nodiscard]] Refusals faultsInLayout(const Station& station, std::span<const BatchRecord> batches);
/// Every fault of a check's findings: positions of the batch, each found once in all checks, no more than the check's counts.
[[nodiscard]] Refusals faultsInFindings(const Check& check, const Batch& batch, std::span<const Check> others);

}  // namespace core
