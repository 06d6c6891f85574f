// SPDX-License-Identifier: MIT
#include "app/report/methods/curve_notes.h"

#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"

namespace report {
namespace {

constexpr double beyondAnyDay = HUGE_VAL;

int codeOf(core::KnownDays::Fate fate) {
    switch (fate) {
        case core::KnownDays::Fate::Undecided:
            return 0;
        case core::KnownDays::Fate::Rooted:
            return 1;
        case core::KnownDays::Fate::Lost:
            return 2;
    }
    return 0;
}

void putRows(Numbers& numbers, const core::CurveMakeup& makeup) {
    std::vector<double> after, by;
    std::vector<int> fates, cuttings;
    int counts[3] = {};
    for (const core::KnownDays& row : makeup.known) {
        after.push_back(row.after);
        by.push_back(row.by);
        fates.push_back(codeOf(row.fate));
        cuttings.push_back(row.cuttings);
        counts[codeOf(row.fate)] += row.cuttings;
    }
    putCount(numbers, QStringLiteral("cuttings"), counts[0] + counts[1] + counts[2]);
    putCount(numbers, QStringLiteral("undecided"), counts[0]);
    putCount(numbers, QStringLiteral("rooted"), counts[1]);
    putCount(numbers, QStringLiteral("lost"), counts[2]);
    numbers[QStringLiteral("after_r")] = listForR(after);
    numbers[QStringLiteral("by_r")] = listForR(by);
    numbers[QStringLiteral("fate_r")] = listForR(fates);
    numbers[QStringLiteral("n_r")] = listForR(cuttings);
}

// The steps of both curves and, where any is left, what had happened to neither.
void putPlaces(Numbers& numbers, const core::CurveMakeup& makeup) {
    constexpr double nothing = 1e-9;
    std::vector<double> left, right;
    std::vector<int> what;
    double rest = 1;
    const auto add = [&](const std::vector<core::CurveStep>& steps, int code) {
        for (const core::CurveStep& step : steps) {
            left.push_back(step.after);
            right.push_back(step.by);
            what.push_back(code);
            rest -= step.share;
        }
    };
    add(makeup.rooted, 1);
    add(makeup.lost, 2);
    if (rest > nothing) {
        left.push_back(beyondAnyDay);
        right.push_back(beyondAnyDay);
        what.push_back(0);
    }
    numbers[QStringLiteral("left_r")] = listForR(left);
    numbers[QStringLiteral("right_r")] = listForR(right);
    numbers[QStringLiteral("what_r")] = listForR(what);
}

MethodNote rootedByDayNote(const ShownCurve& curve) {
    MethodNote note{QStringLiteral("rooted_by_day"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("arm")] = curve.name;
    putRows(numbers, curve.makeup);
    putPlaces(numbers, curve.makeup);
    putCount(numbers, QStringLiteral("steps"), static_cast<int>(curve.makeup.rooted.size()));
    put(numbers, QStringLiteral("share"), curve.rootedByDay.back().share);
    putCount(numbers, QStringLiteral("last_day"), static_cast<int>(std::lround(curve.rootedByDay.back().day)));
    return note;
}

QString bothEnds(const std::optional<core::DayRange>& range) {
    if (!range) return QStringLiteral("NA: not reached");
    return QStringLiteral("%1 %2").arg(forR(range->after), forR(range->by));
}

MethodNote daysToRootNote(const ShownCurve& curve) {
    MethodNote note{QStringLiteral("days_to_root"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("arm")] = curve.name;
    numbers[QStringLiteral("p25")] = plot::dayRangeText(curve.ofStuck.p25);
    numbers[QStringLiteral("p50")] = plot::dayRangeText(curve.ofStuck.p50);
    numbers[QStringLiteral("p75")] = plot::dayRangeText(curve.ofStuck.p75);
    numbers[QStringLiteral("p90")] = plot::dayRangeText(curve.ofStuck.p90);
    numbers[QStringLiteral("r25")] = plot::dayRangeText(curve.ofRooted.p25);
    numbers[QStringLiteral("r50")] = plot::dayRangeText(curve.ofRooted.p50);
    numbers[QStringLiteral("r75")] = plot::dayRangeText(curve.ofRooted.p75);
    numbers[QStringLiteral("r90")] = plot::dayRangeText(curve.ofRooted.p90);
    numbers[QStringLiteral("p50_r")] = bothEnds(curve.ofStuck.p50);
    numbers[QStringLiteral("r50_r")] = bothEnds(curve.ofRooted.p50);
    putSteps(numbers, curve.makeup.rooted);
    return note;
}

}  // namespace

std::vector<MethodNote> notesOnCurve(const ShownCurve& curve) {
    if (curve.rootedByDay.empty() || curve.makeup.known.empty()) return {};
    return {rootedByDayNote(curve), daysToRootNote(curve)};
}

void putSteps(Numbers& numbers, const std::vector<core::CurveStep>& steps, const QString& suffix) {
    constexpr double digitsThatCount = 1e9;
    std::vector<double> left, right, share;
    for (const core::CurveStep& step : steps) {
        left.push_back(step.after);
        right.push_back(step.by);
        share.push_back(std::round(step.share * digitsThatCount) / digitsThatCount);
    }
    if (steps.empty()) {
        left.push_back(0);
        right.push_back(1);
        share.push_back(0);
    }
    numbers[QStringLiteral("left%1_r").arg(suffix)] = listForR(left);
    numbers[QStringLiteral("right%1_r").arg(suffix)] = listForR(right);
    numbers[QStringLiteral("share%1_r").arg(suffix)] = listForR(share);
}

SpeedRowsForR speedRowsForR(const core::CurveMakeup& makeup, int lastDay) {
    SpeedRowsForR rows;
    for (const core::KnownDays& known : makeup.known) {
        const bool isLost = known.fate == core::KnownDays::Fate::Lost;
        rows.after.push_back(isLost ? lastDay : known.after);
        rows.by.push_back(isLost ? beyondAnyDay : known.by);
        rows.cuttings.push_back(known.cuttings);
    }
    return rows;
}

}  // namespace report
