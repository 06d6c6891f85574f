// SPDX-License-Identifier: MIT
#include "stats/regression/dose_response.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/regression/fieller_interval.h"
#include "stats/regression/firth_logistic.h"
#include "stats/regression/logistic_regression.h"

namespace stats {
namespace {

double rateOfLogOdds(double logOdds) {
    return 1 / (1 + std::exp(-logOdds));
}

void requireDose(std::string_view function, double dose) {
    if (!(dose >= 1e-100 && dose <= 1e100)) throwDomainError(function, "dose", dose, "from 1e-100 to 1e100");
}

// The trays with a dose as rows of log dose about its mean, and the square of that.
struct DosedRows {
    std::vector<BinomialRow> rows;
    double centre{}, lowest{}, highest{};  // of log dose
};

DosedRows dosedRows(std::span<const DoseTray> trays) {
    DosedRows dosed;
    for (const DoseTray& tray : trays) {
        if (tray.dose == 0 || tray.trials == 0) continue;
        dosed.rows.push_back({tray.successes, tray.trials, {std::log(tray.dose)}});
    }
    if (dosed.rows.empty()) return dosed;
    dosed.lowest = dosed.highest = dosed.rows.front().covariates[0];
    for (const BinomialRow& row : dosed.rows) {
        dosed.centre += row.covariates[0] / static_cast<double>(dosed.rows.size());
        dosed.lowest = std::min(dosed.lowest, row.covariates[0]);
        dosed.highest = std::max(dosed.highest, row.covariates[0]);
    }
    for (BinomialRow& row : dosed.rows) {
        const double distance = row.covariates[0] - dosed.centre;
        // Nearer than rounding is at the mean.
        const double x = std::abs(distance) < 1e-12 ? 0 : distance;
        row.covariates = {x, x * x};
    }
    return dosed;
}

struct UntreatedTrays {
    std::optional<double> rate;
    double pearsonChiSquare{};
    int degreesOfFreedom{};
};

UntreatedTrays untreatedTrays(std::span<const DoseTray> trays) {
    UntreatedTrays result;
    double successes = 0, trials = 0;
    int count = 0;
    for (const DoseTray& tray : trays) {
        if (tray.dose != 0 || tray.trials == 0) continue;
        successes += tray.successes;
        trials += tray.trials;
        ++count;
    }
    if (count == 0) return result;
    const double rate = successes / trials;
    result.rate = rate;
    if (successes == 0 || successes == trials) return result;  // says nothing about spread
    result.degreesOfFreedom = count - 1;
    for (const DoseTray& tray : trays) {
        if (tray.dose != 0 || tray.trials == 0) continue;
        const double excess = tray.successes - tray.trials * rate;
        result.pearsonChiSquare += excess * excess / (tray.trials * rate * (1 - rate));
    }
    return result;
}

void addDispersion(const UntreatedTrays& untreated, DoseResponse& response) {
    if (!response.fit.pearsonChiSquare) return;
    response.degreesOfFreedom = response.fit.degreesOfFreedom + untreated.degreesOfFreedom;
    if (response.degreesOfFreedom == 0) return;
    const double pearson = *response.fit.pearsonChiSquare + untreated.pearsonChiSquare;
    response.dispersion = std::max(1.0, pearson / response.degreesOfFreedom);
}

void addPeak(const DosedRows& dosed, DoseResponse& response) {
    const double b0 = response.fit.coefficients[0], b1 = response.fit.coefficients[1],
                 b2 = response.fit.coefficients[2];
    response.coefficients = {b0 - b1 * dosed.centre + b2 * dosed.centre * dosed.centre, b1 - 2 * b2 * dosed.centre, b2};
    response.peak = Peak::None;
    if (b2 >= 0) return;
    const double top = -b1 / (2 * b2), logDose = dosed.centre + top;
    response.peak = Peak::BelowDoses;
    if (logDose <= dosed.lowest) return;
    response.peak = Peak::AboveDoses;
    if (!(logDose < dosed.highest)) return;
    response.peak = Peak::Inside;
    response.bestDose = std::exp(logDose);
    response.bestRate = rateOfLogOdds(b0 + b1 * top / 2);
}

PeakAnswer peakAnswer(const DoseResponse& response, double quantile, double dispersion) {
    PeakAnswer answer;
    if (response.peak != Peak::Inside) return answer;
    const SquareMatrix& covariance = response.fit.covariance;
    const auto interval = fiellerInterval({.numerator = -response.fit.coefficients[1],
                                           .denominator = 2 * response.fit.coefficients[2],
                                           .numeratorVariance = dispersion * covariance.at(1, 1),
                                           .denominatorVariance = 4 * dispersion * covariance.at(2, 2),
                                           .covariance = -2 * dispersion * covariance.at(1, 2)},
                                          quantile);
    answer.kind = interval ? PeakLimits::Bounded : PeakLimits::Unbounded;
    if (interval) {
        answer.limits = Interval{.low = std::exp(response.centre + interval->low),
                                 .high = std::exp(response.centre + interval->high)};
    }
    return answer;
}

}  // namespace

DoseResponse doseResponse(std::span<const DoseTray> trays, double level, DoseEstimator estimator) {
    requireLevel("doseResponse", level);
    for (const DoseTray& tray : trays) {
        requireCounts("doseResponse", tray.successes, tray.trials);
        if (tray.dose != 0) requireDose("doseResponse", tray.dose);
    }
    const DosedRows dosed = dosedRows(trays);
    const UntreatedTrays untreated = untreatedTrays(trays);
    DoseResponse response;
    response.untreatedRate = untreated.rate;
    response.centre = dosed.centre;
    response.fit = estimator == DoseEstimator::Firth ? firthFit(dosed.rows) : logisticRegression(dosed.rows);
    response.problem = response.fit.problem;
    if (!response.fit.exists) return response;
    addDispersion(untreated, response);
    addPeak(dosed, response);
    response.asCounted = peakAnswer(response, normalQuantileOfLevel(level), 1);
    const double z = response.fit.coefficients[2] / std::sqrt(response.fit.covariance.at(2, 2));
    response.asCounted.curvatureP = std::erfc(std::abs(z) / std::numbers::sqrt2);
    if (response.degreesOfFreedom > 0) {
        const double quantile = studentQuantileOfLevel(level, response.degreesOfFreedom);
        response.withSpread = peakAnswer(response, quantile, response.dispersion);
        response.withSpread.curvatureP =
            studentTwoSidedTail(z / std::sqrt(response.dispersion), response.degreesOfFreedom);
    }
    return response;
}

std::optional<RateAtDose> rateAtDose(const DoseResponse& response, double dose, double level) {
    requireDose("rateAtDose", dose);
    requireLevel("rateAtDose", level);
    if (!response.fit.exists) return {};
    const double x = std::log(dose) - response.centre;
    const double powers[] = {1, x, x * x};
    double logOdds = 0, variance = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        logOdds += response.fit.coefficients[i] * powers[i];
        for (std::size_t j = 0; j < 3; ++j) variance += powers[i] * response.fit.covariance.at(i, j) * powers[j];
    }
    const auto around = [logOdds](double reach) {
        return Interval{.low = rateOfLogOdds(logOdds - reach), .high = rateOfLogOdds(logOdds + reach)};
    };
    const double error = std::sqrt(std::max(0.0, variance));
    RateAtDose result{
        .rate = rateOfLogOdds(logOdds), .asCounted = around(normalQuantileOfLevel(level) * error), .withSpread = {}};
    if (response.degreesOfFreedom > 0) {
        result.withSpread =
            around(studentQuantileOfLevel(level, response.degreesOfFreedom) * std::sqrt(response.dispersion) * error);
    }
    return result;
}

}  // namespace stats
