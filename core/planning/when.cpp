// SPDX-License-Identifier: MIT
#include "core/planning/when.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/course.h"
#include "core/comparison/days_to_root.h"
#include "core/comparison/english.h"
#include "core/due/due_today.h"
#include "core/field_faults.h"
#include "stats/time_to_event/curve_quantiles.h"

namespace core {
namespace {

constexpr double shareReckonedWith = 0.9;

std::string daysInWords(int days) {
    return counted(days, "day", "days");
}

std::optional<RootingDays> fromOwnCurve(const PastRecords& records, std::span<const BatchRecord> batches) {
    if (records.batches.empty()) return {};  // nothing was watched to the end: the slow ones are not known
    std::vector<Course> courses;
    RootingDays days{.restsOn = DaysRestOn::OwnCurve, .inWords = {}};
    for (const BatchRecord& record : batches) {
        const Batch& batch = record.batch;
        if (batch.plant != records.plant || (records.method.isSet() && batch.method != records.method)) continue;
        courses.push_back(courseOf(record, records.horizonDay));
        days.rooted += courses.back().fate.rooted;
        if (!courses.back().looks.empty()) ++days.batches;
    }
    if (days.rooted < enoughForOwnCurve) return {};
    const RootingCurves curves = rootingCurves(courses, {});
    const auto quantile = [&curves](double share) {
        return stats::quantileDay(curves.rooting, share, stats::ShareOf::ThoseWithTheEvent);
    };
    const auto upper = quantile(shareReckonedWith), middle = quantile(0.5);
    if (!upper || !middle || !std::isfinite(upper->by)) return {};
    days.upper = std::min(records.horizonDay, static_cast<int>(std::ceil(upper->by)));
    days.middle = std::min(days.upper, static_cast<int>(std::ceil(middle->by)));
    const double inTime = stats::cumulativeShare(curves.rooting, days.upper).atLeast;
    const double inTheEnd = stats::cumulativeShare(curves.rooting, records.horizonDay).atMost;
    if (inTime > 0 && inTheEnd > 0) days.rootedInTime = std::min(1.0, inTime / inTheEnd);
    days.inWords = std::to_string(perHundred(days.rootedInTime)) + " of 100 that root have by day " +
                   std::to_string(days.upper) + ", half by day " + std::to_string(days.middle) + ": " +
                   std::to_string(days.rooted) + " rooted in " + counted(days.batches, "batch", "batches") +
                   " of your own.";
    return days;
}

RootingDays fromHorizon(const PastRecords& records, DaysRestOn rest, const std::string& what) {
    return {.restsOn = rest,
            .middle = records.horizonDay,
            .upper = records.horizonDay,
            .inWords = what + ", day " + std::to_string(records.horizonDay) +
                       ": too little is on record for a curve of your own."};
}

std::string stickInWords(const PlanSubject& subject) {
    const std::string cuttings = subject.cuttings ? counted(*subject.cuttings, "cutting", "cuttings") : "cuttings";
    return "Stick " + cuttings + (subject.plantName.empty() ? "" : " of " + subject.plantName);
}

std::vector<PlanDay> daysOf(const WhenQuestion& question, Date stickBy, const RootingDays& rooting,
                            const PlanSubject& subject) {
    const std::string of = subject.plantName.empty() ? "" : ": " + subject.plantName;
    std::vector<PlanDay> days{{.on = stickBy, .kind = PlanDayKind::Stick, .what = stickInWords(subject)}};
    if (subject.firstCheckAfterDays > 0 && subject.firstCheckAfterDays < rooting.upper)
        days.push_back({.on = addDays(stickBy, subject.firstCheckAfterDays),
                        .kind = PlanDayKind::FirstCheck,
                        .what = "First check" + of});
    const Date rooted = addDays(stickBy, rooting.upper);
    if (question.pottingDays > 0) days.push_back({.on = rooted, .kind = PlanDayKind::PotOn, .what = "Pot on" + of});
    if (question.hardeningDays > 0)
        days.push_back(
            {.on = addDays(rooted, question.pottingDays), .kind = PlanDayKind::Harden, .what = "Begin hardening" + of});
    days.push_back({.on = question.needBy, .kind = PlanDayKind::Ready, .what = "Plants are needed" + of});
    return days;
}

std::string answerInWords(const WhenQuestion& question, const When& when) {
    std::string words =
        "Stick by " + isoText(when.stickBy) + " at the latest: " + daysInWords(when.rooting.upper) + " to root";
    if (question.pottingDays > 0) words += ", " + std::to_string(question.pottingDays) + " of growing on";
    if (question.hardeningDays > 0) words += ", " + std::to_string(question.hardeningDays) + " of hardening";
    words += ", before " + isoText(question.needBy) + ".";
    if (when.marginDays > 0) words += " Half of the cuttings have " + daysInWords(when.marginDays) + " in hand.";
    return words;
}

std::string lateInWords(const WhenQuestion& question, const When& when, Date today) {
    const int late = daysBetween(when.stickBy, today);
    if (late <= 0) return {};
    return "That day went by " + daysInWords(late) + " ago: stuck today, the plants would be ready on " +
           isoText(addDays(question.needBy, late)) + ".";
}

}  // namespace

std::string_view wordFor(DaysRestOn rest) {
    switch (rest) {
        case DaysRestOn::OwnCurve:
            return "own curve";
        case DaysRestOn::PlantsOwnLimit:
            return "plant's limit";
        case DaysRestOn::ReferenceRange:
            return "reference range";
        case DaysRestOn::LogbooksHorizon:
            return "logbook's horizon";
    }
    return {};
}

std::string_view wordFor(PlanDayKind kind) {
    switch (kind) {
        case PlanDayKind::Stick:
            return "stick";
        case PlanDayKind::FirstCheck:
            return "check";
        case PlanDayKind::PotOn:
            return "pot";
        case PlanDayKind::Harden:
            return "harden";
        case PlanDayKind::Ready:
            return "ready";
    }
    return {};
}

std::optional<RootingDays> rootingDaysOf(const PlantReference& reference) {
    const ReferenceRange& range = reference.days;
    if (!range.high) return {};
    RootingDays days{.restsOn = DaysRestOn::ReferenceRange, .inWords = {}};
    days.upper = static_cast<int>(std::ceil(*range.high));
    days.middle = days.upper;
    const std::string high = std::to_string(days.upper);
    if (reference.daysMeaning == DaysMeaning::Scored) {
        days.inWords = "By the reference table rooted when scored on day " + high + " (" + sourceWords(range) +
                       "), perhaps long before.";
        return days;
    }
    const int low = static_cast<int>(range.low.value_or(*range.high));
    days.middle = (low + days.upper) / 2;
    days.inWords = "By the reference table " + (low < days.upper ? std::to_string(low) + " to " : std::string()) +
                   high + " days to root (" + sourceWords(range) + ").";
    return days;
}

RootingDays rootingDaysOf(const PastRecords& records, const Shelves& shelves, std::span<const BatchRecord> batches) {
    if (const auto own = fromOwnCurve(records, batches)) return *own;
    const Plant* plant = find(shelves.plants, records.plant);
    if (plant != nullptr && plant->usualRootingDaysHigh)
        return fromHorizon(records, DaysRestOn::PlantsOwnLimit, "By the usual limit set for this plant");
    if (records.reference != nullptr)
        if (const auto reference = rootingDaysOf(*records.reference)) return *reference;
    return fromHorizon(records, DaysRestOn::LogbooksHorizon, "By the logbook's horizon");
}

PlanSubject planSubjectOf(const PastRecords& records, std::optional<int> cuttings, const Shelves& shelves) {
    return {.plantName = records.plantName,
            .cuttings = cuttings,
            .firstCheckAfterDays = scheduleFor(records.plant, records.method, shelves).firstAfterDays};
}

Refusals faultsIn(const WhenQuestion& question) {
    Refusals faults;
    collect(faults, faultInWhole("Days of hardening", question.hardeningDays, 0, longestDays));
    collect(faults, faultInWhole("Days of growing on", question.pottingDays, 0, longestDays));
    return faults;
}

Result<When> whenToStick(const WhenQuestion& question, const RootingDays& rooting, const PlanSubject& subject,
                         Date today) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    When when;
    when.rooting = rooting;
    when.stickBy = addDays(question.needBy, -(rooting.upper + question.hardeningDays + question.pottingDays));
    when.marginDays = rooting.upper - rooting.middle;
    when.days = daysOf(question, when.stickBy, rooting, subject);
    when.answerInWords = answerInWords(question, when);
    when.warning = lateInWords(question, when, today);
    return when;
}

Result<When> whenToStick(const WhenQuestion& question, const RootingDays& rooting, const PastRecords& records,
                         std::optional<int> cuttings, const Shelves& shelves, Date today) {
    return whenToStick(question, rooting, planSubjectOf(records, cuttings, shelves), today);
}

}  // namespace core
