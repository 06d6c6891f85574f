// SPDX-License-Identifier: MIT
#include "core/mixing/nutrient_dose.h"

#include <algorithm>
#include <limits>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double mostFeedAmount = 1'000'000;  // g or mL

std::string feedPartName(const FeedPart& part, std::size_t place) {
    return part.name.empty() ? "Part " + std::to_string(place + 1) : part.name;
}

/// `perUnit` is what a dose in a litre is in the grower's unit, "/L" or "/gal"; amounts that went in have none.
Refusals faultsInParts(const std::vector<FeedPart>& parts, double most, double perUnit, const std::string& unitBehind) {
    Refusals faults;
    if (parts.empty() || parts.size() > mostFeedParts)
        faults.push_back(outOfRange("Number of parts", std::to_string(parts.size()), rangeText(1, mostFeedParts)));
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::string name = feedPartName(parts[i], i);
        collect(faults, faultInLine("Name of a part", parts[i].name));
        if (parts[i].unit == AmountUnit::Litres)
            faults.push_back(outOfRange("Unit of " + quotable(name), "L", "g or mL"));
        collect(faults, faultAboveNothing(quotable(name), parts[i].fullPerLitre * perUnit, most * perUnit,
                                          unitOf(parts[i].unit) + unitBehind));
    }
    return faults;
}

void appendFaults(Refusals& faults, Refusals more) {
    faults.insert(faults.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

Working strengthWorking(const NutrientQuestion& question, double strength) {
    return {.formula = "strength = (EC wanted - EC of the water) / EC at full strength",
            .withNumbers = "(" + briefText(question.targetEc) + " - " + briefText(question.waterEc) + ") / " +
                           briefText(question.fullEc) + " = " + briefText(strength) +
                           (strength < 0 ? ", so nothing" : ""),
            .source = std::string(commonPractice) + "; EC is taken to rise in proportion to the dose"};
}

Working partWorking(const NutrientQuestion& question, const PartDose& dose, const std::string& name, double strength) {
    const std::string unit = unitOf(dose.part.unit);
    return {.formula = "amount of " + name + " = strength x full dose x volume",
            .withNumbers = briefText(strength) + " x " + briefText(dose.part.fullPerLitre) + ' ' + unit + "/L x " +
                           briefText(question.litres) + " L = " + briefText(dose.amount.exact) + ' ' + unit,
            .source = commonPractice};
}

void noteStrength(NutrientDose& dose, double strength) {
    const NutrientQuestion& question = dose.question;
    if (strength <= 0)
        dose.notes.remarks.push_back(
            "Without nutrient it reads " + briefText(question.waterEc) +
            " mS/cm, as strong as is wanted or stronger: none goes in. Only softer water makes "
            "it weaker.");
    if (strength > 1)
        dose.notes.remarks.push_back("That is above full strength (" + briefText(strength, 3) +
                                     " times): the label ends there. Check the figures before you weigh.");
}

void noteMixing(NutrientDose& dose) {
    const bool isWeighed = std::ranges::any_of(
        dose.parts, [](const PartDose& part) { return part.part.unit == AmountUnit::Grams && part.amount.exact > 0; });
    if (dose.parts.size() > 1 && dose.strength > 0) dose.notes.cautions.push_back(CautionTopic::Concentrates);
    if (isWeighed) dose.notes.cautions.push_back(CautionTopic::Oxidisers);
    dose.notes.cautions.push_back(CautionTopic::Advice);
    if (dose.strength > 0)
        dose.notes.remarks.push_back("Put in a little less, stir, read, add the rest: more can go in, none comes out.");
}

}  // namespace

Refusals faultsIn(const NutrientQuestion& question, const DisplayUnits& units) {
    Refusals faults;
    collect(faults, faultInVolume("Volume", question.litres, units));
    collect(faults, faultInEc("EC wanted", question.targetEc, units));
    collect(faults, faultInEc("EC of the water", question.waterEc, units));
    collect(faults, faultInFullEc("EC at full strength", question.fullEc, units));
    appendFaults(faults, faultsInParts(question.parts, mostFullDose, storedVolume(1, units.volume),
                                       '/' + std::string(wordFor(units.volume))));
    appendFaults(faults, faultsIn(question.tools, units));
    return faults;
}

Result<NutrientDose> nutrientDose(const NutrientQuestion& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double strength = (question.targetEc - question.waterEc) / question.fullEc;
    NutrientDose dose{.question = question};
    dose.strength = std::max(0.0, strength);
    dose.bands = feedingBandsAt(question.targetEc);
    dose.notes.workings.push_back(strengthWorking(question, strength));
    noteStrength(dose, strength);
    double weakest = std::numeric_limits<double>::infinity(), strongest = 0;
    for (std::size_t i = 0; i < question.parts.size(); ++i) {
        const FeedPart& part = question.parts[i];
        const double full = part.fullPerLitre * question.litres;
        const MeasuredAmount amount = measuredWith(question.tools, part.unit, dose.strength * full);
        dose.parts.push_back({.part = part, .amount = amount});
        weakest = std::min(weakest, amount.measured / full);
        strongest = std::max(strongest, amount.measured / full);
        dose.notes.workings.push_back(partWorking(question, dose.parts.back(), feedPartName(part, i), dose.strength));
        noteCoarseness(dose.notes, amount, feedPartName(part, i));
    }
    dose.ecLow = question.waterEc + weakest * question.fullEc;
    dose.ecHigh = question.waterEc + strongest * question.fullEc;
    noteMixing(dose);
    return dose;
}

Refusals faultsIn(const NutrientReading& question, const DisplayUnits& units) {
    constexpr double finest = 0.001, coarsest = 1;
    Refusals faults;
    collect(faults, faultInVolume("Volume", question.litres, units));
    collect(faults, faultInEc("EC read", question.readEc, units));
    collect(faults, faultInEc("EC of the water", question.waterEc, units));
    if (faults.empty() && question.readEc <= question.waterEc)
        faults.push_back(outOfRange("EC read", ecText(question.readEc, units),
                                    "more than the " + ecText(question.waterEc, units) + " of the water"));
    if (question.fullEc) collect(faults, faultInFullEc("EC at full strength", *question.fullEc, units));
    collect(faults,
            faultBetween("Step of the meter", shownValue(question.meterStep, Quantity::SolutionEc, units),
                         shownValue(finest, Quantity::SolutionEc, units),
                         shownValue(coarsest, Quantity::SolutionEc, units), unitText(Quantity::SolutionEc, units)));
    appendFaults(faults, faultsInParts(question.parts, mostFeedAmount, 1, ""));
    return faults;
}

Result<LearntNutrient> learnNutrient(const NutrientReading& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double rise = question.readEc - question.waterEc;
    LearntNutrient learnt{.question = question};
    learnt.ecPerUnit = rise / (question.parts.front().fullPerLitre / question.litres);
    for (std::size_t i = 0; i < question.parts.size(); ++i) {
        const FeedPart& part = question.parts[i];
        LearntPart known{.name = part.name, .unit = part.unit, .perLitre = part.fullPerLitre / question.litres};
        if (question.fullEc) {
            const double times = known.perLitre * *question.fullEc;
            known.fullPerLitre = times / rise;
            known.fullLow = times / (rise + question.meterStep);
            known.fullHigh = rise > question.meterStep ? times / (rise - question.meterStep)
                                                       : std::numeric_limits<double>::infinity();
            const std::string unit = unitOf(part.unit);
            learnt.notes.workings.push_back(
                {.formula = "full dose of " + feedPartName(part, i) +
                            " = amount / volume x EC at full strength / (EC read - EC of the water)",
                 .withNumbers = briefText(part.fullPerLitre) + ' ' + unit + " / " + briefText(question.litres) +
                                " L x " + briefText(*question.fullEc) + " / (" + briefText(question.readEc) + " - " +
                                briefText(question.waterEc) + ") = " + briefText(*known.fullPerLitre) + ' ' + unit +
                                "/L",
                 .source = std::string(commonPractice) + "; EC is taken to rise in proportion to the dose"});
        }
        learnt.parts.push_back(known);
    }
    learnt.notes.workings.push_back(
        {.formula = "EC gained per litre dose = (EC read - EC of the water) / (amount / volume)",
         .withNumbers = "(" + briefText(question.readEc) + " - " + briefText(question.waterEc) + ") / " +
                        briefText(question.parts.front().fullPerLitre / question.litres) + " = " +
                        briefText(learnt.ecPerUnit) + " mS/cm",
         .source = commonPractice});
    if (question.waterEc > 0 && question.fullEc)
        learnt.notes.remarks.push_back("Had the water's own EC been left out, the full dose would have come out " +
                                       briefPercent(1 - rise / question.readEc) + " too low.");
    learnt.notes.cautions.push_back(CautionTopic::Advice);
    return learnt;
}

}  // namespace core
