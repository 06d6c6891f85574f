// SPDX-License-Identifier: MIT
// Dates and numbers as another place writes them than the one the computer is set to.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

namespace desktop {

/// From now on for the whole program; an empty name: the system's own.
void wearNumberFormat(const QString& localeName);

struct NumberFormat {
    QString localeName;  // "de_DE"
    QString title;       // "German (Germany)"
};
/// All that Qt knows, by title.
[[nodiscard]] std::vector<NumberFormat> numberFormats();

/// A date, a number and a percentage as they are written now.
[[nodiscard]] QString numberFormatExample();

}  // namespace desktop
