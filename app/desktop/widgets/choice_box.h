// SPDX-License-Identifier: MIT
// Boxes to choose from the things of a logbook: named here, known by their ids.
#pragma once

#include <QComboBox>
#include <QSignalBlocker>
#include <QString>
#include <algorithm>
#include <vector>

namespace desktop {

template <class ThingId>
struct Choice {
    ThingId id;
    QString name;
};

/// As wide as so many characters; the list may be wider.
[[nodiscard]] inline QComboBox* shortBox(const QString& name, int characters) {
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(characters);
    return box;
}

/// `all` stands first, for no choice, unless it is empty. Tells nobody.
template <class ThingId>
void refill(QComboBox& box, const QString& all, const std::vector<Choice<ThingId>>& choices, ThingId current) {
    const QSignalBlocker quiet(box);
    box.clear();
    if (!all.isEmpty()) box.addItem(all, QVariant::fromValue<qlonglong>(0));
    for (const Choice<ThingId>& choice : choices)
        box.addItem(choice.name, QVariant::fromValue<qlonglong>(choice.id.value));
    box.setCurrentIndex(
        std::max(box.count() > 0 ? 0 : -1, box.findData(QVariant::fromValue<qlonglong>(current.value))));
}

}  // namespace desktop
