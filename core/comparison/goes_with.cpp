// SPDX-License-Identifier: MIT
#include "core/comparison/goes_with.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/comparison/batch_features.h"
#include "core/comparison/course.h"
#include "core/comparison/english.h"
#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/regression/firth_logistic.h"
#include "stats/several_proportions/holm_adjustment.h"

namespace core {
namespace {

// Fewer, and the spread between batches can hardly be seen (common practice asks for ten).
constexpr std::size_t batchesAFeature = 2;
// The penalty's derivatives take steps as the rows times the cube of the coefficients; this many take some tenths of a second, as limits
// are searched only for what is looked for.
constexpr double mostSteps = 1'500'000;

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

// Batches that nothing on record tells apart, put together: the fit is the same and much quicker.
std::vector<stats::BinomialRow> patternsOf(std::span<const stats::BinomialRow> rows) {
    std::map<std::vector<double>, stats::BinomialRow> patterns;
    for (const stats::BinomialRow& row : rows) {
        stats::BinomialRow& pattern = patterns[row.covariates];
        pattern.covariates = row.covariates;
        pattern.successes += row.successes;
        pattern.trials += row.trials;
    }
    std::vector<stats::BinomialRow> result;
    for (auto& [covariates, pattern] : patterns) result.push_back(std::move(pattern));
    return result;
}

std::size_t plantsAmong(const std::vector<Feature>& features) {
    return static_cast<std::size_t>(
        std::count_if(features.begin(), features.end(), [](const Feature& feature) { return feature.isPlant; }));
}

double stepsFor(std::size_t patterns, std::size_t features) {
    return static_cast<double>(patterns) * std::pow(static_cast<double>(features + 1), 3);
}

bool isToldBy(const std::vector<double>& column, std::span<const Feature> features) {
    return std::ranges::any_of(features, [&](const Feature& feature) {
        const auto is = [&](auto expected) { return std::ranges::equal(feature.values, column, {}, expected); };
        return is([](double value) { return value; }) || is([](double value) { return 1 - value; });
    });
}

// Conditions differ from batch to batch, so that no batches can be put together any more: each needs room.
void addConditions(const ConditionsOnRecord& conditions, const Shelves& shelves, const Rows& rows, int horizonDay,
                   std::vector<Feature>& features, GoesWith& answer) {
    constexpr int fewestOnRecord = 10;
    // More than other things need: they must not drown what was planned.
    constexpr std::size_t batchesWithConditions = 3;
    const std::size_t batches = rows.batches.size();
    const auto hasRoomFor = [&](std::size_t more) {
        return batches >= batchesWithConditions * (features.size() + more + 1) &&
               stepsFor(batches, features.size() + more) <= mostSteps;
    };
    if (conditions.climates.empty()) return;
    if (!hasRoomFor(1)) {
        answer.leftOut.emplace_back("conditions: too many things on record differ between too few or too many batches");
        return;
    }
    for (ConditionFeature& condition : conditionFeaturesOf(conditions, shelves, rows.batches, horizonDay)) {
        const bool hasGaps = condition.onRecord < static_cast<int>(batches);
        const bool isMarked = hasGaps && !isToldBy(condition.notOnRecord, features);
        const std::string counted = condition.name + ": on record of " + std::to_string(condition.onRecord) + " of " +
                                    std::to_string(batches) + " batches";
        if (condition.onRecord < fewestOnRecord || !hasRoomFor(isMarked ? 2 : 1)) {
            answer.leftOut.push_back(counted);
            continue;
        }
        if (isMarked)
            features.push_back({.name = condition.name + " not on record, against on record",
                                .isPlant = false,
                                .values = std::move(condition.notOnRecord),
                                .batches = static_cast<int>(batches) - condition.onRecord});
        features.push_back(std::move(condition.feature));
    }
}

// A column that those before it already tell is named and left out; what remains can be fitted.
stats::FirthLogistic fitWithoutTwins(Rows& rows, std::vector<Feature>& features, double level, GoesWith& answer) {
    for (;;) {
        putFeatures(features, rows.counts);
        const std::vector<stats::BinomialRow> patterns = patternsOf(rows.counts);
        if (stepsFor(patterns.size(), features.size()) > mostSteps) {
            answer.whyNot =
                "So many things on record differ between these batches that setting them side by side would take too "
                "long: choose one plant, or one trial.";
            return {};
        }
        const stats::LogisticFit fit = stats::firthFit(patterns);
        if (fit.problem != stats::FitProblem::Collinear || !fit.collinearCovariate)
            return stats::firthLogistic(patterns, level, plantsAmong(features));
        const auto twin = features.begin() + static_cast<std::ptrdiff_t>(*fit.collinearCovariate);
        answer.cannotBeTold.push_back(twin->name);
        features.erase(twin);
    }
}

// Pearson's, over single batches: those put together for the fit still differ by luck.
double dispersionOf(std::span<const stats::BinomialRow> rows, std::span<const double> coefficients, int degrees) {
    double chiSquare = 0;
    for (const stats::BinomialRow& row : rows) {
        double logOdds = coefficients[0];
        for (std::size_t i = 0; i < row.covariates.size(); ++i) logOdds += coefficients[i + 1] * row.covariates[i];
        const double rate = 1 / (1 + std::exp(-logOdds)), variance = row.trials * rate * (1 - rate);
        if (variance > 0) chiSquare += std::pow(row.successes - row.trials * rate, 2) / variance;
    }
    return degrees > 0 ? std::max(1.0, chiSquare / degrees) : 1;
}

Association associationFrom(const Feature& feature, const stats::Coefficient& coefficient) {
    Association association{.name = feature.name,
                            .isPlant = feature.isPlant,
                            .batches = feature.batches,
                            .oddsRatio = std::exp(coefficient.estimate),
                            .asCounted = {.low = 0, .high = HUGE_VAL},
                            .withSpread = {},
                            .asCountedP = coefficient.p.value_or(1),
                            .withSpreadP = {},
                            .holmP = {}};
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
        std::sqrt(dispersion) * stats::studentQuantileOfLevel(level, degrees) / stats::normalQuantileOfLevel(level);
    association.withSpread =
        Limits{.low = std::exp(coefficient.estimate - wider * (coefficient.estimate - coefficient.limits->low)),
               .high = std::exp(coefficient.estimate + wider * (coefficient.limits->high - coefficient.estimate))};
    if (coefficient.chiSquare)
        association.withSpreadP = stats::studentTwoSidedTail(std::sqrt(*coefficient.chiSquare / dispersion), degrees);
}

// That plants differ is no news; they are in the fit so that other things are compared within plants.
void adjustForAllLookedAt(std::vector<Association>& associations) {
    std::vector<double> p;
    for (const Association& each : associations)
        if (!each.isPlant && each.withSpreadP) p.push_back(*each.withSpreadP);
    const std::vector<double> adjusted = stats::holmAdjustment(p);
    std::size_t next = 0;
    for (Association& each : associations)
        if (!each.isPlant && each.withSpreadP) each.holmP = adjusted[next++];
}

void fill(Rows& rows, std::vector<Feature>& features, double level, GoesWith& answer) {
    const stats::FirthLogistic fit = fitWithoutTwins(rows, features, level, answer);
    if (!fit.fit.exists) {
        if (answer.whyNot.empty()) answer.whyNot = "No regression could be fitted to these batches.";
        return;
    }
    const int degrees = static_cast<int>(rows.counts.size()) - static_cast<int>(fit.coefficients.size());
    answer.dispersion = dispersionOf(rows.counts, fit.fit.coefficients, degrees);
    for (const stats::BinomialRow& row : rows.counts)
        answer.rows.push_back({.rooted = row.successes, .assessed = row.trials, .values = row.covariates});
    for (std::size_t i = 0; i < features.size(); ++i) {
        const stats::Coefficient& coefficient = fit.coefficients[i + 1];
        answer.associations.push_back(associationFrom(features[i], coefficient));
        widen(coefficient, answer.dispersion, degrees, level, answer.associations.back());
    }
    adjustForAllLookedAt(answer.associations);
}

std::string inWordsOf(const GoesWith& answer, double level) {
    if (!answer.whyNot.empty()) return answer.whyNot;
    std::vector<std::string> clear;
    for (const Association& each : answer.associations)
        if (each.holmP && *each.holmP < 1 - level)
            clear.push_back(each.name + " (" + (each.oddsRatio > 1 ? "better" : "worse") + ")");
    const std::string from = "In " + counted(answer.batches, "batch", "batches") + ", ";
    const std::string warning =
        " These are records, not an experiment: what went with rooting need not have caused it. A trial split by "
        "chance would tell.";
    if (clear.empty())
        return from + "allowing for the spread between them, nothing on record went clearly with rooting (" +
               levelWords(level) + " level, with so many looked at)." + warning;
    return from +
           "allowing for the spread between them, for the rest on record and for how many were looked at, these went "
           "with rooting: " +
           listed(clear) + "." + warning;
}

}  // namespace

GoesWith goesWithRooting(const Shelves& shelves, std::span<const BatchRecord* const> batches, int horizonDay,
                         double level, const ConditionsOnRecord& conditions) {
    GoesWith answer;
    Rows rows = rowsOf(batches, horizonDay);
    answer.batches = static_cast<int>(rows.batches.size());
    for (const stats::BinomialRow& row : rows.counts) answer.cuttings += row.trials;
    std::vector<Feature> features = featuresOf(shelves, rows.batches);
    addConditions(conditions, shelves, rows, horizonDay, features, answer);
    if (features.empty())
        answer.whyNot =
            "Nothing on record differs between these batches, so there is nothing to set beside their rooting.";
    else if (rows.batches.size() < batchesAFeature * (features.size() + 1))
        answer.whyNot = "There are " + counted(answer.batches, "batch", "batches") + " and " +
                        counted(static_cast<int>(features.size()), "thing", "things") +
                        " on record that differ between them: too few batches to say what went with rooting.";
    if (answer.whyNot.empty()) fill(rows, features, level, answer);
    answer.inWords = inWordsOf(answer, level);
    return answer;
}

}  // namespace core
