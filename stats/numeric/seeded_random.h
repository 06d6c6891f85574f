// SPDX-License-Identifier: MIT
// The one source of chance: explicit, seeded, and the same on every machine. The standard library's distributions
// differ from one implementation to the next, and so do log and exp in their last digit; these are our own throughout.
//
//     SeededRandom random(20260101);
//     const int rooted = random.binomial(24, random.beta(6, 2));
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <utility>

namespace stats {

/// Not for   secrets.
/// Source    the generator xoshiro256** of Blackman and Vigna (2021), ACM Trans. Math. Softw. 47, article 36; its state
///           from the seed by splitmix64.
class SeededRandom {
  public:
    using State = std::array<std::uint64_t, 4>;

    explicit SeededRandom(std::uint64_t seed);
    /// Takes up at a given state, which must not be all zeros (std::domain_error).
    explicit SeededRandom(const State& state);
    [[nodiscard]] const State& state() const { return state_; }

    /// 64 random bits.
    [[nodiscard]] std::uint64_t next();
    /// In [0, 1), a multiple of 2^-53.
    [[nodiscard]] double uniform();
    /// 0 .. bound - 1, each equally likely. bound >= 1.
    [[nodiscard]] std::uint64_t below(std::uint64_t bound);
    /// Successes of `trials` with probability p each. trials >= 0, 0 <= p <= 1. By order statistics from the beta
    /// distribution while trials are many (Relles 1972, J. Am. Stat. Assoc. 67, 612-613), so exact and fast at any
    /// size.
    [[nodiscard]] int binomial(int trials, double p);
    /// Marsaglia's polar method.
    [[nodiscard]] double normal(double mean = 0.0, double standardDeviation = 1.0);
    /// Marsaglia and Tsang (2000), ACM Trans. Math. Softw. 26, 363-372. shape > 0, scale > 0. May be 0 when the shape
    /// is tiny.
    [[nodiscard]] double gamma(double shape, double scale = 1.0);
    /// a > 0, b > 0. In [0, 1].
    [[nodiscard]] double beta(double a, double b);

    /// Every order equally likely.
    template <class T>
    void shuffle(std::span<T> values) {
        for (std::size_t left = values.size(); left > 1; --left) {
            std::swap(values[left - 1], values[static_cast<std::size_t>(below(left))]);
        }
    }

  private:
    [[nodiscard]] double logGammaVariate(double shape);

    State state_{};
};

/// The natural logarithm from the four arithmetic operations alone, so the same bits everywhere. 0 < x < infinity.
/// Within 2e-15 relative.
[[nodiscard]] double portableLog(double x);
/// exp(x) likewise; 0 below -745, infinite above 709.78. Within 2e-15 relative.
[[nodiscard]] double portableExp(double x);

}  // namespace stats
