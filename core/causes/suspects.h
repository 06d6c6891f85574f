// SPDX-License-Identifier: MIT
// What may have gone wrong with one batch: suspects from the records alone, ranked, each with what speaks for it and against it, and whether
// one is to be named. A suspect is no finding: records are not an experiment, so each comes with what to change or check next time.
//
//   const core::Suspects found = core::suspectsFor(batch, {.batches = courses, .shelves = shelves, .sessions = sessions, .care = care,
//                                                          .conditions = conditions, .spread = spread});
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/causes/trial_proposal.h"
#include "core/comparison/condition_features.h"
#include "core/comparison/course.h"
#include "core/comparison/unusual.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

enum class SuspectKind { Condition, LossCause, Lot, Care, StockPlant, Station, Session, Worker, Month };
/// "condition", "cause of loss", "lot", "care", "stock plant", "station", "session", "worker", "month".
[[nodiscard]] std::string_view wordFor(SuspectKind kind);

/// What the records are. All must outlive the call.
struct RecordsForSuspects {
    std::span<const Course> batches;       // of the whole logbook, the batch among them or not; in any order
    const Shelves& shelves;                // bands, lots, names
    std::span<const Session> sessions;     // for who did it
    std::span<const Care> care;            // of its station at least
    const ConditionsOnRecord& conditions;  // empty: no climate is looked at
    const stats::PooledSpread& spread;     // how far like batches differ by luck
    std::optional<int> horizonDay{};       // of its plant; unset: the plant's usual upper limit, or the logbook's
};

/// The other batches that share a suspect, against what the records without any of them foretell for their plants and methods.
struct SharedFate {
    int batches{};
    int rooted{}, assessed{};  // by the day on which all are counted; assessed: their fate is known
    double expected{};         // rooted, of `assessed`
    double usualLow{},
        usualHigh{};  // rooted, nine times in ten: luck of each batch and doubt about the usual rate counted
};

struct Suspect {
    SuspectKind kind{};
    std::string name{};               // "cold solution", "lot 7 of \"IBA gel\"", "station North tub"
    std::vector<BatchId> sharedBy{};  // this batch first, then the others of `others`, nearest in time first
    int batches{};                    // that share it, this one included
    int cuttings{};                   // stuck in them
    SharedFate others{};  // without this one: it is asked about because it did worse, so it can't speak for itself
    std::vector<std::string> speaksFor{};      // sentences, each with its n; never empty
    std::vector<std::string> speaksAgainst{};  // sentences; empty: nothing on record does
    std::vector<std::string>
        togetherWith{};  // names of suspects that nearly the same batches share: records can't tell them apart
    double odds{};       // that all who share it were held back, against luck alone: prior weight x likelihood ratio
    std::string oddsInWords{};             // "about 8 to 1 for it, against luck alone"
    std::string changeNextTime{};          // what to do in the next batch, one sentence
    std::optional<TrialProposal> trial{};  // to find out; absent where it is no factor of a trial
    std::string checkInstead{};            // what shows it without a trial, one or two sentences; empty beside a trial
};

struct Suspects {
    BatchId batch{};
    std::string code{};
    std::optional<AgainstThePast>
        againstPast{};  // absent before the first look, or without an earlier batch of its plant and method
    std::vector<Suspect> suspects{};  // likeliest first; all that were looked at
    bool isNamed{};                   // the first of them stands out
    int considered{};                 // other batches that the odds rest on
    /// What stands out and how sure, or "No suspect stands out; luck alone would do so in 1 of 12 batches.", and why the first isn't named
    /// where it is likelier than luck. Then the day on which batches are counted, if before the horizon, and the batch's own note.
    std::string inWords{};
    std::string warning{};  // that records are not an experiment; show it beside the list, always
    std::vector<std::string>
        recordNextTime{};  // sentences: what was not on record and would have told more; may be empty
};

/// A suspect is named where its odds, against luck and all suspects that don't go together with it, are at least so high.
inline constexpr double oddsToName = 2;

/// Every batch is counted on one day: those of the batch's plant on the day of its last look or the horizon, whichever is earlier; those of
/// other plants at their own. Batches not seen so far are left out.
///
/// Of each candidate the set S of batches that share it is tried: is one common drop in the odds of rooting of all in S likelier than luck?
/// The drop has a half-normal law on the log-odds; counts are beta-binomial with the pooled spread; the usual rate of each plant by each
/// method comes from the batches outside S. The batch itself is left out of this. Where losses to a cause are recorded out of the usual
/// proportion, that counts beside. A weight before looking favours what was measured outside its band, or recorded, over mere coincidence
/// of station, session or month (common practice, no source); it is shared by the candidates of a kind, so that many don't find more by luck.
/// docs/statistics/suspects.md has the method in plain words and how often it is right.
///
/// Usable for any batch; in one that did no worse than usual nothing is named. The nearest 600 batches in time are considered, the 60
/// nearest of its own plant and method first. Takes some tens of milliseconds. A stop request ends it early; the caller throws that away.
[[nodiscard]] Suspects suspectsFor(const Course& batch, const RecordsForSuspects& records,
                                   const std::stop_token& stop = {});

}  // namespace core
