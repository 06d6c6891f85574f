// SPDX-License-Identifier: MIT
// Every key that does something, and where it does it. The menus' keys come from their actions; those of windows, tables and fields belong to
// no menu and are written down here. tests/desktop/help holds the list against what the windows listen to.
#pragma once

#include <QKeySequence>
#include <QList>
#include <QString>
#include <vector>

class QMenuBar;

namespace desktop {

struct KeyLine {
    QString place;  // a menu, or the window, table or field where the key works
    QString keys;   // as a person reads them
    QString what;
    QList<QKeySequence> sequences{};  // the same for the program; empty where something is typed, such as "+3"
};

/// By place, in the order in which they are shown.
[[nodiscard]] std::vector<KeyLine> keyLines(const QMenuBar& menus);
/// Lines that have every one of the words in their place, keys or meaning.
[[nodiscard]] bool matches(const KeyLine& line, const QString& words);

}  // namespace desktop
