// SPDX-License-Identifier: MIT
#include "core/causes/suspects.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/causes/suspect_evidence.h"
#include "core/comparison/english.h"

namespace core {

namespace {

constexpr const char* notAnExperiment =
    "Suspects come from records, and records are not an experiment: what went with a poor batch need not have harmed "
    "it, and what did may "
    "not be on record. Change one thing, and try it beside the old way.";

/// Where the chance of so few is larger, there is nothing to explain.
constexpr double ordinaryChance = 0.2;

std::optional<AgainstThePast> againstItsPast(const SuspectSearch& search) {
    std::vector<Course> earlier;
    for (const BatchAround& other : search.around.batches)
        if (other.group == 0 && other.batch().stuckOn < search.own().stuckOn) earlier.push_back(*other.course);
    return againstThePast(search.batch, earlier, search.day, search.records.spread);
}

std::vector<Candidate> candidatesFor(const SuspectSearch& search) {
    std::vector<Candidate> candidates;
    addConditions(search, candidates);
    addLossCauses(search, candidates);
    addLots(search, candidates);
    addCare(search, candidates);
    addCircumstances(search, candidates);
    return candidates;
}

std::vector<Suspect> weighedAll(const SuspectSearch& search, std::vector<Candidate> candidates,
                                const std::stop_token& stop) {
    std::map<SuspectKind, int> ofKind;
    for (const Candidate& candidate : candidates) ++ofKind[candidate.kind];
    std::vector<Suspect> suspects;
    for (Candidate& candidate : candidates) {
        if (stop.stop_requested()) break;
        const double share = candidate.weight / ofKind[candidate.kind];
        suspects.push_back(weighed(search, std::move(candidate), share));
    }
    std::ranges::stable_sort(suspects, std::ranges::greater{}, &Suspect::odds);
    for (Suspect& suspect : suspects)
        for (const Suspect& other : suspects)
            if (&suspect != &other && areTogether(suspect, other)) suspect.togetherWith.push_back(other.name);
    return suspects;
}

/// Beside no other batch, nothing is.
bool isDoneWorse(const Suspects& found) {
    if (found.considered == 0) return false;
    if (!found.againstPast) return true;
    return found.againstPast->rooted < found.againstPast->expected && found.againstPast->chanceOfSoFew < ordinaryChance;
}

/// Luck, and all suspects that the first one's batches don't explain as well.
double rivalsOfFirst(const std::vector<Suspect>& suspects) {
    double rivals = 1;
    for (std::size_t i = 1; i < suspects.size(); ++i)
        if (!areTogether(suspects.front(), suspects[i])) rivals += suspects[i].odds;
    return rivals;
}

bool standsOut(const std::vector<Suspect>& suspects) {
    return !suspects.empty() && suspects.front().odds >= oddsToName * rivalsOfFirst(suspects);
}

std::string luckInWords(const Suspects& found, const std::string& doesWhat) {
    if (!found.againstPast) return "No earlier batch of this plant by this method tells what is usual.";
    const AgainstThePast& past = *found.againstPast;
    if (past.rooted >= past.expected)
        return "It did no worse than usual: " + std::to_string(past.rooted) + " of " + std::to_string(past.of) +
               " rooted.";
    const double chance = std::max(past.chanceOfSoFew, 0.001);
    const int oneIn = std::max(2, roundedUp(static_cast<int>(std::lround(1 / chance))));
    return "Luck alone would " + doesWhat + " in 1 of " + std::to_string(oneIn) + " batches.";
}

/// Why one that is likelier than luck isn't named; nothing where none is.
std::string whyNoneIsNamed(const Suspects& found) {
    if (found.suspects.empty() || found.suspects.front().odds <= 1) return {};
    const std::string comesFirst = found.suspects.front().name + " comes first, but ";
    if (!isDoneWorse(found)) {
        if (!found.againstPast) return comesFirst + "no earlier batch says that it did worse than usual";
        return comesFirst + (found.againstPast->rooted < found.againstPast->expected
                                 ? "the batch did hardly worse than usual"
                                 : "there is nothing to explain");
    }
    const double rivals = rivalsOfFirst(found.suspects);
    return comesFirst + (rivals > 1 ? "luck and the others together are " : "luck alone is ") +
           (rivals >= found.suspects.front().odds ? "at least as likely" : "more than half as likely");
}

std::string noneInWords(const Suspects& found) {
    std::string words = "No suspect stands out";
    if (const std::string why = whyNoneIsNamed(found); !why.empty())
        words += ": " + why + ". " + luckInWords(found, "leave so few");
    else if (const std::string luck = luckInWords(found, "do so"); luck.starts_with("Luck"))
        words += "; l" + luck.substr(1);
    else
        words += ". " + luck;
    return words + (found.considered == 0 ? " There is no other batch to judge by." : "");
}

std::string suspectsInWords(const Suspects& found) {
    if (!found.isNamed) return noneInWords(found);
    const std::string luck = luckInWords(found, "leave so few");
    const Suspect& first = found.suspects.front();
    std::string words = "First suspect: " + first.name + ", " + first.oddsInWords + ". " + luck;
    if (!first.togetherWith.empty())
        words += " It can't be told apart from " + listed(first.togetherWith) + ", always together with it.";
    return words;
}

std::string dayInWords(const SuspectSearch& search) {
    if (search.day >= search.trialDay() || search.around.batches.empty()) return {};
    return " Batches of its plant are counted as they stood on day " + std::to_string(search.day) + " after sticking.";
}

/// On one line; nothing where there is none.
std::string noteInWords(const std::string& note) {
    const std::string_view blank = " \t\r\n";
    const std::size_t first = note.find_first_not_of(blank);
    if (first == std::string::npos) return {};
    std::string line = note.substr(first, note.find_last_not_of(blank) + 1 - first);
    std::ranges::replace_if(
        line, [](char each) { return each == '\t' || each == '\r' || each == '\n'; }, ' ');
    const bool isEnded = std::string_view(".!?").find(line.back()) != std::string_view::npos;
    return " Its own note says: \u201c" + line + "\u201d" + (isEnded ? "" : ".");
}

}  // namespace

std::string_view wordFor(SuspectKind kind) {
    constexpr std::array<std::string_view, 9> words{"condition", "cause of loss", "lot",    "care", "stock plant",
                                                    "station",   "session",       "worker", "month"};
    return words[static_cast<std::size_t>(kind)];
}

Suspects suspectsFor(const Course& batch, const RecordsForSuspects& records, const std::stop_token& stop) {
    const Batch& own = batch.record->batch;
    Suspects found{.batch = own.id, .code = own.code, .warning = notAnExperiment};
    int day = records.horizonDay.value_or(usualHorizonOf(own.plant, records.shelves));
    if (!batch.looks.empty()) day = std::min(day, batch.looks.back().day);
    const BatchesAround around = batchesAround(batch, day, records.batches, records.shelves);
    const stats::SharedDrop drop(around.trays(), around.groups, std::min(records.spread.correlation, 0.9));
    const SuspectSearch search{.batch = batch, .day = day, .records = records, .around = around, .drop = drop};
    found.considered = static_cast<int>(around.batches.size());
    found.againstPast = againstItsPast(search);
    found.suspects = weighedAll(search, candidatesFor(search), stop);
    found.isNamed = isDoneWorse(found) && standsOut(found.suspects);
    found.recordNextTime = whatToRecord(search);
    found.inWords = suspectsInWords(found) + dayInWords(search) + noteInWords(own.note);
    return found;
}

}  // namespace core
