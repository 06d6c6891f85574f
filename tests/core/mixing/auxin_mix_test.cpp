// SPDX-License-Identifier: MIT
#include "core/mixing/auxin_mix.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using core::AuxinForm;
using core::AuxinKind;
using core::CautionTopic;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

template <class Answer>
std::string auxinRefusal(const core::Result<Answer>& answer) {
    return answer ? "not refused" : answer.error().front().sentence;
}

void expectAuxinNotes(const core::MixNotes& notes) {
    EXPECT_THAT(notes.remarks, Contains(HasSubstr("ages in the bottle")));
    EXPECT_THAT(notes.cautions, testing::ElementsAre(CautionTopic::GrowthRegulators, CautionTopic::EdibleCrops,
                                                     CautionTopic::HormoneHygiene, CautionTopic::Advice));
}

TEST(ThinStock, SaysWhatASyringeDoesToTheStrength) {
    const core::WorkingSolution solution =
        core::thinStock({.stock = {10000}, .wanted = {1234}, .millilitres = 20}).value();
    EXPECT_NEAR(solution.stock.exact, 2.468, 1e-9);
    EXPECT_NEAR(solution.stock.measured, 2.5, 1e-9);
    EXPECT_NEAR(solution.diluent.measured, 17.5, 1e-9);
    EXPECT_NEAR(solution.asMeasured.milligramsPerLitre, 1250, 1e-9);
    expectAuxinNotes(solution.notes);
}

TEST(ThinStock, AddsNothingToAStockThatIsAsStrongAsWanted) {
    for (double strength = 0.1; strength < 100'000; strength *= 1.7)
        EXPECT_EQ(core::thinStock({.stock = {strength}, .wanted = {strength}, .millilitres = 33.3})->diluent.measured,
                  0);
}

TEST(ThinStock, CountsSaltAndAcidApart) {
    // 10 000 mg/L of the potassium salt is 8421.7 mg/L of acid.
    const core::WorkingSolution solution =
        core::thinStock({.stock = {10000, AuxinForm::Salt}, .wanted = {1000, AuxinForm::Acid}, .millilitres = 100})
            .value();
    EXPECT_NEAR(solution.stock.exact, 100 * 1000 / 8421.7, 0.001);
    EXPECT_THAT(solution.notes.workings[0].withNumbers, HasSubstr("= 0.8422"));
    EXPECT_EQ(solution.asMeasured.form, AuxinForm::Acid);
}

TEST(ThinStock, SaysWhereTheAcidWouldFallOut) {
    const core::StockDilution strong{.stock = {10000}, .wanted = {1000}, .millilitres = 100};
    EXPECT_THAT(core::thinStock(strong)->notes.remarks, Contains(HasSubstr("only to about 250 mg/L in water")));
    core::StockDilution alcohol = strong;
    alcohol.inAlcohol = true;
    EXPECT_THAT(core::thinStock(alcohol)->notes.remarks, Not(Contains(HasSubstr("250 mg/L"))));
    core::StockDilution soak = strong;
    soak.wanted = {250};
    EXPECT_THAT(core::thinStock(soak)->notes.remarks, Not(Contains(HasSubstr("250 mg/L"))));
}

TEST(ThinStock, RefusesAStrongerSolutionThanItsStock) {
    EXPECT_EQ(auxinRefusal(core::thinStock({.stock = {1000}, .wanted = {2000}, .millilitres = 100})),
              "Strength wanted is 2000 mg/L IBA; up to the stock's 1000 mg/L IBA is allowed.");
    // As a salt it counts more: 1000 mg/L of acid is 1187 mg/L of salt.
    EXPECT_EQ(auxinRefusal(core::thinStock({.stock = {1000}, .wanted = {1187, AuxinForm::Salt}, .millilitres = 100})),
              "not refused");
    EXPECT_THAT(auxinRefusal(core::thinStock({.stock = {0}, .wanted = {1}, .millilitres = 100})),
                HasSubstr("Stock is 0"));
    EXPECT_THAT(auxinRefusal(core::thinStock({.stock = {10}, .wanted = {1}, .millilitres = -5})),
                HasSubstr("Volume is -5"));
}

TEST(WeighPowder, SaysThatAKitchenScaleIsTooCoarseAndWhatWouldDo) {
    const core::WeighedPowder weighed =
        core::weighPowder({.powder = AuxinForm::Salt, .wanted = {3000}, .millilitres = 100}).value();
    EXPECT_NEAR(weighed.powder.exact, 0.3562, 0.0005);
    EXPECT_NEAR(weighed.powder.measured, 0.4, 1e-12);
    EXPECT_NEAR(weighed.asMeasured.milligramsPerLitre, 3000 * 0.4 / weighed.powder.exact, 1e-6);
    EXPECT_THAT(weighed.notes.remarks, Contains(HasSubstr("12 % too much")));
    EXPECT_THAT(weighed.notes.remarks, Contains(HasSubstr("mL on the strength is within a twentieth")));
    expectAuxinNotes(weighed.notes);
    const core::WeighedPowder enough =
        core::weighPowder({.powder = AuxinForm::Salt, .wanted = {3000}, .millilitres = weighed.leastMillilitres})
            .value();
    EXPECT_LE(std::abs(enough.powder.offBy()), 0.05 + 1e-9);
}

TEST(WeighPowder, RefusesWhatIsOutsideItsDomain) {
    EXPECT_THAT(auxinRefusal(core::weighPowder({.purityPercent = 0, .wanted = {1000}, .millilitres = 10})),
                HasSubstr("Purity is 0; more than 0 and up to 100 %"));
    EXPECT_THAT(auxinRefusal(core::weighPowder({.wanted = {100001}, .millilitres = 10})),
                HasSubstr("Strength wanted is 100001"));
    EXPECT_THAT(auxinRefusal(core::weighPowder({.wanted = {1000}, .millilitres = 0})), HasSubstr("Volume is 0"));
}

TEST(ThinTalc, KeepsTheAuxinThatGoesIn) {
    const core::ThinnedTalc thinned = core::thinTalc({.powderPercent = 0.8, .wantedPercent = 0.3, .grams = 40}).value();
    EXPECT_NEAR(thinned.powder.exact, 15, 1e-12);
    EXPECT_NEAR(thinned.talc.exact, 25, 1e-12);
    EXPECT_NEAR(thinned.percentAsMeasured, 0.3, 1e-12);
    expectAuxinNotes(thinned.notes);
    EXPECT_EQ(auxinRefusal(core::thinTalc({.powderPercent = 0.1, .wantedPercent = 0.3, .grams = 40})),
              "Strength wanted is 0.3 %; up to the powder's 0.1 % is allowed.");
    EXPECT_THAT(auxinRefusal(core::thinTalc({.powderPercent = 11, .wantedPercent = 0.3, .grams = 40})),
                HasSubstr("Powder is 11"));
}

TEST(DipNeeded, IsNoLessThanCanBeDippedIntoAndRoundsUp) {
    EXPECT_EQ(core::dipNeeded({.cuttings = 3})->amount.exact, 10);
    const core::DipNeeded dip =
        core::dipNeeded({.cuttings = 41, .millilitresEach = 0.33, .tools = {.syringe = 1}}).value();
    EXPECT_EQ(dip.amount.measured, 14);
    expectAuxinNotes(dip.notes);
    EXPECT_THAT(auxinRefusal(core::dipNeeded({.cuttings = 0})), HasSubstr("Cuttings is 0; 1 to 100000"));
    EXPECT_THAT(auxinRefusal(core::dipNeeded({.cuttings = 1, .millilitresEach = 0})),
                HasSubstr("For each cutting is 0"));
}

TEST(AuxinStrength, GoesThereAndBackOverTheWholeDomain) {
    for (const core::AuxinFacts& facts : core::allAuxins())
        for (double strength = 0; strength <= 100'000; strength += 500) {
            const auto salt = core::countedAs(AuxinForm::Salt, facts.kind, {strength, AuxinForm::Acid});
            if (!salt || salt->milligramsPerLitre > core::mostAuxin) continue;
            EXPECT_NEAR(core::countedAs(AuxinForm::Acid, facts.kind, *salt)->milligramsPerLitre, strength,
                        1e-9 * std::max(1.0, strength));
            EXPECT_NEAR(core::milligramsFromPercent(core::percentFromMilligrams(strength).value()).value(), strength,
                        1e-9 * std::max(1.0, strength));
        }
    EXPECT_FALSE(core::milligramsFromPercent(10.1));
    EXPECT_FALSE(core::countedAs(AuxinForm::Acid, AuxinKind::Iba, {-1, AuxinForm::Salt}));
}

TEST(AuxinStrength, KnowsItsAuxinsByName) {
    EXPECT_EQ(core::auxinFrom("iba"), AuxinKind::Iba);
    EXPECT_EQ(core::auxinFrom("NAA"), AuxinKind::Naa);
    EXPECT_FALSE(core::auxinFrom("2,4-D"));
    EXPECT_EQ(core::nameOf(AuxinKind::Iaa, AuxinForm::Salt), "K-IAA");
}

}  // namespace
