// SPDX-License-Identifier: MIT
#include "core/causes/suspect_evidence.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/comparison/english.h"

namespace core {

namespace {

constexpr double ninetyQuantile = 1.6449;  // of the normal law, 5 % either side
constexpr double poorQuantile = -1.2816;   // one in ten so poor by luck
constexpr int daysAtThatTime = 28;
constexpr std::size_t fewestWithout = 3;  // before their doing well says anything
constexpr double togetherShare = 0.8;

double deviationOf(const HorizonFate& fate, const stats::ForetoldCount& foretold) {
    return (fate.rooted - foretold.expected) / std::sqrt(std::max(foretold.variance, 1e-9));
}

std::string wholeOf(double value) {
    return std::to_string(std::lround(value));
}

SharedFate fateOf(const SuspectSearch& search, const std::vector<std::size_t>& others,
                  const stats::ForetoldCount& foretold) {
    SharedFate fate{.batches = static_cast<int>(others.size())};
    for (const std::size_t other : others) {
        fate.rooted += search.around.batches[other].fate.rooted;
        fate.assessed += search.around.batches[other].fate.assessed;
    }
    const double reach = ninetyQuantile * std::sqrt(std::max(foretold.variance, 0.0));
    fate.expected = foretold.expected;
    fate.usualLow = std::max(0.0, foretold.expected - reach);
    fate.usualHigh = std::min<double>(fate.assessed, foretold.expected + reach);
    return fate;
}

void describeShared(const SharedFate& fate, Suspect& suspect) {
    if (fate.batches == 0) {
        suspect.speaksAgainst.emplace_back("No other batch considered shares it, so nothing tells whether it harms.");
        return;
    }
    const std::string others = counted(fate.batches, "other batch that shares", "other batches that share");
    const bool isLow = fate.rooted < fate.usualLow;
    const std::string words = "Of the " + others + " it, " + std::to_string(fate.rooted) + " of " +
                              counted(fate.assessed, "cutting", "cuttings") + " rooted; usual would be " +
                              wholeOf(fate.expected) + " (" + wholeOf(fate.usualLow) + " to " +
                              wholeOf(fate.usualHigh) + " nine times in ten)";
    if (isLow)
        suspect.speaksFor.push_back(words + ".");
    else if (fate.rooted < std::lround(fate.expected))
        suspect.speaksFor.push_back(words + ": somewhat fewer, but luck does as much.");
    else
        suspect.speaksAgainst.push_back(words + ": no fewer than usual.");
}

void describeFine(const SuspectSearch& search, const std::vector<std::size_t>& others,
                  const std::vector<stats::ForetoldCount>& foretold, Suspect& suspect) {
    int fine = 0;
    for (std::size_t i = 0; i < others.size(); ++i)
        if (search.around.batches[others[i]].fate.rooted >= foretold[i].expected) ++fine;
    if (fine == 0 || others.size() < 2) return;
    suspect.speaksAgainst.push_back(std::to_string(fine) + " of the " + std::to_string(others.size()) +
                                    " others that share it did as well as usual or better.");
}

/// Others at that time, of its plant or method, that did poorly though they don't share it.
void describePoorWithout(const SuspectSearch& search, const std::vector<std::size_t>& others, Suspect& suspect) {
    const std::set<std::size_t> sharing(others.begin(), others.end());
    std::vector<std::size_t> without;
    for (std::size_t i = 0; i < search.around.batches.size(); ++i) {
        const BatchAround& other = search.around.batches[i];
        const bool isAkin = other.batch().plant == search.own().plant || other.batch().method == search.own().method;
        if (isAkin && other.daysApart <= daysAtThatTime && !sharing.contains(i)) without.push_back(i);
    }
    if (without.empty()) return;
    int poor = 0;
    for (const std::size_t other : without) {
        const std::vector<stats::ForetoldCount> foretold = search.drop.foretold({&other, 1});
        if (deviationOf(search.around.batches[other].fate, foretold.front()) < poorQuantile) ++poor;
    }
    const std::string words = " of " + counted(static_cast<int>(without.size()), "batch", "batches") +
                              " of its plant or method stuck within " + std::to_string(daysAtThatTime) +
                              " days without it did poorly";
    constexpr double asManyAsLuckGives = 0.1;
    if (poor > asManyAsLuckGives * static_cast<double>(without.size()) + 1)
        suspect.speaksAgainst.push_back(std::to_string(poor) + words + " too.");
    else if (!others.empty() && without.size() >= fewestWithout)
        suspect.speaksFor.push_back((poor == 0 ? "None" : "Only " + std::to_string(poor)) + words + ".");
}

}  // namespace

double weightOf(SuspectKind kind) {
    switch (kind) {
        case SuspectKind::Condition:
            return 0.8;
        case SuspectKind::LossCause:
        case SuspectKind::Lot:
        case SuspectKind::Care:
            return 0.2;
        case SuspectKind::StockPlant:
        case SuspectKind::Station:
            return 0.06;
        case SuspectKind::Session:
        case SuspectKind::Worker:
        case SuspectKind::Month:
            return 0.03;
    }
    return 0;
}

std::string oddsInWords(double odds) {
    constexpr double most = 1000;
    const std::string end = ", against luck alone";
    if (odds >= most) return "more than 1000 to 1 for it" + end;
    if (odds >= 1.5)
        return "about " + std::to_string(roundedUp(static_cast<int>(std::lround(odds)))) + " to 1 for it" + end;
    if (odds > 1 / 1.5) return "about even" + end;
    if (odds > 1 / most)
        return "about " + std::to_string(roundedUp(static_cast<int>(std::lround(1 / odds)))) +
               " to 1 against it: luck alone is likelier";
    return "more than 1000 to 1 against it: luck alone is likelier";
}

bool areTogether(const Suspect& a, const Suspect& b) {
    if (a.sharedBy.size() < 2 || b.sharedBy.size() < 2) return false;
    const std::set<BatchId> ofA(a.sharedBy.begin(), a.sharedBy.end());
    const auto both =
        static_cast<double>(std::ranges::count_if(b.sharedBy, [&](BatchId id) { return ofA.contains(id); }));
    return both >= togetherShare * (static_cast<double>(a.sharedBy.size() + b.sharedBy.size()) - both);
}

Suspect weighed(const SuspectSearch& search, Candidate candidate, double shareOfKind) {
    Suspect suspect{.kind = candidate.kind,
                    .name = std::move(candidate.name),
                    .sharedBy = {search.own().id},
                    .batches = static_cast<int>(candidate.others.size()) + 1,
                    .cuttings = search.own().stuck,
                    .speaksFor = std::move(candidate.speaksFor)};
    for (const std::size_t other : candidate.others) {
        suspect.sharedBy.push_back(search.around.batches[other].batch().id);
        suspect.cuttings += search.around.batches[other].batch().stuck;
    }
    const std::vector<stats::ForetoldCount> foretold = search.drop.foretold(candidate.others);
    suspect.others = fateOf(search, candidate.others, foretold.back());
    describeShared(suspect.others, suspect);
    describeFine(search, candidate.others, foretold, suspect);
    describePoorWithout(search, candidate.others, suspect);
    for (std::string& words : candidate.speaksAgainst) suspect.speaksAgainst.push_back(std::move(words));
    const double logRatio = candidate.logRatio.value_or(search.drop.logLikelihoodRatio(candidate.others));
    suspect.odds = weightOf(suspect.kind) * shareOfKind * std::exp(logRatio);
    suspect.oddsInWords = oddsInWords(suspect.odds);
    suspect.changeNextTime = std::move(candidate.changeNextTime);
    suspect.trial = std::move(candidate.trial);
    suspect.checkInstead = std::move(candidate.checkInstead);
    return suspect;
}

}  // namespace core
