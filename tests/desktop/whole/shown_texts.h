// SPDX-License-Identifier: MIT
// What a person reads, hovers over or is read out, and whether it has the room that it needs.
#pragma once

#include <QStringList>
#include <QWidget>
#include <vector>

#include "core/records.h"

namespace whole {

struct ShownText {
    QString where;         // class and object name, and which of its texts
    QString text;          // as seen: without tags and mnemonics
    QStringList within{};  // the object names of the widget and of all that it is in
};

/// Labels, buttons, headings, choices, tooltips, names for screen readers. Cells of tables and what was typed are the records' own.
[[nodiscard]] std::vector<ShownText> shownTexts(QWidget& top);
/// Labels, buttons and boxes that are smaller than what is written on them; each as "class objectName: text".
[[nodiscard]] QStringList clippedTexts(QWidget& top);
/// Forms that are wider than what is seen of them, so that lines are read by scrolling sideways; each as "class objectName: widths".
[[nodiscard]] QStringList scrolledSideways(QWidget& top);
/// Whatever the records call by a name or say in their notes, and what core makes of it; the longest first.
[[nodiscard]] QStringList namesIn(const core::Records& records);
/// The text without these.
[[nodiscard]] QString without(QString text, const QStringList& names);

[[nodiscard]] QString called(const QWidget& widget);

}  // namespace whole
