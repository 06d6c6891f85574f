// SPDX-License-Identifier: MIT
#include "core/shelf_rules.h"

#include <algorithm>

#include "core/comparison/rate_interval.h"
#include "core/field_faults.h"

namespace core {

namespace {

void judgeSchedule(CheckScheduleId id, const Shelves& shelves, Refusals& faults) {
    if (id.isSet() && find(shelves.checkSchedules, id) == nullptr)
        faults.push_back(missingRefusal("Check schedule", id.value));
}

void judgeBlocked(const Station& station, Refusals& faults) {
    const auto blocked = positionsFrom(station.blocked);
    const std::string allowed = "positions of its layout, such as A1, B2-B3";
    const auto isOutside = [&](Position position) {
        return position.row >= station.rows || position.column >= station.columns;
    };
    if (!blocked || std::ranges::any_of(*blocked, isOutside))
        faults.push_back({"Blocked positions", quotable(station.blocked), allowed,
                          "Blocked positions are " + quotable(station.blocked) + "; " + allowed + " are allowed."});
}

}  // namespace

Refusals faultsIn(const LogbookFacts& facts) {
    Refusals faults;
    collect(faults, faultInName("Name", facts.name));
    collect(faults, faultInLine("Grower", facts.grower));
    collect(faults, faultInWhole("Root length in mm", facts.rootLengthMillimetres, 1, 1000));
    collect(faults, faultInWhole("Days between checks", facts.checkEveryDays, 1, 365));
    collect(faults, faultInWhole("Days to the first check", facts.firstCheckAfterDays, 1, 365));
    collect(faults, faultInWhole("Horizon day", facts.horizonDay, 1, longestDays));
    collect(faults, faultInFigure("Level", facts.level, 0.5, 0.999, "0.5 to 0.999"));
    if (facts.paper != "A4" && facts.paper != "Letter")
        faults.push_back({"Paper", quotable(facts.paper), "A4 or Letter",
                          "Paper is " + quotable(facts.paper) + "; A4 or Letter is allowed."});
    if (!rateIntervalFrom(facts.interval))
        faults.push_back(
            {"Interval", quotable(facts.interval), "wilson or another of the known ones",
             "Interval is " + quotable(facts.interval) + "; wilson or another of the known ones is allowed."});
    const auto isCapital = [](char letter) { return letter >= 'A' && letter <= 'Z'; };
    if (facts.currency.size() != 3 || !std::ranges::all_of(facts.currency, isCapital))
        faults.push_back(
            {"Currency", quotable(facts.currency), "three capital letters such as EUR",
             "Currency is " + quotable(facts.currency) + "; three capital letters such as EUR are allowed."});
    collect(faults, faultInNote("Citation", facts.citation));
    collect(faults, faultInFigure("Altitude in m", facts.altitudeMetres, -430, 6000, "-430 to 6000"));
    collect(faults, faultInFigure("Base of degree-days in C", facts.degreeDayBase, -10, 40, "-10 to 40"));
    collect(faults, faultInFigure("Rate of false alarms", facts.falseAlarmRate, 0.0001, 0.5, "0.0001 to 0.5"));
    return faults;
}

Refusals faultsIn(const Plant& plant, const Shelves& shelves) {
    Refusals faults;
    collect(faults, faultInName("Botanical name", plant.botanicalName));
    collect(faults, faultInLine("Cultivar", plant.cultivar));
    collect(faults, faultInLine("Common name", plant.commonName));
    if (plant.usualRootingDaysHigh)
        collect(faults, faultInWhole("Usual days to root", *plant.usualRootingDaysHigh, 1, longestDays));
    judgeSchedule(plant.checkSchedule, shelves, faults);
    collect(faults, faultInNote("Note", plant.note));
    for (const Plant& other : shelves.plants)
        if (other.id != plant.id && other.botanicalName == plant.botanicalName && other.cultivar == plant.cultivar)
            faults.push_back(takenRefusal("Botanical name", fullName(plant)));
    return faults;
}

Refusals faultsIn(const StockPlant& stockPlant, const Shelves& shelves) {
    Refusals faults;
    collect(faults, faultInName("Label", stockPlant.label));
    if (find(shelves.plants, stockPlant.plant) == nullptr)
        faults.push_back(missingRefusal("Plant", stockPlant.plant.value));
    collect(faults, faultInNote("Note", stockPlant.note));
    for (const StockPlant& other : shelves.stockPlants)
        if (other.id != stockPlant.id && other.plant == stockPlant.plant && other.label == stockPlant.label)
            faults.push_back(takenRefusal("Label", stockPlant.label));
    return faults;
}

Refusals faultsIn(const Method& method, const Shelves& shelves) {
    Refusals faults = faultsInName(method, shelves.methods);
    judgeSchedule(method.checkSchedule, shelves, faults);
    return faults;
}

Refusals faultsIn(const Station& station, const Shelves& shelves) {
    Refusals faults = faultsInName(station, shelves.stations);
    if (find(shelves.methods, station.method) == nullptr)
        faults.push_back(missingRefusal("Method", station.method.value));
    collect(faults, faultInWhole("Rows", station.rows, 0, mostRows));
    collect(faults, faultInWhole("Columns", station.columns, 0, mostColumns));
    judgeBlocked(station, faults);
    collect(faults, faultInWhole("Place in the walk", station.walkingOrder, 0, 1'000'000));
    collect(faults, faultInNote("Note", station.note));
    return faults;
}

Refusals faultsIn(const Medium& medium, const Shelves& shelves) {
    Refusals faults = faultsInName(medium, shelves.media);
    for (const MediumComponent& component : medium.components) {
        collect(faults, faultInName("Component", component.name));
        const std::string field = "Parts of " + quotable(component.name);
        if (component.parts <= 0)
            faults.push_back({field, figureText(component.parts), "more than 0 to 1000",
                              field + " is " + figureText(component.parts) + "; more than 0 to 1000 is allowed."});
        else
            collect(faults, faultInFigure(field, component.parts, 0, 1000, "more than 0 to 1000"));
    }
    collect(faults, faultInNote("Note", medium.note));
    return faults;
}

Refusals faultsIn(const Treatment& treatment, const Shelves& shelves) {
    constexpr int secondsInAWeek = 604'800;  // long soaks last a day or two
    Refusals faults = faultsInName(treatment, shelves.treatments);
    for (const Auxin& auxin : treatment.auxins) {
        collect(faults, faultInName("Auxin", auxin.name));
        collect(faults, faultInFigure("Dose of " + quotable(auxin.name), auxin.milligramsPerLitre, 0, 1e6,
                                      "0 to 1000000 mg/L"));
    }
    collect(faults, faultInWhole("Seconds", treatment.seconds, 0, secondsInAWeek));
    collect(faults, faultInNote("Note", treatment.note));
    return faults;
}

Refusals faultsIn(const CuttingKind& kind, const Shelves& shelves) {
    return faultsInName(kind, shelves.cuttingKinds);
}

Refusals faultsIn(const LossCause& cause, const Shelves& shelves) {
    Refusals faults = faultsInName(cause, shelves.lossCauses);
    if (cause.key == '\0') return faults;
    const std::string key = quotable(std::string_view(&cause.key, 1));
    const std::string allowed = "a to z but w, each once, or none";
    const bool isLetter = cause.key >= 'a' && cause.key <= 'z' && cause.key != 'w';
    const auto hasItsKey = [&cause](const LossCause& other) { return other.id != cause.id && other.key == cause.key; };
    const bool isTaken = std::ranges::any_of(shelves.lossCauses, hasItsKey);
    if (!isLetter || isTaken)
        faults.push_back({"Key", key, allowed,
                          "Key is " + key + (isTaken ? ", which is taken" : "") + "; " + allowed + " is allowed."});
    return faults;
}

Refusals faultsIn(const CheckSchedule& schedule, const Shelves& shelves) {
    Refusals faults = faultsInName(schedule, shelves.checkSchedules);
    collect(faults, faultInWhole("Days to the first check", schedule.firstAfterDays, 1, 365));
    collect(faults, faultInWhole("Days between checks", schedule.everyDays, 1, 365));
    return faults;
}

}  // namespace core
