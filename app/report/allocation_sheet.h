// SPDX-License-Identifier: MIT
// Which cutting goes to which arm, in the order in which they are cut: to take along to the bench, to tick off, to keep
// with its seed.
#pragma once

#include <QDateTime>
#include <QString>
#include <QStringList>
#include <cstdint>

#include "app/report/sheet.h"
#include "core/records.h"
#include "core/trial/allocation.h"

namespace report {

struct AllocationPlan {
    QString trial;  // may be empty
    QString plant;
    core::Date stuckOn{};
    QStringList arms;  // as the allocation numbers them
    core::Allocation allocation;
    std::uint32_t seed{};
    std::vector<core::Batch> batches{};  // as far as they are known: what to mind of them
};

[[nodiscard]] Sheet allocationSheet(const AllocationPlan& plan, const core::Shelves& shelves,
                                    const QDateTime& printedAt);

}  // namespace report
