// SPDX-License-Identifier: MIT
// Small change of plain English for the sentences of comparisons: counts, shares of a hundred, lists.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/comparison/comparison.h"

namespace core {

/// "1 batch", "3 batches".
[[nodiscard]] std::string counted(int count, std::string_view one, std::string_view many);
/// "kind of cutting", where wordFor() has "cutting": in a sentence, one cutting is one cutting.
[[nodiscard]] std::string factorInWords(Factor factor);
/// An arm's name in a sentence. Methods read as the trade speaks; names of treatments, media and kinds of cutting are set in quotes,
/// or a treatment called Nothing would make nonsense.
[[nodiscard]] std::string nameInWords(Factor factor, const std::string& name);
/// To the nearest whole cutting of a hundred.
[[nodiscard]] int perHundred(double share);
/// "95 %" or "99.9 %" from a level.
[[nodiscard]] std::string levelWords(double level);
/// "anything from 3 fewer to 30 more" from limits of a difference of rates.
[[nodiscard]] std::string moreOrFewer(double low, double high);
/// "a", "a and b", "a, b and c".
[[nodiscard]] std::string listed(std::span<const std::string> names);
/// Rounded up to a number that is easy to say: below 20 as it is, then to fives, tens and fifties.
[[nodiscard]] int roundedUp(int count);

}  // namespace core
