// SPDX-License-Identifier: MIT
#include "core/comparison/goes_with.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/batch_features.h"
#include "core/comparison/course.h"
#include "core/comparison/english.h"
#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/regression/firth_logistic.h"

namespace core {
namespace {

constexpr std::size_t batchesAFeature =
    3;  // fewer, and the spread between batches can't be seen (common practice asks for ten)

struct Rows {
    std::vector<const BatchRecord*> batches;
    std::vector<stats::BinomialRow> counts;
};

Rows rowsOf(std::span<const BatchRecord* const> batches, int horizonDay) {
    Rows rows;
    for (const BatchRecord* record : batches) {
        const HorizonFate fate = fateAt(horizonDay, record->batch.stuck, looksOf(*record));
        if (fate.assessed == 0) continue;
        rows.batches.push_back(record);
        rows.counts.push_back({.successes = fate.rooted, .trials = fate.assessed, .covariates = {}});
    }
    return rows;
}

void putFeatures(const std::vector<Feature>& features, std::vector<stats::BinomialRow>& rows) {
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].covariates.clear();
        for (const Feature& feature : features) rows[i].covariates.push_back(feature.values[i]);
    }
}

// A column that those before it already tell is named and left out; what remains can be fitted.
stats::FirthLogistic fitWithoutTwins(Rows& rows, std::vector<Feature>& features, double level, GoesWith& answer) {
    for (;;) {
        putFeatures(features, rows.counts);
        const stats::LogisticFit fit = stats::firthFit(rows.counts);
        if (fit.problem != stats::FitProblem::Collinear || !fit.collinearCovariate) break;
        const auto twin = features.begin() + static_cast<std::ptrdiff_t>(*fit.collinearCovariate);
        answer.cannotBeTold.push_back(twin->name);
        features.erase(twin);
        if (features.empty()) return {};
    }
    return stats::firthLogistic(rows.counts, level);
}

Association associationFrom(const Feature& feature, const stats::Coefficient& coefficient) {
    Association association{.name = feature.name,
                            .batches = feature.batches,
                            .oddsRatio = std::exp(coefficient.estimate),
                            .asCounted = {.low = 0, .high = HUGE_VAL},
                            .withSpread = {},
                            .asCountedP = coefficient.p.value_or(1),
                            .withSpreadP = {}};
    if (coefficient.limits)
        association.asCounted = {.low = std::exp(coefficient.limits->low), .high = std::exp(coefficient.limits->high)};
    return association;
}

// The profile's limits pushed out from the estimate as far as the spread between batches asks for, in Student's law on what is left of the
// batches.
void widen(const stats::Coefficient& coefficient, double dispersion, int degrees, double level,
           Association& association) {
    if (degrees < 1 || !coefficient.limits) return;
    const double wider =
        std::sqrt(dispersion) * stats::studentQuantile(0.5 + level / 2, degrees) / stats::normalQuantileOfLevel(level);
    association.withSpread =
        Limits{.low = std::exp(coefficient.estimate - wider * (coefficient.estimate - coefficient.limits->low)),
               .high = std::exp(coefficient.estimate + wider * (coefficient.limits->high - coefficient.estimate))};
    if (coefficient.chiSquare)
        association.withSpreadP = stats::studentTwoSidedTail(std::sqrt(*coefficient.chiSquare / dispersion), degrees);
}

std::string inWordsOf(const GoesWith& answer, double level) {
    if (!answer.whyNot.empty()) return answer.whyNot;
    std::vector<std::string> clear;
    for (const Association& each : answer.associations)
        if (each.withSpread && (each.withSpread->low > 1 || each.withSpread->high < 1))
            clear.push_back(each.name + " (" + (each.oddsRatio > 1 ? "better" : "worse") + ")");
    const std::string from = "In " + counted(answer.batches, "batch", "batches") + ", ";
    const std::string warning =
        " These are records, not an experiment: what went with rooting need not have caused it. A trial split by "
        "chance would tell.";
    if (clear.empty())
        return from + "allowing for the spread between them, nothing on record went clearly with rooting (" +
               levelWords(level) + " intervals)." + warning;
    return from + "allowing for the spread between them and for the rest on record, these went with rooting: " +
           listed(clear) + "." + warning;
}

}  // namespace

GoesWith goesWithRooting(const Shelves& shelves, std::span<const BatchRecord* const> batches, int horizonDay,
                         double level) {
    GoesWith answer;
    Rows rows = rowsOf(batches, horizonDay);
    answer.batches = static_cast<int>(rows.batches.size());
    for (const stats::BinomialRow& row : rows.counts) answer.cuttings += row.trials;
    std::vector<Feature> features = featuresOf(shelves, rows.batches);
    if (features.empty())
        answer.whyNot =
            "Nothing on record differs between these batches, so there is nothing to set beside their rooting.";
    else if (rows.batches.size() < batchesAFeature * (features.size() + 1))
        answer.whyNot = "There are " + counted(answer.batches, "batch", "batches") + " and " +
                        counted(static_cast<int>(features.size()), "thing", "things") +
                        " on record that differ between them: too few batches to say what went with rooting.";
    if (answer.whyNot.empty()) {
        const stats::FirthLogistic fit = fitWithoutTwins(rows, features, level, answer);
        if (!fit.fit.exists)
            answer.whyNot = "No regression could be fitted to these batches.";
        else if (fit.fit.degreesOfFreedom > 0 && fit.fit.pearsonChiSquare)
            answer.dispersion = std::max(1.0, *fit.fit.pearsonChiSquare / fit.fit.degreesOfFreedom);
        if (fit.fit.exists)
            for (const stats::BinomialRow& row : rows.counts)
                answer.rows.push_back({.rooted = row.successes, .assessed = row.trials, .values = row.covariates});
        for (std::size_t i = 0; fit.fit.exists && i < features.size(); ++i) {
            const stats::Coefficient& coefficient = fit.coefficients[i + 1];
            answer.associations.push_back(associationFrom(features[i], coefficient));
            widen(coefficient, answer.dispersion, fit.fit.degreesOfFreedom, level, answer.associations.back());
        }
    }
    answer.inWords = inWordsOf(answer, level);
    return answer;
}

}  // namespace core
