// SPDX-License-Identifier: MIT
// What a series of doses says, in plain words.
#pragma once

#include <string>

#include "core/comparison/doses.h"
#include "core/treatment/treatment.h"
#include "stats/regression/binomial_rows.h"

namespace core {

/// "IBA, gel"; "K-IBA"-like salts as "IBA (salt), liquid dip".
[[nodiscard]] std::string auxinInWords(const std::string& auxin, AuxinForm form, Carrier carrier);
/// "1000 mg/L".
[[nodiscard]] std::string doseInWords(double milligramsPerLitre, bool isPowder);
[[nodiscard]] std::string whyNoCurve(stats::FitProblem problem);
[[nodiscard]] std::string doseSeriesInWords(const DoseSeries& series, double level);

}  // namespace core
