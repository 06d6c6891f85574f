// SPDX-License-Identifier: MIT
#include "core/comparison/cautions.h"

#include <algorithm>
#include <map>
#include <unordered_set>

#include "core/comparison/english.h"
#include "core/comparison/verdict.h"

namespace core {
namespace {

using Cautions = std::vector<std::string>;

constexpr int fewestForARate = 5;

// Nobody knows more than that: each of the unknown ones may have rooted by then or not.
std::string boundsInWords(const Arm& arm) {
    const double least = static_cast<double>(arm.rooted) / arm.stuck;
    const double most = static_cast<double>(arm.rooted + arm.stuck - arm.assessed) / arm.stuck;
    std::string words = ": of all stuck, anything from " + std::to_string(perHundred(least)) + " to " +
                        std::to_string(perHundred(most)) + " of 100 had rooted by then";
    if (arm.curveShare) words += ", about " + std::to_string(perHundred(*arm.curveShare)) + " going by the curve";
    return words;
}

// Whose fate at the horizon isn't known: never dropped in silence.
void addUnknownFates(Factor factor, int horizonDay, std::span<const ArmRecords> arms, Cautions& cautions) {
    const std::string day = "day " + std::to_string(horizonDay);
    int stuck = 0, unknown = 0, withdrawn = 0;
    for (const ArmRecords& records : arms) {
        const Arm& arm = records.arm;
        stuck += arm.stuck;
        unknown += arm.stuck - arm.assessed;
        withdrawn += arm.withdrawn;
        if (10 * (arm.stuck - arm.assessed) >= arm.stuck && arm.stuck > arm.assessed)
            cautions.push_back("Of " + std::to_string(arm.stuck) + " cuttings of " + nameInWords(factor, arm.name) +
                               ", " + std::to_string(arm.stuck - arm.assessed) + " have no known fate at " + day +
                               boundsInWords(arm) + ".");
    }
    if (unknown > 0)
        cautions.push_back(std::to_string(unknown) + " of all " + counted(stuck, "cutting", "cuttings") +
                           " are counted but not in the rates, because it isn't known whether they had rooted by " +
                           day + ".");
    if (withdrawn > 0)
        cautions.push_back(counted(withdrawn, "cutting was", "cuttings were") + " withdrawn by " + day +
                           ", alive and unrooted; what would have become of such cuttings is not known.");
}

void addFewCuttings(Factor factor, std::span<const ArmRecords> arms, Cautions& cautions) {
    for (const ArmRecords& records : arms)
        if (records.arm.assessed < fewestForARate)
            cautions.push_back((records.arm.assessed == 0 ? "None" : "Only " + std::to_string(records.arm.assessed)) +
                               " of the cuttings of " + nameInWords(factor, records.arm.name) +
                               " have a known fate: too few to speak of a rate.");
}

void addStations(Factor factor, std::span<const ArmRecords> arms, Cautions& cautions) {
    std::vector<std::string> pairs;
    for (std::size_t i = 0; i < arms.size(); ++i) {
        for (std::size_t j = i + 1; j < arms.size(); ++j) {
            if (arms[i].arm.assessed == 0 || arms[j].arm.assessed == 0) continue;
            std::string why = whyNotTold(arms[i], arms[j], factor);
            if (why.empty()) continue;
            if (arms.size() == 2)
                cautions.push_back("Note that " + std::move(why) + ".");
            else
                pairs.push_back(nameInWords(factor, arms[i].arm.name) + " with " +
                                nameInWords(factor, arms[j].arm.name));
        }
    }
    if (pairs.empty()) return;
    cautions.push_back("The " + factorInWords(factor) +
                       " can't be told from the station or batch, however many cuttings are counted, in comparing " +
                       listed(pairs) + ".");
}

void addPlants(std::span<const ArmRecords> arms, Cautions& cautions) {
    std::map<PlantId, std::size_t> armsOfPlant;
    for (const ArmRecords& records : arms)
        for (const PlantId plant : records.plants()) ++armsOfPlant[plant];
    const auto partly = std::count_if(armsOfPlant.begin(), armsOfPlant.end(),
                                      [&arms](const auto& each) { return each.second < arms.size(); });
    if (partly == 0) return;
    cautions.push_back(
        "Not every plant was in every arm: " + std::to_string(partly) + " of " +
        counted(static_cast<int>(armsOfPlant.size()), "plant", "plants") + (partly == 1 ? " was" : " were") +
        " not. The figures by species and the pooled ones compare like with like; those over all do not.");
}

void addChance(const Shelves& shelves, std::span<const ArmRecords> arms, Cautions& cautions) {
    std::unordered_set<TrialId> byChance;
    for (const Trial& trial : shelves.trials)
        if (trial.allocationSeed) byChance.insert(trial.id);
    int batches = 0, allocated = 0;
    for (const ArmRecords& records : arms) {
        for (const Course& course : records.courses) {
            ++batches;
            if (byChance.contains(course.record->batch.trial)) ++allocated;
        }
    }
    if (allocated == batches) return;
    const std::string which = allocated == 0 ? "For none of these batches"
                                             : "For " + std::to_string(batches - allocated) + " of " +
                                                   std::to_string(batches) + " batches it is not";
    cautions.push_back(which + (allocated == 0 ? " is it recorded" : " recorded") +
                       " that chance decided which cuttings went where, so the arms may differ in other ways as well.");
}

// Days between looks, over all batches of the arm that were looked at; 0 when none was.
double daysBetweenLooks(const ArmRecords& records) {
    double days = 0, looks = 0;
    for (const Course& course : records.courses) {
        if (course.looks.empty()) continue;
        days += course.looks.back().day;
        looks += static_cast<double>(course.looks.size());
    }
    return looks > 0 ? days / looks : 0;
}

void addCheckFrequency(Factor factor, std::span<const ArmRecords> arms, Cautions& cautions) {
    const ArmRecords *often = nullptr, *seldom = nullptr;
    for (const ArmRecords& records : arms) {
        const double gap = daysBetweenLooks(records);
        if (gap <= 0) continue;
        if (often == nullptr || gap < daysBetweenLooks(*often)) often = &records;
        if (seldom == nullptr || gap > daysBetweenLooks(*seldom)) seldom = &records;
    }
    if (often == nullptr || daysBetweenLooks(*seldom) < 1.5 * daysBetweenLooks(*often)) return;
    const auto every = [](const ArmRecords& records) {
        return counted(std::max(1, static_cast<int>(daysBetweenLooks(records) + 0.5)), "day", "days");
    };
    cautions.push_back(
        often->arm.name + " was looked at every " + every(*often) + " on average, " +
        nameInWords(factor, seldom->arm.name) + " every " + every(*seldom) +
        ": a root is found the later the more seldom one looks, so days to root are less alike than they seem.");
}

}  // namespace

std::vector<std::string> originCautions(const LogbookFacts& facts) {
    Cautions cautions;
    if (facts.isInvented)
        cautions.emplace_back("These records are invented, to show the program; they say nothing about plants.");
    if (!facts.citation.empty()) cautions.push_back("Published records: " + facts.citation);
    return cautions;
}

std::vector<std::string> comparisonCautions(Factor factor, int horizonDay, const Shelves& shelves,
                                            std::span<const ArmRecords> arms) {
    Cautions cautions = originCautions(shelves.facts);
    addUnknownFates(factor, horizonDay, arms, cautions);
    addFewCuttings(factor, arms, cautions);
    if (arms.size() < 2) return cautions;
    addStations(factor, arms, cautions);
    addPlants(arms, cautions);
    addChance(shelves, arms, cautions);
    addCheckFrequency(factor, arms, cautions);
    return cautions;
}

}  // namespace core
