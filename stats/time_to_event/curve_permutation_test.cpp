// SPDX-License-Identifier: MIT
#include "stats/time_to_event/curve_permutation_test.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/numeric/label_arrangements.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/curve_quantiles.h"
#include "stats/time_to_event/repeated_npmle.h"

namespace stats {
namespace {

constexpr double kCurveTie = 1e-6;
constexpr MixtureLimits kPermutationLimits{.wantedGap = 1e-8, .convergedGap = 1e-8, .iterations = 200};

// Days between which both curves are straight: every end of an observation, 0 and the end of the area.
std::vector<double> breakDays(std::span<const LabelledBatch> batches, std::optional<double> until) {
    std::vector<double> days{0.0};
    for (const LabelledBatch& batch : batches) {
        for (const Observation& one : batch.observations) {
            if (!(one.weight > 0)) continue;
            days.push_back(one.after);
            if (std::isfinite(one.by)) days.push_back(one.by);
        }
    }
    if (until) {
        std::erase_if(days, [until](double day) { return day > *until; });
        days.push_back(*until);
    }
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

// A curve read from day to day: its value just before a day and on it.
class CurveReader {
  public:
    explicit CurveReader(const std::vector<SupportInterval>& curve) : curve_(curve) {}

    [[nodiscard]] double justBefore(double day) {
        while (next_ < curve_.size() && curve_[next_].right < day) sum_ += curve_[next_++].mass;
        if (next_ == curve_.size() || curve_[next_].left >= day) return sum_;
        const SupportInterval& support = curve_[next_];
        return sum_ + support.mass * (day - support.left) / (support.right - support.left);
    }
    [[nodiscard]] double on(double day) {
        while (next_ < curve_.size() && curve_[next_].right <= day) sum_ += curve_[next_++].mass;
        return justBefore(day);
    }

  private:
    const std::vector<SupportInterval>& curve_;
    std::size_t next_{};
    double sum_{};
};

// The integral of |a straight line| over `width`, from its values at both ends.
double areaUnder(double start, double end, double width) {
    const double a = std::abs(start), b = std::abs(end);
    if (start * end >= 0) return width * (a + b) / 2;
    return width * (a * a + b * b) / (2 * (a + b));
}

double areaBetween(const CumulativeIncidence& first, const CumulativeIncidence& second,
                   const std::vector<double>& days) {
    CurveReader reader1(first.cause1), reader2(second.cause1);
    double area = 0, start = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (i > 0) {
            const double end = reader1.justBefore(days[i]) - reader2.justBefore(days[i]);
            area += areaUnder(start, end, days[i] - days[i - 1]);
        }
        start = reader1.on(days[i]) - reader2.on(days[i]);
    }
    return area;
}

class CurveDistance {
  public:
    CurveDistance(std::span<const std::span<const Observation>> batches, std::vector<double> days, ShareOf of)
        : npmle_(batches), days_(std::move(days)), of_(of), times_(batches.size(), 1.0) {
        npmle_.startFrom(npmle_.estimate(times_, kPermutationLimits));
    }

    // Infinite where shares of those with the event are wanted and one side has none.
    [[nodiscard]] double between(const std::vector<char>& isFirst) {
        const CumulativeIncidence first = curveOf(isFirst, true), second = curveOf(isFirst, false);
        if (first.cause1.empty() || second.cause1.empty()) {
            if (of_ == ShareOf::ThoseWithTheEvent) return std::numeric_limits<double>::infinity();
        }
        return areaBetween(first, second, days_);
    }
    // Whether anyone in that arm has had the event by the end of the area.
    [[nodiscard]] bool hasEvents(const std::vector<char>& isFirst, bool wantsFirst) {
        return interpolatedShare(curveOf(isFirst, wantsFirst).cause1, days_.back()) > 0;
    }

  private:
    [[nodiscard]] CumulativeIncidence curveOf(const std::vector<char>& isFirst, bool wantsFirst) {
        for (std::size_t b = 0; b < times_.size(); ++b) times_[b] = (isFirst[b] != 0) == wantsFirst ? 1.0 : 0.0;
        CumulativeIncidence curve = npmle_.estimate(times_, kPermutationLimits);
        if (of_ == ShareOf::Everyone) return curve;
        const double all = interpolatedShare(curve.cause1, days_.back());
        if (!(all > 0)) curve.cause1.clear();
        for (SupportInterval& support : curve.cause1) support.mass /= all;
        return curve;
    }

    RepeatedNpmle npmle_;
    std::vector<double> days_;
    ShareOf of_;
    std::vector<double> times_;
};

void fillExactly(CurvePermutationTest& test, CurveDistance& distance, LabelArrangements& arrangements, double least,
                 const std::stop_token& stop) {
    double asLarge = 0;
    do {
        if (distance.between(arrangements.labels()) >= least) ++asLarge;
    } while (!stop.stop_requested() && arrangements.advance());
    test.permutations = arrangements.count();
    test.p = asLarge / test.permutations;
}

void fillAtRandom(CurvePermutationTest& test, CurveDistance& distance, LabelArrangements& arrangements, double least,
                  int permutations, SeededRandom& random, const std::stop_token& stop) {
    double asLarge = 0;
    for (int i = 0; i < permutations && !stop.stop_requested(); ++i) {
        arrangements.draw(random);
        if (distance.between(arrangements.labels()) >= least) ++asLarge;
    }
    test.isExact = false;
    test.permutations = permutations;
    test.p = (asLarge + 1) / (permutations + 1.0);
}

// The batches that have weight, with their labels.
struct CountedBatches {
    std::vector<std::span<const Observation>> observations;
    std::vector<char> isFirst;
    std::vector<int> stratum;

    [[nodiscard]] bool hasArm(bool first) const {
        return std::count(isFirst.begin(), isFirst.end(), first ? 1 : 0) > 0;
    }
};

CountedBatches countedBatches(const char* function, std::span<const LabelledBatch> batches) {
    CountedBatches result;
    for (const LabelledBatch& batch : batches) {
        requireObservations(function, batch.observations);
        if (std::none_of(batch.observations.begin(), batch.observations.end(),
                         [](const auto& one) { return one.weight > 0; }))
            continue;
        result.observations.emplace_back(batch.observations);
        result.isFirst.push_back(batch.isInFirstArm ? 1 : 0);
        result.stratum.push_back(batch.stratum);
    }
    return result;
}

void requirePermutations(const char* function, int permutations, std::optional<double> until) {
    if (permutations < 1) throwDomainError(function, "permutations", permutations, "1 or more");
    if (until && !(*until > 0 && std::isfinite(*until))) {
        throwDomainError(function, "until", *until, "above 0 and finite");
    }
}

CurvePermutationTest permuted(const CountedBatches& counted, CurveDistance& distance, int permutations,
                              SeededRandom& random, const std::stop_token& stop) {
    LabelArrangements arrangements(counted.isFirst, counted.stratum);
    CurvePermutationTest test;
    test.statistic = distance.between(counted.isFirst);
    // The last term lets two curves that are the same up to rounding count as the same.
    const double least = test.statistic * (1 - kCurveTie) - 1e-9;
    if (arrangements.count() <= permutations) {
        fillExactly(test, distance, arrangements, least, stop);
    } else {
        fillAtRandom(test, distance, arrangements, least, permutations, random, stop);
    }
    test.wasStopped = stop.stop_requested();
    return test;
}

}  // namespace

std::optional<CurvePermutationTest> curvePermutationTest(std::span<const LabelledBatch> batches, int permutations,
                                                         SeededRandom& random, std::optional<double> until,
                                                         std::stop_token stop) {
    requirePermutations("curvePermutationTest", permutations, until);
    const CountedBatches counted = countedBatches("curvePermutationTest", batches);
    if (!counted.hasArm(true) || !counted.hasArm(false)) return {};
    CurveDistance distance(counted.observations, breakDays(batches, until), ShareOf::Everyone);
    return permuted(counted, distance, permutations, random, stop);
}

SpeedPermutationTest speedPermutationTest(std::span<const LabelledBatch> batches, int permutations,
                                          SeededRandom& random, std::optional<double> until, std::stop_token stop) {
    requirePermutations("speedPermutationTest", permutations, until);
    const CountedBatches counted = countedBatches("speedPermutationTest", batches);
    for (const bool first : {true, false}) {
        if (!counted.hasArm(first)) return {.test = {}, .whyNot = NoSpeedTest::NoBatches, .armWithout = first ? 1 : 2};
    }
    CurveDistance distance(counted.observations, breakDays(batches, until), ShareOf::ThoseWithTheEvent);
    for (const bool first : {true, false}) {
        if (distance.hasEvents(counted.isFirst, first)) continue;
        return {.test = {}, .whyNot = NoSpeedTest::NobodyRooted, .armWithout = first ? 1 : 2};
    }
    return {.test = permuted(counted, distance, permutations, random, stop), .whyNot = {}};
}

}  // namespace stats
