// SPDX-License-Identifier: MIT
#include "core/causes/out_of_the_ordinary.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

#include "core/causes/batches_around.h"
#include "core/comparison/spread.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"

namespace core {

namespace {

constexpr std::size_t mostEarlier = 200;

/// Batches of one plant with what its horizon and spread say.
class PlantInQuestion {
  public:
    PlantInQuestion(std::vector<BatchRecord> records, const Shelves& shelves, const LossQuestion& question)
        : records_(std::move(records)),
          question_(question),
          horizonDay_(usualHorizonOf(records_.front().batch.plant, shelves)),
          alarm_(shelves.facts.falseAlarmRate),
          level_(shelves.facts.level),
          spread_(pooledSpreadOf(records_, horizonDay_, level_)) {
        for (const BatchRecord& record : records_)
            byMethod_[record.batch.method].push_back(courseOf(record, horizonDay_, question.until));
        for (auto& [method, courses] : byMethod_)
            std::ranges::sort(courses, {}, [](const Course& course) {
                return std::tuple(course.record->batch.stuckOn, course.record->batch.code);
            });
    }

    void find(std::vector<UnusualBatch>& found, const std::stop_token& stop) const {
        for (const auto& [method, courses] : byMethod_) {
            if (question_.method.isSet() && method != question_.method) continue;
            for (const Course& course : courses) {
                if (stop.stop_requested()) return;
                if (isAsked(course)) judge(course, courses, found);
            }
        }
    }

  private:
    [[nodiscard]] bool isAsked(const Course& course) const {
        if (course.looks.empty()) return false;
        return !question_.from || addDays(course.record->batch.stuckOn, course.looks.back().day) >= *question_.from;
    }

    /// A quick look, by the pooled rate and correlation as if both were known: what it finds several times likelier than the alarm allows needs
    /// no exact one, which takes a thousand times as long.
    [[nodiscard]] bool mayBeUnusual(const Course& course, std::span<const Course> past) const {
        constexpr double severalTimes = 8;
        const int day = std::min(horizonDay_, course.looks.back().day);
        const HorizonFate now = fateAt(day, course.stuck(), course.looks);
        double rooted = 0.5, assessed = 1;
        for (const Course& other : past) {
            const HorizonFate fate = fateAt(day, other.stuck(), other.looks);
            rooted += fate.rooted;
            assessed += fate.assessed;
        }
        const auto law = stats::betaBinomialProbabilities(now.assessed, rooted / assessed, spread_.correlation);
        const auto here = law.begin() + now.rooted;
        return std::accumulate(law.begin(), here, *here / 2) < std::max(farFromOdd(), severalTimes * alarm_);
    }

    /// To learn the spread anew without a batch takes time, so only where there is something to be found; among many one batch moves it
    /// little.
    [[nodiscard]] double farFromOdd() const {
        constexpr std::size_t many = 200;
        return records_.size() > many ? 3 * alarm_ : std::max(0.25, 2 * alarm_);
    }

    void judge(const Course& course, std::span<const Course> like, std::vector<UnusualBatch>& found) const {
        const auto first = std::ranges::lower_bound(like, course.record->batch.stuckOn, {},
                                                    [](const Course& other) { return other.record->batch.stuckOn; });
        const auto earlier = static_cast<std::size_t>(first - like.begin());
        const std::size_t used = std::min(earlier, mostEarlier);
        const std::span<const Course> past = like.subspan(earlier - used, used);
        if (!mayBeUnusual(course, past)) return;
        auto against = againstThePast(course, past, horizonDay_, spread_);
        if (!against || against->chanceOfSoFew >= farFromOdd()) return;
        // A batch that is judged must not help to say how much batches differ.
        against = againstThePast(course, past, horizonDay_,
                                 pooledSpreadWithout(records_, course.record->batch.id, horizonDay_, level_));
        if (!against || against->chanceOfSoFew >= alarm_) return;
        const Batch& batch = course.record->batch;
        found.push_back({.batch = batch.id,
                         .code = batch.code,
                         .plant = batch.plant,
                         .method = batch.method,
                         .stuckOn = batch.stuckOn,
                         .isOpen = !isClosed(batch, tallyOf(batch, course.record->checks)),
                         .against = std::move(*against)});
    }

    std::vector<BatchRecord> records_;
    const LossQuestion& question_;
    int horizonDay_{};
    double alarm_{};
    double level_{};
    stats::PooledSpread spread_;
    std::map<MethodId, std::vector<Course>> byMethod_;
};

}  // namespace

std::vector<UnusualBatch> outOfTheOrdinary(std::span<const BatchRecord> batches, const Shelves& shelves,
                                           const LossQuestion& question, const std::stop_token& stop) {
    std::map<PlantId, std::vector<BatchRecord>> byPlant;
    for (const BatchRecord& record : batches)
        if (!question.plant.isSet() || record.batch.plant == question.plant)
            byPlant[record.batch.plant].push_back(record);
    std::vector<UnusualBatch> found;
    for (auto& [plant, records] : byPlant) {
        if (stop.stop_requested()) break;
        PlantInQuestion(std::move(records), shelves, question).find(found, stop);
    }
    std::ranges::sort(found, {}, [](const UnusualBatch& one) {
        return std::tuple(one.against.chanceOfSoFew, one.stuckOn, one.code);
    });
    return found;
}

}  // namespace core
