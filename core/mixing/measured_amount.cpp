// SPDX-License-Identifier: MIT
#include "core/mixing/measured_amount.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double finestStep = 0.001;
constexpr double coarsestStep = 1000;
constexpr double tooFarOff = 0.05;

}  // namespace

Refusals faultsIn(const MeasuringTools& tools, const DisplayUnits& units) {
    Refusals faults;
    collect(faults, faultBetween("Step of the scale", tools.scale, finestStep, coarsestStep, "g"));
    collect(faults, faultBetween("Step of the syringe", tools.syringe, finestStep, coarsestStep, "mL"));
    collect(faults,
            faultBetween("Step of the jug", shownVolume(tools.jug, units.volume), shownVolume(finestStep, units.volume),
                         shownVolume(coarsestStep, units.volume), std::string(wordFor(units.volume))));
    return faults;
}

const char* unitOf(AmountUnit unit) {
    switch (unit) {
        case AmountUnit::Grams:
            return "g";
        case AmountUnit::Millilitres:
            return "mL";
        case AmountUnit::Litres:
            return "L";
    }
    return "";
}

double stepOf(const MeasuringTools& tools, AmountUnit unit) {
    if (unit == AmountUnit::Grams) return tools.scale;
    return unit == AmountUnit::Millilitres ? tools.syringe : tools.jug;
}

MeasuredAmount measuredWith(const MeasuringTools& tools, AmountUnit unit, double exact, AmountRounding rounding) {
    constexpr double dust = 1e-6;
    const double step = stepOf(tools, unit);
    double steps = std::round(exact / step + dust / 1000);
    if (rounding == AmountRounding::Up) steps = std::ceil(exact / step - dust);
    if (rounding == AmountRounding::Down) steps = std::floor(exact / step + dust);
    return {.exact = exact, .measured = steps * step, .step = step, .unit = unit};
}

int decimalsOf(const MeasuredAmount& amount) {
    constexpr int most = 6;
    constexpr double dustOfStep = 1e-9;
    double step = amount.step;
    int decimals = 0;
    for (; decimals < most && std::abs(step - std::round(step)) > dustOfStep * step; ++decimals) step *= 10;
    return decimals;
}

std::string measuredText(const MeasuredAmount& amount) {
    std::array<char, 400> room{};
    const auto [end, fault] = std::to_chars(room.data(), room.data() + room.size(), amount.measured,
                                            std::chars_format::fixed, decimalsOf(amount));
    return std::string(room.data(), end) + ' ' + unitOf(amount.unit);
}

std::optional<std::string> coarsenessOf(const MeasuredAmount& amount, const std::string& ofWhat) {
    if (std::abs(amount.offBy()) <= tooFarOff) return {};
    const std::string unit = unitOf(amount.unit);
    const std::string start = "Steps of " + briefText(amount.step) + ' ' + unit + " are coarse for " +
                              briefText(amount.exact, 3) + ' ' + unit + " of " + ofWhat + ": ";
    const std::string wayOut =
        amount.unit == AmountUnit::Grams
            ? " Make a stronger solution of a larger amount first and measure that out, or find a finer scale."
            : " Dilute it ten times first and measure ten times as much, or find a finer syringe.";
    if (amount.measured == 0) return start + "nothing would be taken." + wayOut;
    return start + "what can be measured is " + briefPercent(std::abs(amount.offBy())) +
           (amount.offBy() > 0 ? " too much." : " too little.") + wayOut;
}

}  // namespace core
