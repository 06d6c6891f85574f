// SPDX-License-Identifier: MIT
// How far apart two names are written: to put the likeliest other spelling on top.
#pragma once

#include <QString>

namespace desktop {

/// The fewest letters to put in, take out or change (Levenshtein 1966), without regard to capitals, accents, × and quotation marks.
[[nodiscard]] int lettersApart(const QString& one, const QString& other);

}  // namespace desktop
