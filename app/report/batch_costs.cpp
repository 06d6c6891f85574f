// SPDX-License-Identifier: MIT
#include "app/report/batch_costs.h"

#include <QCoreApplication>
#include <cmath>
#include <numeric>

#include "app/plot/money_text.h"
#include "app/plot/number_text.h"

namespace report {
namespace {

struct CostWords {
    Q_DECLARE_TR_FUNCTIONS(BatchCosts)
};

}  // namespace

QString costsInWords(const std::vector<core::Expense>& expenses, const core::Tally& tally,
                     const std::string& currency) {
    if (expenses.empty()) return {};
    const std::int64_t sum =
        std::accumulate(expenses.begin(), expenses.end(), std::int64_t{},
                        [](std::int64_t before, const core::Expense& expense) { return before + expense.hundredths; });
    const QString all = plot::moneyText(sum, currency);
    if (tally.rooted == 0) return CostWords::tr("%1 in all; none rooted yet, so there is no figure for each").arg(all);
    const QString each = plot::moneyText(std::llround(static_cast<double>(sum) / tally.rooted), currency);
    return CostWords::tr("%1 in all, %2 for each of %3 rooted so far").arg(all, each, plot::countText(tally.rooted));
}

QString costsLeftOut() {
    return CostWords::tr("What batches share (lamp, pump, tub, electricity, work) is not in it.");
}

}  // namespace report
