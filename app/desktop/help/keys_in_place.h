// SPDX-License-Identifier: MIT
// The keys that belong to a window, a table or a field: the written part of the keyboard list.
#pragma once

#include <QString>
#include <span>

namespace desktop {

struct KeyInPlace {
    const char* place;
    const char* keys;  // portable names as in "Ctrl+Return; Ctrl+Enter", or what is typed
    const char* what;
    bool isTyped{};
};

[[nodiscard]] std::span<const KeyInPlace> keysInPlace();
/// In the language of the window.
[[nodiscard]] QString inKeyList(const char* text);

}  // namespace desktop
