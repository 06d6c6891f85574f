// SPDX-License-Identifier: MIT
#include "core/climate/reading_entry.h"

#include <cctype>
#include <cmath>

#include "core/units/entered_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"

namespace core {

namespace {

constexpr double farOff = 8;  // times the last reading

/// What is typed about, and how.
struct Asked {
    Quantity quantity;
    const DisplayUnits& units;
    std::optional<Band> band;
    std::optional<double> last;

    [[nodiscard]] double shown(double stored) const { return shownValue(stored, quantity, units); }
    [[nodiscard]] double stored(double shown) const { return storedValue(shown, quantity, units); }
    [[nodiscard]] std::string name() const {
        std::string name(factsOf(quantity).name);
        name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(name[0])));
        return name;
    }
    [[nodiscard]] std::string withUnit(const std::string& figure) const {
        const std::string unit = unitText(quantity, units);
        return unit.empty() ? figure : figure + ' ' + unit;
    }
    /// A limit or a proposal in the grower's unit, without the dust of the conversion.
    [[nodiscard]] std::string text(double shown) const {
        constexpr double finest = 1000;
        return figureText(std::round(shown * finest) / finest);
    }
    [[nodiscard]] std::string rangeText() const {
        const QuantityFacts& facts = factsOf(quantity);
        return withUnit(text(shown(facts.low)) + " to " + text(shown(facts.high)));
    }
};

bool canBe(const Asked& asked, double stored) {
    const QuantityFacts& facts = factsOf(asked.quantity);
    return stored >= facts.low && stored <= facts.high;
}

/// In the band or as far again beside it, or within twice and half the last reading.
bool isLikely(const Asked& asked, double stored) {
    if (!canBe(asked, stored)) return false;
    if (asked.last && *asked.last > 0 && stored >= *asked.last / 2 && stored <= *asked.last * 2) return true;
    const std::optional<Band>& band = asked.band;
    if (!band) return false;
    const double width = band->high - band->low;
    return stored > band->low - width && stored < band->high + width && stored > factsOf(asked.quantity).low;
}

/// " Did you mean 6.1?" where the decimal sign slipped.
std::string proposal(const Asked& asked, double shown) {
    for (const double times : {0.1, 10.0, 0.01, 0.001})
        if (isLikely(asked, asked.stored(shown * times))) return " Did you mean " + asked.text(shown * times) + "?";
    return {};
}

bool isFarFromLast(const Asked& asked, double stored) {
    if (!asked.last || *asked.last <= 0 || stored <= 0) return false;
    const double times = stored / *asked.last;
    return times >= farOff || times <= 1 / farOff;
}

std::string bandText(const Asked& asked, const Band& band) {
    const QuantityFacts& facts = factsOf(asked.quantity);
    if (band.high >= facts.high) return asked.withUnit(asked.text(asked.shown(band.low))) + " or more";
    if (band.low <= facts.low) return "up to " + asked.withUnit(asked.text(asked.shown(band.high)));
    return asked.withUnit(asked.text(asked.shown(band.low)) + " to " + asked.text(asked.shown(band.high)));
}

std::string questionAbout(const Asked& asked, const std::string& typed, double stored, double shown) {
    const std::string begin = asked.name() + " is " + asked.withUnit(typed);
    if (isFarFromLast(asked, stored))
        return begin + "; last time it was " + asked.withUnit(asked.text(asked.shown(*asked.last))) + "." +
               proposal(asked, shown);
    const std::optional<Band>& band = asked.band;
    if (!band || !isOutside(*band, stored)) return {};
    // Only a figure that is far off the band looks like a slip; one beside it is simply what it was.
    return begin + "; cuttings root well at " + bandText(asked, *band) + "." +
           (isLikely(asked, stored) ? std::string() : proposal(asked, shown));
}

}  // namespace

ReadingEntry readingEntryFrom(std::string_view typed, Quantity quantity, const DisplayUnits& units,
                              const std::optional<Band>& band, std::optional<double> last) {
    if (isBlank(typed)) return {};
    const Asked asked{quantity, units, band, last};
    const std::optional<double> shown = numberFrom(typed);
    if (!shown)
        return {.stored = {},
                .fault = asked.name() + " is \u201c" + quotable(typed) + "\u201d; a number from " + asked.rangeText() +
                         " is allowed.",
                .question = {}};
    const double stored = asked.stored(*shown);
    const std::string plain = figureText(*shown);
    if (!canBe(asked, stored))
        return {.stored = {},
                .fault = asked.name() + " is " + asked.withUnit(plain) + "; " + asked.rangeText() + " is allowed." +
                         proposal(asked, *shown),
                .question = {}};
    return {.stored = stored, .fault = {}, .question = questionAbout(asked, plain, stored, *shown)};
}

std::vector<Quantity> usualQuantities(std::string_view method) {
    if (method.find("water") != std::string_view::npos)
        return {Quantity::SolutionEc, Quantity::SolutionPh, Quantity::SolutionTemperature};
    return {Quantity::MediumTemperature, Quantity::AirTemperature, Quantity::RelativeHumidity};
}

}  // namespace core
