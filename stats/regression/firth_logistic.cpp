// SPDX-License-Identifier: MIT
#include "stats/regression/firth_logistic.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/cholesky.h"
#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/regression/logistic_design.h"

namespace stats {
namespace {

// The penalised likelihood with one coefficient held, maximised over the others, followed from the maximum outwards.
// The intercept is that of the covariates as given, so to hold it the centred one has to move along with the rest.
class Profile {
  public:
    Profile(const LogisticDesign& design, const LogisticFit& fit, const NewtonMaximum& maximum, std::size_t held)
        : design_(design),
          estimate_(fit.coefficients[held]),
          error_(std::sqrt(fit.covariance.at(held, held))),
          top_(maximum.there.value),
          held_(held),
          along_(design.coefficients()) {
        for (std::size_t k = 1; held == 0 && k < along_.size(); ++k) along_[k] = design.centre(k) / design.scale(k);
        summit_.value = estimate_;
        for (std::size_t k = 0; k < along_.size(); ++k) {
            if (k != held) summit_.others.push_back(maximum.x[k]);
        }
        summit_.slope = slopeAt(maximum.there);
    }

    // How far the maximum over the others lies below that over all; nothing where it can't be found.
    [[nodiscard]] std::optional<double> fall(double value) const {
        const std::optional<Point> there = follow(summit_, value);
        if (!there) return {};
        const std::optional<Point> other = onHigherRidge(value, there->fall);
        return other ? other->fall : there->fall;
    }

    // Where the fall first is `drop`, towards `direction` (-1 or 1).
    [[nodiscard]] std::optional<double> limit(double drop, double direction) const {
        Point inside = summit_;
        double reach = std::sqrt(2 * drop) * error_;
        for (int widening = 0; widening < 60; ++widening, reach *= 1.5) {
            const Point before = inside;
            const std::optional<Point> outside = follow(before, estimate_ + direction * reach);
            if (!outside) return {};
            inside = *outside;
            if (outside->fall < drop) continue;
            const std::optional<double> found = between(before, outside->value, drop);
            const std::optional<Point> other = found ? onHigherRidge(*found, drop) : std::nullopt;
            if (!other) return found;
            inside = *other;
            reach = std::abs(*found - estimate_);
        }
        return {};
    }

  private:
    struct Point {
        double value{};              // of the held coefficient
        std::vector<double> others;  // the best of them
        std::vector<double> slope;   // how they move with it
        double fall{};
    };

    // Along the tangent to another value of the held coefficient, in shorter stretches where so long a one leads
    // nowhere.
    [[nodiscard]] std::optional<Point> follow(const Point& from, double value) const {
        Point at = from;
        double stretch = value - at.value;
        for (int attempt = 0; attempt < 60 && at.value != value; ++attempt) {
            const double left = value - at.value;
            const double next = std::abs(stretch) < std::abs(left) ? at.value + stretch : value;
            const std::optional<Point> there = climb(at, next);
            if (there) at = *there;
            stretch = there ? 2 * stretch : stretch / 2;
        }
        return at.value == value ? std::optional(at) : std::nullopt;
    }

    [[nodiscard]] std::optional<Point> climb(const Point& from, double value, double shareOfSlope = 1) const {
        std::vector<double> start = from.others;
        for (std::size_t k = 0; k < start.size(); ++k) start[k] += shareOfSlope * (value - from.value) * from.slope[k];
        const NewtonMaximum there = newtonMaximum(
            [&](const std::vector<double>& others) { return reduced(design_.penalised(whole(value, others))); }, start);
        if (!there.converged) return {};
        return Point{.value = value,
                     .others = there.x,
                     .slope = slopeAt(design_.penalised(whole(value, there.x))),
                     .fall = std::max(0.0, top_ - there.there.value)};
    }

    // Where records are separated, the others may have a better maximum than the one followed from the top. Straight from
    // there, by several roads, it is found; nothing where none falls clearly less than `fall`.
    [[nodiscard]] std::optional<Point> onHigherRidge(double value, double fall) const {
        constexpr double clearly = 1e-6;
        std::optional<Point> best;
        for (const double share : {0.0, 0.5, 1.0, 1.5}) {
            std::optional<Point> there = climb(summit_, value, share);
            if (there && there->fall < (best ? best->fall : fall - clearly)) best = std::move(there);
        }
        return best;
    }

    [[nodiscard]] std::optional<double> between(const Point& inside, double outside, double drop) const {
        bool isLost = false;
        const double root = bracketedRoot(
            [&](double value) {
                if (value == outside) return 1.0;
                const std::optional<Point> here = follow(inside, value);
                isLost = isLost || !here;
                return here ? here->fall - drop : 0;
            },
            inside.value, outside, 1e-10 * error_);
        return isLost ? std::nullopt : std::optional(root);
    }

    // Of the others by the held one along the ridge: minus their curvature's inverse times the mixed one.
    [[nodiscard]] std::vector<double> slopeAt(const LocalQuadratic& full) const {
        std::vector<double> mixed;
        for (std::size_t k = 0; k < along_.size(); ++k) {
            if (k == held_) continue;
            mixed.push_back(-design_.scale(held_) *
                            (full.curvature.at(k, held_) + along_[k] * full.curvature.at(held_, held_)));
        }
        const Cholesky others(reduced(full.curvature), 0);
        return others.isPositiveDefinite() ? others.solve(mixed) : std::vector<double>(mixed.size());
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
        LocalQuadratic here{.value = full.value,
                            .gradient = {},
                            .curvature = reduced(full.curvature),
                            .standIn = reduced(full.standIn)};
        for (std::size_t k = 0; k < along_.size(); ++k) {
            if (k != held_) here.gradient.push_back(full.gradient[k] + along_[k] * full.gradient[held_]);
        }
        return here;
    }

    [[nodiscard]] SquareMatrix reduced(const SquareMatrix& full) const {
        const std::size_t size = along_.size() - 1;
        SquareMatrix result = zeroMatrix(size);
        for (std::size_t i = 0; i < size; ++i) {
            const std::size_t k = i < held_ ? i : i + 1;
            for (std::size_t j = 0; j < size; ++j) {
                const std::size_t l = j < held_ ? j : j + 1;
                result.at(i, j) = full.at(k, l) + along_[k] * full.at(held_, l) + along_[l] * full.at(k, held_) +
                                  along_[k] * along_[l] * full.at(held_, held_);
            }
        }
        return result;
    }

    const LogisticDesign& design_;
    double estimate_, error_, top_;
    std::size_t held_;
    std::vector<double> along_;  // what one unit of each other coefficient moves the held one by
    Point summit_;
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
    result.fit = design.report(result.maximum);
    return result;
}

Coefficient byStandardError(const LogisticFit& fit, std::size_t which, double z) {
    Coefficient one;
    one.estimate = fit.coefficients[which];
    one.standardError = std::sqrt(fit.covariance.at(which, which));
    one.limits = Interval{.low = one.estimate - z * one.standardError, .high = one.estimate + z * one.standardError};
    one.chiSquare = std::pow(one.estimate / one.standardError, 2);
    one.p = chiSquareTail(*one.chiSquare, 1);
    return one;
}

}  // namespace

LogisticFit firthFit(std::span<const BinomialRow> rows) {
    requireRows("firthFit", rows);
    return firthMaximum(LogisticDesign(rows)).fit;
}

FirthLogistic firthLogistic(std::span<const BinomialRow> rows, double level, std::size_t nuisance) {
    requireRows("firthLogistic", rows);
    const double z = normalQuantileOfLevel(level);
    const LogisticDesign design(rows);
    const auto [fit, maximum] = firthMaximum(design);
    FirthLogistic result;
    result.fit = fit;
    if (!fit.exists) return result;
    result.penalisedLogLikelihood = maximum.there.value + design.penaltyOfScale();
    if (nuisance >= fit.coefficients.size())
        throwDomainError("firthLogistic", "nuisance", static_cast<double>(nuisance),
                         "at most the number of covariates");
    for (std::size_t j = 0; j < fit.coefficients.size(); ++j) {
        if (nuisance > 0 && j <= nuisance) {
            result.coefficients.push_back(byStandardError(fit, j, z));
            continue;
        }
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
