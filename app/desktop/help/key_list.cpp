// SPDX-License-Identifier: MIT
#include "app/desktop/help/key_list.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>
#include <algorithm>

#include "app/desktop/help/keys_in_place.h"
#include "app/desktop/names/mnemonic.h"

namespace desktop {

namespace {

void addMenu(const QMenu& menu, const QString& title, std::vector<KeyLine>& lines) {
    for (const QAction* action : menu.actions()) {
        if (action->menu()) addMenu(*action->menu(), title, lines);
        if (!action->shortcut().isEmpty())
            lines.push_back({.place = title,
                             .keys = QKeySequence::listToString(action->shortcuts(), QKeySequence::NativeText)
                                         .replace(QLatin1String("; "), QLatin1String(", ")),
                             .what = withoutMnemonic(action->text()).remove(QChar(u'…')),
                             .sequences = action->shortcuts()});
    }
}

KeyLine lineFor(const KeyInPlace& key) {
    KeyLine line{.place = inKeyList(key.place), .keys = {}, .what = inKeyList(key.what)};
    if (key.isTyped) {
        line.keys = inKeyList(key.keys);
        return line;
    }
    line.sequences = QKeySequence::listFromString(QLatin1String(key.keys));
    QStringList names;
    for (const QKeySequence& sequence : line.sequences) names << sequence.toString(QKeySequence::NativeText);
    line.keys = names.join(QLatin1String(", "));
    return line;
}

}  // namespace

std::vector<KeyLine> keyLines(const QMenuBar& menus) {
    std::vector<KeyLine> lines;
    for (const QAction* menu : menus.actions())
        if (menu->menu()) addMenu(*menu->menu(), withoutMnemonic(menu->text()), lines);
    for (const KeyInPlace& key : keysInPlace()) lines.push_back(lineFor(key));
    return lines;
}

bool matches(const KeyLine& line, const QString& words) {
    const QStringList sought = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const QString all = line.place + ' ' + line.keys + ' ' + line.what;
    return std::ranges::all_of(sought, [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); });
}

}  // namespace desktop
