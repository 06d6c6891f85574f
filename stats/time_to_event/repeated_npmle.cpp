// SPDX-License-Identifier: MIT
#include "stats/time_to_event/repeated_npmle.h"

#include <algorithm>
#include <tuple>

namespace stats {
namespace {

// Smaller masses are what is left of a column on its way out; the certificate cannot tell them from 0.
constexpr double kSmallestMass = 1e-9;

auto orderOf(const Observation& row) {
    return std::tuple(row.cause, row.after, row.by);
}

// Masses of `curve` gathered into the intervals that contain theirs; both in order of day.
template <class Place>
void gather(const std::vector<SupportInterval>& curve, const std::vector<InnermostInterval>& intervals, Place place,
            std::vector<double>& masses) {
    std::size_t i = 0;
    for (const SupportInterval& support : curve) {
        while (i < intervals.size() && intervals[i].right < support.right) ++i;
        if (i < intervals.size() && intervals[i].left <= support.left) {
            masses[static_cast<std::size_t>(place(static_cast<int>(i)))] += support.mass;
        }
    }
}

}  // namespace

std::vector<Observation> RepeatedNpmle::distinctRows(std::span<const std::span<const Observation>> batches) {
    std::vector<Observation> rows;
    for (const auto& batch : batches) {
        for (const Observation& one : batch) {
            if (one.weight > 0) rows.push_back(one);
        }
    }
    std::sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return orderOf(a) < orderOf(b); });
    const auto isSame = [](const auto& a, const auto& b) { return orderOf(a) == orderOf(b); };
    rows.erase(std::unique(rows.begin(), rows.end(), isSame), rows.end());
    return rows;
}

RepeatedNpmle::RepeatedNpmle(std::span<const std::span<const Observation>> batches)
    : rows_(distinctRows(batches)), cause1_(rows_, 1), cause2_(rows_, 2), weights_(rows_.size()) {
    for (const auto& batch : batches) {
        auto& weighted = batches_.emplace_back();
        for (const Observation& one : batch) {
            if (!(one.weight > 0)) continue;
            const auto place = std::lower_bound(rows_.begin(), rows_.end(), one,
                                                [](const auto& a, const auto& b) { return orderOf(a) < orderOf(b); });
            weighted.push_back({.row = static_cast<std::size_t>(place - rows_.begin()), .weight = one.weight});
        }
    }
}

CumulativeIncidence RepeatedNpmle::estimate(std::span<const double> times, const MixtureLimits& limits,
                                            const std::stop_token& stop) {
    std::fill(weights_.begin(), weights_.end(), 0.0);
    for (std::size_t b = 0; b < batches_.size(); ++b) {
        if (!(times[b] > 0)) continue;
        for (const WeightedRow& weighted : batches_[b]) weights_[weighted.row] += times[b] * weighted.weight;
    }
    cause1_.choose(weights_);
    cause2_.choose(weights_);
    bool hasNeither = false;
    for (std::size_t row = 0; row < rows_.size() && rows_[row].cause == 0; ++row) hasNeither |= weights_[row] > 0;
    Columns columns{.count1 = static_cast<int>(cause1_.intervals().size()),
                    .count2 = static_cast<int>(cause2_.intervals().size())};
    columns.begin2 = columns.count1 + (hasNeither ? 1 : 0);
    if (columns.count() == 0) return {};
    fillMixture(columns);
    return translated(fitIntervalMixture(mixture_, startingMasses(columns), limits, stop), columns);
}

void RepeatedNpmle::fillMixture(const Columns& columns) {
    mixture_.columns = columns.count();
    mixture_.rows.clear();
    for (std::size_t row = 0; row < rows_.size(); ++row) {
        if (!(weights_[row] > 0)) continue;
        CoveredColumns covered{.first = 0, .last = 0, .weight = weights_[row]};
        if (rows_[row].cause == 1) {
            const IntervalRun run = cause1_.runOf(row);
            covered.first = run.first;
            covered.last = run.last;
        } else if (rows_[row].cause == 2) {
            const IntervalRun run = cause2_.runOf(row);
            covered.first = columns.place2(run.last);
            covered.last = columns.place2(run.first);
        } else {
            covered.first = cause1_.runOf(row).first;
            covered.last = columns.place2(cause2_.runOf(row).first);
        }
        // Many rows differ only in days between which nothing can have come.
        const bool isLikeLast = !mixture_.rows.empty() && mixture_.rows.back().first == covered.first &&
                                mixture_.rows.back().last == covered.last;
        if (isLikeLast) {
            mixture_.rows.back().weight += covered.weight;
        } else {
            mixture_.rows.push_back(covered);
        }
    }
}

std::vector<double> RepeatedNpmle::startingMasses(const Columns& columns) const {
    std::vector<double> masses(static_cast<std::size_t>(columns.count()), 0.0);
    if (start_.cause1.empty() && start_.cause2.empty()) return masses;
    gather(
        start_.cause1, cause1_.intervals(), [](int i) { return i; }, masses);
    gather(
        start_.cause2, cause2_.intervals(), [&columns](int i) { return columns.place2(i); }, masses);
    if (columns.begin2 > columns.count1) masses[static_cast<std::size_t>(columns.count1)] += start_.neither;
    return masses;
}

CumulativeIncidence RepeatedNpmle::translated(const MixtureFit& fit, const Columns& columns) const {
    CumulativeIncidence result;
    const auto keep = [&fit](std::vector<SupportInterval>& curve, const InnermostInterval& interval, int column) {
        const double mass = fit.masses[static_cast<std::size_t>(column)];
        if (mass > kSmallestMass) curve.push_back({.left = interval.left, .right = interval.right, .mass = mass});
    };
    for (int i = 0; i < columns.count1; ++i) keep(result.cause1, cause1_.intervals()[static_cast<std::size_t>(i)], i);
    for (int i = 0; i < columns.count2; ++i) {
        keep(result.cause2, cause2_.intervals()[static_cast<std::size_t>(i)], columns.place2(i));
    }
    result.neither = columns.begin2 > columns.count1 ? fit.masses[static_cast<std::size_t>(columns.count1)] : 0.0;
    if (result.neither <= kSmallestMass) result.neither = 0.0;
    result.logLikelihood = fit.logLikelihood;
    result.gap = fit.gap;
    result.converged = fit.converged;
    result.iterations = fit.iterations;
    return result;
}

}  // namespace stats
