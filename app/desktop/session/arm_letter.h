// SPDX-License-Identifier: MIT
// "A", "B", ... "Z", "AA": the letter that stands for an arm of a split.
#pragma once

#include <QString>

namespace desktop {

[[nodiscard]] inline QString armLetter(int arm) {
    QString letters(QChar(u'A' + arm % 26));
    if (arm >= 26) letters.prepend(armLetter(arm / 26 - 1));
    return letters;
}

}  // namespace desktop
