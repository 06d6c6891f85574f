// SPDX-License-Identifier: MIT
#include "stats/surveillance/change_point.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>
#include <string_view>
#include <utility>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/rate_law.h"
#include "stats/overdispersion/rate_steps.h"
#include "stats/surveillance/stretch_laws.h"

namespace stats {
namespace {

constexpr std::string_view turnName = "changePoint";

// A step is a quarter of the narrowest posterior's deviation.
std::vector<RateStep> turnSteps(const RatePrior& prior, double trials) {
    constexpr double perRoot = 12, fewest = 200, most = 8000;
    std::vector<RateStep> steps =
        rateSteps(prior, static_cast<int>(std::clamp(perRoot * std::sqrt(trials), fewest, most)));
    double largest = -std::numeric_limits<double>::infinity(), sum = 0;
    for (const RateStep& step : steps) largest = std::max(largest, step.logWeight);
    for (const RateStep& step : steps) sum += std::exp(step.logWeight - largest);
    for (RateStep& step : steps) step.logWeight -= largest + std::log(sum);
    return steps;
}

// One place and one correlation.
struct TurnCase {
    std::size_t place{};
    double logWeight{};
    double weight{};  // if there was a turn
    StretchLaw before;
    StretchLaw after;
};

class TurnSearch {
  public:
    TurnSearch(const PastBatches& past, std::vector<Tray> batches)
        : batches_(std::move(batches)), places_(batches_.size() - 1) {
        double trials = 0, spreadWeight = 0;
        for (const Tray& batch : batches_) trials += batch.trials;
        for (const WeightedCorrelation& each : past.spread) spreadWeight += each.weight;
        steps_ = turnSteps(past.prior, trials);
        for (const WeightedCorrelation& each : past.spread)
            addCases(each.correlation, std::log(each.weight / spreadWeight));
    }

    // P(a turn); sets each case's weight.
    double weigh(double chanceOfTurn) {
        double largest = *std::ranges::max_element(logNone_), none = 0, turned = 0;
        for (const TurnCase& each : cases_) largest = std::max(largest, each.logWeight);
        for (const double each : logNone_) none += std::exp(each - largest);
        for (TurnCase& each : cases_) turned += each.weight = std::exp(each.logWeight - largest);
        for (TurnCase& each : cases_) each.weight /= turned;
        return chanceOfTurn * turned / (chanceOfTurn * turned + (1 - chanceOfTurn) * none);
    }

    [[nodiscard]] const std::vector<RateStep>& steps() const { return steps_; }
    [[nodiscard]] const std::vector<TurnCase>& cases() const { return cases_; }

  private:
    void addCases(double correlation, double logWeight) {
        StretchLaws laws = stretchLaws(batches_, steps_, correlation);
        logNone_.push_back(logWeight + laws.whole.logEvidence);
        for (std::size_t place = 0; place < places_; ++place) {
            TurnCase each{
                .place = place, .before = std::move(laws.before[place]), .after = std::move(laws.after[place])};
            each.logWeight =
                logWeight + each.before.logEvidence + each.after.logEvidence - std::log(static_cast<double>(places_));
            cases_.push_back(std::move(each));
        }
    }

    std::vector<Tray> batches_;
    std::size_t places_;
    std::vector<RateStep> steps_;
    std::vector<double> logNone_;  // for each correlation
    std::vector<TurnCase> cases_;
};

// The law of the rate after less that before, over all cases that matter.
class ChangeLaw {
  public:
    ChangeLaw(const std::vector<RateStep>& steps, const std::vector<TurnCase>& cases) {
        constexpr double negligible = 1e-6;
        for (const RateStep& step : steps) {
            rates_.push_back(step.rate);
            angles_.push_back(std::asin(std::sqrt(step.rate)));
        }
        for (const TurnCase& each : cases) {
            if (each.weight < negligible) continue;
            Pair pair{.weight = each.weight, .before = &each.before, .after = &each.after, .below = {}};
            double sum = 0;
            for (const double share : each.after.shares) {
                pair.below.push_back(sum + share / 2);
                sum += share;
            }
            pairs_.push_back(std::move(pair));
            weight_ += each.weight;
        }
    }

    // P(after - before < change).
    [[nodiscard]] double below(double change) const {
        // Where among the steps each step's rate and the change together lie.
        std::vector<double> places;
        for (const double rate : rates_) {
            const double angle = std::asin(std::sqrt(std::clamp(rate + change, 0.0, 1.0)));
            const auto index = std::ranges::upper_bound(angles_, angle) - angles_.begin();
            const auto right = static_cast<std::size_t>(index);
            if (right == 0 || right == angles_.size())
                places.push_back(right == 0 ? -1 : static_cast<double>(right));
            else
                places.push_back(static_cast<double>(right) - 1 +
                                 (angle - angles_[right - 1]) / (angles_[right] - angles_[right - 1]));
        }
        double sum = 0;
        for (const Pair& pair : pairs_) {
            double here = 0;
            for (std::size_t i = 0; i < pair.before->shares.size(); ++i)
                here += pair.before->shares[i] * pair.afterBelow(places[pair.before->first + i]);
            sum += pair.weight * here;
        }
        return sum / weight_;
    }

    [[nodiscard]] double quantile(double share) const {
        return bracketedRoot([&](double change) { return below(change) - share; }, -1, 1, 1e-6);
    }

  private:
    struct Pair {
        double weight{};
        const StretchLaw* before{};
        const StretchLaw* after{};
        std::vector<double> below;  // P(rate after < that of the step)

        [[nodiscard]] double afterBelow(double place) const {
            const double local = place - static_cast<double>(after->first);
            if (local < 0) return 0;
            const auto index = static_cast<std::size_t>(local);
            if (index + 1 >= below.size()) return 1;
            return below[index] + (local - static_cast<double>(index)) * (below[index + 1] - below[index]);
        }
    };

    std::vector<double> rates_, angles_;
    std::vector<Pair> pairs_;
    double weight_{};
};

TurnRate stretchRate(const TurnSearch& search, StretchLaw TurnCase::*stretch, double level) {
    std::vector<double> shares(search.steps().size());
    for (const TurnCase& each : search.cases())
        for (std::size_t i = 0; i < (each.*stretch).shares.size(); ++i)
            shares[(each.*stretch).first + i] += each.weight * (each.*stretch).shares[i];
    std::vector<RatePoint> points;
    TurnRate rate;
    for (std::size_t g = 0; g < shares.size(); ++g) {
        rate.mean += shares[g] * search.steps()[g].rate;
        if (shares[g] > 0) points.push_back({.rate = search.steps()[g].rate, .correlation = 0, .weight = shares[g]});
    }
    rate.limits = RateLaw(turnName, points).interval(level);
    return rate;
}

TurnRates turnRates(const TurnSearch& search, double level) {
    TurnRates rates{.before = stretchRate(search, &TurnCase::before, level),
                    .after = stretchRate(search, &TurnCase::after, level),
                    .change = {},
                    .chanceOfFall = 0};
    const ChangeLaw law(search.steps(), search.cases());
    rates.change.mean = rates.after.mean - rates.before.mean;
    rates.change.limits = {.low = law.quantile((1 - level) / 2), .high = law.quantile((1 + level) / 2)};
    rates.chanceOfFall = law.below(0);
    return rates;
}

void markCredible(std::vector<TurnPlace>& places, double level) {
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::greater<>(), [&](std::size_t at) { return places[at].probability; });
    double sum = 0;
    for (const std::size_t at : order) {
        if (sum >= level) return;
        places[at].isCredible = true;
        sum += places[at].probability;
    }
}

void requireTurn(const PastBatches& inOrder, double level, double chanceOfTurn) {
    constexpr int mostTrials = 20'000;
    requirePastBatches(turnName, inOrder);
    requireLevel(turnName, level);
    for (const Tray& batch : inOrder.batches)
        if (batch.trials > mostTrials) throwDomainError(turnName, "trials", batch.trials, "at most 20000");
    if (!(chanceOfTurn > 0 && chanceOfTurn < 1))
        throwDomainError(turnName, "chanceOfTurn", chanceOfTurn, "between 0 and 1");
}

}  // namespace

ChangePoint changePoint(const PastBatches& inOrder, double level, double chanceOfTurn) {
    requireTurn(inOrder, level, chanceOfTurn);
    std::vector<std::size_t> counted;
    for (std::size_t i = 0; i < inOrder.batches.size(); ++i)
        if (inOrder.batches[i].trials > 0) counted.push_back(i);
    ChangePoint answer;
    if (counted.size() < 2) return answer;
    TurnSearch search(inOrder, traysWithTrials(inOrder.batches));
    answer.probability = search.weigh(chanceOfTurn);
    for (std::size_t i = 1; i < counted.size(); ++i)
        answer.places.push_back({.lastBefore = counted[i - 1], .firstAfter = counted[i]});
    for (const TurnCase& each : search.cases()) answer.places[each.place].probability += each.weight;
    markCredible(answer.places, level);
    const auto top = std::ranges::max_element(answer.places, {}, &TurnPlace::probability);
    answer.mostLikely = static_cast<std::size_t>(top - answer.places.begin());
    answer.rates = turnRates(search, level);
    return answer;
}

}  // namespace stats
