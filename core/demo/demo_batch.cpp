// SPDX-License-Identifier: MIT
#include "core/demo/demo_batch.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace core {

namespace {

constexpr double intraclassCorrelation = 0.08;  // of cuttings in one batch
constexpr double spreadOfLogDays = 0.26;        // of those that root
constexpr double spreadOfLogDaysToLoss = 0.55;
constexpr double lostOfThoseThatCannotRoot = 0.9;  // the others stay alive without roots
constexpr double lostToPests = 0.45;
constexpr int neverSeen = std::numeric_limits<int>::max();
constexpr int earliestLook = 4;  // days after sticking; before that nobody disturbs cuttings

// In the order of startingShelves(), then "not known".
enum Cause { Rotted, DriedOut, Pests, Broken, Other, NotKnown, CauseCount };

enum class Ending { Undecided, Rooted, Lost, Withdrawn };

struct Fate {
    int day{neverSeen};
    Ending outcome{Ending::Undecided};
    Cause cause{NotKnown};
};

/// Log-normal, in whole days: something that happens during a day is there to be seen at its end.
int dayOf(double median, double spread, stats::SeededRandom& random) {
    const double days = median * stats::portableExp(random.normal(0, spread));
    return std::max(3, static_cast<int>(std::ceil(days)));
}

Cause causeOfLoss(bool isInWater, stats::SeededRandom& random) {
    // Cumulative shares of rotted, dried out, pests, broken, other; the rest is not known. Common practice, no source:
    // stems in water rot, stems in trays dry out.
    constexpr std::array<double, 5> inWater{.62, .74, .75, .81, .90}, inTray{.34, .74, .78, .84, .91};
    const std::array<double, 5>& shares = isInWater ? inWater : inTray;
    const double draw = random.uniform();
    return static_cast<Cause>(std::ranges::count_if(shares, [draw](double share) { return draw >= share; }));
}

Fate fateOfOne(const DemoBatchTruth& truth, double share, stats::SeededRandom& random) {
    if (random.uniform() < share)
        return {truth.stuckDay + dayOf(truth.medianDays, spreadOfLogDays, random), Ending::Rooted, NotKnown};
    if (random.uniform() >= lostOfThoseThatCannotRoot) return {};
    const Cause cause = causeOfLoss(truth.isInWater, random);
    return {truth.stuckDay + dayOf(truth.medianDays, spreadOfLogDaysToLoss, random), Ending::Lost, cause};
}

void befall(Fate& fate, const DemoBatchTruth& truth, stats::SeededRandom& random) {
    if (truth.pests && truth.stuckDay < truth.pests->last && random.uniform() < lostToPests) {
        const int first = std::max(truth.pests->first, truth.stuckDay + 2);
        const int day =
            first +
            static_cast<int>(random.below(static_cast<std::uint64_t>(std::max(1, truth.pests->last - first + 1))));
        if (day < fate.day) fate = {day, Ending::Lost, Pests};
    }
    if (truth.accidentAfter && truth.stuckDay + *truth.accidentAfter < fate.day)
        fate = {truth.stuckDay + *truth.accidentAfter, Ending::Lost, truth.isInWater ? Rotted : DriedOut};
}

/// Cuttings are alike, so those withdrawn may as well be the first that are left.
void withdraw(std::vector<Fate>& fates, const DemoBatchTruth& truth) {
    if (!truth.withdrawnAfter) return;
    const int day = truth.stuckDay + *truth.withdrawnAfter;
    int left = truth.withdrawn;
    for (Fate& fate : fates)
        if (left > 0 && fate.day > day) {
            fate = {day, Ending::Withdrawn, NotKnown};
            --left;
        }
}

std::vector<Fate> fatesOf(const DemoBatchTruth& truth, stats::SeededRandom& random) {
    // Beta with this total has the intra-class correlation 1 / (total + 1).
    constexpr double total = 1 / intraclassCorrelation - 1;
    const double share = random.beta(truth.strike * total, (1 - truth.strike) * total);
    std::vector<Fate> fates(static_cast<std::size_t>(truth.stuck));
    for (Fate& fate : fates) {
        fate = fateOfOne(truth, share, random);
        befall(fate, truth, random);
    }
    withdraw(fates, truth);
    return fates;
}

struct DemoLookCounts {
    int rooted{};
    int withdrawn{};
    std::array<int, CauseCount> lost{};
    int all{};

    void count(const Fate& fate) {
        ++all;
        if (fate.outcome == Ending::Rooted) ++rooted;
        if (fate.outcome == Ending::Withdrawn) ++withdrawn;
        if (fate.outcome == Ending::Lost) ++lost[fate.cause];
    }
};

DemoLook lookOf(int day, const DemoLookCounts& counts, std::span<const LossCause> causes) {
    DemoLook look{.day = day, .rooted = counts.rooted, .withdrawn = counts.withdrawn, .losses = {}};
    for (std::size_t cause = 0; cause < CauseCount; ++cause)
        if (counts.lost[cause] > 0)
            look.losses.push_back(
                {.cause = cause == NotKnown ? LossCauseId{} : causes[cause].id, .count = counts.lost[cause]});
    return look;
}

}  // namespace

DemoHistory historyOf(const DemoBatchTruth& truth, std::span<const int> rounds, std::span<const LossCause> causes,
                      stats::SeededRandom& random) {
    const std::vector<Fate> fates = fatesOf(truth, random);
    const std::span<const int> looks(std::ranges::lower_bound(rounds, truth.stuckDay + earliestLook), rounds.end());
    std::vector<DemoLookCounts> counts(looks.size());
    for (const Fate& fate : fates) {
        const auto seen = std::ranges::lower_bound(looks, fate.day);
        if (seen != looks.end()) counts[static_cast<std::size_t>(seen - looks.begin())].count(fate);
    }
    DemoHistory history{.looks = {}, .closedOn = {}, .undecided = truth.stuck};
    for (std::size_t look = 0; look < looks.size() && history.undecided > 0 && !history.closedOn; ++look) {
        history.looks.push_back(lookOf(looks[look], counts[look], causes));
        history.undecided -= counts[look].all;
        if (history.undecided > 0 && looks[look] >= truth.stuckDay + truth.giveUpAfter) history.closedOn = looks[look];
    }
    return history;
}

}  // namespace core
