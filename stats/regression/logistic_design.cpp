// SPDX-License-Identifier: MIT
#include "stats/regression/logistic_design.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

#include "stats/numeric/cholesky.h"

namespace stats {
namespace {

double logOnePlusExp(double t) {
    return t > 0 ? t + std::log1p(std::exp(-t)) : std::log1p(std::exp(t));
}

struct FittedRate {
    double success{}, failure{};  // each to all its digits
};

FittedRate fittedRate(const std::vector<double>& x, const std::vector<double>& scaled) {
    double logOdds = 0;
    for (std::size_t j = 0; j < x.size(); ++j) logOdds += x[j] * scaled[j];
    return {.success = std::exp(-logOnePlusExp(-logOdds)), .failure = std::exp(-logOnePlusExp(logOdds))};
}

// Below the diagonal only, so that each product is formed once.
void addSquare(SquareMatrix& matrix, const std::vector<double>& x, double weight, std::size_t rows) {
    for (std::size_t i = 0; i < rows; ++i) {
        for (std::size_t j = 0; j <= i; ++j) matrix.at(i, j) += weight * x[i] * x[j];
    }
}

void mirror(SquareMatrix& matrix) {
    for (std::size_t i = 0; i < matrix.size; ++i) {
        for (std::size_t j = 0; j < i; ++j) matrix.at(j, i) = matrix.at(i, j);
    }
}

// All indices are alike; what is there has them falling.
void mirror(std::vector<SquareMatrix>& third) {
    for (std::size_t r = 0; r < third.size(); ++r) {
        for (std::size_t s = 0; s < third.size(); ++s) {
            for (std::size_t t = 0; t <= s; ++t) {
                std::array<std::size_t, 3> falling{r, s, t};
                std::sort(falling.rbegin(), falling.rend());
                third[r].at(s, t) = third[falling[0]].at(falling[1], falling[2]);
            }
        }
        mirror(third[r]);
    }
}

double traceOfProduct(const SquareMatrix& a, const SquareMatrix& b) {
    double sum = 0;
    for (std::size_t i = 0; i < a.size; ++i) {
        for (std::size_t k = 0; k < a.size; ++k) sum += a.at(i, k) * b.at(k, i);
    }
    return sum;
}

SquareMatrix product(const SquareMatrix& a, const SquareMatrix& b) {
    SquareMatrix result = zeroMatrix(a.size);
    for (std::size_t i = 0; i < a.size; ++i) {
        for (std::size_t k = 0; k < a.size; ++k) {
            for (std::size_t j = 0; j < a.size; ++j) result.at(i, j) += a.at(i, k) * b.at(k, j);
        }
    }
    return result;
}

double squareIn(const SquareMatrix& matrix, const std::vector<double>& x) {
    double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        for (std::size_t j = 0; j < x.size(); ++j) sum += x[i] * matrix.at(i, j) * x[j];
    }
    return sum;
}

}  // namespace

LogisticDesign::LogisticDesign(std::span<const BinomialRow> rows) {
    for (const BinomialRow& row : rows) {
        if (row.trials == 0) continue;
        Row used{.successes = static_cast<double>(row.successes), .trials = static_cast<double>(row.trials), .x = {1}};
        used.x.insert(used.x.end(), row.covariates.begin(), row.covariates.end());
        rows_.push_back(std::move(used));
    }
    if (rows_.empty()) return;
    problem_ = FitProblem::None;
    scaleCovariates();
    if (problem_ == FitProblem::None) findCollinear();
}

void LogisticDesign::scaleCovariates() {
    const double count = static_cast<double>(rows_.size());
    for (std::size_t j = 1; j < rows_.front().x.size(); ++j) {
        double mean = 0, squares = 0, largest = 0;
        for (const Row& row : rows_) mean += row.x[j] / count;
        for (Row& row : rows_) {
            largest = std::max(largest, std::abs(row.x[j]));
            row.x[j] -= mean;
            squares += row.x[j] * row.x[j] / count;
        }
        const double scale = std::sqrt(squares);
        if (!(scale > 1e-12 * largest)) {
            problem_ = FitProblem::Collinear;
            collinearCovariate_ = j - 1;
            return;
        }
        for (Row& row : rows_) row.x[j] /= scale;
        centre_.push_back(mean);
        scale_.push_back(scale);
    }
}

void LogisticDesign::findCollinear() {
    SquareMatrix squares = zeroMatrix(coefficients());
    for (const Row& row : rows_) addSquare(squares, row.x, 1, coefficients());
    constexpr double leastPivot = 1e-10;  // a covariate's share that those before it leave unexplained
    if (const auto dependent = Cholesky(squares, leastPivot).firstDependent()) {
        problem_ = FitProblem::Collinear;
        collinearCovariate_ = *dependent - 1;
    }
}

bool LogisticDesign::isAllOrNone() const {
    return std::all_of(rows_.begin(), rows_.end(), [](const Row& row) { return row.successes == 0; }) ||
           std::all_of(rows_.begin(), rows_.end(), [](const Row& row) { return row.successes == row.trials; });
}

bool LogisticDesign::isBeyondDoubt(const std::vector<double>& scaled) const {
    return std::any_of(rows_.begin(), rows_.end(), [&scaled](const Row& row) {
        const auto [success, failure] = fittedRate(row.x, scaled);
        const double missed = row.successes == 0 ? success : row.successes == row.trials ? failure : 1;
        return row.trials * missed < 1e-5;
    });
}

std::vector<double> LogisticDesign::start() const {
    double successes = 0.5, failures = 0.5;
    for (const Row& row : rows_) {
        successes += row.successes;
        failures += row.trials - row.successes;
    }
    std::vector<double> scaled(coefficients());
    scaled[0] = std::log(successes / failures);
    return scaled;
}

LocalQuadratic LogisticDesign::logLikelihood(const std::vector<double>& scaled) const {
    LocalQuadratic here{
        .value = 0, .gradient = std::vector<double>(coefficients()), .curvature = zeroMatrix(coefficients())};
    for (const Row& row : rows_) {
        double logOdds = 0;
        for (std::size_t j = 0; j < row.x.size(); ++j) logOdds += row.x[j] * scaled[j];
        const auto [success, failure] = fittedRate(row.x, scaled);
        const double failures = row.trials - row.successes;
        if (row.successes > 0) here.value -= row.successes * logOnePlusExp(-logOdds);
        if (failures > 0) here.value -= failures * logOnePlusExp(logOdds);
        const double excess = row.successes * failure - failures * success;  // y - n pi without cancellation
        for (std::size_t j = 0; j < row.x.size(); ++j) here.gradient[j] += excess * row.x[j];
        addSquare(here.curvature, row.x, row.trials * success * failure, row.x.size());
    }
    mirror(here.curvature);
    return here;
}

// With w the weights of the information I and V its inverse, primes for derivatives by log odds, T_r = sum w' x_r x x':
// the penalty's gradient is tr(V T_r) / 2, its Hessian sum w'' (x'V x) x_r x_s / 2 - tr(V T_r V T_s) / 2.
LocalQuadratic LogisticDesign::penalised(const std::vector<double>& scaled) const {
    LocalQuadratic here = logLikelihood(scaled);
    const std::size_t size = coefficients();
    here.standIn = here.curvature;
    const Cholesky information(here.curvature);
    if (!information.isPositiveDefinite()) {
        here.value = -std::numeric_limits<double>::infinity();
        return here;
    }
    here.value += information.logDeterminant() / 2;
    const SquareMatrix inverse = information.inverse();
    std::vector<SquareMatrix> third(size, zeroMatrix(size));
    for (const Row& row : rows_) {
        const auto [success, failure] = fittedRate(row.x, scaled);
        const double weight = row.trials * success * failure, slope = weight * (failure - success);
        for (std::size_t r = 0; r < size; ++r) addSquare(third[r], row.x, slope * row.x[r], r + 1);
        const double bend = weight * (1 - 6 * success * failure);
        addSquare(here.curvature, row.x, -bend * squareIn(inverse, row.x) / 2, size);
    }
    mirror(third);
    std::vector<SquareMatrix> scaledThird;
    for (const SquareMatrix& each : third) scaledThird.push_back(product(inverse, each));
    for (std::size_t r = 0; r < size; ++r) {
        for (std::size_t i = 0; i < size; ++i) here.gradient[r] += scaledThird[r].at(i, i) / 2;
        for (std::size_t s = 0; s <= r; ++s) {
            here.curvature.at(r, s) += traceOfProduct(scaledThird[r], scaledThird[s]) / 2;
        }
    }
    mirror(here.curvature);
    return here;
}

double LogisticDesign::penaltyOfScale() const {
    double sum = 0;
    for (const double scale : scale_) sum += std::log(scale);
    return sum;
}

LogisticFit LogisticDesign::report(const NewtonMaximum& maximum) const {
    LogisticFit fit;
    fit.problem = FitProblem::NotConverged;
    fit.iterations = maximum.iterations;
    fit.lastStep = maximum.lastStep;
    const std::size_t size = coefficients();
    const LocalQuadratic there = logLikelihood(maximum.x);
    const Cholesky information(there.curvature);
    if (!maximum.converged || !information.isPositiveDefinite()) return fit;
    fit.exists = true;
    fit.problem = FitProblem::None;
    fit.logLikelihood = there.value;
    fit.degreesOfFreedom = std::max(0, static_cast<int>(rows_.size()) - static_cast<int>(size));
    // Coefficients of the covariates as given are back times those of the scaled ones.
    SquareMatrix back = zeroMatrix(size);
    for (std::size_t j = 0; j < size; ++j) {
        back.at(j, j) = 1 / scale_[j];
        if (j > 0) back.at(0, j) = -centre_[j] / scale_[j];
    }
    fit.coefficients.resize(size);
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = i; j < size; ++j) fit.coefficients[i] += back.at(i, j) * maximum.x[j];
    }
    SquareMatrix transposed = back;
    for (std::size_t j = 1; j < size; ++j) std::swap(transposed.at(0, j), transposed.at(j, 0));
    fit.covariance = product(product(back, information.inverse()), transposed);
    addPearson(maximum.x, fit);
    return fit;
}

void LogisticDesign::addPearson(const std::vector<double>& scaled, LogisticFit& fit) const {
    double sum = 0;
    for (const Row& row : rows_) {
        const auto [success, failure] = fittedRate(row.x, scaled);
        const double excess = row.successes * failure - (row.trials - row.successes) * success;
        if (excess != 0) sum += excess / success * (excess / failure) / row.trials;
    }
    if (std::isfinite(sum)) fit.pearsonChiSquare = sum;
}

}  // namespace stats
