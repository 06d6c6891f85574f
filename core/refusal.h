// SPDX-License-Identifier: MIT
// What a rule says when it says no: the field, the value as given, what is allowed, and one whole sentence.
#pragma once

#include <string>

namespace core {

struct Refusal {
    std::string field;     // as the screens call it, e.g. "Rooted"
    std::string value;     // as it was given
    std::string allowed;   // e.g. "0 to 12"
    std::string sentence;  // names all three; ready to show

    bool operator==(const Refusal&) const = default;
};

}  // namespace core
