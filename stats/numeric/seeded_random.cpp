// SPDX-License-Identifier: MIT
#include "stats/numeric/seeded_random.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>

#include "stats/numeric/require.h"

namespace stats {
namespace {

// Steele, Lea and Flood (2014): turns any seed into a state without visible pattern.
std::uint64_t splitmix64(std::uint64_t& seed) {
    seed += 0x9e3779b97f4a7c15U;
    std::uint64_t z = seed;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31U);
}

constexpr double kLog2High = 0x1.62e42feep-1;       // log 2 in two parts: the first has zeros at its end,
constexpr double kLog2Low = 0x1.a39ef35793c76p-33;  // so that small multiples of it are exact
constexpr int kSmallTrials = 24;                    // below this, counting is quicker than halving

}  // namespace

double portableLog(double x) {
    int exponent = 0;
    double mantissa = std::frexp(x, &exponent);  // exact
    if (mantissa < 0.70710678118654752) {
        mantissa *= 2;
        --exponent;
    }
    // log m = 2 atanh s, |s| < 0.172: eleven terms reach the last bit.
    const double s = (mantissa - 1) / (mantissa + 1), square = s * s;
    double series = 0;
    for (int k = 21; k >= 1; k -= 2) series = series * square + 1.0 / k;
    return exponent * kLog2High + (exponent * kLog2Low + 2 * s * series);
}

double portableExp(double x) {
    if (x < -745.2) return 0;
    if (x > 709.79) return std::numeric_limits<double>::infinity();
    const double turns = std::floor(x / (kLog2High + kLog2Low) + 0.5);
    const double rest = (x - turns * kLog2High) - turns * kLog2Low;  // within half a log 2
    double series = 1;
    for (int k = 16; k >= 1; --k) series = 1 + series * rest / k;
    return std::ldexp(series, static_cast<int>(turns));
}

SeededRandom::SeededRandom(std::uint64_t seed) {
    for (std::uint64_t& word : state_) word = splitmix64(seed);
}

SeededRandom::SeededRandom(const State& state) : state_(state) {
    if (state == State{}) throwDomainError("SeededRandom", "state", 0, "not all zeros");
}

std::uint64_t SeededRandom::next() {
    const std::uint64_t result = std::rotl(state_[1] * 5, 7) * 9;
    const std::uint64_t shifted = state_[1] << 17U;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= shifted;
    state_[3] = std::rotl(state_[3], 45);
    return result;
}

double SeededRandom::uniform() {
    return static_cast<double>(next() >> 11U) * 0x1p-53;
}

std::uint64_t SeededRandom::below(std::uint64_t bound) {
    if (bound == 0) throwDomainError("SeededRandom::below", "bound", 0, "1 or more");
    // The first 2^64 mod bound values are one too many for some remainders; they are drawn again.
    const std::uint64_t tooMany = (0 - bound) % bound;
    std::uint64_t value = next();
    while (value < tooMany) value = next();
    return value % bound;
}

int SeededRandom::binomial(int trials, double p) {
    if (trials < 0) throwDomainError("SeededRandom::binomial", "trials", trials, "0 or more");
    if (!(p >= 0 && p <= 1)) throwDomainError("SeededRandom::binomial", "p", p, "from 0 to 1");
    if (p == 1) return trials;
    int successes = 0;
    while (trials >= kSmallTrials && p > 0) {
        // Of `trials` uniform numbers the i-th smallest is beta(i, trials + 1 - i); it says on which side of p its
        // fellows are.
        const int i = trials / 2 + 1;
        const double split = beta(i, trials + 1 - i);
        if (split <= p) {
            successes += i;
            trials -= i;
            p = std::min(1.0, (p - split) / (1 - split));
        } else {
            trials = i - 1;
            p = p / split;
        }
    }
    for (int trial = 0; trial < trials; ++trial) successes += uniform() < p ? 1 : 0;
    return successes;
}

double SeededRandom::normal(double mean, double standardDeviation) {
    if (!(standardDeviation >= 0))
        throwDomainError("SeededRandom::normal", "standardDeviation", standardDeviation, "0 or more");
    // The second number of each pair is thrown away: keeping it would make the state more than four words.
    for (;;) {
        const double u = 2 * uniform() - 1, v = 2 * uniform() - 1, square = u * u + v * v;
        if (square > 0 && square < 1)
            return mean + standardDeviation * u * std::sqrt(-2 * portableLog(square) / square);
    }
}

double SeededRandom::logGammaVariate(double shape) {
    if (shape < 1) {
        // gamma(shape) is gamma(shape + 1) times a power of a uniform number; in logarithms nothing underflows.
        const double u = 1 - uniform();
        return logGammaVariate(shape + 1) + portableLog(u) / shape;
    }
    const double d = shape - 1.0 / 3, c = 1 / std::sqrt(9 * d);
    for (;;) {
        const double x = normal(), t = 1 + c * x;
        if (t <= 0) continue;
        const double cube = t * t * t, logCube = portableLog(cube);
        const double u = 1 - uniform();
        if (portableLog(u) < x * x / 2 + d - d * cube + d * logCube) return portableLog(d) + logCube;
    }
}

double SeededRandom::gamma(double shape, double scale) {
    if (!(shape > 0) || std::isinf(shape))
        throwDomainError("SeededRandom::gamma", "shape", shape, "above 0 and finite");
    if (!(scale > 0)) throwDomainError("SeededRandom::gamma", "scale", scale, "above 0");
    return scale * portableExp(logGammaVariate(shape));
}

double SeededRandom::beta(double a, double b) {
    if (!(a > 0) || std::isinf(a)) throwDomainError("SeededRandom::beta", "a", a, "above 0 and finite");
    if (!(b > 0) || std::isinf(b)) throwDomainError("SeededRandom::beta", "b", b, "above 0 and finite");
    const double first = logGammaVariate(a), second = logGammaVariate(b);
    return 1 / (1 + portableExp(second - first));
}

}  // namespace stats
