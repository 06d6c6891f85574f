// SPDX-License-Identifier: MIT
#include "core/comparison/as_good_as.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/english.h"
#include "core/units/figure_text.h"
#include "stats/overdispersion/tray_non_inferiority.h"
#include "stats/two_proportions/non_inferiority.h"

namespace core {
namespace {

// As it was typed: 2.5 stays 2.5.
std::string ofHundred(double share) {
    return figureText(std::round(share * 1e6) / 1e4) + " of 100";
}

std::string oneWay(const std::string& arm, const std::string& other, const AsGoodAs& answer, double margin) {
    if (answer.isShown) return arm + " is as good as " + other + " within " + ofHundred(margin);
    if (!answer.withSpread)
        return "that " + arm + " is as good as " + other + " within " + ofHundred(margin) +
               " is not shown: batches that don't differ at all leave nothing to judge their luck by";
    const double worst = std::max(0.0, -answer.withSpread->low);
    return "that " + arm + " is as good as " + other + " within " + ofHundred(margin) + " is not shown: up to " +
           std::to_string(perHundred(worst)) + " fewer of 100 fit these records";
}

std::string capitalised(std::string sentence) {
    if (!sentence.empty() && sentence[0] >= 'a' && sentence[0] <= 'z')
        sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
    return sentence;
}

}  // namespace

std::optional<AsGoodAs> asGoodAs(const ArmRecords& arm, const ArmRecords& other, double margin, double level) {
    const stats::NonInferiority counted =
        stats::nonInferiority({arm.arm.rooted, arm.arm.assessed, other.arm.rooted, other.arm.assessed}, margin, level);
    if (!counted.difference) return {};
    AsGoodAs answer{.margin = margin,
                    .asCounted = {.low = counted.limits.low, .high = counted.limits.high},
                    .asCountedP = counted.p,
                    .withSpread = {},
                    .withSpreadP = {},
                    .isShown = false};
    constexpr std::size_t fewestBatches = 3;
    const auto trays1 = arm.trays(), trays2 = other.trays();
    if (std::min(trays1.size(), trays2.size()) < fewestBatches) return answer;
    if (const auto batches = stats::trayNonInferiority(trays1, trays2, margin, level)) {
        answer.withSpread = Limits{.low = batches->limits.low, .high = batches->limits.high};
        answer.withSpreadP = batches->p;
        answer.isShown = batches->isShown;
    }
    return answer;
}

std::string asGoodAsInWords(const ArmRecords& first, const ArmRecords& second, const Pair& pair, Factor factor,
                            double margin) {
    if (!pair.firstAsGood || !pair.secondAsGood) return {};
    // Where one did better beyond luck, nobody asks any more whether they are alike.
    if (pair.verdict == Verdict::FirstBetter || pair.verdict == Verdict::SecondBetter) return {};
    const std::string one = nameInWords(factor, first.arm.name), other = nameInWords(factor, second.arm.name);
    if (pair.verdict == Verdict::CannotTellMethodFromStation || pair.verdict == Verdict::TooFewBatches)
        return "Whether " + one + " and " + other + " are as good as each other within " + ofHundred(margin) +
               " can't be told from these batches either.";
    return capitalised(oneWay(one, other, *pair.firstAsGood, margin)) + "; " +
           oneWay(other, one, *pair.secondAsGood, margin) + ".";
}

}  // namespace core
