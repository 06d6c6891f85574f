// SPDX-License-Identifier: MIT
// A season looked back on: what was stuck in a year or any other span and what became of it, which method did best with which plant and how
// sure that is, what was learned, what it cost and what to try next. It describes records; it is no planned comparison.
//
//   const auto review = core::seasonReview({.from = firstDay, .until = lastDay}, records);
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/causes/out_of_the_ordinary.h"
#include "core/comparison/comparison.h"
#include "core/money/worth_it.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

struct ReviewQuestion {
    Date from{}, until{};  // first and last day of sticking, both included
};

/// The whole logbook: how much batches differ is judged by all of it, and everything shares its prices.
struct ReviewRecords {
    const Shelves& shelves;
    std::span<const BatchRecord> batches;
    std::span<const Session> sessions;
    std::span<const Care> care;
    std::span<const Expense> expenses;
    std::span<const Potting> pottings;
    Date today{};
    DayStart dayStart{};
};

/// Cuttings as they are known today; the last four add up to stuck.
struct ReviewCounts {
    int batches{}, stuck{};
    int rooted{}, lost{}, withdrawn{}, undecided{};

    void add(const Tally& tally);
    bool operator==(const ReviewCounts&) const = default;
};

/// What was stuck in a month, or where the span is long in a year, and what became of it.
struct ReviewMonth {
    Date from{}, until{};
    ReviewCounts counts{};
};

enum class HowSure {
    NothingKnown,   // below five cuttings of any method
    OneMethodOnly,  // nothing to compare
    CannotTell,
    BetterThanSome,  // of several other methods
    BetterThanAll
};

/// The method with the highest strike rate of a plant in the span, and whether that is more than luck.
struct BestMethod {
    HowSure sure{HowSure::NothingKnown};
    int method{-1};                       // of PlantInReview::methods
    int next{-1};                         // the one with the next highest rate
    std::optional<Pair> pair{};           // of these two
    std::optional<double> chanceAhead{};  // that it roots more than the next; from three batches of each
    std::string inWords{};
};

struct PlantInReview {
    PlantId plant{};
    std::string name{};
    ReviewCounts counts{};
    int horizonDay{};
    int ratedBatches{};          // that the rates are of: watched to the end, of no trial that still goes on
    std::vector<Arm> methods{};  // of these batches; most stuck first, then by name
    std::vector<Pair> pairs{};   // of each two of them; first and second are places in `methods`
    double correlation{};        // between cuttings of one batch, by the whole logbook
    BestMethod best{};
};

enum class LessonKind { Trial, ClearDifference, TurningPoint };

struct Lesson {
    LessonKind kind{};
    std::string about{};  // the trial's or the plant's name
    std::string inWords{};
};

struct ReviewMoney {
    CostParts spent{};                     // on the batches stuck in the span, so far
    int batches{};                         // of them, that any price or expense fell on
    std::vector<StoodEmpty> stoodEmpty{};  // on days of the span, dearest first
    std::vector<std::string> missing{};
    Worth worth{};
};

enum class AdviceKind { Trial, TakeTheBetter, LossCause, DearerMethod, Record, UnusualBatch, OtherMethod };

struct Advice {
    AdviceKind kind{};
    std::string inWords{};
};

struct SeasonReview {
    Date from{}, until{}, today{};
    double level{};
    RateInterval interval{};
    ReviewCounts counts{};
    int sessions{};
    int undecidedAtEnd{};  // at the end of the span, or today where that is earlier
    int assessed{};        // cuttings that the rates are of
    // Batches that are in the sums but in no rate:
    int youngBatches{};      // not at their horizon yet
    int trialBatches{};      // of planned trials that still go on
    int unwatchedBatches{};  // at their horizon, with cuttings undecided at the last look before it
    std::vector<ReviewMonth> months{};
    Losses losses{};                      // of the batches stuck in the span
    std::vector<PlantInReview> plants{};  // most stuck first, then by name
    std::vector<Lesson> lessons{};
    int pairsJudged{};                    // pairs of methods that can be judged, over all plants
    double falseAlarmRate{};              // of a batch to be among these by luck
    std::vector<UnusualBatch> unusual{};  // stuck in the span and much worse than earlier ones; the rarest first
    std::optional<ReviewMoney> money{};   // absent: nothing is priced
    std::vector<Advice> next{};           // at most five
    std::string inWords{};
    bool wasStopped{};  // then nothing else in here counts
};

/// Refuses a span whose first day is after its last. A stop request ends it early. `tell` hears the share that is done, from 0 to 1, on the
/// thread that works. The rules are worked out in words in docs/season_review.md.
[[nodiscard]] Result<SeasonReview> seasonReview(const ReviewQuestion& question, const ReviewRecords& records,
                                                const std::stop_token& stop = {},
                                                const std::function<void(double)>& tell = {});

}  // namespace core
