// SPDX-License-Identifier: MIT
#include "app/plot/cost_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"

namespace plot {
namespace {

struct CostText {
    Q_DECLARE_TR_FUNCTIONS(CostText)
};

constexpr int kDecimalsOfMoney = 2;
constexpr int kMostDecimals = 6;
constexpr double kTenth = 0.1;

}  // namespace

QString costAmount(double amount) {
    if (!(amount > 0) || amount >= kTenth || std::isinf(amount)) return decimalText(amount, kDecimalsOfMoney);
    const int firstThatCounts = static_cast<int>(std::floor(std::log10(amount)));
    return decimalText(amount, std::min(1 - firstThatCounts, kMostDecimals));
}

QString costText(double amount, const std::string& currency) {
    return CostText::tr("%1 %2", "an amount and its currency")
        .arg(costAmount(amount), QString::fromStdString(currency));
}

QString costLimitsText(const core::Limits& limits) {
    if (std::isinf(limits.high)) return CostText::tr("%1 or more", "an amount").arg(costAmount(limits.low));
    return CostText::tr("%1 to %2", "an interval of amounts").arg(costAmount(limits.low), costAmount(limits.high));
}

QString costOfEachText(const core::CostOfEach& cost) {
    if (!cost.value) return {};
    return CostText::tr("%1 (%2)", "an amount and its interval")
        .arg(costAmount(*cost.value), costLimitsText(cost.limits));
}

QString noneSucceededText(const core::CostOfEach& cost, const QString& none) {
    return CostText::tr("%1; at least %2", "none rooted; an amount").arg(none, costAmount(cost.limits.low));
}

QString costPartText(core::CostPart part) {
    switch (part) {
        case core::CostPart::Lasting:
            return CostText::tr("lasting things");
        case core::CostPart::UsedUp:
            return CostText::tr("used up");
        case core::CostPart::Electricity:
            return CostText::tr("electricity");
        case core::CostPart::Work:
            return CostText::tr("work");
        case core::CostPart::WrittenDown:
            return CostText::tr("written down");
    }
    return {};
}

}  // namespace plot
