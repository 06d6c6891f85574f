// SPDX-License-Identifier: MIT
#include "stats/time_to_event/interval_mixture.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/time_to_event/nonnegative_quadratic.h"

namespace stats {
namespace {

constexpr double kFar = 0.05;

class MixtureClimber {
  public:
    MixtureClimber(const IntervalMixture& mixture, std::vector<double> start)
        : mixture_(mixture), columns_(static_cast<std::size_t>(mixture.columns)), masses_(std::move(start)) {
        for (const CoveredColumns& row : mixture_.rows) total_ += row.weight;
        masses_.resize(columns_, 0.0);
        below_.resize(columns_ + 1);
        gradient_.resize(columns_ + 1);
        covered_.resize(mixture_.rows.size());
        giveEveryRowSomeMass();
        logLikelihood_ = logLikelihoodOf(masses_);
    }

    [[nodiscard]] double total() const { return total_; }
    [[nodiscard]] double logLikelihood() const { return logLikelihood_; }
    [[nodiscard]] double gap() const { return gap_; }
    [[nodiscard]] const std::vector<double>& masses() const { return masses_; }

    // The gradient at the current masses, and with it the gap.
    void takeGradient() {
        sumUp(masses_);
        std::fill(gradient_.begin(), gradient_.end(), 0.0);
        for (std::size_t i = 0; i < covered_.size(); ++i) {
            const CoveredColumns& row = mixture_.rows[i];
            covered_[i] = massOf(row);
            const double pull = row.weight / covered_[i];
            gradient_[static_cast<std::size_t>(row.first)] += pull;
            gradient_[static_cast<std::size_t>(row.last) + 1] -= pull;
        }
        double running = 0, steepest = 0;
        for (std::size_t j = 0; j < columns_; ++j) {
            running += gradient_[j];
            gradient_[j] = running;
            steepest = std::max(steepest, running);
        }
        gap_ = steepest - total_;
    }

    // Multiplies each mass by its gradient. Slow, but it never fails.
    void expectationStep() {
        for (std::size_t j = 0; j < columns_; ++j) masses_[j] *= gradient_[j] / total_;
        normalise(masses_);
        logLikelihood_ = logLikelihoodOf(masses_);
    }

    // By how much the log likelihood may be wrong.
    [[nodiscard]] double rounding() const { return 1e-14 * (std::abs(logLikelihood_) + total_); }

    // Leaves everything as it was where no step is an improvement.
    void newtonStep() {
        chooseActive();
        fillCurvature();
        std::vector<double> next(active_.size()), slope(active_.size());
        for (std::size_t k = 0; k < active_.size(); ++k) {
            next[k] = masses_[active_[k]];
            slope[k] = 2 * gradient_[active_[k]] / total_ - 1;
        }
        maximiseNonnegativeQuadratic(curvature_, reach_, slope, next);
        const std::vector<double> before = masses_;
        for (double step = 1; step > 1e-6; step /= 2) {
            for (std::size_t k = 0; k < active_.size(); ++k) {
                const std::size_t j = active_[k];
                masses_[j] = step == 1 ? next[k] : before[j] + step * (next[k] - before[j]);
            }
            normalise(masses_);
            const double reached = logLikelihoodOf(masses_);
            // At the end the likelihood rises by less than it can be computed to; the gap still shrinks.
            if (reached > logLikelihood_ - (step == 1 ? rounding() : 0.0)) {
                logLikelihood_ = reached;
                return;
            }
        }
        masses_ = before;
    }

  private:
    void sumUp(const std::vector<double>& masses) {
        below_[0] = 0;
        for (std::size_t j = 0; j < columns_; ++j) below_[j + 1] = below_[j] + masses[j];
    }

    [[nodiscard]] double massOf(const CoveredColumns& row) const {
        return below_[static_cast<std::size_t>(row.last) + 1] - below_[static_cast<std::size_t>(row.first)];
    }

    // -infinity where a row has no mass.
    double logLikelihoodOf(const std::vector<double>& masses) {
        sumUp(masses);
        double sum = 0;
        for (const CoveredColumns& row : mixture_.rows) {
            const double mass = massOf(row);
            if (!(mass > 0)) return -std::numeric_limits<double>::infinity();
            sum += row.weight * std::log(mass);
        }
        return sum;
    }

    static void normalise(std::vector<double>& masses) {
        double sum = 0;
        for (const double mass : masses) sum += mass;
        for (double& mass : masses) mass /= sum;
    }

    // The fewest columns that meet every row still without mass: the last column of the row that ends first, and so on.
    void giveEveryRowSomeMass() {
        sumUp(masses_);
        std::vector<const CoveredColumns*> empty;
        for (const CoveredColumns& row : mixture_.rows) {
            if (!(massOf(row) > 1e-12)) empty.push_back(&row);
        }
        std::sort(empty.begin(), empty.end(), [](const auto* a, const auto* b) { return a->last < b->last; });
        const bool isFromNothing = below_[columns_] <= 0;
        const double share = isFromNothing ? 1.0 : 0.01;
        int lastColumn = -1;
        for (const CoveredColumns* row : empty) {
            if (row->first <= lastColumn) continue;
            lastColumn = row->last;
            masses_[static_cast<std::size_t>(lastColumn)] += share;
        }
        normalise(masses_);
    }

    // Columns with mass, and between any two of them the one whose gradient asks for mass most.
    void chooseActive() {
        active_.clear();
        std::size_t candidate = columns_;
        const auto takeCandidate = [this, &candidate] {
            if (candidate < columns_) active_.push_back(candidate);
            candidate = columns_;
        };
        for (std::size_t j = 0; j < columns_; ++j) {
            if (masses_[j] > 0) {
                takeCandidate();
                active_.push_back(j);
            } else if (gradient_[j] > total_ && (candidate == columns_ || gradient_[j] > gradient_[candidate])) {
                candidate = j;
            }
        }
        takeCandidate();
    }

    // H_kl = sum over rows that cover both of w / f^2, on the scale of total weight 1. A row covers a run a .. b of
    // active columns, so it belongs to all k, l with a <= k <= l <= b: entered at (a, b), then summed downwards and
    // from the right, as far as any run reaches.
    void fillCurvature() {
        const std::size_t n = active_.size();
        std::vector<std::size_t> activeBelow(columns_ + 1, 0);
        for (const std::size_t j : active_) activeBelow[j + 1] = 1;
        for (std::size_t j = 0; j < columns_; ++j) activeBelow[j + 1] += activeBelow[j];
        curvature_.size = n;
        curvature_.values.assign(n * n, 0.0);
        reach_.first.resize(n);
        reach_.last.resize(n);
        for (std::size_t k = 0; k < n; ++k) reach_.first[k] = reach_.last[k] = k;
        for (std::size_t i = 0; i < covered_.size(); ++i) {
            const CoveredColumns& row = mixture_.rows[i];
            const std::size_t a = activeBelow[static_cast<std::size_t>(row.first)];
            const std::size_t b = activeBelow[static_cast<std::size_t>(row.last) + 1] - 1;
            curvature_.at(a, b) += row.weight / total_ / (covered_[i] * covered_[i]);
            reach_.first[b] = std::min(reach_.first[b], a);
            reach_.last[a] = std::max(reach_.last[a], b);
        }
        for (std::size_t k = n - 1; k-- > 0;) reach_.first[k] = std::min(reach_.first[k], reach_.first[k + 1]);
        for (std::size_t k = 1; k < n; ++k) reach_.last[k] = std::max(reach_.last[k], reach_.last[k - 1]);
        for (std::size_t k = 1; k < n; ++k) {
            for (std::size_t l = k; l <= reach_.last[k - 1]; ++l) curvature_.at(k, l) += curvature_.at(k - 1, l);
        }
        for (std::size_t k = 0; k < n; ++k) {
            for (std::size_t l = reach_.last[k]; l-- > k;) curvature_.at(k, l) += curvature_.at(k, l + 1);
            for (std::size_t l = k + 1; l <= reach_.last[k]; ++l) curvature_.at(l, k) = curvature_.at(k, l);
        }
    }

    const IntervalMixture& mixture_;
    std::size_t columns_;
    double total_{};
    std::vector<double> masses_, below_, gradient_, covered_;
    double logLikelihood_{}, gap_{};
    std::vector<std::size_t> active_;
    SquareMatrix curvature_;
    RowReach reach_;
};

}  // namespace

MixtureFit fitIntervalMixture(const IntervalMixture& mixture, std::vector<double> start, const MixtureLimits& limits,
                              const std::stop_token& stop) {
    MixtureClimber climber(mixture, std::move(start));
    MixtureFit fit;
    int stalled = 0;
    climber.takeGradient();
    while (climber.gap() > limits.wantedGap * climber.total() && fit.iterations < limits.iterations && stalled < 3 &&
           !stop.stop_requested()) {
        ++fit.iterations;
        // Far from the maximum Newton's step makes a mass that is much too small only twice as large; this one hits at
        // once. It also helps where rounding stops Newton's.
        if (climber.gap() > kFar * climber.total() || stalled > 0) {
            climber.expectationStep();
            climber.takeGradient();
        }
        const double gapBefore = climber.gap(), before = climber.logLikelihood();
        climber.newtonStep();
        climber.takeGradient();
        const bool hasRisen = climber.logLikelihood() > before + climber.rounding();
        stalled = hasRisen || climber.gap() < gapBefore / 2 ? 0 : stalled + 1;
    }
    fit.masses = climber.masses();
    fit.logLikelihood = climber.logLikelihood();
    fit.gap = std::max(0.0, climber.gap());
    fit.converged = fit.gap <= limits.convergedGap * climber.total();
    return fit;
}

}  // namespace stats
