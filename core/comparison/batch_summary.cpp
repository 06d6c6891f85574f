// SPDX-License-Identifier: MIT
#include "core/comparison/batch_summary.h"

#include "core/comparison/arm_records.h"
#include "core/comparison/cautions.h"
#include "core/comparison/days_to_root.h"
#include "core/comparison/english.h"
#include "core/comparison/spread.h"
#include "stats/overdispersion/tray_interval.h"

namespace core {
namespace {

// Of the same plant by the same method, this one among them.
std::vector<Course> likeCourses(const Batch& batch, std::span<const BatchRecord> all, int horizonDay, Date today) {
    std::vector<Course> courses;
    for (const BatchRecord& other : all)
        if (other.batch.plant == batch.plant && other.batch.method == batch.method)
            courses.push_back(courseOf(other, horizonDay, today));
    return courses;
}

std::vector<Course> earlierAmong(std::span<const Course> like, const Batch& batch) {
    std::vector<Course> courses;
    for (const Course& course : like)
        if (course.record->batch.id != batch.id && course.record->batch.stuckOn < batch.stuckOn)
            courses.push_back(course);
    return courses;
}

OwnPast ownPast(std::span<const Course> courses, RateInterval interval, double level) {
    OwnPast past;
    past.batches = static_cast<int>(courses.size());
    std::vector<stats::Tray> trays;
    for (const Course& course : courses) {
        past.rooted += course.fate.rooted;
        past.assessed += course.fate.assessed;
        trays.push_back({.successes = course.fate.rooted, .trials = course.fate.assessed});
    }
    past.rootedByDay = rootingCurves(courses, {}).rootedByDay;
    if (past.assessed == 0) return past;
    past.rate = static_cast<double>(past.rooted) / past.assessed;
    past.asCounted = rateLimits(interval, past.rooted, past.assessed, level);
    const stats::TrayInterval spread = stats::trayInterval(trays, level);
    if (spread.includesTrayVariation) past.withSpread = Limits{.low = spread.limits.low, .high = spread.limits.high};
    return past;
}

std::vector<std::string> summaryCautions(const Batch& batch, const BatchSummary& summary, const Shelves& shelves) {
    std::vector<std::string> cautions = originCautions(shelves.facts);
    const Plant* plant = find(shelves.plants, batch.plant);
    if (plant != nullptr && plant->isProtected)
        cautions.push_back(fullName(*plant) + (batch.licence.empty()
                                                   ? " is protected: no licence is written down, and may be needed."
                                                   : " is protected, propagated under: " + batch.licence + "."));
    if (!isClosed(batch, summary.tally))
        cautions.push_back(
            "This batch is still open: " + counted(summary.tally.undecided(), "cutting is", "cuttings are") +
            " undecided, so the rate so far is not its last word.");
    else if (summary.tally.undecided() > 0)
        cautions.push_back(counted(summary.tally.undecided(), "cutting was", "cuttings were") +
                           " undecided when the batch was closed; they count as stuck, not as rooted.");
    if (summary.tally.withdrawn > 0)
        cautions.push_back(counted(summary.tally.withdrawn, "cutting was", "cuttings were") +
                           " withdrawn alive and unrooted; they count as stuck, not as rooted.");
    if (summary.tally.stuck < 5)
        cautions.emplace_back("Fewer than five cuttings were stuck: too few to speak of a rate.");
    cautions.emplace_back(
        "The cuttings of one batch share its container and its luck: its interval is about this batch, and other "
        "batches will differ by more.");
    return cautions;
}

std::string summaryInWords(const BatchSummary& summary, int horizonDay) {
    const Tally& tally = summary.tally;
    std::string words = std::to_string(tally.rooted) + " of " + counted(tally.stuck, "cutting", "cuttings") + " rooted";
    if (tally.undecided() > 0) words += " so far, " + std::to_string(tally.undecided()) + " undecided";
    if (tally.stuck >= 5)
        words += ": a strike rate of " + std::to_string(perHundred(summary.rate)) + " %; anything from " +
                 std::to_string(perHundred(summary.asCounted.low)) + " to " +
                 std::to_string(perHundred(summary.asCounted.high)) + " % fits (" + levelWords(summary.level) +
                 " interval)";
    words += ".";
    const OwnPast& past = summary.past;
    if (past.batches == 0) return words + " There is no earlier batch of this plant by this method to set beside it.";
    const std::string earlier =
        counted(past.batches, "earlier batch", "earlier batches") + " of this plant by this method";
    if (past.assessed < 5)
        return words + " Of " + earlier + " too little is known yet at day " + std::to_string(horizonDay) +
               " to set beside it.";
    const Limits limits = past.withSpread ? *past.withSpread : *past.asCounted;
    words += " In " + earlier + " about " + std::to_string(perHundred(*past.rate)) + " of 100 rooted by day " +
             std::to_string(horizonDay) + " (" + std::to_string(perHundred(limits.low)) + " to " +
             std::to_string(perHundred(limits.high)) + ").";
    return summary.againstPast ? words + " " + summary.againstPast->inWords : words;
}

}  // namespace

BatchSummary summaryOf(const BatchRecord& record, const Shelves& shelves, std::span<const BatchRecord> all,
                       Date today) {
    const Batch& batch = record.batch;
    BatchSummary summary;
    summary.level = shelves.facts.level;
    summary.interval = intervalOf(shelves.facts);
    summary.tally = tallyOf(batch, record.checks, today);
    summary.rate = batch.stuck > 0 ? static_cast<double>(summary.tally.rooted) / batch.stuck : 0;
    summary.asCounted = rateLimits(summary.interval, summary.tally.rooted, batch.stuck, summary.level);
    const Plant* plant = find(shelves.plants, batch.plant);
    const int horizonDay =
        plant != nullptr && plant->usualRootingDaysHigh ? *plant->usualRootingDaysHigh : shelves.facts.horizonDay;
    const std::vector<Course> own{courseOf(record, horizonDay, today)};
    RootingCurves curves = rootingCurves(own, {});
    summary.rootedByDay = std::move(curves.rootedByDay);
    summary.lostByDay = std::move(curves.lostByDay);
    summary.looks = std::move(curves.looks);
    summary.makeup = std::move(curves.makeup);
    summary.ofStuck = curves.ofStuck;
    summary.ofRooted = curves.ofRooted;
    summary.losses = lossesOf(own, shelves, daysBetween(batch.stuckOn, today));
    const std::vector<Course> like = likeCourses(batch, all, horizonDay, today);
    const std::vector<Course> earlier = earlierAmong(like, batch);
    summary.past = ownPast(earlier, summary.interval, summary.level);
    summary.past.horizonDay = horizonDay;
    std::erase_if(summary.past.rootedByDay, [&](const DayShare& share) { return share.day > horizonDay; });
    summary.againstPast =
        againstThePast(own.front(), earlier, horizonDay, pooledSpreadWithout(all, batch.id, horizonDay, summary.level));
    summary.chart = strikeChart(like, usualFalseAlarmRate, pooledSpreadOf(all, horizonDay, summary.level));
    summary.cautions = summaryCautions(batch, summary, shelves);
    summary.inWords = summaryInWords(summary, horizonDay);
    return summary;
}

}  // namespace core
