// SPDX-License-Identifier: MIT
// The numbers of a page of the methods, twice where R prints them too: as people read them, and as a line of R has them. Inside report only.
#pragma once

#include <QString>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/comparison/arm.h"

namespace report {

using Numbers = std::map<QString, QString>;

/// `name` for people and `name_r` for R, both with so many decimals. R's infinity is Inf.
void put(Numbers& numbers, const QString& name, double value, int decimals = 4);
/// A count; the same digits for both.
void putCount(Numbers& numbers, const QString& name, int count);
/// "low" and "high".
void putLimits(Numbers& numbers, const core::Limits& limits, int decimals = 4);
/// "p = 0.0312" or "p < 0.0001" for people; `name_r` with four decimals.
void putP(Numbers& numbers, const QString& name, double p);
/// "level", "level_r", "z" (normal quantile), "tail" (left out on either side).
void putLevel(Numbers& numbers, double level);

/// A name of the grower's, so that no sign in it is taken for Markdown.
[[nodiscard]] QString named(const std::string& name);
/// With as many decimals as three or four digits need: none for 1234, two for 1.23.
[[nodiscard]] int decimalsFor(double value);
[[nodiscard]] QString fixedForR(double value, int decimals);

/// "c(14, 11, 9)", in lines that fit a page. Too many for any page are read from a file.
[[nodiscard]] QString listForR(std::span<const double> values);
[[nodiscard]] QString listForR(std::span<const int> values);

[[nodiscard]] std::vector<int> rootedOf(std::span<const core::BatchCount> batches);
[[nodiscard]] std::vector<int> assessedOf(std::span<const core::BatchCount> batches);
/// "14 of 24, 11 of 20": at most a dozen, then "and 8 more".
[[nodiscard]] QString countsInWords(std::span<const core::BatchCount> batches);

}  // namespace report
