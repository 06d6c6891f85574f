// SPDX-License-Identifier: MIT
#include "app/plot/arm_words.h"

#include <QCoreApplication>
#include <cstddef>

#include "app/plot/number_text.h"

namespace plot {
namespace {

struct ArmWords {
    Q_DECLARE_TR_FUNCTIONS(ArmWords)
};

}  // namespace

QString textOf(const std::string& text) {
    return QString::fromStdString(text);
}

QString capitalised(const QString& words) {
    return words.isEmpty() ? words : words.front().toUpper() + words.mid(1);
}

QString nameOf(const core::Arm& arm) {
    return textOf(arm.name);
}

QString rateText(const core::Arm& arm) {
    if (!arm.rate || arm.assessed == 0) return ArmWords::tr("nothing assessed");
    return percentText(*arm.rate, arm.rooted, arm.assessed);
}

const core::Pair* pairAt(const core::Comparison& comparison, int pair) {
    if (pair < 0 || pair >= std::ssize(comparison.pairs)) return nullptr;
    const core::Pair& found = comparison.pairs[static_cast<std::size_t>(pair)];
    const auto isArm = [&](int index) { return index >= 0 && index < std::ssize(comparison.arms); };
    return isArm(found.first) && isArm(found.second) ? &found : nullptr;
}

QString nothingToCompare(const core::Comparison& comparison) {
    if (comparison.arms.empty()) return ArmWords::tr("No batches to compare yet.");
    return ArmWords::tr("Only %1 so far: a comparison needs two arms.").arg(nameOf(comparison.arms.front()));
}

}  // namespace plot
