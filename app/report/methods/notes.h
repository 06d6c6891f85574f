// SPDX-License-Identifier: MIT
// Which pages of the methods stand behind a figure, with the numbers that the figure shows. Pages whose figure isn't there (no spread to be
// seen, too few batches) are left out, so that the dialog never explains a number that nobody sees.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "app/report/methods/method_note.h"
#include "core/causes/losses.h"
#include "core/comparison/batch_summary.h"
#include "core/comparison/comparison.h"
#include "core/comparison/turning_point.h"
#include "core/money/worth_it.h"
#include "core/planning/how_many.h"
#include "core/trial/allocation.h"
#include "core/trial/trial_power.h"

namespace report {

/// Strike rates of the arms: what is counted, the interval chosen, the one with spread, the spread itself; of the arm with most stuck, or of
/// `arm`. Several arms: the tests of all of them.
[[nodiscard]] std::vector<MethodNote> notesOnRates(const core::Comparison& comparison, int arm = 0);
/// The interval of one rate as counted, for somebody who chooses one. Domain: 0 <= rooted <= of, of >= 1.
[[nodiscard]] MethodNote noteOnInterval(core::RateInterval interval, int rooted, int of, double level);
/// The difference of two arms: intervals, ratios, tests, chance, verdict, as good as. Domain: 0 <= pair < pairs.
[[nodiscard]] std::vector<MethodNote> notesOnDifference(const core::Comparison& comparison, int pair);
/// Pooled over plants and blocks, and whether they agree.
[[nodiscard]] std::vector<MethodNote> notesOnPlants(const core::Comparison& comparison, int pair);
/// Rooted by day, days to root, bands, do the curves differ, who roots and how fast.
[[nodiscard]] std::vector<MethodNote> notesOnDays(const core::Comparison& comparison, int pair = 0);
[[nodiscard]] std::vector<MethodNote> notesOnDoses(const core::DoseSeries& series, double level);
[[nodiscard]] std::vector<MethodNote> notesOnGoesWith(const core::GoesWith& answer, double level);
/// One batch: rate so far, its curve, against the past.
[[nodiscard]] std::vector<MethodNote> notesOnBatch(const core::BatchSummary& summary);
/// The limits; and the turning point, where one was looked for.
[[nodiscard]] std::vector<MethodNote> notesOnChart(const core::StrikeChart& chart,
                                                   const std::optional<core::TurningPoint>& turn = {});
/// How many to stick. Nothing while no cutting of one's own has rooted.
[[nodiscard]] std::vector<MethodNote> notesOnPlan(const core::HowMany& answer, const core::PastRecords& records);
/// What a number per arm is worth. Nothing where no number will do, or where "as good as" is asked.
[[nodiscard]] std::vector<MethodNote> notesOnPower(const core::TrialPower& power);
/// A batch split over the arms of a trial.
[[nodiscard]] std::vector<MethodNote> notesOnSplit(const core::Allocation& allocation, std::uint32_t seed);
/// What a rooted plant costs, by the first of `shown` (the methods of `worth`, or their plants) that was priced and whose strike rate is known.
[[nodiscard]] std::vector<MethodNote> notesOnCosts(const core::Worth& worth,
                                                   const std::vector<core::WorthOfMethod>& shown);
/// Whether the dearer of two pays, and the line on which they tie. Domain: 0 <= pair < pairs.
[[nodiscard]] std::vector<MethodNote> notesOnWorth(const core::Worth& worth, int pair);
/// When its own things are paid for; none where the pair has no break-even. Domain as above.
[[nodiscard]] std::vector<MethodNote> notesOnPayOff(const core::Worth& worth, int pair);
/// Shares of the causes: those of the first.
[[nodiscard]] std::vector<MethodNote> notesOnLosses(const core::Losses& losses);
/// Lost of those that stood: in the month, or at the station, with the highest rate.
[[nodiscard]] std::vector<MethodNote> notesOnLossesByMonth(const core::Losses& losses);
[[nodiscard]] std::vector<MethodNote> notesOnLossesByStation(const core::Losses& losses);

}  // namespace report
