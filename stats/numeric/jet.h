// SPDX-License-Identifier: MIT
// A number that carries its derivatives along: value, gradient and Hessian with respect to N variables, so that a
// likelihood written once also gives Newton's method and the observed information, without formulas derived by hand.
// Only for source files that maximise something; see newton_maximum.h.
//
//     const auto mu = Jet<2>::variable(2.7, 0), logSigma = Jet<2>::variable(-1, 1);
//     const Jet<2> z = (3.0 - mu) * exp(-logSigma);      // z.gradient(1) is dz / d log sigma
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

#include "stats/numeric/newton_maximum.h"

namespace stats {

/// Accuracy  as the same formula in doubles: 1e-12 relative in the second derivatives where nothing cancels.
/// Source    Griewank and Walther (2008), Evaluating Derivatives, 2nd ed., chapters 3 and 13.
template <std::size_t N>
class Jet {
  public:
    Jet(double value = 0) : value_(value) {}  // NOLINT: a constant is a jet without derivatives
    [[nodiscard]] static Jet variable(double value, std::size_t index) {
        Jet jet(value);
        jet.gradient_[index] = 1;
        return jet;
    }

    [[nodiscard]] double value() const { return value_; }
    [[nodiscard]] double gradient(std::size_t i) const { return gradient_[i]; }
    [[nodiscard]] double hessian(std::size_t i, std::size_t j) const { return i < j ? at(j, i) : at(i, j); }

    Jet& operator+=(const Jet& other) { return *this = *this + other; }
    [[nodiscard]] Jet operator-() const { return through(-value_, -1, 0); }
    friend Jet operator+(const Jet& a, const Jet& b) { return combined(a.value_ + b.value_, a, 1, b, 1, 0); }
    friend Jet operator-(const Jet& a, const Jet& b) { return combined(a.value_ - b.value_, a, 1, b, -1, 0); }
    friend Jet operator*(const Jet& a, const Jet& b) {
        return combined(a.value_ * b.value_, a, b.value_, b, a.value_, 1);
    }
    friend Jet operator/(const Jet& a, const Jet& b) {
        const double inverse = 1 / b.value_;
        return a * b.through(inverse, -inverse * inverse, 2 * inverse * inverse * inverse);
    }

    /// f(x) from f, f' and f'' at the value of x: the chain rule.
    [[nodiscard]] Jet through(double f, double slope, double bend) const {
        Jet result(f);
        for (std::size_t i = 0; i < N; ++i) {
            result.gradient_[i] = slope * gradient_[i];
            for (std::size_t j = 0; j <= i; ++j) {
                result.at(i, j) = slope * at(i, j) + bend * gradient_[i] * gradient_[j];
            }
        }
        return result;
    }

  private:
    // A value with first derivatives da, db with respect to a and b, mixed second derivative dab, and no others.
    static Jet combined(double value, const Jet& a, double da, const Jet& b, double db, double dab) {
        Jet result(value);
        for (std::size_t i = 0; i < N; ++i) {
            result.gradient_[i] = da * a.gradient_[i] + db * b.gradient_[i];
            for (std::size_t j = 0; j <= i; ++j) {
                result.at(i, j) = da * a.at(i, j) + db * b.at(i, j) +
                                  dab * (a.gradient_[i] * b.gradient_[j] + a.gradient_[j] * b.gradient_[i]);
            }
        }
        return result;
    }
    [[nodiscard]] double& at(std::size_t i, std::size_t j) { return hessian_[i * (i + 1) / 2 + j]; }
    [[nodiscard]] double at(std::size_t i, std::size_t j) const { return hessian_[i * (i + 1) / 2 + j]; }

    double value_;
    std::array<double, N> gradient_{};
    std::array<double, N*(N + 1) / 2> hessian_{};  // its lower triangle
};

template <std::size_t N>
Jet<N> exp(const Jet<N>& x) {
    const double f = std::exp(x.value());
    return x.through(f, f, f);
}
template <std::size_t N>
Jet<N> expm1(const Jet<N>& x) {
    const double slope = std::exp(x.value());
    return x.through(std::expm1(x.value()), slope, slope);
}
template <std::size_t N>
Jet<N> log(const Jet<N>& x) {
    return x.through(std::log(x.value()), 1 / x.value(), -1 / (x.value() * x.value()));
}
template <std::size_t N>
Jet<N> log1p(const Jet<N>& x) {
    const double slope = 1 / (1 + x.value());
    return x.through(std::log1p(x.value()), slope, -slope * slope);
}
template <std::size_t N>
Jet<N> sqrt(const Jet<N>& x) {
    const double f = std::sqrt(x.value());
    return x.through(f, 0.5 / f, -0.25 / (f * x.value()));
}
/// log(1 + exp(x)), which neither overflows nor loses what is small.
template <std::size_t N>
Jet<N> log1pExp(const Jet<N>& x) {
    const double small = std::exp(-std::abs(x.value())), share = 1 / (1 + small);
    const double slope = x.value() > 0 ? share : small * share;
    return x.through(std::fmax(x.value(), 0.0) + std::log1p(small), slope, small * share * share);
}
/// log(1 - exp(-x)) for x > 0. Source: Maechler (2012), Accurately computing log(1 - exp(-|a|)).
template <std::size_t N>
Jet<N> log1mExp(const Jet<N>& x) {
    const double y = x.value(), small = std::exp(-y), rest = -std::expm1(-y);
    const double f = y < std::numbers::ln2 ? std::log(rest) : std::log1p(-small);
    return x.through(f, small / rest, -small / (rest * rest));
}

/// log of the standard normal distribution function with its first two derivatives, to 1e-13 relative down to any z.
struct LogNormalCdf {
    double value{};
    double slope{};
    double bend{};
};
[[nodiscard]] LogNormalCdf logNormalCdfAt(double z);
template <std::size_t N>
Jet<N> logNormalCdf(const Jet<N>& x) {
    const LogNormalCdf there = logNormalCdfAt(x.value());
    return x.through(there.value, there.slope, there.bend);
}

/// What newtonMaximum() asks for.
template <std::size_t N>
LocalQuadratic localQuadratic(const Jet<N>& jet) {
    LocalQuadratic result{.value = jet.value(), .gradient = std::vector<double>(N), .curvature = zeroMatrix(N)};
    for (std::size_t i = 0; i < N; ++i) {
        result.gradient[i] = jet.gradient(i);
        for (std::size_t j = 0; j < N; ++j) result.curvature.at(i, j) = -jet.hessian(i, j);
    }
    return result;
}

}  // namespace stats
