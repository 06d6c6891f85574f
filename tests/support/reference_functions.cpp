// SPDX-License-Identifier: MIT
#include "tests/support/reference_functions.h"

#include <algorithm>
#include <stdexcept>
#include <string>

namespace support {
namespace {

struct Named {
    std::string_view method, function;
};

constexpr Named names[] = {
    {"aalen_johansen", "aalenJohansen"},
    {"barnard", "barnardTest"},
    {"betabinom_compare", "compareBetaBinomial"},
    {"betabinom_fit", "fitBetaBinomial"},
    {"boschloo", "boschlooTest"},
    {"breslow_day", "breslowDayTaroneTest"},
    {"chisq_arms", "chiSquareTest"},
    {"cmh_test", "cochranMantelHaenszelTest"},
    {"cure_fit", "fitCureMixture"},
    {"diff_newcombe", "newcombeDifference"},
    {"diff_score", "miettinenNurminenDifference"},
    {"fisher_midp", "fisherTest"},
    {"gray_test", "grayTest"},
    {"holm", "holmAdjustment"},
    {"km", "kaplanMeier"},
    {"logrank", "logRankTest"},
    {"mh_odds_ratio", "mantelHaenszelOddsRatio"},
    {"mh_risk_difference", "mantelHaenszelDifference"},
    {"npmle_cr", "competingRisksNpmle"},
    {"or_fisher", "conditionalOddsRatio"},
    {"param_ic_fit", "fitIntervalCensored"},
    {"plan_known", "countForKnownRate"},
    {"plan_uncertain", "countForPastRecords"},
    {"power_boschloo", "boschlooPower"},
    {"power_fisher", "fisherPower"},
    {"power_normal", "normalPower"},
    {"prob_greater", "probabilityOfSuperiority"},
    {"prop_agresti_coull", "agrestiCoullInterval"},
    {"prop_clopper_pearson", "clopperPearsonInterval"},
    {"prop_jeffreys", "jeffreysInterval"},
    {"prop_midp", "midPInterval"},
    {"prop_wilson", "wilsonInterval"},
    {"prop_wilson_cc", "wilsonContinuityInterval"},
    {"quantile_support", "quantileDay"},
    {"rao_scott_arm", "raoScottDesignEffect"},
    {"rao_scott_test", "raoScottTest"},
    {"rr_katz", "katzRatio"},
    {"rr_score", "koopmanRatio"},
    {"tray_bootstrap_exact", "trayBootstrap"},
    {"tray_interval", "trayInterval"},
    {"tray_permutation", "trayPermutationTest"},
    {"tray_ttest", "trayTTest"},
    {"trend_ca", "cochranArmitageTrend"},
    {"turnbull", "turnbull"},
};

std::string_view variantOf(std::string_view method, const nlohmann::json& inputs, std::string_view field) {
    if (method == "diff_newcombe" && inputs.value("cc", false)) return "newcombeContinuityDifference";
    if (method == "diff_score" && !inputs.value("bias", true)) return "meeDifference";
    if (method == "rr_score" && inputs.value("bias", false)) return "miettinenNurminenRatio";
    if (method == "prop_agresti_coull" && field.starts_with("raw_")) return "agrestiCoullUncut";
    if (method == "prop_jeffreys" && field.starts_with("equal_tailed_")) return "jeffreysEqualTails";
    return {};
}

}  // namespace

std::string_view functionOf(std::string_view referenceMethod, const nlohmann::json& inputs, std::string_view field) {
    if (const std::string_view variant = variantOf(referenceMethod, inputs, field); !variant.empty()) return variant;
    const auto* const found = std::find_if(std::begin(names), std::end(names), [referenceMethod](const Named& each) {
        return each.method == referenceMethod;
    });
    if (found == std::end(names))
        throw std::runtime_error("no function is named for the method " + std::string(referenceMethod));
    return found->function;
}

}  // namespace support
