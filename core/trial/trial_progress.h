// SPDX-License-Identifier: MIT
// How far a trial is, and its answer when it is due. Before the horizon of its last batch there are counts but no comparison: who looks every
// week and stops when it suits finds differences that aren't there.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/comparison/comparison.h"
#include "core/records.h"

namespace core {

/// Named: not planned, only a name that batches bear. Decided: every batch is stuck and past the horizon.
enum class TrialStage { Named, Planned, Sticking, Watched, Decided };

struct ArmCounts {
    int arm{-1};       // of Trial::arms; -1: not told before the horizon
    std::string name;  // "media tray", or "arm A"
    std::string block{};
    int batchesDealt{}, batchesStuck{};
    int dealt{};  // cuttings
    int stuck{}, rooted{}, lost{}, withdrawn{}, undecided{};
};

struct TrialProgress {
    TrialStage stage{};
    int sessions{}, sessionsStuck{};  // begun or done
    int batchesDealt{}, batchesStuck{}, batchesLookedAt{}, batchesLookedAtAtHorizon{};
    int horizonDay{};
    std::optional<Date> firstStuckOn, lastStuckOn;
    std::optional<Date> decidedOn;       // the horizon of the batch stuck last, once all are stuck
    bool isTold{true};                   // which arm is which
    std::vector<ArmCounts> arms;         // so far; of the trial's arms, or while they are not told by letter
    std::vector<ArmCounts> armsByBlock;  // the same within each block; none where there are no blocks
    int others{};                        // batches that bear its name and belong to no arm
    std::string inWords;
};

/// `lines` are any batches; those of the trial are picked out. What they count is as of today.
[[nodiscard]] TrialProgress progressOf(const Trial& trial, const Shelves& shelves, std::span<const BatchLine> lines,
                                       Date today);

/// Which arm stands behind the letter A, B, ...: an order by chance from the trial's seed, which neither the order of arms nor that of batches
/// gives away. Unequal numbers still can.
[[nodiscard]] std::vector<int> armsBehindLetters(const Trial& trial);

/// The arm that a batch is of, by what it is.
[[nodiscard]] TrialArm kindOf(const Batch& batch, Factor factor);
/// What the arms differ in: as planned, else the first thing of which the trial's batches have two kinds.
[[nodiscard]] Factor factorOf(const Trial& trial, std::span<const BatchRecord> batches);
/// The trial's batches compared at its horizon; `batches` is the whole logbook, from which the spread is judged. Ask when it is Decided.
[[nodiscard]] Result<Comparison> trialResult(const Trial& trial, const Shelves& shelves,
                                             std::span<const BatchRecord> batches, std::stop_token stop = {});

/// What its result can't be taken for, and what to try next: plain sentences for its report. `result`: nullptr before the horizon.
[[nodiscard]] std::vector<std::string> notShownBy(const Trial& trial, const TrialProgress& progress,
                                                  const Comparison* result);
[[nodiscard]] std::vector<std::string> whatNext(const Trial& trial, const TrialProgress& progress,
                                                const Comparison* result);

}  // namespace core
