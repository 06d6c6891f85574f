// SPDX-License-Identifier: MIT
// A list to choose one of, with its caption before it, in a row that wraps.
#pragma once

#include <QHBoxLayout>
#include <QLabel>

#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/wrapping_row.h"

namespace desktop {

/// Wide enough for so many letters, whatever stands in it.
inline QComboBox* addChooser(WrappingRow& row, const QString& name, const QString& label, int letters) {
    QComboBox* chooser = shortBox(name, letters);
    auto* caption = new QLabel(label);
    caption->setBuddy(chooser);
    auto* pair = new QWidget;
    auto* both = new QHBoxLayout(pair);
    both->setContentsMargins(0, 0, 0, 0);
    both->addWidget(caption);
    both->addWidget(chooser);
    row.addWidget(pair);
    return chooser;
}

/// Fills it with things that have a `name`, the chosen one in front; nothing to choose: it is off.
template <class Choices>
void fillChooser(QComboBox& chooser, const Choices& choices, int chosen) {
    chooser.clear();
    for (const auto& choice : choices) chooser.addItem(choice.name);
    chooser.setCurrentIndex(choices.empty() ? -1 : chosen);
    chooser.setEnabled(!choices.empty());
    chooser.setToolTip(chooser.currentText());
}

}  // namespace desktop
