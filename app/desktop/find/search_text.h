// SPDX-License-Identifier: MIT
// Text as it is compared when someone looks for it by a part: no capitals, no accents, no × and no quotation marks.
#pragma once

#include <QString>
#include <QStringList>

namespace desktop {

/// "Hebe × andersonii 'Été'" gives "hebe andersonii ete".
[[nodiscard]] QString searchText(const QString& text);
/// The words of what was typed, each to be found somewhere. A lone x between others stands for ×.
[[nodiscard]] QStringList searchWords(const QString& typed);

}  // namespace desktop
