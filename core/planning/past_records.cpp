// SPDX-License-Identifier: MIT
#include "core/planning/past_records.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/course.h"
#include "core/comparison/english.h"
#include "core/comparison/spread.h"
#include "core/units/figure_text.h"
#include "stats/overdispersion/rate_law.h"

namespace core {
namespace {

void setHorizon(PastRecords& records, const Shelves& shelves) {
    const Plant* plant = find(shelves.plants, records.plant);
    if (plant != nullptr && plant->usualRootingDaysHigh && *plant->usualRootingDaysHigh >= 1) {
        records.horizonDay = *plant->usualRootingDaysHigh;
        records.horizonReason = "the usual limit set for this plant";
        return;
    }
    records.horizonDay = shelves.facts.horizonDay;
    records.horizonReason = "the logbook's horizon";
    const PlantReference* reference = records.reference;
    if (reference == nullptr || !reference->days.high || *reference->days.high <= records.horizonDay) return;
    records.horizonDay = static_cast<int>(*reference->days.high);
    records.horizonReason = "the upper end of the reference table's days to root";
}

PastRecords askedFor(PlantId plant, MethodId method, const Shelves& shelves) {
    PastRecords records;
    records.plant = plant;
    records.method = method;
    records.level = shelves.facts.level;
    if (const Plant* known = find(shelves.plants, plant)) {
        records.plantName = fullName(*known);
        records.reference = plantReferenceFor(known->botanicalName, known->cultivar);
    }
    if (const Method* known = find(shelves.methods, method)) records.methodName = known->name;
    setHorizon(records, shelves);
    return records;
}

void takeIn(std::span<const BatchRecord> batches, PastRecords& records) {
    std::vector<Course> courses;
    for (const BatchRecord& record : batches)
        if (record.batch.plant == records.plant && (!records.method.isSet() || record.batch.method == records.method))
            courses.push_back(courseOf(record, records.horizonDay));
    std::ranges::sort(courses, {}, [](const Course& course) {
        return std::pair(course.record->batch.stuckOn, std::string_view(course.record->batch.code));
    });
    for (const Course& course : courses) {
        if (!isWatchedToTheEnd(course, records.horizonDay)) {
            records.leftOut += course.stuck();
            continue;
        }
        records.leftOut += course.stuck() - course.fate.assessed;
        records.batches.push_back(
            {.code = course.record->batch.code, .rooted = course.fate.rooted, .assessed = course.fate.assessed});
    }
}

void setBand(PastRecords& records) {
    if (records.reference == nullptr || !records.reference->strike.isBand()) return;
    records.band = Limits{.low = *records.reference->strike.low / 100, .high = *records.reference->strike.high / 100};
    records.past.prior = stats::ratePriorOfBand(records.band->low, records.band->high, mostBandCounts);
}

constexpr int angles = 192;

void setOwnLimits(PastRecords& records) {
    if (records.assessed == 0) return;
    stats::PastBatches own = records.past;
    own.prior = {};
    const stats::Interval limits =
        stats::RateLaw("setOwnLimits", stats::ratePosterior(own, angles)).interval(records.level);
    records.ownLimits = Limits{limits.low, limits.high};
}

void weigh(const stats::PooledSpread& spread, PastRecords& records) {
    records.past.spread = spread.law;
    records.correlation = spread.correlation;
    records.isSpreadFromRecords = spread.basis == stats::SpreadBasis::RecordsAndPrior;
    double effective = 0;
    for (const BatchCount& batch : records.batches) {
        records.rooted += batch.rooted;
        records.assessed += batch.assessed;
        records.past.batches.push_back({.successes = batch.rooted, .trials = batch.assessed});
        if (batch.assessed > 0) effective += batch.assessed / (1 + (batch.assessed - 1) * spread.correlation);
    }
    const double prior = records.past.prior.successes + records.past.prior.failures;
    records.ownWeight = effective / (effective + prior);
    for (const stats::RatePoint& point : stats::ratePosterior(records.past, angles))
        records.meanRate += point.weight * point.rate;
    setOwnLimits(records);
}

std::string ownInWords(const PastRecords& records) {
    const std::string where = records.methodName.empty() ? "" : " by " + records.methodName;
    if (records.batches.empty()) {
        const std::string of = records.plantName.empty() ? "" : " of " + records.plantName;
        return "No batch" + of + where + " was watched to the end yet.";
    }
    std::string words = std::to_string(records.rooted) + " of " + std::to_string(records.assessed) + " rooted";
    if (records.horizonDay > 0) words += " by day " + std::to_string(records.horizonDay);
    words += where + ", in " + counted(static_cast<int>(records.batches.size()), "batch", "batches") +
             (records.plantName.empty() ? "" : " of your own");
    if (records.ownLimits)
        words += "; " + std::to_string(perHundred(records.ownLimits->low)) + " to " +
                 std::to_string(perHundred(records.ownLimits->high)) + " of 100 fits (" + levelWords(records.level) +
                 " interval" + (records.haveOwnLuck ? "" : ", with the spread between batches") + ")";
    return words + ".";
}

std::string bandInWords(const PastRecords& records) {
    if (!records.band) return records.plantName.empty() ? "" : " The reference table has no strike rate for it.";
    const ReferenceRange& strike = records.reference->strike;
    std::string words = " The reference table has " + figureText(*strike.low);
    if (*strike.high != *strike.low) words += " to " + figureText(*strike.high);
    words += " of 100 (" + sourceWords(strike);
    if (!records.reference->form.empty()) words += "; " + std::string(records.reference->form);
    words += ")";
    if (records.batches.empty()) return words + ", and all of this rests on it.";
    return words + ", which has " + std::to_string(100 - perHundred(records.ownWeight)) + " % of the say.";
}

std::string spreadInWords(const PastRecords& records) {
    if (records.haveOwnLuck) return " Trays are left out of account, as if each cutting had luck of its own.";
    return records.isSpreadFromRecords ? " How much batches differ is learnt from the records."
                                       : " How much batches differ is taken as usual: no two like batches show it yet.";
}

int roomOfUsualStation(MethodId method, const Shelves& shelves) {
    std::vector<int> rooms;
    for (const Station& station : shelves.stations)
        if (!station.isRetired && station.positions() > 0 && (!method.isSet() || station.method == method))
            rooms.push_back(station.positions());
    if (rooms.empty()) return 0;
    std::ranges::sort(rooms);
    return rooms[rooms.size() / 2];
}

}  // namespace

bool isWatchedToTheEnd(const Course& course, int horizonDay) {
    if (course.fate.assessed == 0) return false;
    return course.fate.undecided <= mostUndecided * course.stuck() ||
           (!course.looks.empty() && course.looks.back().day >= horizonDay);
}

PastRecords pastRecordsOf(PlantId plant, MethodId method, const Shelves& shelves, std::span<const BatchRecord> batches,
                          const stats::PooledSpread& spread) {
    PastRecords records = askedFor(plant, method, shelves);
    takeIn(batches, records);
    setBand(records);
    weigh(spread, records);
    return records;
}

PastRecords pastRecordsOf(PlantId plant, MethodId method, const Shelves& shelves,
                          std::span<const BatchRecord> batches) {
    const int horizonDay = askedFor(plant, method, shelves).horizonDay;
    return pastRecordsOf(plant, method, shelves, batches, pooledSpreadOf(batches, horizonDay, shelves.facts.level));
}

PastRecords pastRecordsOf(std::span<const BatchCount> counts) {
    PastRecords records;
    records.batches.assign(counts.begin(), counts.end());
    std::vector<std::vector<stats::Tray>> groups(1);
    for (const BatchCount& each : counts) groups.front().push_back({.successes = each.rooted, .trials = each.assessed});
    weigh(stats::pooledSpread(groups), records);
    return records;
}

PastRecords plainRecordsOf(std::span<const BatchCount> counts) {
    PastRecords records;
    records.batches.assign(counts.begin(), counts.end());
    records.haveOwnLuck = true;
    stats::PooledSpread none;
    none.law = stats::knownCorrelation(0);
    weigh(none, records);
    return records;
}

int usualTraySize(const PastRecords& records, const Shelves& shelves) {
    constexpr int usual = 20;
    if (records.assessed > 0 && !records.batches.empty()) {
        const double mean = static_cast<double>(records.assessed) / static_cast<double>(records.batches.size());
        return std::max(1, static_cast<int>(std::lround(mean)));
    }
    const int room = roomOfUsualStation(records.method, shelves);
    return room > 0 ? room : usual;
}

std::string restsOnInWords(const PastRecords& records) {
    std::string words = ownInWords(records) + bandInWords(records) + spreadInWords(records);
    if (records.leftOut > 0)
        words += " " + counted(records.leftOut, "cutting is", "cuttings are") + " left out: what became of " +
                 (records.leftOut == 1 ? "it" : "them") + " is not known.";
    return words;
}

}  // namespace core
