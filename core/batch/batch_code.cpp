// SPDX-License-Identifier: MIT
#include "core/batch/batch_code.h"

#include <algorithm>
#include <cassert>
#include <charconv>

#include "core/units/entered_text.h"

namespace core {

namespace {

// Thirteen letters, and 13 is prime. The digits have the weights 32, 16, 8, 4, 2, 1; modulo 13 none of them is 0 and no
// neighbours are equal, so any one wrong digit and any two swapped neighbours change the letter.
constexpr std::string_view checkLetters = "DEFGHJKNPRTVX";
constexpr std::size_t digitCount = 6;

char checkLetter(std::string_view digits) {
    std::size_t remainder = 0;
    for (const char digit : digits)
        remainder = (2 * remainder + static_cast<std::size_t>(digit - '0')) % checkLetters.size();
    return checkLetters[remainder];
}

std::string padded(int number, std::size_t width) {
    const std::string digits = std::to_string(number);
    return std::string(width - digits.size(), '0') + digits;
}

}  // namespace

std::string batchCode(int year, int number) {
    assert(year >= 0 && number >= 1 && number <= 9999);
    const std::string digits = padded(year % 100, 2) + padded(number, 4);
    return "B" + digits + checkLetter(digits);
}

bool isBatchCode(std::string_view text) {
    if (text.size() != digitCount + 2 || text.front() != 'B') return false;
    const std::string_view digits = text.substr(1, digitCount);
    if (!std::ranges::all_of(digits, [](char c) { return c >= '0' && c <= '9'; })) return false;
    return digits.substr(2) != "0000" && text.back() == checkLetter(digits);
}

int runningNumber(std::string_view code, int year) {
    if (year < 0 || !isBatchCode(code) || code.substr(1, 2) != padded(year % 100, 2)) return 0;
    const std::string_view digits = code.substr(3, 4);
    int number = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return number;
}

bool isAcceptableCode(std::string_view text) {
    constexpr int longestCode = 40;
    if (text.empty() || !isValidUtf8(text) || hasControlCharacters(text)) return false;
    const auto isBlankEnd = [](char c) { return c == ' '; };
    return charactersIn(text) <= longestCode && !isBlankEnd(text.front()) && !isBlankEnd(text.back());
}

}  // namespace core
