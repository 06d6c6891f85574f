// SPDX-License-Identifier: MIT
// The units that a grower can choose from, in boxes: one for each quantity, its data the unit.
#pragma once

#include <QComboBox>

#include "core/units/display_units.h"

namespace desktop {

void offerUnits(QComboBox& box, core::TemperatureUnit chosen);
void offerUnits(QComboBox& box, core::EcUnit chosen);
void offerUnits(QComboBox& box, core::VolumeUnit chosen);
void offerUnits(QComboBox& box, core::LengthUnit chosen);

template <class Unit>
[[nodiscard]] Unit unitIn(const QComboBox& box) {
    return static_cast<Unit>(box.currentData().toInt());
}

}  // namespace desktop
