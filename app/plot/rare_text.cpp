// SPDX-License-Identifier: MIT
#include "app/plot/rare_text.h"

#include <QCoreApplication>
#include <cmath>

#include "app/plot/number_text.h"

namespace plot {
namespace {

struct RareWords {
    Q_DECLARE_TR_FUNCTIONS(RareText)
};

constexpr double rarest = 0.001;

/// Two digits that count: nobody knows more of a chance like that.
int roundedBatches(double batches) {
    const double step = batches < 100 ? 1 : 10;
    return static_cast<int>(step * std::round(batches / step));
}

}  // namespace

QString oneInText(double chance) {
    if (chance >= 0.1) return chanceText(chance);
    if (chance < rarest) return RareWords::tr("less than 1 in %1").arg(countText(roundedBatches(1 / rarest)));
    return RareWords::tr("1 in %1", "how rare it is").arg(countText(roundedBatches(1 / chance)));
}

}  // namespace plot
