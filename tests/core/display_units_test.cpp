// SPDX-License-Identifier: MIT
#include "core/units/display_units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::DisplayUnits;
using core::EcUnit;
using core::LengthUnit;
using core::Quantity;
using core::TemperatureUnit;
using core::VolumeUnit;

constexpr double thereAndBack = 1e-9;  // relative, with 1 as the least scale

void expectBack(double back, double stored) {
    EXPECT_NEAR(back, stored, thereAndBack * std::max(1.0, std::abs(stored)));
}

constexpr EcUnit ecUnits[] = {EcUnit::MilliSiemens, EcUnit::MicroSiemens, EcUnit::Ppm500, EcUnit::Ppm640,
                              EcUnit::Ppm700};

TEST(DisplayUnits, EveryFigureComesBackOverTheDomain) {
    for (const Quantity quantity : core::allQuantities)
        for (const TemperatureUnit temperature : {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit})
            for (const EcUnit ec : ecUnits)
                for (int step = 0; step <= 1000; ++step) {
                    const DisplayUnits units{.temperature = temperature, .ec = ec};
                    const auto& facts = core::factsOf(quantity);
                    const double stored = facts.low + (facts.high - facts.low) * step / 1000;
                    expectBack(core::storedValue(core::shownValue(stored, quantity, units), quantity, units), stored);
                }
    for (double amount = 1e-3; amount < 1e6; amount *= 1.37) {
        expectBack(core::storedVolume(core::shownVolume(amount, VolumeUnit::UsGallons), VolumeUnit::UsGallons), amount);
        expectBack(core::storedLength(core::shownLength(amount, LengthUnit::Inches), LengthUnit::Inches), amount);
    }
}

// NIST Handbook 44 (2024), appendix C, from memory: 1 in = 25.4 mm and 1 gal (US, 231 cubic inches) = 3.785 411 784 L, both exactly; water
// freezes at 32 F and boils at 212 F.
TEST(DisplayUnits, FollowTheFactorsOfNist) {
    const DisplayUnits fahrenheit{.temperature = TemperatureUnit::Fahrenheit};
    EXPECT_DOUBLE_EQ(core::shownValue(0, Quantity::SolutionTemperature, fahrenheit), 32);
    EXPECT_DOUBLE_EQ(core::shownValue(100, Quantity::AirTemperature, fahrenheit), 212);
    EXPECT_DOUBLE_EQ(core::shownValue(-40, Quantity::MediumTemperature, fahrenheit), -40);
    EXPECT_DOUBLE_EQ(core::storedVolume(1, VolumeUnit::UsGallons), 3.785411784);
    EXPECT_DOUBLE_EQ(core::storedVolume(1, VolumeUnit::UsGallons), 231 * 2.54 * 2.54 * 2.54 / 1000);
    EXPECT_DOUBLE_EQ(core::shownLength(25.4, LengthUnit::Inches), 1);
}

TEST(DisplayUnits, TheScalesOfMetersAreMultiplesOfTheSameReading) {
    const double shown[] = {1.2, 1200, 600, 768, 840};
    for (std::size_t unit = 0; unit < std::size(ecUnits); ++unit)
        EXPECT_DOUBLE_EQ(core::shownValue(1.2, Quantity::SolutionEc, {.ec = ecUnits[unit]}), shown[unit]);
}

TEST(DisplayUnits, LeaveOtherQuantitiesAlone) {
    const DisplayUnits units{.temperature = TemperatureUnit::Fahrenheit, .ec = EcUnit::Ppm500};
    for (const Quantity quantity :
         {Quantity::SolutionPh, Quantity::DissolvedOxygen, Quantity::RelativeHumidity, Quantity::Light})
        EXPECT_EQ(core::shownValue(6.1, quantity, units), 6.1);
}

TEST(DisplayUnits, EveryUnitReadsBackByItsWord) {
    for (const EcUnit unit : ecUnits) EXPECT_EQ(core::ecUnitFrom(core::wordFor(unit)), unit);
    for (const TemperatureUnit unit : {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit})
        EXPECT_EQ(core::temperatureUnitFrom(core::wordFor(unit)), unit);
    for (const VolumeUnit unit : {VolumeUnit::Litres, VolumeUnit::UsGallons})
        EXPECT_EQ(core::volumeUnitFrom(core::wordFor(unit)), unit);
    for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches})
        EXPECT_EQ(core::lengthUnitFrom(core::wordFor(unit)), unit);
    EXPECT_FALSE(core::ecUnitFrom("ms/cm"));
    EXPECT_FALSE(core::temperatureUnitFrom("K"));
}

}  // namespace
