// SPDX-License-Identifier: MIT
#include "app/desktop/settings/unit_choices.h"

#include <QCoreApplication>
#include <utility>
#include <vector>

namespace desktop {

namespace {

struct UnitWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::UnitWords)
};

template <class Unit>
void offer(QComboBox& box, const std::vector<std::pair<Unit, QString>>& units, Unit chosen) {
    const QSignalBlocker quiet(&box);
    if (box.count() == 0)
        for (const auto& [unit, text] : units) box.addItem(text, static_cast<int>(unit));
    box.setCurrentIndex(box.findData(static_cast<int>(chosen)));
}

}  // namespace

void offerUnits(QComboBox& box, core::TemperatureUnit chosen) {
    offer<core::TemperatureUnit>(box,
                                 {{core::TemperatureUnit::Celsius, UnitWords::tr("\u00b0C (Celsius)")},
                                  {core::TemperatureUnit::Fahrenheit, UnitWords::tr("\u00b0F (Fahrenheit)")}},
                                 chosen);
}

void offerUnits(QComboBox& box, core::EcUnit chosen) {
    offer<core::EcUnit>(box,
                        {{core::EcUnit::MilliSiemens, UnitWords::tr("mS/cm")},
                         {core::EcUnit::MicroSiemens, UnitWords::tr("\u00b5S/cm")},
                         {core::EcUnit::Ppm500, UnitWords::tr("ppm, 500 to 1 mS/cm")},
                         {core::EcUnit::Ppm640, UnitWords::tr("ppm, 640 to 1 mS/cm")},
                         {core::EcUnit::Ppm700, UnitWords::tr("ppm, 700 to 1 mS/cm")}},
                        chosen);
}

void offerUnits(QComboBox& box, core::VolumeUnit chosen) {
    offer<core::VolumeUnit>(box,
                            {{core::VolumeUnit::Litres, UnitWords::tr("L (litres)")},
                             {core::VolumeUnit::UsGallons, UnitWords::tr("gal (US gallons)")}},
                            chosen);
}

void offerUnits(QComboBox& box, core::LengthUnit chosen) {
    offer<core::LengthUnit>(box,
                            {{core::LengthUnit::Millimetres, UnitWords::tr("mm (millimetres)")},
                             {core::LengthUnit::Inches, UnitWords::tr("in (inches)")}},
                            chosen);
}

}  // namespace desktop
