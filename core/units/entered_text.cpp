// SPDX-License-Identifier: MIT
#include "core/units/entered_text.h"

#include <algorithm>
#include <utility>

namespace core {

namespace {

unsigned char byteAt(std::string_view text, std::size_t place) {
    return static_cast<unsigned char>(text[place]);
}

bool isContinuation(std::string_view text, std::size_t place) {
    return place < text.size() && (byteAt(text, place) & 0xC0) == 0x80;
}

/// Bytes of the valid character that starts at `place`, else 0. The second byte's narrower ranges shut out overlong
/// forms, surrogates and what lies above U+10FFFF (RFC 3629, section 4).
std::size_t characterLength(std::string_view text, std::size_t place) {
    const unsigned char lead = byteAt(text, place);
    if (lead < 0x80) return 1;
    if (lead < 0xC2 || lead > 0xF4 || !isContinuation(text, place + 1)) return 0;
    if (lead < 0xE0) return 2;
    const unsigned char second = byteAt(text, place + 1);
    if (!isContinuation(text, place + 2)) return 0;
    if (lead < 0xF0) return (lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) ? 0 : 3;
    if (!isContinuation(text, place + 3)) return 0;
    return (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F) ? 0 : 4;
}

bool isControlAt(std::string_view text, std::size_t place) {
    const unsigned char lead = byteAt(text, place);
    return lead < 0x20 || lead == 0x7F || (lead == 0xC2 && byteAt(text, place + 1) < 0xA0);
}

Refusal textFault(std::string_view field, std::string_view text, std::string allowed, const std::string& reason) {
    const std::string name(field);
    return {.field = name,
            .value = quotable(text),
            .allowed = allowed,
            .sentence = name + reason + "; " + allowed + " is allowed."};
}

std::optional<Refusal> faultInText(std::string_view field, std::string_view text, std::size_t longest,
                                   bool mayBreakLines) {
    const std::string allowed = "text of at most " + std::to_string(longest) + " characters";
    if (const int characters = charactersIn(text); std::cmp_greater(characters, longest))
        return textFault(field, text, allowed,
                         " has " + std::to_string(characters) + " characters (" + quotable(text) + ")");
    if (!isValidUtf8(text))
        return textFault(field, text, "text in UTF-8", ", " + quotable(text) + ", is not readable text");
    std::string checked(text);
    if (mayBreakLines) std::erase_if(checked, [](char c) { return c == '\n' || c == '\r' || c == '\t'; });
    if (hasControlCharacters(checked))
        return textFault(field, text, "text without control characters",
                         ", " + quotable(text) + ", has a character that can't be seen (such as a tab or a bell)");
    return {};
}

}  // namespace

bool isValidUtf8(std::string_view text) {
    for (std::size_t place = 0; place < text.size();) {
        const std::size_t length = characterLength(text, place);
        if (length == 0) return false;
        place += length;
    }
    return true;
}

bool hasControlCharacters(std::string_view text) {
    for (std::size_t place = 0; place < text.size(); ++place)
        if (isControlAt(text, place)) return true;
    return false;
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

int charactersIn(std::string_view text) {
    return static_cast<int>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::optional<Refusal> faultInLine(std::string_view field, std::string_view text) {
    return faultInText(field, text, longestName, false);
}

std::optional<Refusal> faultInName(std::string_view field, std::string_view text) {
    if (isBlank(text)) return textFault(field, text, "text of 1 to 200 characters", " is blank");
    return faultInLine(field, text);
}

std::optional<Refusal> faultInNote(std::string_view field, std::string_view text) {
    return faultInText(field, text, longestNote, true);
}

std::optional<Refusal> faultInLongText(std::string_view field, std::string_view text, int fewest, int most) {
    if (fewest > 0 && isBlank(text))
        return textFault(field, text,
                         "text of " + std::to_string(fewest) + " to " + std::to_string(most) + " characters",
                         " is blank");
    return faultInText(field, text, static_cast<std::size_t>(most), true);
}

std::string quotable(std::string_view text) {
    constexpr std::size_t longestQuote = 60;
    std::string quote;
    for (std::size_t place = 0; place < text.size();) {
        if (quote.size() >= longestQuote) return "\"" + quote + "...\"";
        const std::size_t length = characterLength(text, place);
        if (length == 0 || isControlAt(text, place))
            quote += '?';
        else
            quote += text.substr(place, length);
        place += std::max<std::size_t>(length, 1);
    }
    return "\"" + quote + "\"";
}

}  // namespace core
