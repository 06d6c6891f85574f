// SPDX-License-Identifier: MIT
// The page of the interval chosen for a rate as counted, and those of several arms: parts of notes.h. Inside report only.
#pragma once

#include <vector>

#include "app/report/methods/method_note.h"
#include "core/comparison/comparison.h"
#include "core/comparison/rate_interval.h"

namespace report {

struct CountedRate {
    int rooted{};
    int of{};
    core::Limits limits;
    double level{};
};

/// `counted` ends the sentence "18 of 24 ...": "assessed had rooted by day 28". Domain: of >= 1.
[[nodiscard]] MethodNote intervalNote(core::RateInterval interval, const CountedRate& rate, const QString& counted);

/// Trays, each with so many of so many, and the limits that their spread gives. `name` stands before the counts.
struct SpreadRate {
    QString name;
    std::vector<int> rooted, assessed;
    core::Limits limits;
    double level{};
};
/// Domain: as stats::trayInterval(), with a spread to be seen.
[[nodiscard]] MethodNote withSpreadNote(const SpreadRate& rate);

/// Chi-square, analysis of variance and Holm's adjustment, as far as the comparison has them.
[[nodiscard]] std::vector<MethodNote> notesOnSeveralArms(const core::Comparison& comparison);

}  // namespace report
