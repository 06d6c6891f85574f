// SPDX-License-Identifier: MIT
#include "core/trial/trial_progress.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

#include "core/comparison/english.h"
#include "core/trial/trial_rules.h"
#include "stats/numeric/seeded_random.h"

namespace core {

namespace {

/// As dealt, or for a batch that was given to the trial by hand by what it is; -1: of no arm.
int armOf(const Batch& batch, const Trial& trial) {
    for (const TrialBatch& dealt : trial.batches)
        if (dealt.batch.isSet() && dealt.batch == batch.id) return dealt.arm;
    if (!trial.factor) return -1;
    const auto arm = std::ranges::find(trial.arms, kindOf(batch, *trial.factor));
    return arm == trial.arms.end() ? -1 : static_cast<int>(arm - trial.arms.begin());
}

void addLine(const BatchLine& line, ArmCounts& counts) {
    ++counts.batchesStuck;
    counts.stuck += line.tally.stuck;
    counts.rooted += line.tally.rooted;
    counts.lost += line.tally.lost;
    counts.withdrawn += line.tally.withdrawn;
    counts.undecided += line.tally.undecided();
}

/// Counts by arm, and by block and arm, in the order in which blocks were dealt.
class Counting {
  public:
    Counting(const Trial& trial, std::span<const BatchLine* const> lines) : trial_(trial) {
        for (const TrialBatch& dealt : trial.batches) {
            for (ArmCounts* counts : {&of({}, dealt.arm), &of(dealt.block, dealt.arm)}) {
                ++counts->batchesDealt;
                counts->dealt += dealt.stuck;
                if (dealt.block.empty()) break;
            }
        }
        for (const BatchLine* line : lines) {
            const int arm = armOf(line->batch, trial);
            if (arm < 0) continue;
            addLine(*line, of({}, arm));
            if (!line->batch.block.empty()) addLine(*line, of(line->batch.block, arm));
        }
    }

    /// In the order of `arms`.
    [[nodiscard]] std::vector<ArmCounts> whole(const std::vector<int>& arms) { return within({}, arms); }
    [[nodiscard]] std::vector<ArmCounts> byBlock(const std::vector<int>& arms) {
        std::vector<ArmCounts> all;
        for (const std::string& block : std::vector<std::string>(blocks_))
            for (ArmCounts& counts : within(block, arms)) all.push_back(std::move(counts));
        return all;
    }

  private:
    ArmCounts& of(const std::string& block, int arm) {
        if (!block.empty() && std::ranges::find(blocks_, block) == blocks_.end()) blocks_.push_back(block);
        return counts_[{block, arm}];
    }

    std::vector<ArmCounts> within(const std::string& block, const std::vector<int>& arms) {
        std::vector<ArmCounts> all;
        for (const int arm : arms) {
            ArmCounts counts = of(block, arm);
            counts.arm = arm;
            counts.block = block;
            all.push_back(std::move(counts));
        }
        return all;
    }

    const Trial& trial_;
    std::vector<std::string> blocks_;
    std::map<std::pair<std::string, int>, ArmCounts> counts_;
};

void nameArms(const Trial& trial, const Shelves& shelves, const std::vector<int>& letters, bool isTold,
              std::vector<ArmCounts>& arms) {
    for (ArmCounts& counts : arms) {
        if (isTold) {
            counts.name = nameOf(trial.arms[static_cast<std::size_t>(counts.arm)], *trial.factor, shelves);
            continue;
        }
        const auto letter = std::ranges::find(letters, counts.arm) - letters.begin();
        counts.name = std::string("arm ") + static_cast<char>('A' + letter);
        counts.arm = -1;
    }
}

void countLines(std::span<const BatchLine* const> lines, TrialProgress& progress) {
    for (const BatchLine* line : lines) {
        const Date on = line->batch.stuckOn;
        if (!progress.firstStuckOn || on < *progress.firstStuckOn) progress.firstStuckOn = on;
        if (!progress.lastStuckOn || on > *progress.lastStuckOn) progress.lastStuckOn = on;
        ++progress.batchesStuck;
        const bool isDone = line->tally.undecided() == 0;
        if (!line->tally.lastCheckedOn) continue;
        ++progress.batchesLookedAt;
        if (isDone || daysBetween(on, *line->tally.lastCheckedOn) >= progress.horizonDay)
            ++progress.batchesLookedAtAtHorizon;
    }
}

void countSessions(const Trial& trial, TrialProgress& progress) {
    std::set<int> stuck;
    for (const TrialBatch& dealt : trial.batches)
        if (dealt.batch.isSet()) stuck.insert(dealt.session);
    progress.sessions = sessionsOf(trial);
    progress.sessionsStuck = static_cast<int>(stuck.size());
    progress.batchesDealt = static_cast<int>(trial.batches.size());
}

TrialStage stageOf(const Trial& trial, const TrialProgress& progress, Date today) {
    const bool isAllStuck =
        std::ranges::all_of(trial.batches, [](const TrialBatch& dealt) { return dealt.batch.isSet(); });
    if (progress.batchesStuck == 0) return trial.factor ? TrialStage::Planned : TrialStage::Named;
    if (!isAllStuck) return TrialStage::Sticking;
    return today >= addDays(*progress.lastStuckOn, progress.horizonDay) ? TrialStage::Decided : TrialStage::Watched;
}

std::string countedSoFar(std::span<const BatchLine* const> lines) {
    ArmCounts all;
    for (const BatchLine* line : lines) addLine(*line, all);
    return counted(all.stuck, "cutting", "cuttings") + " stuck in " + counted(all.batchesStuck, "batch", "batches") +
           ": " + std::to_string(all.rooted) + " rooted, " + std::to_string(all.lost) + " lost, " +
           (all.withdrawn > 0 ? std::to_string(all.withdrawn) + " withdrawn, " : "") + std::to_string(all.undecided) +
           " undecided, all arms together.";
}

std::string progressInWords(const TrialProgress& progress, std::span<const BatchLine* const> lines, Date today) {
    const std::string horizon = "day " + std::to_string(progress.horizonDay);
    switch (progress.stage) {
        case TrialStage::Named:
            return "No batch bears this trial's name yet.";
        case TrialStage::Planned:
            return progress.batchesDealt == 0
                       ? "Nothing is dealt yet."
                       : counted(progress.batchesDealt, "batch", "batches") + " in " +
                             counted(progress.sessions, "session", "sessions") + " are to be stuck; none is yet.";
        case TrialStage::Sticking:
            return std::to_string(progress.batchesStuck) + " of " + counted(progress.batchesDealt, "batch", "batches") +
                   " are stuck. " + countedSoFar(lines) + " No comparison is made before the last batch is at its " +
                   horizon + ".";
        case TrialStage::Watched: {
            const int left = daysBetween(today, *progress.decidedOn);
            return countedSoFar(lines) + " No comparison is made before the last batch is at its " + horizon + ", in " +
                   counted(left, "day", "days") + ".";
        }
        case TrialStage::Decided:
            break;
    }
    const int missing = progress.batchesStuck - progress.batchesLookedAtAtHorizon;
    if (missing == 0) return "Every batch is past its " + horizon + " and was looked at then or later.";
    return "Every batch is past its " + horizon + ", but " + counted(missing, "was", "were") +
           " not looked at since: their undecided cuttings count as not known. Look at them before reading the result.";
}

}  // namespace

std::vector<int> armsBehindLetters(const Trial& trial) {
    constexpr std::uint64_t ownStream = 0x424c494e44ULL << 24U;  // apart from the streams that deal arms and places
    std::vector<int> arms(trial.arms.size());
    std::iota(arms.begin(), arms.end(), 0);
    stats::SeededRandom random(ownStream ^ trial.allocationSeed.value_or(0));
    random.shuffle(std::span<int>(arms));
    return arms;
}

TrialProgress progressOf(const Trial& trial, const Shelves& shelves, std::span<const BatchLine> lines, Date today) {
    std::vector<const BatchLine*> own;
    for (const BatchLine& line : lines)
        if (line.batch.trial == trial.id) own.push_back(&line);
    TrialProgress progress;
    progress.horizonDay = trial.horizonDay.value_or(shelves.facts.horizonDay);
    countLines(own, progress);
    countSessions(trial, progress);
    progress.stage = stageOf(trial, progress, today);
    if (progress.stage == TrialStage::Watched || progress.stage == TrialStage::Decided)
        progress.decidedOn = addDays(*progress.lastStuckOn, progress.horizonDay);
    progress.isTold = !trial.isBlinded || progress.stage == TrialStage::Decided || progress.batchesStuck == 0;
    for (const BatchLine* line : own) progress.others += trial.factor && armOf(line->batch, trial) < 0 ? 1 : 0;
    if (trial.factor) {
        std::vector<int> order(trial.arms.size());
        std::iota(order.begin(), order.end(), 0);
        const std::vector<int> letters = armsBehindLetters(trial);
        if (!progress.isTold) order = letters;
        Counting counting(trial, own);
        progress.arms = counting.whole(order);
        progress.armsByBlock = counting.byBlock(order);
        nameArms(trial, shelves, letters, progress.isTold, progress.arms);
        nameArms(trial, shelves, letters, progress.isTold, progress.armsByBlock);
    }
    progress.inWords = progressInWords(progress, own, today);
    return progress;
}

TrialArm kindOf(const Batch& batch, Factor factor) {
    switch (factor) {
        case Factor::Method:
            return {.method = batch.method};
        case Factor::Treatment:
            return {.treatment = batch.treatment};
        case Factor::Medium:
            return {.medium = batch.medium};
        case Factor::CuttingKind:
            return {.cuttingKind = batch.cuttingKind};
    }
    return {};
}

Factor factorOf(const Trial& trial, std::span<const BatchRecord> batches) {
    if (trial.factor) return *trial.factor;
    for (const Factor factor : {Factor::Method, Factor::Treatment, Factor::Medium, Factor::CuttingKind}) {
        std::optional<TrialArm> first;
        for (const BatchRecord& record : batches) {
            if (record.batch.trial != trial.id) continue;
            if (!first) first = kindOf(record.batch, factor);
            if (*first != kindOf(record.batch, factor)) return factor;
        }
    }
    return Factor::Method;
}

Result<Comparison> trialResult(const Trial& trial, const Shelves& shelves, std::span<const BatchRecord> batches,
                               std::stop_token stop) {
    ComparisonQuestion question;
    question.factor = factorOf(trial, batches);
    question.trial = trial.id;
    if (!trial.horizonDay) question.horizonDay = shelves.facts.horizonDay;
    if (trial.measure == TrialMeasure::AsGoodAs) question.margin = trial.margin;
    return compare(question, shelves, batches, std::move(stop));
}

}  // namespace core
