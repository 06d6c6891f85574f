// SPDX-License-Identifier: MIT
#include "stats/time_to_event/speed_model.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "stats/numeric/cholesky.h"
#include "stats/numeric/jet.h"
#include "stats/numeric/newton_maximum.h"
#include "stats/time_to_event/speed_likelihood.h"

namespace stats {
namespace {

// A standard error this large, on the log scale, is no knowledge.
constexpr double kAsGoodAsFlat = 20;
// A dozen will do where there is a maximum.
constexpr int kIterations = 50;

// A row depends on its own arm's parameters only: logit share, mu and log sigma, found at these places among all.
using ArmPlaces = std::array<std::size_t, 3>;

ArmPlaces placesOf(const SpeedModel& model, std::size_t arm) {
    return {2 * arm, model.isSpeedEqual ? 1 : 2 * arm + 1, model.parameters() - 1};
}

// What each row of the arm contributes, once.
std::vector<Jet<3>> rowTerms(const SpeedModel& model, std::size_t arm, const std::vector<double>& x) {
    const auto [logit, mu, logSigma] = placesOf(model, arm);
    const auto logitShare = Jet<3>::variable(x[logit], 0);
    const SpeedJets<3> at(model.shape, Jet<3>::variable(x[mu], 1), Jet<3>::variable(x[logSigma], 2));
    std::vector<Jet<3>> terms;
    for (const Observation& row : model.arms[arm].rows) {
        terms.push_back(model.everyoneRoots[arm] != 0 ? logProbability(row, at)
                                                      : logProbabilityWithCure(row, at, logitShare));
    }
    return terms;
}

bool isAllFinite(const LocalQuadratic& there) {
    const auto isFinite = [](double value) { return std::isfinite(value); };
    return std::isfinite(there.value) && std::all_of(there.gradient.begin(), there.gradient.end(), isFinite) &&
           std::all_of(there.curvature.values.begin(), there.curvature.values.end(), isFinite);
}

LocalQuadratic logLikelihood(const SpeedModel& model, const std::vector<double>& x) {
    LocalQuadratic result{.value = 0, .gradient = std::vector<double>(x.size()), .curvature = zeroMatrix(x.size())};
    for (std::size_t arm = 0; arm < model.arms.size(); ++arm) {
        const ArmPlaces places = placesOf(model, arm);
        const std::vector<Jet<3>> terms = rowTerms(model, arm, x);
        Jet<3> sum(0);
        for (std::size_t row = 0; row < terms.size(); ++row) sum += model.arms[arm].rows[row].weight * terms[row];
        result.value += sum.value();
        for (std::size_t i = 0; i < 3; ++i) {
            result.gradient[places[i]] += sum.gradient(i);
            for (std::size_t j = 0; j < 3; ++j) result.curvature.at(places[i], places[j]) -= sum.hessian(i, j);
        }
    }
    for (std::size_t i = 0; i < x.size(); ++i) {
        if (model.isHeld(i)) result.curvature.at(i, i) = 1;
    }
    if (!isAllFinite(result)) result.value = -std::numeric_limits<double>::infinity();
    return result;
}

// Middle and spread of log days, each interval standing for its middle, and the share that has rooted.
struct Moments {
    double mean{}, deviation{}, share{};
};

Moments momentsOf(const SpeedRows& rows) {
    double rooted = 0, all = 0, sum = 0, squares = 0;
    const auto middle = [](const Observation& row) { return std::log(row.after + (row.by - row.after) / 2); };
    for (const Observation& row : rows.rows) {
        all += row.weight;
        if (row.cause == 1) rooted += row.weight;
    }
    for (const Observation& row : rows.rows) {
        if (row.cause == 1) sum += row.weight / rooted * middle(row);
    }
    for (const Observation& row : rows.rows) {
        if (row.cause == 1) squares += row.weight / rooted * std::pow(middle(row) - sum, 2);
    }
    return {.mean = sum, .deviation = std::max(0.05, std::sqrt(squares)), .share = rooted / all};
}

// Quick, slow or narrow, with a share as seen or larger: Newton's method goes uphill from each.
std::vector<std::vector<double>> startsOf(const SpeedModel& model) {
    struct Recipe {
        double later, spread, unseen;
    };
    std::vector<std::vector<double>> starts;
    for (const Recipe& recipe : {Recipe{0, 1, 0.02}, {0.5, 2, 0.5}, {0, 0.5, 0.02}, {2, 3, 0.98}}) {
        std::vector<double> x(model.parameters());
        double spread = 0;
        for (std::size_t arm = 0; arm < model.arms.size(); ++arm) {
            const Moments moments = momentsOf(model.arms[arm]);
            const double share = moments.share + recipe.unseen * (1 - moments.share);
            // All rooted, and yet the share not held at 1: the logit of a share half a cutting short of it.
            x[2 * arm] = share < 1 ? std::log(share / (1 - share)) : 4;
            x[2 * arm + 1] = moments.mean + recipe.later * moments.deviation;
            spread = std::max(spread, recipe.spread * moments.deviation);
        }
        x.back() = std::log(spread);
        for (std::size_t i = 0; i < x.size(); ++i) {
            if (model.isHeld(i)) x[i] = 0;
        }
        starts.push_back(std::move(x));
    }
    return starts;
}

struct Climb {
    std::optional<SpeedModelFit> best;
    double highest{-std::numeric_limits<double>::infinity()};  // seen, be it a maximum or not
};

std::optional<SpeedModelFit> maximumOf(const SpeedModel& model, const NewtonMaximum& reached) {
    if (!reached.converged) return {};
    const Cholesky information(reached.there.curvature);
    if (!information.isPositiveDefinite()) return {};
    SpeedModelFit fit{.x = reached.x,
                      .logLikelihood = reached.there.value,
                      .covariance = information.inverse(),
                      .everyoneRoots = model.everyoneRoots,
                      .iterations = reached.iterations};
    for (std::size_t i = 0; i < fit.x.size(); ++i) {
        const bool isLogit = i % 2 == 0 && i + 1 < fit.x.size();  // may well be known only to be large
        const double most = isLogit ? 1e150 : kAsGoodAsFlat * kAsGoodAsFlat;
        if (!(fit.covariance.at(i, i) > 0 && fit.covariance.at(i, i) < most)) return {};
    }
    return fit;
}

Climb climb(const SpeedModel& model) {
    Climb result;
    // Where everyone roots, the log likelihood is concave in mu / sigma and 1 / sigma, so that one maximum is all there
    // is: Burridge (1981), J. R. Stat. Soc. B 43, 65-75 (from memory).
    const bool isConcave =
        std::all_of(model.everyoneRoots.begin(), model.everyoneRoots.end(), [](char all) { return all != 0; });
    for (const std::vector<double>& start : startsOf(model)) {
        const NewtonMaximum reached = newtonMaximum(
            [&model](const std::vector<double>& x) { return logLikelihood(model, x); }, start, kIterations);
        result.highest = std::max(result.highest, reached.there.value);
        auto fit = maximumOf(model, reached);
        if (fit && (!result.best || fit->logLikelihood > result.best->logLikelihood)) result.best = std::move(fit);
        if (result.best && isConcave) break;
    }
    return result;
}

bool isHigher(double logLikelihood, double other) {
    return logLikelihood > other + 1e-9 * (1 + std::abs(other));
}

SquareMatrix product(const SquareMatrix& a, const SquareMatrix& b) {
    SquareMatrix result = zeroMatrix(a.size);
    for (std::size_t i = 0; i < a.size; ++i) {
        for (std::size_t j = 0; j < a.size; ++j) {
            for (std::size_t k = 0; k < a.size; ++k) result.at(i, j) += a.at(i, k) * b.at(k, j);
        }
    }
    return result;
}

// Sum over batches of s s', with s the slope of the batch's log likelihood.
SquareMatrix squaredBatchScores(const SpeedModel& model, const std::vector<double>& x) {
    SquareMatrix result = zeroMatrix(x.size());
    for (std::size_t arm = 0; arm < model.arms.size(); ++arm) {
        const ArmPlaces places = placesOf(model, arm);
        const std::vector<Jet<3>> terms = rowTerms(model, arm, x);
        for (const auto& batch : model.arms[arm].batches) {
            std::vector<double> sum(x.size());
            for (const auto& [row, weight] : batch) {
                for (std::size_t i = 0; i < 3; ++i) sum[places[i]] += weight * terms[row].gradient(i);
            }
            for (std::size_t i = 0; i < x.size(); ++i) {
                for (std::size_t j = 0; j < x.size(); ++j) result.at(i, j) += sum[i] * sum[j];
            }
        }
    }
    return result;
}

}  // namespace

bool SpeedModel::isHeld(std::size_t parameter) const {
    if (parameter + 1 == parameters()) return false;
    const std::size_t arm = parameter / 2;
    return parameter % 2 == 0 ? everyoneRoots[arm] != 0 : isSpeedEqual && arm == 1;
}

std::optional<SpeedModelFit> fitSpeedModel(const SpeedModel& model) {
    Climb climbed = climb(model);
    if (climbed.best && isHigher(climbed.highest, climbed.best->logLikelihood)) return {};
    return climbed.best;
}

std::optional<SpeedModelFit> fitSpeedModelAndBoundary(SpeedModel model) {
    std::optional<SpeedModelFit> best;
    double highest = -std::numeric_limits<double>::infinity();
    const std::size_t ways = std::size_t{1} << model.arms.size();
    // Those that hold the most come first: a free share must do better than 1 to be taken.
    for (std::size_t way = ways; way-- > 0;) {
        model.everyoneRoots.assign(model.arms.size(), 0);
        bool isPossible = true;
        for (std::size_t arm = 0; arm < model.arms.size(); ++arm) {
            const auto& rows = model.arms[arm].rows;
            const bool isHeld = (way >> arm & 1U) != 0;
            model.everyoneRoots[arm] = isHeld ? 1 : 0;
            const bool hasUnrooted = std::any_of(rows.begin(), rows.end(), [](auto& row) { return row.cause == 0; });
            isPossible = isPossible && (isHeld || hasUnrooted);
        }
        if (!isPossible) continue;
        Climb climbed = climb(model);
        highest = std::max(highest, climbed.highest);
        if (climbed.best && (!best || isHigher(climbed.best->logLikelihood, best->logLikelihood))) {
            best = std::move(climbed.best);
        }
    }
    if (best && isHigher(highest, best->logLikelihood)) return {};
    return best;
}

std::optional<BatchCovariance> batchCovariance(const SpeedModel& model, const SpeedModelFit& fit) {
    const std::size_t n = model.parameters();
    std::size_t batches = 0, free = 0;
    for (std::size_t i = 0; i < n; ++i) free += model.isHeld(i) ? 0U : 1U;
    for (const SpeedRows& arm : model.arms) batches += arm.batches.size();
    if (batches < free + 1) return {};
    BatchCovariance result{
        .covariance = product(product(fit.covariance, squaredBatchScores(model, fit.x)), fit.covariance),
        .degreesOfFreedom = static_cast<int>(batches - model.arms.size())};
    for (std::size_t i = 0; i < n; ++i) {
        const bool isTold = result.covariance.at(i, i) > 1e-8 * fit.covariance.at(i, i);
        if (!model.isHeld(i) && !(isTold && std::isfinite(result.covariance.at(i, i)))) return {};
    }
    return result;
}

SpeedUncertainty speedUncertainty(const SpeedModel& model, const SpeedModelFit& fit, std::size_t arm,
                                  const SquareMatrix& covariance, double reach) {
    const std::size_t mu = 2 * arm + 1, logSigma = fit.x.size() - 1;
    const double slope = standardSpeedQuantile(model.shape, 0.5) * std::exp(fit.x[logSigma]);
    const double variance = covariance.at(mu, mu) + 2 * slope * covariance.at(mu, logSigma) +
                            slope * slope * covariance.at(logSigma, logSigma);
    const double error = std::sqrt(std::max(0.0, variance));
    return {.standardErrorOfMu = std::sqrt(covariance.at(mu, mu)),
            .standardErrorOfLogSigma = std::sqrt(covariance.at(logSigma, logSigma)),
            .standardErrorOfLogMedian = error,
            .medianLimits = limitsOfExp(fit.x[mu] + slope, reach * error)};
}

Interval limitsOfExp(double middle, double reach) {
    return {.low = std::exp(std::clamp(middle - reach, -700.0, 700.0)),
            .high = std::exp(std::clamp(middle + reach, -700.0, 700.0))};
}

Interval limitsOfLogit(double middle, double reach) {
    return {.low = 1 / (1 + std::exp(reach - middle)), .high = 1 / (1 + std::exp(-middle - reach))};
}

}  // namespace stats
