// SPDX-License-Identifier: MIT
#include "core/mixing/ph_shift.h"

#include <algorithm>
#include <cmath>

#include "core/mixing/carbonate_charge.h"
#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double leastShift = 0.05;  // what a meter shows for certain
constexpr double mostDose = 100;     // meq/L; beyond, the base can't get there

AmountUnit unitOfReagent(const Reagent& reagent) {
    return reagent.kilogramsPerLitre ? AmountUnit::Millilitres : AmountUnit::Grams;
}

bool lowersPh(const PhQuestion& question) {
    return question.toPh < question.fromPh;
}

/// meq of a mmol of the reagent at the pH wanted.
double equivalentsAt(const PhQuestion& question) {
    if (factsOf(question.reagent.kind).isAcid) return *effectiveProtons(question.reagent.kind, question.toPh);
    return yieldOf(question.reagent.kind).alkalinity;
}

double carbonateOf(const PhQuestion& question) {
    return (question.alkalinity - hydroxideLessHydrogen(question.fromPh)) / carbonateCharge(question.fromPh);
}

/// meq/L of acid or base in a closed vessel; infinite where a carbonate base can't reach the pH.
double closedDose(const PhQuestion& question) {
    const double carbonate = carbonateOf(question);
    const double away = alkalinityAt(carbonate, question.toPh) - question.alkalinity;
    if (lowersPh(question)) return -away;
    const BaseYield yield = yieldOf(question.reagent.kind);
    const double gain = yield.alkalinity - yield.carbonate * carbonateCharge(question.toPh);
    return gain > 0 ? yield.alkalinity * away / gain : HUGE_VAL;
}

double bubbledDose(const PhQuestion& question) {
    const double away = *alkalinityInAir(question.toPh, question.carbonDioxide) - question.alkalinity;
    return std::max(0.0, lowersPh(question) ? -away : away);
}

PhDose doseOf(const PhQuestion& question, double milliequivalents,
              AmountRounding rounding = AmountRounding::ToNearest) {
    const double amount =
        milliequivalents * question.litres / equivalentsAt(question) / *millimolesPerUnit(question.reagent);
    return {.milliequivalents = milliequivalents,
            .amount = measuredWith(question.tools, unitOfReagent(question.reagent), amount, rounding)};
}

double millimolesPerLitre(const PhQuestion& question, double amount) {
    return amount * *millimolesPerUnit(question.reagent) / question.litres;
}

/// Charge that a mmol of the reagent carries at any pH, as alkalinity taken away (acid) or brought (base).
double alkalinityAfter(const PhQuestion& question, double millimoles, double ph) {
    constexpr double low = 2, high = 12;
    if (!factsOf(question.reagent.kind).isAcid)
        return question.alkalinity + millimoles * yieldOf(question.reagent.kind).alkalinity;
    return question.alkalinity - millimoles * *effectiveProtons(question.reagent.kind, std::clamp(ph, low, high));
}

double closedPhWith(const PhQuestion& question, double amount) {
    constexpr int halvings = 60;
    const double millimoles = millimolesPerLitre(question, amount);
    const bool isAcid = factsOf(question.reagent.kind).isAcid;
    const double carbonate =
        carbonateOf(question) + (isAcid ? 0 : millimoles * yieldOf(question.reagent.kind).carbonate);
    double low = 0, high = 14;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        const bool isBelow = alkalinityAt(carbonate, middle) < alkalinityAfter(question, millimoles, middle);
        (isBelow ? low : high) = middle;
    }
    return (low + high) / 2;
}

/// Where the alkalinity in equilibrium with air meets what the reagent leaves, which falls further as an acid gives more protons.
double bubbledPhWith(const PhQuestion& question, double amount) {
    constexpr int halvings = 60;
    constexpr double mostBubbled = 9.5;
    const double millimoles = millimolesPerLitre(question, amount);
    double low = lowestPh, high = mostBubbled;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        const bool isBelow =
            *alkalinityInAir(middle, question.carbonDioxide) < alkalinityAfter(question, millimoles, middle);
        (isBelow ? low : high) = middle;
    }
    return (low + high) / 2;
}

void noteWorkings(PhShift& shift) {
    const PhQuestion& question = shift.question;
    const std::string what = shift.lowers ? "acid" : "base";
    const std::string unit = unitOf(shift.closed.amount.unit);
    const double carbonate = carbonateOf(question);
    shift.notes.workings.push_back(
        {.formula = "carbonate = (alkalinity - OH + H) / charge per carbonate at the pH now",
         .withNumbers = briefText(question.alkalinity) + " meq/L at pH " + briefText(question.fromPh) + ", charge " +
                        briefText(carbonateCharge(question.fromPh)) + " = " + briefText(carbonate) + " mmol/L",
         .source = carbonateSource});
    shift.notes.workings.push_back(
        {.formula = what + ", closed = difference to the alkalinity at the pH wanted with the same carbonate",
         .withNumbers = briefText(question.alkalinity) + " meq/L now, " +
                        briefText(alkalinityAt(carbonate, question.toPh)) + " at pH " + briefText(question.toPh) +
                        ": " + briefText(shift.closed.milliequivalents) + " meq/L of " + what,
         .source = carbonateSource});
    shift.notes.workings.push_back(
        {.formula = what + ", bubbled = difference to the alkalinity in equilibrium with air at the pH wanted",
         .withNumbers = briefText(question.alkalinity) + " meq/L now, " +
                        briefText(*alkalinityInAir(question.toPh, question.carbonDioxide), 3) + " in air at pH " +
                        briefText(question.toPh) + ": " + briefText(shift.bubbled.milliequivalents) + " meq/L",
         .source = carbonateSource});
    shift.notes.workings.push_back(
        {.formula = "amount = meq/L x volume / (mmol in a " + unit + " x meq in a mmol)",
         .withNumbers = briefText(shift.first.milliequivalents) + " x " + briefText(question.litres) + " L / (" +
                        briefText(*millimolesPerUnit(question.reagent)) + " x " + briefText(equivalentsAt(question)) +
                        ") = " + briefText(shift.first.amount.exact) + ' ' + unit + " of " + nameOf(question.reagent),
         .source = "dissociation constants of handbooks, from memory; density as entered"});
}

void noteRemarks(PhShift& shift) {
    const PhQuestion& question = shift.question;
    if (shift.bubbled.milliequivalents == 0)
        shift.notes.remarks.push_back("Bubbling alone brings this water to pH " + briefText(shift.phUntreated, 3) +
                                      ": wait a day and read again before anything goes in.");
    else if (shift.lowers)
        shift.notes.remarks.push_back(
            "In a bubbled tub the pH climbs back as carbon dioxide leaves: the first dose ends near "
            "pH " +
            briefText(shift.phOfFirstBubbled, 3) + ". Read again after a day.");
    shift.notes.remarks.push_back(
        "Start with half of the first dose, stir, wait, read and write it down. Never below pH 5 in one step, and "
        "never "
        "more than the ceiling.");
    noteCoarseness(shift.notes, shift.first.amount, nameOf(question.reagent));
    constexpr double fuming = 65;
    if (question.reagent.kind == ReagentKind::Nitric && question.reagent.percent >= fuming)
        shift.notes.remarks.push_back("Nitric acid of this strength fumes and feeds fires: not for a household.");
    if (question.reagent.kind == ReagentKind::Citric)
        shift.notes.remarks.push_back("Microbes eat citric acid, so the pH drifts back within days.");
    shift.notes.cautions = cautionsWith(question.reagent.kind);
}

Refusals faultsInDirection(const PhQuestion& question) {
    Refusals faults;
    if (std::abs(question.toPh - question.fromPh) < leastShift)
        faults.push_back(outOfRange("pH wanted", briefText(question.toPh),
                                    "at least 0.05 away from the " + briefText(question.fromPh) + " it is"));
    else if (factsOf(question.reagent.kind).isAcid != lowersPh(question))
        faults.push_back(outOfRange("Acid or base", std::string(factsOf(question.reagent.kind).name),
                                    lowersPh(question) ? "an acid, to lower pH," : "a base, to raise pH,"));
    return faults;
}

}  // namespace

Refusals faultsIn(const PhQuestion& question, const DisplayUnits& units) {
    constexpr double lowestNow = 4, highestNow = 10, lowestWanted = 5, highestWanted = 8.5;
    Refusals faults = faultsIn(question.tools);
    for (Refusal& fault : faultsIn(question.reagent)) faults.push_back(std::move(fault));
    collect(faults, faultInVolume("Volume", question.litres, units));
    collect(faults, faultBetween("pH now", question.fromPh, lowestNow, highestNow, ""));
    collect(faults, faultBetween("pH wanted", question.toPh, lowestWanted, highestWanted, ""));
    if (const auto carbonate = totalCarbonate(question.alkalinity, question.fromPh); !carbonate && faults.empty())
        faults = carbonate.error();
    if (const auto open = alkalinityInAir(question.toPh, question.carbonDioxide); !open && faults.empty())
        faults = open.error();
    if (faults.empty()) faults = faultsInDirection(question);
    if (faults.empty() && closedDose(question) > mostDose)
        faults.push_back(outOfRange("pH wanted", briefText(question.toPh),
                                    "with " + std::string(factsOf(question.reagent.kind).name) +
                                        ", which buffers at about 8.3, less than that"));
    return faults;
}

Result<PhShift> shiftPh(const PhQuestion& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    PhShift shift{.question = question, .lowers = lowersPh(question)};
    const double closed = std::max(0.0, closedDose(question)), bubbled = bubbledDose(question);
    shift.closed = doseOf(question, closed);
    shift.bubbled = doseOf(question, bubbled);
    shift.first = doseOf(question, std::min(closed, bubbled));
    const double most =
        shift.lowers ? std::max(question.alkalinity, std::min(closed, bubbled)) : std::max(closed, bubbled);
    shift.ceiling = doseOf(question, most, AmountRounding::Down);
    shift.start = measuredWith(question.tools, shift.first.amount.unit, shift.first.amount.exact / 2);
    shift.phOfFirst = closedPhWith(question, shift.first.amount.measured);
    shift.phOfFirstBubbled = bubbledPhWith(question, shift.first.amount.measured);
    shift.phUntreated = *phInAir(question.alkalinity, question.carbonDioxide);
    noteWorkings(shift);
    noteRemarks(shift);
    return shift;
}

}  // namespace core
