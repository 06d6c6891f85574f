// SPDX-License-Identifier: MIT
#include "core/mixing/auxin_mix.h"

#include <algorithm>

#include "core/mixing/formula.h"
#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double fullPurity = 100;
constexpr double mostTalcPercent = 10;

std::string strengthText(AuxinKind kind, const AuxinStrength& strength) {
    return briefText(strength.milligramsPerLitre) + " mg/L " + nameOf(kind, strength.form);
}

double asAcid(AuxinKind kind, const AuxinStrength& strength) {
    return strength.milligramsPerLitre * (strength.form == AuxinForm::Salt ? acidEquivalent(kind) : 1);
}

AuxinStrength fromAcid(AuxinKind kind, double acid, AuxinForm form) {
    return {.milligramsPerLitre = form == AuxinForm::Salt ? acid / acidEquivalent(kind) : acid, .form = form};
}

std::vector<CautionTopic> auxinCautions() {
    return {CautionTopic::GrowthRegulators, CautionTopic::EdibleCrops, CautionTopic::HormoneHygiene,
            CautionTopic::Advice};
}

void noteForms(MixNotes& notes, AuxinKind kind, AuxinForm one, AuxinForm other) {
    if (one == other) return;
    notes.workings.push_back({.formula = "acid in a potassium salt = molar mass of the acid / molar mass of the salt",
                              .withNumbers = briefText(molarMassOf(kind, AuxinForm::Acid), 6) + " / " +
                                             briefText(molarMassOf(kind, AuxinForm::Salt), 6) + " = " +
                                             briefText(acidEquivalent(kind)),
                              .source = atomicMassesSource});
}

void noteSolubility(MixNotes& notes, AuxinKind kind, AuxinForm form, double acid, bool inAlcohol) {
    const double soluble = factsOf(kind).soluble;
    if (form == AuxinForm::Salt || inAlcohol || soluble == 0 || acid <= soluble) return;
    notes.remarks.push_back(std::string(factsOf(kind).word) + " as acid dissolves only to about " + briefText(soluble) +
                            " mg/L in water (USDA NOP technical report, 2011): take alcohol or the potassium salt.");
}

void finishAuxinNotes(MixNotes& notes) {
    notes.remarks.push_back(auxinShelfLife());
    notes.cautions = auxinCautions();
}

}  // namespace

std::string auxinShelfLife() {
    return "Mix what the day needs and write the date on it: hormone ages in the bottle, sooner in light and warmth "
           "(FAO "
           "AD224E; how soon is on the label).";
}

Refusals faultsIn(const StockDilution& question) {
    Refusals faults = faultsIn(question.tools);
    collect(faults, faultAboveNothing("Stock", question.stock.milligramsPerLitre, mostAuxin, "mg/L"));
    collect(faults, faultAboveNothing("Strength wanted", question.wanted.milligramsPerLitre, mostAuxin, "mg/L"));
    collect(faults, faultAboveNothing("Volume", question.millilitres, mostAuxinMillilitres, "mL"));
    if (faults.empty() && asAcid(question.kind, question.wanted) > asAcid(question.kind, question.stock))
        faults.push_back(outOfRange("Strength wanted", strengthText(question.kind, question.wanted),
                                    "up to the stock's " + strengthText(question.kind, question.stock)));
    return faults;
}

Result<WorkingSolution> thinStock(const StockDilution& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double stockAcid = asAcid(question.kind, question.stock), wantedAcid = asAcid(question.kind, question.wanted);
    const double stock = question.millilitres * wantedAcid / stockAcid;
    WorkingSolution solution{.question = question};
    solution.stock = measuredWith(question.tools, AmountUnit::Millilitres, stock);
    solution.diluent =
        measuredWith(question.tools, AmountUnit::Millilitres, std::max(0.0, question.millilitres - stock));
    const double together = solution.stock.measured + solution.diluent.measured;
    const double acid = together == 0 ? 0 : stockAcid * solution.stock.measured / together;
    solution.asMeasured = fromAcid(question.kind, acid, question.wanted.form);
    noteForms(solution.notes, question.kind, question.stock.form, question.wanted.form);
    solution.notes.workings.push_back(
        {.formula = "stock = volume x strength wanted / strength of the stock (both as acid); thin with the rest",
         .withNumbers = briefText(question.millilitres) + " mL x " + briefText(wantedAcid) + " / " +
                        briefText(stockAcid) + " = " + briefText(stock) + " mL; " + briefText(question.millilitres) +
                        " - " + briefText(stock) + " = " + briefText(solution.diluent.exact) + " mL",
         .source = "dilution law, C1 V1 = C2 V2"});
    noteCoarseness(solution.notes, solution.stock, "the stock");
    noteSolubility(solution.notes, question.kind, question.stock.form, wantedAcid, question.inAlcohol);
    finishAuxinNotes(solution.notes);
    return solution;
}

Refusals faultsIn(const PowderToWeigh& question) {
    Refusals faults = faultsIn(question.tools);
    collect(faults, faultAboveNothing("Strength wanted", question.wanted.milligramsPerLitre, mostAuxin, "mg/L"));
    collect(faults, faultAboveNothing("Volume", question.millilitres, mostAuxinMillilitres, "mL"));
    collect(faults, faultAboveNothing("Purity", question.purityPercent, fullPurity, "%"));
    return faults;
}

Result<WeighedPowder> weighPowder(const PowderToWeigh& question) {
    constexpr double milligramsPerGram = 1000, millilitresPerLitre = 1000, goodEnough = 0.05;
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double acid = asAcid(question.kind, question.wanted);
    const double ofPowder = fromAcid(question.kind, acid, question.powder).milligramsPerLitre;
    const double gramsPerMillilitre =
        ofPowder / milligramsPerGram / millilitresPerLitre / (question.purityPercent / fullPurity);
    WeighedPowder weighed{.question = question};
    weighed.powder = measuredWith(question.tools, AmountUnit::Grams, gramsPerMillilitre * question.millilitres);
    weighed.asMeasured = {.milligramsPerLitre = question.wanted.milligramsPerLitre * (1 + weighed.powder.offBy()),
                          .form = question.wanted.form};
    weighed.leastMillilitres = question.tools.scale / 2 / goodEnough / gramsPerMillilitre;
    noteForms(weighed.notes, question.kind, question.powder, question.wanted.form);
    weighed.notes.workings.push_back({.formula = "powder = strength as " + nameOf(question.kind, question.powder) +
                                                 " x volume / 1000000 / purity (mg/L x mL to g)",
                                      .withNumbers = briefText(ofPowder) + " x " + briefText(question.millilitres) +
                                                     " / 1000000 / " + briefText(question.purityPercent / fullPurity) +
                                                     " = " + briefText(weighed.powder.exact) + " g",
                                      .source = atomicMassesSource});
    noteCoarseness(weighed.notes, weighed.powder, "the powder");
    if (weighed.leastMillilitres > question.millilitres)
        weighed.notes.remarks.push_back("With this scale, from " + briefText(weighed.leastMillilitres, 2) +
                                        " mL on the strength is within a twentieth of what is wanted.");
    noteSolubility(weighed.notes, question.kind, question.powder, acid, question.inAlcohol);
    finishAuxinNotes(weighed.notes);
    return weighed;
}

Refusals faultsIn(const TalcDilution& question) {
    constexpr double mostGrams = 100'000;
    Refusals faults = faultsIn(question.tools);
    collect(faults, faultAboveNothing("Powder", question.powderPercent, mostTalcPercent, "%"));
    collect(faults, faultAboveNothing("Strength wanted", question.wantedPercent, mostTalcPercent, "%"));
    collect(faults, faultAboveNothing("Amount", question.grams, mostGrams, "g"));
    if (faults.empty() && question.wantedPercent > question.powderPercent)
        faults.push_back(outOfRange("Strength wanted", briefText(question.wantedPercent) + " %",
                                    "up to the powder's " + briefText(question.powderPercent) + " %"));
    return faults;
}

Result<ThinnedTalc> thinTalc(const TalcDilution& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double powder = question.grams * question.wantedPercent / question.powderPercent;
    ThinnedTalc thinned{.question = question};
    thinned.powder = measuredWith(question.tools, AmountUnit::Grams, powder);
    thinned.talc = measuredWith(question.tools, AmountUnit::Grams, std::max(0.0, question.grams - powder));
    const double together = thinned.powder.measured + thinned.talc.measured;
    thinned.percentAsMeasured = together == 0 ? 0 : question.powderPercent * thinned.powder.measured / together;
    thinned.notes.workings.push_back(
        {.formula = "powder = amount x strength wanted / strength of the powder; plain talc is the rest",
         .withNumbers = briefText(question.grams) + " g x " + briefText(question.wantedPercent) + " % / " +
                        briefText(question.powderPercent) + " % = " + briefText(powder) + " g; " +
                        briefText(question.grams) + " - " + briefText(powder) + " = " + briefText(thinned.talc.exact) +
                        " g",
         .source = "dilution law, by weight"});
    noteCoarseness(thinned.notes, thinned.powder, "the powder");
    thinned.notes.remarks.push_back(
        "Sieve it together several times. Talc does less than a dip of the same figure "
        "(Chong et al. 1992, J. Environ. Hort. 10:245-250).");
    finishAuxinNotes(thinned.notes);
    return thinned;
}

Refusals faultsIn(const DipAmount& question) {
    constexpr int mostCuttings = 100'000;
    constexpr double mostEach = 100, mostLeast = 1000;
    Refusals faults = faultsIn(question.tools);
    collect(faults, faultInWhole("Cuttings", question.cuttings, 1, mostCuttings));
    collect(faults, faultAboveNothing("For each cutting", question.millilitresEach, mostEach, "mL"));
    collect(faults, faultBetween("Least to dip into", question.leastMillilitres, 0, mostLeast, "mL"));
    return faults;
}

Result<DipNeeded> dipNeeded(const DipAmount& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const double used = question.cuttings * question.millilitresEach;
    DipNeeded needed{.question = question};
    needed.amount = measuredWith(question.tools, AmountUnit::Millilitres, std::max(used, question.leastMillilitres),
                                 AmountRounding::Up);
    needed.notes.workings.push_back(
        {.formula = "amount = cuttings x mL for each, but no less than can be dipped into",
         .withNumbers = std::to_string(question.cuttings) + " x " + briefText(question.millilitresEach) +
                        " mL = " + briefText(used) + " mL" +
                        (used < question.leastMillilitres ? ", so " + briefText(question.leastMillilitres) + " mL"
                                                          : std::string()),
         .source = std::string(commonPractice) + "; 0.3 to 0.7 mL a cutting is used or lost"});
    needed.notes.remarks.push_back("Pour that much into a cup and throw the rest away when you are done.");
    finishAuxinNotes(needed.notes);
    return needed;
}

Refusals faultsIn(const AuxinConversion& question) {
    Refusals faults;
    collect(faults, faultBetween("Strength", question.given.milligramsPerLitre, 0, mostAuxin, "mg/L"));
    return faults;
}

Result<CountedAuxin> countOtherWay(const AuxinConversion& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    const bool isSalt = question.given.form == AuxinForm::Salt;
    CountedAuxin counted{.question = question};
    counted.same = *countedAs(isSalt ? AuxinForm::Acid : AuxinForm::Salt, question.kind, question.given);
    counted.percent = *percentFromMilligrams(question.given.milligramsPerLitre);
    noteForms(counted.notes, question.kind, AuxinForm::Acid, AuxinForm::Salt);
    const std::string equivalent = briefText(acidEquivalent(question.kind));
    counted.notes.workings.push_back(
        {.formula = isSalt ? "as acid = as salt x acid in the salt" : "as salt = as acid / acid in the salt",
         .withNumbers = briefText(question.given.milligramsPerLitre) + (isSalt ? " x " : " / ") + equivalent + " = " +
                        briefText(counted.same.milligramsPerLitre) + " mg/L",
         .source = atomicMassesSource});
    finishAuxinNotes(counted.notes);
    return counted;
}

}  // namespace core
