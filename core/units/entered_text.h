// SPDX-License-Identifier: MIT
// What any text that comes from outside must obey before it is stored: valid UTF-8, no control characters, not
// over-long.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/refusal.h"

namespace core {

inline constexpr std::size_t longestName = 200;   // characters
inline constexpr std::size_t longestNote = 4000;  // characters

/// RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF.
[[nodiscard]] bool isValidUtf8(std::string_view text);
/// U+0000 to U+001F, U+007F to U+009F. Domain: valid UTF-8.
[[nodiscard]] bool hasControlCharacters(std::string_view text);
/// Empty, or nothing but blanks.
[[nodiscard]] bool isBlank(std::string_view text);
/// How many characters (code points) it has. Domain: valid UTF-8.
[[nodiscard]] int charactersIn(std::string_view text);

/// What is wrong with a text of one line; it may be empty.
[[nodiscard]] std::optional<Refusal> faultInLine(std::string_view field, std::string_view text);
/// The same for a name, which must not be blank.
[[nodiscard]] std::optional<Refusal> faultInName(std::string_view field, std::string_view text);
/// What is wrong with a note: it may be empty and may have line breaks and tabs.
[[nodiscard]] std::optional<Refusal> faultInNote(std::string_view field, std::string_view text);

/// The same for a longer text of so many characters; where it needs at least one, it must not be blank.
[[nodiscard]] std::optional<Refusal> faultInLongText(std::string_view field, std::string_view text, int fewest,
                                                     int most);

/// The text as a message may repeat it: bytes that are no text become "?", and what is long is cut short.
[[nodiscard]] std::string quotable(std::string_view text);

}  // namespace core
