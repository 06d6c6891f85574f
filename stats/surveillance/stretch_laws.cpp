// SPDX-License-Identifier: MIT
#include "stats/surveillance/stretch_laws.h"

#include <cmath>
#include <map>
#include <numeric>

namespace stats {
namespace {

// log of x (x + r) (x + 2 r) ... of as many factors as were counted in some batch, for each step's x.
class LogRising {
  public:
    void count(int factors) { rows_[factors]; }
    void fill(std::size_t step, double x, double r) {
        double sum = 0;
        int factors = 0;
        for (auto& [wanted, row] : rows_) {
            for (; factors < wanted; ++factors) sum += std::log(x + factors * r);
            row.resize(step + 1);
            row[step] = sum;
        }
    }
    [[nodiscard]] const std::vector<double>& of(int factors) const { return rows_.at(factors); }

  private:
    std::map<int, std::vector<double>> rows_;
};

// Row k: log likelihood of the first k batches at each step.
std::vector<std::vector<double>> likelihoods(std::span<const Tray> batches, const std::vector<RateStep>& steps,
                                             double correlation) {
    LogRising successes, failures, trials;
    for (const Tray& batch : batches) {
        successes.count(batch.successes);
        failures.count(batch.trials - batch.successes);
        trials.count(batch.trials);
    }
    for (std::size_t g = 0; g < steps.size(); ++g) {
        successes.fill(g, steps[g].rate * (1 - correlation), correlation);
        failures.fill(g, (1 - steps[g].rate) * (1 - correlation), correlation);
    }
    trials.fill(0, 1 - correlation, correlation);
    std::vector<std::vector<double>> sofar(batches.size() + 1, std::vector<double>(steps.size()));
    for (std::size_t k = 0; k < batches.size(); ++k) {
        const std::vector<double>& rooted = successes.of(batches[k].successes);
        const std::vector<double>& others = failures.of(batches[k].trials - batches[k].successes);
        const double all = trials.of(batches[k].trials)[0];
        for (std::size_t g = 0; g < steps.size(); ++g) sofar[k + 1][g] = sofar[k][g] + rooted[g] + others[g] - all;
    }
    return sofar;
}

// The log likelihood of a stretch is concave in the rate, so its weights have one top; `top` comes from the stretch
// before and is moved there.
template <class WeightAt>
StretchLaw stretchLaw(const WeightAt& logWeightAt, std::size_t steps, std::size_t& top) {
    constexpr double negligible = 26;
    while (top + 1 < steps && logWeightAt(top + 1) > logWeightAt(top)) ++top;
    while (top > 0 && logWeightAt(top - 1) > logWeightAt(top)) --top;
    const double largest = logWeightAt(top);
    std::size_t first = top, last = top + 1;
    while (first > 0 && logWeightAt(first - 1) > largest - negligible) --first;
    while (last < steps && logWeightAt(last) > largest - negligible) ++last;
    StretchLaw law{.logEvidence = 0, .first = first, .shares = {}};
    law.shares.reserve(last - first);
    for (std::size_t at = first; at < last; ++at) law.shares.push_back(std::exp(logWeightAt(at) - largest));
    const double sum = std::accumulate(law.shares.begin(), law.shares.end(), 0.0);
    for (double& share : law.shares) share /= sum;
    law.logEvidence = largest + std::log(sum);
    return law;
}

}  // namespace

StretchLaws stretchLaws(std::span<const Tray> batches, const std::vector<RateStep>& steps, double correlation) {
    const std::vector<std::vector<double>> sofar = likelihoods(batches, steps, correlation);
    const std::vector<double>& all = sofar.back();
    StretchLaws laws;
    std::size_t top = 0;
    laws.whole = stretchLaw([&](std::size_t g) { return steps[g].logWeight + all[g]; }, steps.size(), top);
    std::size_t topBefore = top, topAfter = top;
    for (std::size_t k = 1; k < batches.size(); ++k) {
        const std::vector<double>& first = sofar[k];
        const auto before = [&](std::size_t g) { return steps[g].logWeight + first[g]; };
        const auto after = [&](std::size_t g) { return steps[g].logWeight + (all[g] - first[g]); };
        laws.before.push_back(stretchLaw(before, steps.size(), topBefore));
        laws.after.push_back(stretchLaw(after, steps.size(), topAfter));
    }
    return laws;
}

}  // namespace stats
