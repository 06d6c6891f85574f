// SPDX-License-Identifier: MIT
#include "stats/time_to_event/arm_days.h"

#include <cmath>
#include <map>

#include "stats/numeric/cholesky.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

void requireArmDay(std::string_view function, const ExactDay& row) {
    if (!(row.day >= 0) || std::isinf(row.day)) throwDomainError(function, "day", row.day, "0 or more and finite");
    if (row.cause < 0 || row.cause > 2) throwDomainError(function, "cause", row.cause, "0, 1 or 2");
    const bool isCount = row.weight >= 0 && row.weight <= 1e12 && row.weight == std::floor(row.weight);
    if (!isCount) throwDomainError(function, "weight", row.weight, "a whole number from 0 to 1e12");
}

}  // namespace

double ArmsOnDay::all(std::size_t cause) const {
    double sum = 0;
    for (const auto& arm : counts) sum += arm[cause];
    return sum;
}

double ArmsOnDay::allAtRisk() const {
    double sum = 0;
    for (const double arm : atRisk) sum += arm;
    return sum;
}

std::vector<ArmsOnDay> armsByDay(std::string_view function, std::span<const std::vector<ExactDay>> arms) {
    std::map<double, ArmsOnDay> days;
    std::vector<double> atRisk(arms.size());
    for (std::size_t arm = 0; arm < arms.size(); ++arm) {
        for (const ExactDay& row : arms[arm]) {
            requireArmDay(function, row);
            ArmsOnDay& day = days[row.day];
            day.counts.resize(arms.size());
            day.counts[arm][static_cast<std::size_t>(row.cause)] += row.weight;
            atRisk[arm] += row.weight;
        }
    }
    std::vector<ArmsOnDay> result;
    for (auto& [when, day] : days) {
        day.atRisk = atRisk;
        for (std::size_t arm = 0; arm < arms.size(); ++arm) {
            atRisk[arm] -= day.counts[arm][0] + day.counts[arm][1] + day.counts[arm][2];
        }
        if (day.all(1) + day.all(2) > 0) result.push_back(std::move(day));
    }
    return result;
}

std::optional<double> quadraticForm(const std::vector<double>& u, const SquareMatrix& v, double scale) {
    for (std::size_t i = 0; i < v.size; ++i) {
        if (!(v.at(i, i) > 1e-12 * scale)) return {};
    }
    const Cholesky decomposed(v);
    if (v.size == 0 || !decomposed.isPositiveDefinite()) return {};
    const std::vector<double> solved = decomposed.solve(u);
    double sum = 0;
    for (std::size_t i = 0; i < u.size(); ++i) sum += u[i] * solved[i];
    return sum;
}

}  // namespace stats
