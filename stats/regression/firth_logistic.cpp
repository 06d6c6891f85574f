// SPDX-License-Identifier: MIT
#include "stats/regression/firth_logistic.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/regression/logistic_design.h"

namespace stats {
namespace {

// The penalised likelihood with one coefficient held, as a function of the others. The intercept is that of the
// covariates as given, so to hold it the centred one has to move along with the rest.
class Profile {
  public:
    Profile(const LogisticDesign& design, const LogisticFit& fit, const NewtonMaximum& maximum, std::size_t held)
        : design_(design), fit_(fit), maximum_(maximum), held_(held), along_(design.coefficients()) {
        for (std::size_t k = 1; held == 0 && k < along_.size(); ++k) along_[k] = design.centre(k) / design.scale(k);
    }

    // How far the maximum over the others lies below that over all; nothing where it can't be found.
    [[nodiscard]] std::optional<double> fall(double value) const {
        const auto restricted = [&](const std::vector<double>& others) {
            return reduced(design_.penalised(whole(value, others)));
        };
        const NewtonMaximum there = newtonMaximum(restricted, tangent(value));
        if (!there.converged) return {};
        return std::max(0.0, maximum_.there.value - there.there.value);
    }

    // Where the fall is `drop`, towards `direction` (-1 or 1).
    [[nodiscard]] std::optional<double> limit(double drop, double direction) const {
        const double estimate = fit_.coefficients[held_], error = std::sqrt(fit_.covariance.at(held_, held_));
        double inside = estimate, reach = std::sqrt(2 * drop) * error;
        for (int doubling = 0; doubling < 60; ++doubling, reach *= 2) {
            const double outside = estimate + direction * reach;
            const std::optional<double> height = fall(outside);
            if (!height) return {};
            if (*height < drop) {
                inside = outside;
                continue;
            }
            bool isLost = false;
            const double root = bracketedRoot(
                [&](double value) {
                    const std::optional<double> here = fall(value);
                    isLost = isLost || !here;
                    return here.value_or(0) - drop;
                },
                inside, outside, 1e-10 * error);
            return isLost ? std::nullopt : std::optional(root);
        }
        return {};
    }

  private:
    // Where the quadratic at the maximum would have the others, given the held one.
    [[nodiscard]] std::vector<double> tangent(double value) const {
        std::vector<double> others;
        const double away = (value - fit_.coefficients[held_]) / fit_.covariance.at(held_, held_);
        for (std::size_t k = 0; k < along_.size(); ++k) {
            if (k == held_) continue;
            const double given = fit_.coefficients[k] + away * fit_.covariance.at(k, held_);
            others.push_back(k == 0 ? given : given * design_.scale(k));
        }
        if (held_ > 0) {  // the centred intercept from that of the covariates as given
            others[0] += value * design_.centre(held_);
            for (std::size_t k = 1, place = 1; k < along_.size(); ++k) {
                if (k != held_) others[0] += others[place++] / design_.scale(k) * design_.centre(k);
            }
        }
        return others;
    }

    [[nodiscard]] std::vector<double> whole(double value, const std::vector<double>& others) const {
        std::vector<double> scaled(along_.size());
        scaled[held_] = value * design_.scale(held_);
        for (std::size_t k = 0, place = 0; k < along_.size(); ++k) {
            if (k == held_) continue;
            scaled[k] = others[place++];
            scaled[held_] += along_[k] * scaled[k];
        }
        return scaled;
    }

    [[nodiscard]] LocalQuadratic reduced(const LocalQuadratic& full) const {
        const std::size_t size = along_.size() - 1;
        LocalQuadratic here{.value = full.value, .gradient = {}, .curvature = zeroMatrix(size)};
        const SquareMatrix& c = full.curvature;
        for (std::size_t i = 0; i < size; ++i) {
            const std::size_t k = i < held_ ? i : i + 1;
            here.gradient.push_back(full.gradient[k] + along_[k] * full.gradient[held_]);
            for (std::size_t j = 0; j < size; ++j) {
                const std::size_t l = j < held_ ? j : j + 1;
                here.curvature.at(i, j) = c.at(k, l) + along_[k] * c.at(held_, l) + along_[l] * c.at(k, held_) +
                                          along_[k] * along_[l] * c.at(held_, held_);
            }
        }
        return here;
    }

    const LogisticDesign& design_;
    const LogisticFit& fit_;
    const NewtonMaximum& maximum_;
    std::size_t held_;
    std::vector<double> along_;  // what one unit of each other coefficient moves the held one by
};

struct FirthMaximum {
    LogisticFit fit;
    NewtonMaximum maximum;
};

FirthMaximum firthMaximum(const LogisticDesign& design) {
    FirthMaximum result;
    result.fit.problem = design.problem();
    result.fit.collinearCovariate = design.collinearCovariate();
    if (result.fit.problem != FitProblem::None) return result;
    result.maximum = newtonMaximum([&design](const std::vector<double>& scaled) { return design.penalised(scaled); },
                                   design.start());
    if (result.maximum.converged) {
        result.fit = design.report(result.maximum);
    } else {
        result.fit.problem = FitProblem::NotConverged;
        result.fit.iterations = result.maximum.iterations;
        result.fit.lastStep = result.maximum.lastStep;
    }
    return result;
}

}  // namespace

LogisticFit firthFit(std::span<const BinomialRow> rows) {
    requireRows("firthFit", rows);
    return firthMaximum(LogisticDesign(rows)).fit;
}

FirthLogistic firthLogistic(std::span<const BinomialRow> rows, double level) {
    requireRows("firthLogistic", rows);
    const double z = normalQuantileOfLevel(level);
    const LogisticDesign design(rows);
    const auto [fit, maximum] = firthMaximum(design);
    FirthLogistic result;
    result.fit = fit;
    if (!fit.exists) return result;
    result.penalisedLogLikelihood = maximum.there.value + design.penaltyOfScale();
    for (std::size_t j = 0; j < fit.coefficients.size(); ++j) {
        const Profile profile(design, fit, maximum, j);
        Coefficient one;
        one.estimate = fit.coefficients[j];
        one.standardError = std::sqrt(fit.covariance.at(j, j));
        const std::optional<double> low = profile.limit(z * z / 2, -1), high = profile.limit(z * z / 2, 1);
        if (low && high) one.limits = Interval{.low = *low, .high = *high};
        if (const std::optional<double> fall = profile.fall(0)) {
            one.chiSquare = 2 * *fall;
            one.p = chiSquareTail(*one.chiSquare, 1);
        }
        result.coefficients.push_back(one);
    }
    return result;
}

}  // namespace stats
