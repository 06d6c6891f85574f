// SPDX-License-Identifier: MIT
#include "stats/time_to_event/gray_test.h"

#include <algorithm>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/arm_days.h"

namespace stats {
namespace {

// The events of one kind in one arm on one day: the variance of the arm's rate of them, and what one more of them
// changes in the distance between the arm's incidence and the common one.
struct EventSource {
    double variance{};
    double carriedOn{};
};

// What a day adds, for the variance, which needs to know how it all ended.
struct GrayDay {
    SquareMatrix pull;    // by how much a rate of arm k moves the score of arm i, at once
    SquareMatrix passed;  // and, of what it does by changing the incidences later on, what lies behind by this day
    std::vector<EventSource> ofCause, ofOther;
};

class GrayScores {
  public:
    GrayScores(std::size_t arms, std::size_t cause)
        : arms_(arms),
          cause_(cause),
          eventFree_(arms, 1.0),
          incidence_(arms, 0.0),
          scores_(arms, 0.0),
          passed_(zeroMatrix(arms)) {}

    void take(const ArmsOnDay& day) {
        const double events = day.all(cause_);
        double scale = 0, expectable = 0;  // sums of r / S and of r (1 - F) / S
        for (std::size_t k = 0; k < arms_; ++k) {
            if (day.atRisk[k] <= 0) continue;
            scale += day.atRisk[k] / eventFree_[k];
            expectable += day.atRisk[k] * (1 - incidence_[k]) / eventFree_[k];
        }
        if (scale <= 0) return;
        GrayDay added{.pull = zeroMatrix(arms_), .passed = {}, .ofCause = {}, .ofOther = {}};
        for (std::size_t i = 0; i < arms_; ++i) {
            if (day.atRisk[i] <= 0) continue;
            const double own = day.atRisk[i] / eventFree_[i];
            const double share = expectable > 0 ? own * (1 - incidence_[i]) / expectable : 0;
            scores_[i] += day.counts[i][cause_] - events * share;
            for (std::size_t k = 0; k < arms_; ++k) {
                if (day.atRisk[k] <= 0) continue;
                added.pull.at(i, k) = own * ((i == k ? 1 : 0) - day.atRisk[k] / eventFree_[k] / scale);
                if (common_ < 1) passed_.at(i, k) += added.pull.at(i, k) * events / (scale * (1 - common_));
            }
        }
        added.passed = passed_;
        common_ += events / scale;
        for (std::size_t k = 0; k < arms_; ++k) addSources(added, day, k, events, scale);
        days_.push_back(std::move(added));
    }

    [[nodiscard]] const std::vector<double>& scores() const { return scores_; }

    [[nodiscard]] SquareMatrix variance() const {
        SquareMatrix result = zeroMatrix(arms_);
        for (const GrayDay& day : days_) {
            for (std::size_t k = 0; k < arms_; ++k) {
                std::vector<double> ofCause(arms_), ofOther(arms_);
                for (std::size_t i = 0; i < arms_; ++i) {
                    const double toCome = passed_.at(i, k) - day.passed.at(i, k);
                    ofCause[i] = day.pull.at(i, k) + day.ofCause[k].carriedOn * toCome;
                    ofOther[i] = day.ofOther[k].carriedOn * toCome;
                }
                for (std::size_t i = 0; i < arms_; ++i) {
                    for (std::size_t j = 0; j < arms_; ++j) {
                        result.at(i, j) += day.ofCause[k].variance * ofCause[i] * ofCause[j] +
                                           day.ofOther[k].variance * ofOther[i] * ofOther[j];
                    }
                }
            }
        }
        return result;
    }

  private:
    // Also moves arm k's own estimates past the day.
    void addSources(GrayDay& added, const ArmsOnDay& day, std::size_t k, double events, double scale) {
        EventSource ofCause, ofOther;
        const double r = day.atRisk[k], own = day.counts[k][cause_], other = day.counts[k][3 - cause_];
        if (r > 0) {
            const double before = eventFree_[k];
            incidence_[k] += before * own / r;
            eventFree_[k] = before * ((r - own - other) / r);
            const double after = eventFree_[k];
            ofCause.carriedOn = after > 0 ? 1 - (1 - common_) / after : 1;
            const double tiedCause = events > 1 ? 1 - (events - 1) / (scale * before - 1) : 1;
            ofCause.variance = events > 0 ? tiedCause * before * events / (scale * r) : 0;
            if (after > 0 && other > 0) {
                ofOther.carriedOn = (1 - common_) / after;
                const double tiedOther = other > 1 ? 1 - (other - 1) / (r - 1) : 1;
                ofOther.variance = tiedOther * before * before * other / (r * r);
            }
        }
        added.ofCause.push_back(ofCause);
        added.ofOther.push_back(ofOther);
    }

    std::size_t arms_, cause_;
    std::vector<double> eventFree_, incidence_;  // of each arm
    double common_{};                            // incidence of the cause in all arms together
    std::vector<double> scores_;
    SquareMatrix passed_;
    std::vector<GrayDay> days_;
};

}  // namespace

GrayTest grayTest(std::span<const std::vector<ExactDay>> arms, int cause) {
    if (cause != 1 && cause != 2) throwDomainError("grayTest", "cause", cause, "1 or 2");
    GrayTest test{.statistic = {}, .p = {}, .degreesOfFreedom = std::max(0, static_cast<int>(arms.size()) - 1)};
    const std::vector<ArmsOnDay> days = armsByDay("grayTest", arms);
    GrayScores gray(arms.size(), static_cast<std::size_t>(cause));
    double events = 0;
    for (const ArmsOnDay& day : days) {
        gray.take(day);
        events += day.all(static_cast<std::size_t>(cause));
    }
    if (arms.size() < 2) return test;
    // The scores sum to 0: the last arm says nothing new.
    const std::size_t kept = arms.size() - 1;
    const SquareMatrix all = gray.variance();
    SquareMatrix variance = zeroMatrix(kept);
    for (std::size_t i = 0; i < kept; ++i) {
        for (std::size_t j = 0; j < kept; ++j) variance.at(i, j) = all.at(i, j);
    }
    const std::vector<double> scores(gray.scores().begin(), gray.scores().end() - 1);
    test.statistic = quadraticForm(scores, variance, events);
    if (test.statistic) test.p = chiSquareTail(std::max(0.0, *test.statistic), test.degreesOfFreedom);
    return test;
}

}  // namespace stats
