// SPDX-License-Identifier: MIT
// What the batch lived through outside its bands in its first days. One yardstick for all batches, as in comparison/condition_features.h: the
// band before roots of the plant.
#include <array>
#include <cmath>

#include "core/causes/suspect_search.h"
#include "core/climate/lived_through.h"
#include "core/climate/stage_bands.h"
#include "core/comparison/english.h"
#include "core/units/figure_text.h"

namespace core {

namespace {

enum class BandSide { Below, Above };

/// How a condition is called, what to do about it, and how a method is called that does so.
struct ConditionWords {
    ClimateQuantity quantity;
    BandSide side;
    const char* name;
    const char* remedy;
    const char* change;
};

constexpr auto conditionWords = std::to_array<ConditionWords>({
    {ClimateQuantity::SolutionTemperature, BandSide::Below, "cold solution", "Warm the solution", "warmed"},
    {ClimateQuantity::SolutionTemperature, BandSide::Above, "warm solution", "Keep the solution cooler", "cooled"},
    {ClimateQuantity::SolutionEc, BandSide::Above, "solution EC high", "Mix the solution weaker", "weaker solution"},
    {ClimateQuantity::SolutionEc, BandSide::Below, "solution EC low", "Mix the solution stronger", "stronger solution"},
    {ClimateQuantity::SolutionPh, BandSide::Below, "solution pH low", "Bring the pH up and keep it there", "pH raised"},
    {ClimateQuantity::SolutionPh, BandSide::Above, "solution pH high", "Bring the pH down and keep it there",
     "pH lowered"},
    {ClimateQuantity::DissolvedOxygen, BandSide::Below, "little oxygen in the solution", "Give the solution more air",
     "more air"},
    {ClimateQuantity::MediumTemperature, BandSide::Below, "cold medium", "Give heat from below", "bottom heat"},
    {ClimateQuantity::MediumTemperature, BandSide::Above, "hot medium", "Keep the medium cooler", "cooler medium"},
    {ClimateQuantity::AirTemperature, BandSide::Below, "cold air", "Keep the air warmer", "warmer air"},
    {ClimateQuantity::AirTemperature, BandSide::Above, "hot air", "Keep the air cooler", "cooler air"},
    {ClimateQuantity::VapourDeficit, BandSide::Above, "dry air", "Keep the air moister", "moister air"},
    {ClimateQuantity::VapourDeficit, BandSide::Below, "saturated air", "Vent more", "vented more"},
    {ClimateQuantity::DailyLight, BandSide::Below, "little light", "Give more light", "more light"},
    {ClimateQuantity::DailyLight, BandSide::Above, "strong light", "Shade", "shaded"},
});

/// Outside for a day at least, and a fifth of the time known; where nothing is known between readings, their mean.
constexpr double fewestHoursOutside = 24;
constexpr double leastShareOutside = 0.2;
constexpr int fewestReadingsAlone = 3;
/// Half the weight where the mean was inside after all; in proportion to the time outside (common practice, no source).
constexpr double weightOfMeanInside = 0.5;

struct LivedOutside {
    LivedFigures figures;
    Band band;
    double hours{};  // on that side
    double share{};  // of the hours known; 1 where only the mean is known
    [[nodiscard]] bool isOutside() const {
        return figures.isMeanOfReadings ? share > 0 : hours >= fewestHoursOutside && share >= leastShareOutside;
    }
};

std::optional<LivedFigures> figuresInFirstDays(const Batch& batch, ClimateQuantity quantity, const Band& band,
                                               const RecordsForSuspects& records) {
    const auto climate = records.conditions.climates.find(batch.station);
    if (climate == records.conditions.climates.end()) return {};
    const DayStart& dayStart = records.conditions.dayStart;
    const Moment from = dayStart(batch.stuckOn), to = dayStart(addDays(batch.stuckOn, conditionDays));
    const BandsInTime bands{{{.from = from, .band = band}}};
    if (quantity == ClimateQuantity::DailyLight) {
        const auto light = climate->second.find(ClimateQuantity::Light);
        if (light == climate->second.end()) return {};
        return figuresOverDays(dailyLights(valuesAround(light->second, from, to), batch.stuckOn, dayStart), bands, from,
                               to);
    }
    const auto values = climate->second.find(quantity);
    if (values == climate->second.end()) return {};
    return figuresOver(values->second, quantity, bands, from, to, records.shelves.facts.degreeDayBase);
}

std::optional<LivedOutside> livedOutside(const Batch& batch, const ConditionWords& words,
                                         const RecordsForSuspects& records) {
    const auto stageBand = bandFor(records.shelves, batch.plant, Stage::BeforeRoots, words.quantity);
    if (!stageBand) return {};
    const Band& band = stageBand->band;
    const auto figures = figuresInFirstDays(batch, words.quantity, band, records);
    if (!figures) return {};
    LivedOutside lived{.figures = *figures, .band = band};
    const bool isBelow = words.side == BandSide::Below;
    lived.hours = isBelow ? figures->hoursBelow : figures->hoursAbove;
    if (figures->isMeanOfReadings)
        lived.share =
            figures->readings >= fewestReadingsAlone && (isBelow ? figures->mean < band.low : figures->mean > band.high)
                ? 1
                : 0;
    else if (figures->hoursWithBand > 0)
        lived.share = lived.hours / figures->hoursWithBand;
    return lived;
}

std::string roundedText(double value) {
    constexpr double hundred = 100;
    return figureText(std::round(value * hundred) / hundred);
}

std::string bandInWords(const Band& band, ClimateQuantity quantity) {
    const QuantityFacts& facts = factsOf(quantity);
    const std::string unit = facts.unit.empty() || facts.unit == "pH" ? "" : " " + std::string(facts.unit);
    if (band.high >= facts.high) return roundedText(band.low) + unit + " or more";
    if (band.low <= facts.low) return "up to " + roundedText(band.high) + unit;
    return roundedText(band.low) + " to " + roundedText(band.high) + unit;
}

/// Between few readings, what lay there is a guess; of a logger it need not be said, and the light of days is not read so.
std::string linesInWords(const LivedFigures& figures, ClimateQuantity quantity) {
    constexpr int fewReadings = 100;
    if (quantity == ClimateQuantity::DailyLight || figures.readings < 1 || figures.readings > fewReadings) return {};
    return std::string(" (on straight lines ") + (figures.readings == 1 ? "through " : "between ") +
           counted(figures.readings, "reading", "readings") + ")";
}

std::string livedInWords(const LivedOutside& lived, const ConditionWords& words) {
    const std::string side = words.side == BandSide::Below ? "below" : "above";
    const std::string band = " its band before roots (" + bandInWords(lived.band, words.quantity) + ")";
    const std::string what = std::string(factsOf(words.quantity).name);
    const std::string days = " in the first " + std::to_string(conditionDays) + " days";
    const std::string mean = roundedText(lived.figures.mean);
    if (lived.figures.isMeanOfReadings)
        return "Mean " + what + " of " + counted(lived.figures.readings, "reading", "readings") + days + " was " +
               mean + ", " + side + band + "; hours can't be told from so few.";
    return "The " + what + " lay " + side + band + " for " + std::to_string(std::lround(lived.hours)) + " of the " +
           std::to_string(std::lround(lived.figures.hoursWithBand)) + " hours on record" +
           linesInWords(lived.figures, words.quantity) + days + "; mean " + mean + ".";
}

std::string remedyInWords(const ConditionWords& words, const Band& band) {
    return std::string(words.remedy) + ": " + bandInWords(band, words.quantity) + " until the first roots.";
}

}  // namespace

void addConditions(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    if (search.records.conditions.climates.empty()) return;
    for (const ConditionWords& words : conditionWords) {
        const auto lived = livedOutside(search.own(), words, search.records);
        if (!lived || !lived->isOutside()) continue;
        Candidate candidate{.kind = SuspectKind::Condition, .name = words.name};
        candidate.speaksFor.push_back(livedInWords(*lived, words));
        candidate.weight = lived->share * (isOutside(lived->band, lived->figures.mean) ? 1 : weightOfMeanInside);
        int onRecord = 0;
        candidate.others = othersThat(search.around, [&](const BatchAround& other) {
            const auto theirs = livedOutside(other.batch(), words, search.records);
            if (theirs) ++onRecord;
            return theirs && theirs->isOutside() && theirs->share >= lived->share / 2;
        });
        if (onRecord == static_cast<int>(candidate.others.size()) && onRecord > 0)
            candidate.speaksAgainst.push_back("Every other batch of which it is on record lived through the same.");
        candidate.changeNextTime = remedyInWords(words, lived->band);
        candidate.trial = proposeChangedMethod(search.own(), search.records.shelves, search.trialDay(), words.change);
        if (!candidate.trial) candidate.checkInstead = "Stick part of the next batch inside the band.";
        candidates.push_back(std::move(candidate));
    }
}

}  // namespace core
