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

    Jet& operator+=(const Jet& other) {
        value_ += other.value_;
        for (std::size_t i = 0; i < N; ++i) gradient_[i] += other.gradient_[i];
        for (std::size_t i = 0; i < hessian_.size(); ++i) hessian_[i] += other.hessian_[i];
        return *this;
    }
    [[nodiscard]] Jet operator-() const { return -1.0 * *this; }
    friend Jet operator+(Jet a, const Jet& b) { return a += b; }
    friend Jet operator-(Jet a, const Jet& b) { return a += -b; }
    friend Jet operator*(const Jet& a, const Jet& b) {
        Jet result(a.value_ * b.value_);
        for (std::size_t i = 0; i < N; ++i) {
            result.gradient_[i] = a.gradient_[i] * b.value_ + a.value_ * b.gradient_[i];
            for (std::size_t j = 0; j <= i; ++j) {
                result.at(i, j) = a.at(i, j) * b.value_ + a.gradient_[i] * b.gradient_[j] +
                                  a.gradient_[j] * b.gradient_[i] + a.value_ * b.at(i, j);
            }
        }
        return result;
    }
    friend Jet operator*(double factor, Jet x) {
        x.value_ *= factor;
        for (double& slope : x.gradient_) slope *= factor;
        for (double& bend : x.hessian_) bend *= factor;
        return x;
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

}  // namespace stats
