// SPDX-License-Identifier: MIT
#include "stats/surveillance/shared_drop.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"

namespace stats {
namespace {

constexpr double dropStep = 0.2;
constexpr std::size_t drops = 15;       // beyond none: 0.2, 0.4, ... 3
constexpr std::size_t usualRates = 51;  // log-odds -5, -4.8, ... 5
constexpr double lowestLogOdds = -5;

double rateAtPoint(std::size_t point) {
    const double logOdds = lowestLogOdds + dropStep * (static_cast<double>(point) - static_cast<double>(drops));
    return 1 / (1 + std::exp(-logOdds));
}

double logOfSum(const std::vector<double>& logs) {
    const double largest = *std::ranges::max_element(logs);
    double sum = 0;
    for (const double each : logs) sum += std::exp(each - largest);
    return largest + std::log(sum);
}

/// Log weights of the drops, from none on, which sum to 1: the trapezoidal rule.
std::vector<double> halfNormal() {
    std::vector<double> logs{-std::log(2)};
    for (std::size_t j = 1; j <= drops; ++j) {
        const double drop = dropStep * static_cast<double>(j);
        logs.push_back(-drop * drop / 2);
    }
    const double all = logOfSum(logs);
    for (double& each : logs) each -= all;
    return logs;
}

/// A group's law of the usual rate, as weights that sum to 1.
std::vector<double> weightsOf(const std::vector<double>& logs) {
    std::vector<double> weights;
    const double all = logOfSum(logs);
    for (const double each : logs) weights.push_back(std::exp(each - all));
    return weights;
}

}  // namespace

SharedDrop::SharedDrop(std::span<const GroupedTray> batches, int groups, double correlation)
    : batches_(batches.begin(), batches.end()), correlation_(correlation) {
    if (!(correlation >= 0 && correlation < 1))
        throwDomainError("SharedDrop", "correlation", correlation, "0 <= correlation < 1");
    Row prior;
    for (std::size_t k = 0; k < usualRates; ++k) {
        const double rate = rateAtPoint(k + drops);
        prior.push_back(std::log(rate * (1 - rate)) / 2);
    }
    together_.assign(static_cast<std::size_t>(std::max(groups, 0)), prior);
    for (const GroupedTray& batch : batches_) {
        requireCounts("SharedDrop", batch.tray.successes, batch.tray.trials);
        if (batch.group < 0 || batch.group >= groups)
            throwDomainError("SharedDrop", "group", batch.group, "one of the groups");
        Row& row = likelihood_.emplace_back(usualRates + drops);
        if (batch.tray.trials == 0) continue;
        const BetaBinomialLikelihood law(std::span(&batch.tray, 1));
        for (std::size_t p = 0; p < row.size(); ++p) row[p] = law.logLikelihood(rateAtPoint(p), correlation);
        Row& all = together_[static_cast<std::size_t>(batch.group)];
        for (std::size_t k = 0; k < usualRates; ++k) all[k] += row[k + drops];
    }
}

std::vector<SharedDrop::Row> SharedDrop::outside(std::span<const std::size_t> members) const {
    std::vector<Row> rest = together_;
    for (const std::size_t member : members) {
        if (member >= batches_.size())
            throwDomainError("SharedDrop", "member", static_cast<double>(member), "one of the batches");
        Row& group = rest[static_cast<std::size_t>(batches_[member].group)];
        for (std::size_t k = 0; k < usualRates; ++k) group[k] -= likelihood_[member][k + drops];
    }
    return rest;
}

double SharedDrop::logLikelihoodRatio(std::span<const std::size_t> members) const {
    if (members.empty()) return 0;
    const std::vector<Row> rest = outside(members);
    std::map<int, std::vector<std::size_t>> byGroup;
    for (const std::size_t member : members) byGroup[batches_[member].group].push_back(member);
    std::vector<double> withDrop = halfNormal();
    double without = 0;
    for (const auto& [group, inGroup] : byGroup) {
        without += logOfSum(together_[static_cast<std::size_t>(group)]);
        for (std::size_t j = 0; j <= drops; ++j) {
            Row logs = rest[static_cast<std::size_t>(group)];
            for (const std::size_t member : inGroup)
                for (std::size_t k = 0; k < usualRates; ++k) logs[k] += likelihood_[member][k + drops - j];
            withDrop[j] += logOfSum(logs);
        }
    }
    return logOfSum(withDrop) - without;
}

std::vector<ForetoldCount> SharedDrop::foretold(std::span<const std::size_t> members) const {
    struct Usual {
        double mean{}, variance{}, ofOne{};  // of the rate; E[rate (1 - rate)]
        double trials{};
    };
    std::map<int, Usual> usual;
    const std::vector<Row> rest = outside(members);
    std::vector<ForetoldCount> counts;
    ForetoldCount sum;
    for (const std::size_t member : members) {
        const auto [at, isNew] = usual.try_emplace(batches_[member].group);
        Usual& rate = at->second;
        if (isNew) {
            const std::vector<double> weights = weightsOf(rest[static_cast<std::size_t>(batches_[member].group)]);
            double square = 0;
            for (std::size_t k = 0; k < usualRates; ++k) {
                const double each = rateAtPoint(k + drops);
                rate.mean += weights[k] * each;
                square += weights[k] * each * each;
            }
            rate.variance = std::max(0.0, square - rate.mean * rate.mean);
            rate.ofOne = rate.mean - square;
        }
        const double trials = batches_[member].tray.trials;
        const double luck = trials * rate.ofOne * (1 + std::max(0.0, trials - 1) * correlation_);
        counts.push_back({.expected = trials * rate.mean, .variance = luck + trials * trials * rate.variance});
        sum.expected += counts.back().expected;
        sum.variance += luck;
        rate.trials += trials;
    }
    for (const auto& [group, rate] : usual) sum.variance += rate.trials * rate.trials * rate.variance;
    counts.push_back(sum);
    return counts;
}

}  // namespace stats
