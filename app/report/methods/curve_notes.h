// SPDX-License-Identifier: MIT
// The pages of one curve of rooted by day, of an arm or of a batch: parts of notes.h. Inside report only.
#pragma once

#include <QString>
#include <vector>

#include "app/report/methods/method_note.h"
#include "core/comparison/arm.h"

namespace report {

struct ShownCurve {
    QString name;  // as the pages have it, Markdown-safe
    const core::CurveMakeup& makeup;
    const std::vector<core::DayShare>& rootedByDay;
    const core::DaysToRoot& ofStuck;
    const core::DaysToRoot& ofRooted;
};

/// Rooted by day and days to root; none before the first look.
[[nodiscard]] std::vector<MethodNote> notesOnCurve(const ShownCurve& curve);

/// The steps as three lists of R: "left" + suffix, "right", "share". A curve that never rises is one step of nothing.
void putSteps(std::map<QString, QString>& numbers, const std::vector<core::CurveStep>& steps,
              const QString& suffix = {});

/// What a smooth curve is fitted to, as lists of R: lost cuttings are watched to `lastDay` and never root.
struct SpeedRowsForR {
    std::vector<double> after, by;
    std::vector<int> cuttings;
};
[[nodiscard]] SpeedRowsForR speedRowsForR(const core::CurveMakeup& makeup, int lastDay);

}  // namespace report
