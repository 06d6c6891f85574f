// SPDX-License-Identifier: MIT
#include "core/mixing/tub.h"

#include <algorithm>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

double mixedEc(double litres1, double ec1, double litres2, double ec2) {
    return (litres1 * ec1 + litres2 * ec2) / (litres1 + litres2);
}

constexpr const char* mixingLaw = "conservation of the salts: EC mixes like volume";

Working dilutionWorking(const TubDilution& question, double add) {
    return {.formula = "water to add = volume x (EC now - EC wanted) / (EC wanted - EC of the water)",
            .withNumbers = briefText(question.litres) + " L x (" + briefText(question.ec) + " - " +
                           briefText(question.targetEc) + ") / (" + briefText(question.targetEc) + " - " +
                           briefText(question.waterEc) + ") = " + briefText(add) + " L",
            .source = mixingLaw};
}

Working replacementWorking(const TubDilution& question, double replace) {
    return {
        .formula = "or take out and fill up with water = volume x (EC now - EC wanted) / (EC now - EC of the water)",
        .withNumbers = briefText(question.litres) + " L x (" + briefText(question.ec) + " - " +
                       briefText(question.targetEc) + ") / (" + briefText(question.ec) + " - " +
                       briefText(question.waterEc) + ") = " + briefText(replace) + " L",
        .source = mixingLaw};
}

std::string shownEc(double ec, const DisplayUnits& units) {
    return briefText(shownValue(ec, Quantity::SolutionEc, units));
}

}  // namespace

Refusals faultsIn(const TubDilution& question, const DisplayUnits& units) {
    Refusals faults = faultsIn(question.tools, units);
    collect(faults, faultInVolume("Volume", question.litres, units));
    collect(faults, faultInEc("EC now", question.ec, units));
    collect(faults, faultInEc("EC of the water", question.waterEc, units));
    if (!faults.empty()) return faults;
    if (question.waterEc >= question.ec)
        faults.push_back(outOfRange("EC of the water", ecText(question.waterEc, units),
                                    "less than the " + ecText(question.ec, units) + " of the tub"));
    else if (!(question.targetEc > question.waterEc && question.targetEc < question.ec))
        faults.push_back(outOfRange("EC wanted", ecText(question.targetEc, units),
                                    "more than the " + shownEc(question.waterEc, units) +
                                        " of the water and less than the " + shownEc(question.ec, units) +
                                        " of the tub"));
    return faults;
}

Result<DilutedTub> diluteTub(const TubDilution& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double tooMuch = question.litres * (question.ec - question.targetEc);
    DilutedTub diluted{.question = question};
    diluted.add = measuredWith(question.tools, AmountUnit::Litres, tooMuch / (question.targetEc - question.waterEc));
    diluted.replace = measuredWith(question.tools, AmountUnit::Litres, tooMuch / (question.ec - question.waterEc));
    diluted.ecAfterAdding = mixedEc(question.litres, question.ec, diluted.add.measured, question.waterEc);
    const double kept = std::max(0.0, question.litres - diluted.replace.measured);
    diluted.ecAfterReplacing = mixedEc(kept, question.ec, question.litres - kept, question.waterEc);
    diluted.notes.workings = {dilutionWorking(question, diluted.add.exact),
                              replacementWorking(question, diluted.replace.exact)};
    diluted.notes.cautions = {CautionTopic::Advice};
    return diluted;
}

Refusals faultsIn(const TubTopUp& question, const DisplayUnits& units) {
    NutrientQuestion feed = question.feed;
    feed.litres = question.fullLitres;
    Refusals faults = faultsIn(feed, units);
    collect(faults, faultInEc("EC now", question.ec, units));
    if (faults.empty())
        collect(faults,
                faultBetween("Volume now", shownVolume(question.litres, units.volume), 0,
                             shownVolume(question.fullLitres, units.volume), std::string(wordFor(units.volume))));
    return faults;
}

Result<ToppedUpTub> topUpTub(const TubTopUp& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    ToppedUpTub tub{.question = question};
    const double missing = question.fullLitres - question.litres;
    tub.water = measuredWith(question.feed.tools, AmountUnit::Litres, missing);
    tub.ecWithWaterAlone = mixedEc(question.litres, question.ec, missing, question.feed.waterEc);
    NutrientQuestion feed = question.feed;
    feed.litres = question.fullLitres;
    feed.waterEc = tub.ecWithWaterAlone;
    const Result<NutrientDose> dose = nutrientDose(feed);
    if (!dose) return refused(dose.error());
    tub.parts = dose->parts;
    tub.ecLow = dose->ecLow;
    tub.ecHigh = dose->ecHigh;
    tub.notes = dose->notes;
    tub.notes.workings.insert(
        tub.notes.workings.begin(),
        {.formula = "EC filled up with water = (volume now x EC now + water x EC of the water) / volume when full",
         .withNumbers = "(" + briefText(question.litres) + " x " + briefText(question.ec) + " + " + briefText(missing) +
                        " x " + briefText(question.feed.waterEc) + ") / " + briefText(question.fullLitres) + " = " +
                        briefText(tub.ecWithWaterAlone) + " mS/cm; counted as the water below",
         .source = mixingLaw});
    if (tub.ecWithWaterAlone > question.feed.targetEc)
        tub.notes.remarks.insert(tub.notes.remarks.begin(),
                                 "Filled up with water alone it is still stronger than wanted: take some solution out "
                                 "first, or let it be.");
    return tub;
}

Result<double> blendedEc(double litres1, double ec1, double litres2, double ec2) {
    Refusals faults;
    collect(faults, faultBetween("First volume", litres1, 0, mostLitres, "L"));
    collect(faults, faultBetween("Second volume", litres2, 0, mostLitres, "L"));
    collect(faults, faultBetween("First EC", ec1, 0, mostEc, "mS/cm"));
    collect(faults, faultBetween("Second EC", ec2, 0, mostEc, "mS/cm"));
    if (faults.empty() && litres1 + litres2 == 0) faults.push_back(outOfRange("Volume", "0 L", "more than 0"));
    if (!faults.empty()) return refused(std::move(faults));
    return mixedEc(litres1, ec1, litres2, ec2);
}

}  // namespace core
