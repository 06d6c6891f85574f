// SPDX-License-Identifier: MIT
#include "stats/numeric/log_factorial.h"

#include <array>
#include <cmath>
#include <numbers>

#include "stats/numeric/require.h"

namespace stats {
namespace {

constexpr int factorialTableSize = 1024;

std::array<double, factorialTableSize> summedLogs() {
    std::array<double, factorialTableSize> table{};
    long double sum = 0;
    for (int n = 1; n < factorialTableSize; ++n) {
        sum += std::log(static_cast<long double>(n));
        table[static_cast<std::size_t>(n)] = static_cast<double>(sum);
    }
    return table;
}

}  // namespace

double logFactorial(int n) {
    static const std::array<double, factorialTableSize> table = summedLogs();
    if (n < 0) throwDomainError("logFactorial", "n", n, "0 or more");
    if (n < factorialTableSize) return table[static_cast<std::size_t>(n)];
    const double x = n;
    const double square = x * x;
    // The next term of the series, 1 / (1260 n^5), is below 1e-18 here.
    return (x + 0.5) * std::log(x) - x + 0.5 * std::log(2 * std::numbers::pi) + (1.0 - 1.0 / (30 * square)) / (12 * x);
}

double logChoose(int things, int chosen) {
    if (chosen < 0 || chosen > things) throwDomainError("logChoose", "chosen", chosen, "from 0 to things");
    return logFactorial(things) - logFactorial(chosen) - logFactorial(things - chosen);
}

}  // namespace stats
