// SPDX-License-Identifier: MIT
#include "core/money/worth_words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string_view>

#include "core/comparison/cautions.h"
#include "core/comparison/english.h"

namespace core {
namespace {

std::string amountInWords(double amount) {
    constexpr int mostDecimals = 8;
    int decimals = 2;
    if (amount > 0 && amount < 0.1)
        decimals = std::min(mostDecimals, 1 - static_cast<int>(std::floor(std::log10(amount))));
    std::array<char, 64> text{};
    const auto [end, fault] =
        std::to_chars(text.data(), text.data() + text.size(), amount, std::chars_format::fixed, decimals);
    return {text.data(), end};
}

std::string limitsInWords(const CostOfEach& each) {
    if (!std::isfinite(each.limits.high)) return amountInWords(each.limits.low) + " or more";
    return amountInWords(each.limits.low) + " to " + amountInWords(each.limits.high);
}

std::string countInWords(const CountedRate& rate) {
    return std::to_string(rate.succeeded) + " of " + std::to_string(rate.of) + " rooted in " +
           counted(rate.batches, "batch", "batches");
}

std::string standingInWords(const WorthOfPair& pair, const std::string& currency) {
    if (pair.line.dear == pair.line.cheap)
        return "A cutting costs " + moneyInWords(pair.line.dear, currency) + " by " + pair.dear.name + " as by " +
               pair.cheap.name + ".";
    return "A cutting costs " + moneyInWords(pair.line.dear, currency) + " by " + pair.dear.name + " and " +
           moneyInWords(pair.line.cheap, currency) + " by " + pair.cheap.name + ".";
}

constexpr std::size_t mostToName = 3;

std::string plantsInWords(const WorthOfPair& pair) {
    if (pair.plants.size() + pair.leftOut.size() < 2) return {};
    const auto count = [](const std::vector<std::string>& plants) { return std::to_string(plants.size()) + " plants"; };
    std::string words =
        " Compared within " +
        (pair.plants.size() > mostToName ? "the " + count(pair.plants) + " that both have" : listed(pair.plants)) +
        (pair.plants.size() > 1 ? ", each in the mix of both methods together" : "");
    if (!pair.leftOut.empty())
        words += "; " + (pair.leftOut.size() > mostToName ? count(pair.leftOut) : listed(pair.leftOut)) +
                 (pair.leftOut.size() == 1 ? " is" : " are") +
                 " left out, which not both have with costs and a strike rate";
    return words + ".";
}

/// After the one day and by the other.
std::string dayRangeInWords(const DayRange& days) {
    const long after = std::lround(days.after), by = std::lround(days.by);
    if (after <= 0) return "by day " + std::to_string(by);
    if (after + 1 >= by) return "day " + std::to_string(by);
    return "day " + std::to_string(after + 1) + " to " + std::to_string(by);
}

std::string daysInWords(const WorthOfPair& pair, const std::string& currency) {
    if (!pair.daysSaved || !pair.worthOfADay) return {};
    const long days = std::lround(std::abs(*pair.daysSaved));
    const std::string dear = " By " + pair.dear.name;
    if (days == 0) return dear + " half of those that root have rooted on about the same day.";
    std::string words = dear + " half of those that root have rooted about " +
                        counted(static_cast<int>(days), "day", "days") + (*pair.daysSaved > 0 ? " sooner" : " later");
    if (pair.dear.medianDays && pair.cheap.medianDays)
        words +=
            " (" + dayRangeInWords(*pair.dear.medianDays) + " against " + dayRangeInWords(*pair.cheap.medianDays) + ")";
    if (pair.daysSavedLimits)
        words += " (" + std::to_string(std::lround(pair.daysSavedLimits->low)) + " to " +
                 std::to_string(std::lround(pair.daysSavedLimits->high)) + " sooner fits)";
    return words + ", which is counted as " + moneyInWords(std::abs(pair.line.shift), currency) + " a plant " +
           (pair.line.shift > 0 ? "for it." : "against it.");
}

std::string whatWouldTurnIt(const WorthOfPair& pair, const std::string& currency) {
    if (!pair.dearCostToTie) return {};
    std::string words = " The two cost the same for each rooted plant if ";
    if (pair.dearStrikeToTie)
        words += pair.dear.name + " rooted " + std::to_string(perHundred(*pair.dearStrikeToTie)) + " of 100, or if ";
    return words + "a cutting by " + pair.dear.name + " cost " + moneyInWords(*pair.dearCostToTie, currency) +
           (pair.upFrontToTie ? ", its own lasting things " + moneyInWords(*pair.upFrontToTie, currency) +
                                    " instead of " + moneyInWords(pair.dear.upFront, currency)
                              : std::string()) +
           ".";
}

std::string breakEvenInWords(const WorthOfPair& pair, const std::string& currency) {
    if (!pair.breakEven) return {};
    const BreakEvenBatches& even = *pair.breakEven;
    const double upFront = even.method == pair.dear.method ? pair.dear.upFront : pair.cheap.upFront;
    const std::string things = " What " + even.name + " needs of its own (" + moneyInWords(upFront, currency) + ")";
    if (!even.middle)
        return things + " is hardly ever paid for by what it saves: the chance that it is at all is " +
               std::to_string(perHundred(even.chanceEver)) + " of 100.";
    std::string words =
        things + " is paid for by what it saves after about " + counted(*even.middle, "batch", "batches");
    if (even.low && even.high)
        words += " (" + std::to_string(*even.low) + " to " + std::to_string(*even.high) + ")";
    else if (even.low)
        words += " (" + std::to_string(*even.low) + " at least, and it may be never)";
    return words + ".";
}

bool costTheSame(const WorthOfPair& pair) {
    return pair.line.dear == pair.line.cheap;
}

std::string chanceInWords(const WorthOfPair& pair) {
    return "The chance that " + pair.dear.name + (costTheSame(pair) ? "" : ", the dearer for a cutting,") +
           " is the cheaper for each rooted plant is " +
           std::to_string(std::clamp(perHundred(pair.chanceDearPays), 1, 99)) + " of 100";
}

std::string notYetInWords(const WorthOfPair& pair) {
    std::string words = " " + chanceInWords(pair) + ", which is not enough to tell.";
    if (pair.moreCuttings)
        return words + " About " + counted(roundedUp(*pair.moreCuttings), "more cutting", "more cuttings") +
               " of each, in batches of their own, would likely tell.";
    return words + " So close together they would take thousands of cuttings to tell apart; take what suits you.";
}

std::string verdictInWords(const WorthOfPair& pair) {
    const std::string &dear = pair.dear.name, &cheap = pair.cheap.name;
    switch (pair.verdict) {
        case WorthVerdict::NothingPriced:
            return "Nothing is priced for " + (pair.cheap.perCutting.total() <= 0 ? cheap : dear) +
                   ", so what a rooted plant costs by it isn't known.";
        case WorthVerdict::TooFew:
            if (pair.plants.empty()) return " No plant has costs and a strike rate by both methods.";
            return " There are " + counted(pair.dear.strike.batches, "batch", "batches") + " of " + dear + " and " +
                   counted(pair.cheap.strike.batches, "batch", "batches") + " of " + cheap +
                   ": it takes three of each at least to say which is worth it.";
        case WorthVerdict::CannotTellMethodFromStation:
            return " But " + pair.whyNotTold + "; more batches, each at a station of its own, would tell.";
        case WorthVerdict::CannotTellYet:
            return notYetInWords(pair);
        case WorthVerdict::BetterAndCheaper:
            return " So " + cheap +
                   (costTheSame(pair) ? " is the better one at the same cost" : " is the better and the cheaper one") +
                   ": nothing in these records speaks for " + dear + ".";
        case WorthVerdict::DearerPays:
            return " So " + dear + " is worth it: " + (pair.line.shift > 0 ? "counting its days, " : "") +
                   "a rooted plant costs less by it, by more than luck would explain.";
        case WorthVerdict::CheaperPays:
            return " So " + dear + " is not worth it: " +
                   (pair.line.shift < 0 ? "counting its days, a rooted plant costs more by it, by more than luck would "
                                          "explain."
                                        : "what a cutting costs more isn't made up by what roots.");
    }
    return {};
}

/// A usable plant that costs less than a rooted one puzzles whoever reads it.
std::string usableInWords(const WorthOfMethod& worth, int horizonDay) {
    const bool isBelow = worth.usable && worth.perUsable.value && worth.perRooted.value &&
                         *worth.perUsable.value < *worth.perRooted.value;
    if (!isBelow) return {};
    return "What a usable plant costs by " + worth.name + " is of the " +
           counted(worth.usable->batches, "batch", "batches") +
           " counted after potting, whenever that was; a rooted one is of the " +
           counted(worth.strike.batches, "batch", "batches") + " known at day " + std::to_string(horizonDay) +
           ". So it can be the lower figure.";
}

std::string fewerBatchesInWords(const WorthOfMethod& worth) {
    std::vector<std::string> reasons;
    if (worth.running > 0) reasons.push_back(counted(worth.running, "is", "are") + " not at the horizon yet");
    if (worth.unwatched > 0)
        reasons.push_back(counted(worth.unwatched, "was", "were") + " left before it with cuttings undecided");
    if (worth.unpriced > 0)
        reasons.push_back(counted(worth.unpriced, "has", "have") + " no costs, which are then those of the others");
    if (reasons.empty()) return {};
    return "Of " + counted(worth.batches, "batch", "batches") + " of " + worth.name + ", " + listed(reasons) + ".";
}

/// Each on a line of its own; sentences that begin with a blank are made to follow others.
void addParagraph(std::string& words, std::string_view sentences) {
    while (sentences.starts_with(' ')) sentences.remove_prefix(1);
    if (sentences.empty()) return;
    if (!words.empty()) words += '\n';
    words += sentences;
}

}  // namespace

std::string moneyInWords(double amount, const std::string& currency) {
    return amountInWords(amount) + " " + currency;
}

std::string perRootedInWords(const WorthOfMethod& worth, double level, const std::string& currency) {
    if (worth.perCutting.total() <= 0)
        return "Nothing is priced for " + worth.name + ", so what a rooted plant costs by it isn't known.";
    if (worth.rates.empty()) return "What became of no batch of " + worth.name + " is known at the horizon yet.";
    if (!worth.perRooted.value)
        return "By " + worth.name + " none rooted, so there is no cost per plant; it is " +
               moneyInWords(worth.perRooted.limits.low, currency) + " at least (" + levelWords(level) + " interval; " +
               countInWords(worth.strike) + ").";
    return "A rooted plant costs " + moneyInWords(*worth.perRooted.value, currency) + " by " + worth.name + " (" +
           limitsInWords(worth.perRooted) + ", " + levelWords(level) + " interval; " + countInWords(worth.strike) +
           ").";
}

std::string pairInWords(const WorthOfPair& pair, const Worth& worth, const std::string& currency) {
    if (pair.verdict == WorthVerdict::NothingPriced) return verdictInWords(pair);
    std::string words;
    if (!pair.plants.empty()) addParagraph(words, plantsInWords(pair));
    addParagraph(words, standingInWords(pair, currency) + " " + perRootedInWords(pair.dear, worth.level, currency) +
                            " " + perRootedInWords(pair.cheap, worth.level, currency));
    if (!pair.plants.empty()) addParagraph(words, daysInWords(pair, currency));
    addParagraph(words, verdictInWords(pair));
    const bool canTurn = pair.verdict == WorthVerdict::CannotTellYet || pair.verdict == WorthVerdict::DearerPays ||
                         pair.verdict == WorthVerdict::CheaperPays;
    if (canTurn) addParagraph(words, whatWouldTurnIt(pair, currency) + breakEvenInWords(pair, currency));
    return words;
}

std::vector<std::string> worthCautions(const Worth& worth, const LogbookFacts& facts) {
    std::vector<std::string> cautions = originCautions(facts);
    for (const WorthOfMethod& method : worth.methods)
        for (std::string words : {fewerBatchesInWords(method), usableInWords(method, worth.horizonDay)})
            if (!words.empty()) cautions.push_back(std::move(words));
    const bool haveOwnThings = std::ranges::any_of(
        worth.methods, [](const WorthOfMethod& method) { return method.perCutting.of(CostPart::Lasting) > 0; });
    for (const WorthOfMethod& method : worth.methods)
        if (haveOwnThings && method.perCutting.total() > 0 && method.perCutting.of(CostPart::Lasting) <= 0)
            cautions.push_back("No lasting things are priced for " + method.name +
                               ": it costs nothing of that kind here.");
    if (!worth.isSpreadFromRecords && !worth.methods.empty())
        cautions.emplace_back("How much batches differ is taken as usual: no two like batches show it yet.");
    return cautions;
}

std::string worthInWords(const Worth& worth, const std::string& currency) {
    std::vector<std::string> sentences;
    for (const WorthOfPair& pair : worth.pairs) sentences.push_back(pair.inWords);
    if (worth.pairs.empty())
        for (const WorthOfMethod& method : worth.methods)
            sentences.push_back(perRootedInWords(method, worth.level, currency));
    if (worth.methods.empty()) return "No batch was stuck in these days.";
    std::string words;
    for (const std::string& sentence : sentences) words += (words.empty() ? "" : " ") + sentence;
    return words;
}

}  // namespace core
