// SPDX-License-Identifier: MIT
#include "core/planning/plant_facts.h"

#include <cmath>

#include "core/comparison/course.h"
#include "core/comparison/english.h"
#include "core/comparison/rate_interval.h"
#include "core/units/figure_text.h"
#include "stats/overdispersion/tray_interval.h"

namespace core {
namespace {

void setIntervals(const LogbookFacts& logbook, PlantFacts& facts) {
    facts.level = logbook.level;
    if (facts.records.assessed == 0) return;
    facts.asCounted = rateLimits(intervalOf(logbook), facts.records.rooted, facts.records.assessed, facts.level);
    const stats::TrayInterval spread = stats::trayInterval(facts.records.past.batches, facts.level);
    if (spread.includesTrayVariation) facts.withSpread = Limits{.low = spread.limits.low, .high = spread.limits.high};
}

/// The weight is n / (n + prior): n from it.
void setWeights(PlantFacts& facts) {
    const double prior = facts.records.past.prior.successes + facts.records.past.prior.failures;
    if (facts.records.ownWeight < 1) facts.ownCounts = prior * facts.records.ownWeight / (1 - facts.records.ownWeight);
    if (facts.records.band) facts.bandCounts = prior;
}

std::string countsInWords(double counts) {
    return figureText(std::round(counts));
}

std::string rateInWords(const PlantFacts& facts) {
    const bool hasOwn = facts.records.assessed > 0;
    const std::string untilWatched =
        "a batch of your own is watched to day " + std::to_string(facts.records.horizonDay);
    if (!facts.records.band)
        return hasOwn ? "The strike rate is planned by your own records alone: the reference table has none."
                      : "Neither the table nor your own records have a strike rate: until " + untilWatched +
                            ", plans reckon with anything from none to all.";
    if (!hasOwn) return "The strike rate is planned by the printed figures alone, until " + untilWatched + ".";
    std::string words =
        "The strike rate is planned by both: your own records count like " + countsInWords(facts.ownCounts) +
        " cuttings, each in a tray of its own, the printed figures like " + countsInWords(facts.bandCounts) + ". ";
    const std::string share = std::to_string(perHundred(facts.records.ownWeight));
    return words + (facts.ownCounts >= facts.bandCounts
                        ? "Your own weigh more, " + share + " % of the say."
                        : "Your own have " + share + " % of the say and weigh more from " +
                              countsInWords(std::ceil(facts.bandCounts)) + " on.");
}

std::string daysInWords(const PlantFacts& facts) {
    if (facts.rooting.restsOn == DaysRestOn::OwnCurve)
        return "Days to root are planned by your own curve: " + facts.rooting.inWords;
    return facts.rooting.inWords + " From " + std::to_string(enoughForOwnCurve) +
           " rooted cuttings on, once a batch was watched to the end, plans go by your own curve; so far " +
           (facts.rooted == 1 ? std::string("1 has") : std::to_string(facts.rooted) + " have") + " rooted.";
}

}  // namespace

PlantFacts plantFactsOf(PlantId plant, const Shelves& shelves, std::span<const BatchRecord> batches,
                        const stats::PooledSpread& spread) {
    PlantFacts facts;
    facts.records = pastRecordsOf(plant, {}, shelves, batches, spread);
    facts.reference = facts.records.reference;
    facts.rooting = rootingDaysOf(facts.records, shelves, batches);
    for (const BatchRecord& record : batches) {
        if (record.batch.plant != plant) continue;
        ++facts.batches;
        facts.cuttings += record.batch.stuck;
        facts.rooted += courseOf(record, facts.records.horizonDay).fate.rooted;
    }
    setIntervals(shelves.facts, facts);
    setWeights(facts);
    facts.rateInWords = rateInWords(facts);
    facts.daysInWords = daysInWords(facts);
    return facts;
}

}  // namespace core
