// SPDX-License-Identifier: MIT
// In the text of a menu or button an ampersand marks the letter to press with Alt; two stand for one.
#pragma once

#include <QString>

namespace desktop {

[[nodiscard]] inline QString withoutMnemonic(QString text) {
    return text.replace("&&", "\x01").remove('&').replace("\x01", "&");
}

/// The other way round: words that are to be read as they are.
[[nodiscard]] inline QString asMenuText(QString words) {
    return words.replace('&', "&&");
}

}  // namespace desktop
