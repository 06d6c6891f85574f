// SPDX-License-Identifier: MIT
#include "core/mixing/titration.h"

#include <algorithm>

#include "core/mixing/carbonate.h"
#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double largestJug = 100;
constexpr double mostInJug = 1000;  // mL
constexpr double mostDiluted = 1000;
constexpr int mostTitrationSteps = 50;

Refusals faultsInSteps(const std::vector<TitrationStep>& steps) {
    Refusals faults;
    const int count = static_cast<int>(std::min<std::size_t>(steps.size(), mostTitrationSteps + 1));
    collect(faults, faultInWhole("Number of readings", count, 2, mostTitrationSteps));
    for (std::size_t i = 0; i < steps.size() && faults.empty(); ++i) {
        const std::string place = "Reading " + std::to_string(i + 1);
        collect(faults, faultBetween(place + ", amount", steps[i].millilitres, 0, mostInJug, "mL"));
        collect(faults, faultBetween(place + ", pH", steps[i].ph, lowestPh, highestPh, ""));
        if (i == 0) continue;
        if (steps[i].millilitres <= steps[i - 1].millilitres)
            faults.push_back(outOfRange(place + ", amount", briefText(steps[i].millilitres) + " mL",
                                        "more than the " + briefText(steps[i - 1].millilitres) + " mL before it"));
        const bool falls = steps[1].ph < steps[0].ph;
        if (falls ? steps[i].ph >= steps[i - 1].ph : steps[i].ph <= steps[i - 1].ph)
            faults.push_back(outOfRange(
                place + ", pH", briefText(steps[i].ph),
                std::string(falls ? "less" : "more") + " than the " + briefText(steps[i - 1].ph) + " before it"));
    }
    return faults;
}

double amountAt(const std::vector<TitrationStep>& steps, double ph) {
    for (std::size_t i = 1; i < steps.size(); ++i) {
        const TitrationStep &before = steps[i - 1], &after = steps[i];
        const double share = (ph - before.ph) / (after.ph - before.ph);
        if (share >= 0 && share <= 1) return before.millilitres + share * (after.millilitres - before.millilitres);
    }
    return steps.back().millilitres;
}

}  // namespace

Refusals faultsIn(const TitrationQuestion& question, const DisplayUnits& units) {
    Refusals faults = faultsIn(question.tools);
    collect(faults, faultInVolume("Volume of the jug", question.sampleLitres, units, largestJug));
    collect(faults, faultInVolume("Volume of the tub", question.litres, units));
    if (faults.empty())
        collect(faults, faultInVolume("Volume of the jug", question.sampleLitres, units, question.litres));
    collect(faults, faultBetween("Dilution", question.dilutedTo, 1, mostDiluted, "mL from 1 mL"));
    for (Refusal& fault : faultsInSteps(question.steps)) faults.push_back(std::move(fault));
    if (!faults.empty()) return faults;
    const auto [low, high] = std::minmax(question.steps.front().ph, question.steps.back().ph);
    collect(faults, faultBetween("pH wanted", question.toPh, low, high, "as the readings go"));
    return faults;
}

Result<TitratedDose> titratedDose(const TitrationQuestion& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    TitratedDose dose{.question = question, .sampleMillilitres = amountAt(question.steps, question.toPh)};
    const double times = question.litres / question.sampleLitres / question.dilutedTo;
    const double exact = dose.sampleMillilitres * times;
    dose.amount = measuredWith(question.tools, AmountUnit::Millilitres, exact);
    dose.start = measuredWith(question.tools, AmountUnit::Millilitres, exact / 2);
    const double unsure = question.tools.syringe / 2 * times;
    dose.low = std::max(0.0, exact - unsure);
    dose.high = exact + unsure;
    const std::string diluted =
        question.dilutedTo == 1 ? "" : " / " + briefText(question.dilutedTo) + " (as it was diluted)";
    dose.notes.workings.push_back(
        {.formula = "amount = amount in the jug at the pH wanted x tub / jug / dilution",
         .withNumbers = briefText(dose.sampleMillilitres) + " mL x " + briefText(question.litres) + " L / " +
                        briefText(question.sampleLitres) + " L" + diluted + " = " + briefText(exact) + " mL",
         .source = "proportion; a straight line between two readings"});
    dose.notes.remarks.push_back("The syringe's step in the jug leaves " + briefText(dose.low, 3) + " to " +
                                 briefText(dose.high, 3) + " mL open. Start with half, stir, wait, read.");
    if (question.steps.size() == 2)
        dose.notes.remarks.push_back("Two readings only: pH bends between them. Read once more near the aim.");
    noteCoarseness(dose.notes, dose.amount, "the bottle");
    dose.notes.cautions = {CautionTopic::Acids, CautionTopic::ChlorineGas, CautionTopic::Alkalis, CautionTopic::Advice};
    return dose;
}

}  // namespace core
