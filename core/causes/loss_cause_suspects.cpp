// SPDX-License-Identifier: MIT
// Causes of loss that were recorded out of proportion. Not how many were lost: a poor batch loses more to everything. What counts is which
// share of its losses one cause took, against the grower's usual share.
#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/causes/suspect_search.h"
#include "core/comparison/english.h"
#include "stats/overdispersion/beta_binomial.h"

namespace core {

namespace {

/// What is about at one time is about on the whole bench: losses of other batches count as its company so many days either side.
constexpr int daysOfCompany = 14;
/// Losses of one batch are alike: what rots one rots its neighbour (common practice, no source).
constexpr double leastLikeness = 0.15;
constexpr int fewestLost = 2;
constexpr int raisedShares = 20;

/// What to do about a cause, and how a method is called that does so. Those of a new logbook by name (common practice, no source).
struct LossRemedy {
    std::string words, change;
};

LossRemedy remedyFor(const std::string& cause) {
    if (cause == "rotted")
        return {
            .words = "Clean knives and station first, give the stems more air, and take out what rots at each check.",
            .change = "kept clean and airy"};
    if (cause == "dried out")
        return {.words = "Keep the air moister until the first roots, and the time between cutting and sticking short.",
                .change = "moister air"};
    if (cause == "pests")
        return {.words = "Look over stock plants and cuttings for pests before sticking, and keep them off after it.",
                .change = "pests kept off"};
    if (cause == "broken")
        return {.words = "Handle the cuttings less: support them, and look without lifting.", .change = "handled less"};
    return {.words = "Look for what is behind losses to \u201c" + cause + "\u201d at each check of the first days.",
            .change = "guarded against " + cause};
}

struct LostToCause {
    int count{}, of{};  // lost to the cause, of all lost
    [[nodiscard]] stats::Tray tray() const { return {.successes = count, .trials = of}; }
};

struct DaysOfLoss {
    Date first, last;
    [[nodiscard]] bool holds(Date day) const { return first <= day && day <= last; }
};

template <class Counts>
LostToCause lostTo(LossCauseId cause, const BatchRecord& record, const Counts& counts) {
    LostToCause lost;
    for (const Check& check : record.checks) {
        if (!counts(check.checkedOn)) continue;
        for (const Loss& loss : check.losses) {
            lost.of += loss.count;
            if (loss.cause == cause) lost.count += loss.count;
        }
    }
    return lost;
}

DaysOfLoss companyDays(LossCauseId cause, const BatchRecord& record) {
    std::optional<DaysOfLoss> days;
    for (const Check& check : record.checks) {
        const bool isHit = std::ranges::any_of(check.losses, [&](const Loss& loss) { return loss.cause == cause; });
        if (!isHit) continue;
        if (!days) days = DaysOfLoss{check.checkedOn, check.checkedOn};
        days->first = std::min(days->first, check.checkedOn);
        days->last = std::max(days->last, check.checkedOn);
    }
    return {.first = addDays(days->first, -daysOfCompany), .last = addDays(days->last, daysOfCompany)};
}

/// Log of how much likelier these shares are if the cause took any larger share than usual, the same from all, than if the usual one.
double logRaised(const std::vector<LostToCause>& losses, double usual, double likeness) {
    const auto logChance = [&](double share) {
        double sum = 0;
        for (const LostToCause& each : losses)
            sum += stats::betaBinomialLogProbability(each.count, each.of, share, likeness);
        return sum;
    };
    const double asUsual = logChance(usual);
    double sum = 0;
    for (int i = 0; i < raisedShares; ++i)
        sum += std::exp(logChance(usual + (1 - usual) * (i + 0.5) / raisedShares) - asUsual);
    return std::log(sum / raisedShares);
}

/// One cause: in this batch, in its company, and usually.
struct CauseInRecords {
    LostToCause own, company, usual;
    std::vector<LostToCause> together;  // own and each of the company that lost any, to whatever cause
    std::vector<std::size_t> hit;       // others that lost to it in those days
    std::vector<std::size_t> standing;  // others that stood then
    DaysOfLoss days;

    [[nodiscard]] bool isUsualKnown() const { return usual.of > 0; }
    /// As if one more had been lost to it of four: few records say little of what is usual.
    [[nodiscard]] double usualShare() const { return (usual.count + 1.0) / (usual.of + 4.0); }
};

CauseInRecords causeInRecords(LossCauseId cause, const SuspectSearch& search) {
    CauseInRecords found;
    const BatchRecord& own = *search.batch.record;
    found.days = companyDays(cause, own);
    found.own = lostTo(cause, own, [](Date) { return true; });
    found.together.push_back(found.own);
    for (std::size_t i = 0; i < search.around.batches.size(); ++i) {
        const BatchRecord& other = *search.around.batches[i].course->record;
        const LostToCause then = lostTo(cause, other, [&](Date day) { return found.days.holds(day); });
        const LostToCause elsewhen = lostTo(cause, other, [&](Date day) { return !found.days.holds(day); });
        found.company.count += then.count, found.company.of += then.of;
        found.usual.count += elsewhen.count, found.usual.of += elsewhen.of;
        if (then.of > 0) found.together.push_back(then);
        if (then.count > 0) found.hit.push_back(i);
        const Date lastSeen = addDays(other.batch.stuckOn, search.around.batches[i].course->looks.back().day);
        if (other.batch.stuckOn <= found.days.last && lastSeen >= found.days.first &&
            other.batch.stuckOn >= addDays(found.days.first, -daysOfCompany))
            found.standing.push_back(i);
    }
    return found;
}

/// The batch alone was hit, or all that stood then: each as likely before looking. Says nothing where nothing tells the usual share.
double logRatioOf(const CauseInRecords& found, const SuspectSearch& search) {
    if (!found.isUsualKnown()) return 0;
    const double likeness = std::max(leastLikeness, search.records.spread.correlation);
    const double alone = logRaised({found.own}, found.usualShare(), likeness);
    const double together =
        logRaised(found.together, found.usualShare(), likeness) + search.drop.logLikelihoodRatio(found.standing);
    const double larger = std::max(alone, together);
    return larger + std::log((std::exp(alone - larger) + std::exp(together - larger)) / 2);
}

/// Rooted less than others of its plant and method would have; nothing where none are known.
std::optional<double> shortfallOf(const SuspectSearch& search) {
    int rooted = 0, assessed = 0;
    for (const BatchAround& other : search.around.batches) {
        if (other.group != 0) continue;
        rooted += other.fate.rooted, assessed += other.fate.assessed;
    }
    if (assessed == 0) return {};
    const HorizonFate own = fateAt(search.day, search.batch.stuck(), search.batch.looks);
    return own.assessed * (static_cast<double>(rooted) / assessed) - own.rooted;
}

std::string wholeText(double value) {
    return std::to_string(std::lround(value));
}

void describe(const CauseInRecords& found, const std::string& name, Candidate& candidate) {
    const std::string usual = found.isUsualKnown() ? "at other times " + std::to_string(found.usual.count) + " of " +
                                                         std::to_string(found.usual.of) + " were."
                                                   : "nothing lost at other times tells what is usual.";
    candidate.speaksFor.push_back(std::to_string(found.own.count) + " of its " + std::to_string(found.own.of) +
                                  " lost cuttings were lost to \u201c" + name + "\u201d; " + usual);
    if (found.company.of == 0) return;
    const double share = static_cast<double>(found.company.count) / found.company.of;
    const std::string words = "Other batches lost " + std::to_string(found.company.count) + " of " +
                              std::to_string(found.company.of) + " to it from " + isoText(found.days.first) + " to " +
                              isoText(found.days.last) + ".";
    (share > found.usualShare() ? candidate.speaksFor : candidate.speaksAgainst).push_back(words);
}

void weighShortfall(const CauseInRecords& found, const SuspectSearch& search, Candidate& candidate) {
    if (!found.isUsualKnown()) return;
    const auto shortfall = shortfallOf(search);
    if (!shortfall || *shortfall < 1) return;
    const double more = found.own.count - found.usualShare() * found.own.of;
    constexpr double half = 0.5, least = 0.1;
    candidate.weight = std::clamp(more / *shortfall / half, least, 1.0);
    const std::string words = "It took about " + wholeText(more) + " more than usual, and " + wholeText(*shortfall) +
                              " fewer rooted than others of the plant by the method would have.";
    (more >= half * *shortfall ? candidate.speaksFor : candidate.speaksAgainst).push_back(words);
}

}  // namespace

void addLossCauses(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    std::map<LossCauseId, int> lost;
    for (const Check& check : search.batch.record->checks)
        for (const Loss& loss : check.losses)
            if (loss.cause.isSet()) lost[loss.cause] += loss.count;
    for (const auto& [id, count] : lost) {
        const LossCause* cause = find(search.records.shelves.lossCauses, id);
        if (cause == nullptr || count < fewestLost) continue;
        CauseInRecords found = causeInRecords(id, search);
        if (found.own.count <= found.usualShare() * found.own.of) continue;
        Candidate candidate{.kind = SuspectKind::LossCause, .name = cause->name};
        candidate.logRatio = logRatioOf(found, search);
        describe(found, cause->name, candidate);
        weighShortfall(found, search, candidate);
        candidate.others = std::move(found.hit);
        const LossRemedy remedy = remedyFor(cause->name);
        candidate.changeNextTime = remedy.words;
        candidate.trial = proposeChangedMethod(search.own(), search.records.shelves, search.trialDay(), remedy.change);
        candidates.push_back(std::move(candidate));
    }
}

}  // namespace core
