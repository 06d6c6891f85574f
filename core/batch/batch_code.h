// SPDX-License-Identifier: MIT
// The short code on a batch's label: B, two digits of the year, four of a running number, and a check letter, e.g. B260047K. It has
// no letters that a scanner set to another national keyboard would swap, and fits a version 1 QR code.
#pragma once

#include <string>
#include <string_view>

namespace core {

/// Domain: 1 <= number <= 9999.
[[nodiscard]] std::string batchCode(int year, int number);
/// True for a code that batchCode() could have made; one mistyped character or two swapped neighbours are found out.
[[nodiscard]] bool isBatchCode(std::string_view text);
/// The running number of such a code made for `year`, else 0.
[[nodiscard]] int runningNumber(std::string_view code, int year);
/// Codes that come with imported records: 1 to 40 characters, no control characters, no blanks at the ends.
[[nodiscard]] bool isAcceptableCode(std::string_view text);

}  // namespace core
