// SPDX-License-Identifier: MIT
// The words that commands say, ready to be translated, and the few ways in which they are put together.
#pragma once

#include <QString>
#include <initializer_list>
#include <string>
#include <string_view>

#include "core/result.h"

namespace console {

/// The sentence in the user's language; works without an application object.
[[nodiscard]] std::string tr(const char* sentence);
/// %1, %2 ... replaced, in one pass, so that a value may hold a percent sign.
[[nodiscard]] std::string filled(const std::string& sentence, std::initializer_list<std::string> values);
/// The sentences of the refusals, a line each.
[[nodiscard]] std::string linesOf(const core::Refusals& refusals);
/// Text from the command line as UTF-8 that a message may repeat.
[[nodiscard]] std::string shown(std::string_view text);

}  // namespace console
