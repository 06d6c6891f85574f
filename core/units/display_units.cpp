// SPDX-License-Identifier: MIT
#include "core/units/display_units.h"

#include <array>

namespace core {

namespace {

constexpr double millimetresPerInch = 25.4;
constexpr double litresPerGallon = 3.785411784;

constexpr std::array<std::string_view, 2> temperatureWords{"C", "F"};
constexpr std::array<std::string_view, 5> ecWords{"mS/cm", "uS/cm", "ppm500", "ppm640", "ppm700"};
constexpr std::array<double, ecWords.size()> ecFactors{1, 1000, 500, 640, 700};
constexpr std::array<std::string_view, 2> volumeWords{"L", "gal"};
constexpr std::array<std::string_view, 2> lengthWords{"mm", "in"};

template <class Unit, std::size_t count>
std::optional<Unit> unitFrom(std::string_view word, const std::array<std::string_view, count>& words) {
    for (std::size_t unit = 0; unit < count; ++unit)
        if (words[unit] == word) return static_cast<Unit>(unit);
    return {};
}

template <class Unit, std::size_t count>
std::string_view wordOf(Unit unit, const std::array<std::string_view, count>& words) {
    return words[static_cast<std::size_t>(unit)];
}

bool isTemperature(Quantity quantity) {
    return quantity == Quantity::SolutionTemperature || quantity == Quantity::MediumTemperature ||
           quantity == Quantity::AirTemperature || quantity == Quantity::LeafTemperature;
}

double ecFactor(const DisplayUnits& units) {
    return ecFactors[static_cast<std::size_t>(units.ec)];
}

}  // namespace

std::string_view wordFor(TemperatureUnit unit) {
    return wordOf(unit, temperatureWords);
}

std::string_view wordFor(EcUnit unit) {
    return wordOf(unit, ecWords);
}

std::string_view wordFor(VolumeUnit unit) {
    return wordOf(unit, volumeWords);
}

std::string_view wordFor(LengthUnit unit) {
    return wordOf(unit, lengthWords);
}

std::optional<TemperatureUnit> temperatureUnitFrom(std::string_view word) {
    return unitFrom<TemperatureUnit>(word, temperatureWords);
}

std::optional<EcUnit> ecUnitFrom(std::string_view word) {
    return unitFrom<EcUnit>(word, ecWords);
}

std::optional<VolumeUnit> volumeUnitFrom(std::string_view word) {
    return unitFrom<VolumeUnit>(word, volumeWords);
}

std::optional<LengthUnit> lengthUnitFrom(std::string_view word) {
    return unitFrom<LengthUnit>(word, lengthWords);
}

double shownValue(double stored, Quantity quantity, const DisplayUnits& units) {
    if (isTemperature(quantity) && units.temperature == TemperatureUnit::Fahrenheit) return stored * 1.8 + 32;
    if (quantity == Quantity::SolutionEc) return stored * ecFactor(units);
    return stored;
}

double storedValue(double shown, Quantity quantity, const DisplayUnits& units) {
    if (isTemperature(quantity) && units.temperature == TemperatureUnit::Fahrenheit) return (shown - 32) / 1.8;
    if (quantity == Quantity::SolutionEc) return shown / ecFactor(units);
    return shown;
}

double shownVolume(double litres, VolumeUnit unit) {
    return unit == VolumeUnit::UsGallons ? litres / litresPerGallon : litres;
}

double storedVolume(double shown, VolumeUnit unit) {
    return unit == VolumeUnit::UsGallons ? shown * litresPerGallon : shown;
}

double shownLength(double millimetres, LengthUnit unit) {
    return unit == LengthUnit::Inches ? millimetres / millimetresPerInch : millimetres;
}

double storedLength(double shown, LengthUnit unit) {
    return unit == LengthUnit::Inches ? shown * millimetresPerInch : shown;
}

std::string unitText(Quantity quantity, const DisplayUnits& units) {
    if (isTemperature(quantity)) return units.temperature == TemperatureUnit::Fahrenheit ? "\u00b0F" : "\u00b0C";
    switch (quantity) {
        case Quantity::SolutionEc: {
            constexpr std::array<const char*, ecWords.size()> shown{"mS/cm", "\u00b5S/cm", "ppm (500 scale)",
                                                                    "ppm (640 scale)", "ppm (700 scale)"};
            return shown[static_cast<std::size_t>(units.ec)];
        }
        case Quantity::SolutionPh:
            return "";
        case Quantity::Light:
            return "\u00b5mol/(m\u00b2 s)";
        default:
            return std::string(factsOf(quantity).unit);
    }
}

}  // namespace core
