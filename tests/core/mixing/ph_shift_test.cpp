// SPDX-License-Identifier: MIT
// The doses against a charge balance written out ion by ion, which the program never does.
#include "core/mixing/ph_shift.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::CautionTopic;
using core::PhQuestion;
using core::ReagentKind;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

const core::Reagent phosphoric75{.kind = ReagentKind::Phosphoric, .percent = 75, .kilogramsPerLitre = 1.573};
const core::Reagent hydroxide{.kind = ReagentKind::PotassiumHydroxide, .percent = 90};

PhQuestion hardWater() {
    return {.litres = 20, .alkalinity = 2, .fromPh = 7.5, .toPh = 6.0, .reagent = phosphoric75};
}

struct Ions {
    double hydrogen, hydroxide, bicarbonate, carbonate, carbonDioxide;  // mol/L
};

Ions ionsAt(double ph, double totalCarbonate) {
    const double h = std::pow(10, -ph), k1 = std::pow(10, -6.352), k2 = std::pow(10, -10.329);
    const double whole = h * h + k1 * h + k1 * k2;
    return {.hydrogen = h,
            .hydroxide = std::pow(10, -13.995) / h,
            .bicarbonate = totalCarbonate * k1 * h / whole,
            .carbonate = totalCarbonate * k1 * k2 / whole,
            .carbonDioxide = totalCarbonate * h * h / whole};
}

double phosphateChargeAt(double ph, double total) {
    const double h = std::pow(10, -ph);
    const double k1 = std::pow(10, -2.148), k2 = std::pow(10, -7.198), k3 = std::pow(10, -12.35);
    const double whole = h * h * h + k1 * h * h + k1 * k2 * h + k1 * k2 * k3;
    return total * (k1 * h * h + 2 * k1 * k2 * h + 3 * k1 * k2 * k3) / whole;
}

TEST(ShiftPh, OfAcidInAClosedVesselBalancesEveryCharge) {
    const core::PhShift shift = core::shiftPh(hardWater()).value();
    // Carbonate of the water from its alkalinity at pH 7.5: HCO3 + 2 CO3 + OH - H = 2 meq/L.
    const Ions unit = ionsAt(7.5, 1);
    const double carbonate = (0.002 - unit.hydroxide + unit.hydrogen) / (unit.bicarbonate + 2 * unit.carbonate);
    const double phosphate = shift.closed.amount.exact / 1000 * 1573 * 0.75 / 97.994 / 20;  // mL to mol/L
    const Ions ions = ionsAt(6.0, carbonate);
    const double negative = ions.bicarbonate + 2 * ions.carbonate + ions.hydroxide + phosphateChargeAt(6.0, phosphate);
    EXPECT_NEAR(negative, 0.002 + ions.hydrogen, 1e-9);  // the water's metal ions carry its alkalinity
}

TEST(ShiftPh, OfAcidGivesAFirstDoseAndACeiling) {
    const core::PhShift shift = core::shiftPh(hardWater()).value();
    EXPECT_TRUE(shift.lowers);
    EXPECT_NEAR(shift.first.milliequivalents, 1.3427, 0.002);
    EXPECT_NEAR(shift.first.amount.exact, 2.105, 0.01);
    EXPECT_NEAR(shift.ceiling.milliequivalents, 2, 1e-12);
    EXPECT_NEAR(shift.bubbled.milliequivalents, 2 - 0.0054, 0.0005);
    EXPECT_LE(shift.ceiling.amount.measured, shift.ceiling.amount.exact + 1e-6);  // never above it
    EXPECT_NEAR(shift.start.exact, shift.first.amount.exact / 2, 1e-12);
    EXPECT_NEAR(shift.phUntreated, 8.485, 0.01);
    // Bubbled, the acid gives more of its protons: what is left at the pH where it settles is what air leaves there.
    const double given = shift.first.amount.measured * core::millimolesPerUnit(phosphoric75).value() / 20 *
                         core::effectiveProtons(ReagentKind::Phosphoric, shift.phOfFirstBubbled).value();
    EXPECT_NEAR(shift.phOfFirstBubbled, core::phInAir(2 - given).value(), 1e-6);
    EXPECT_LT(shift.phOfFirstBubbled, core::phInAir(2 - 1.3427).value());
    EXPECT_THAT(shift.notes.remarks, Contains(HasSubstr("half of the first dose")));
    EXPECT_THAT(shift.notes.cautions, Contains(CautionTopic::Acids));
    EXPECT_THAT(shift.notes.cautions, Contains(CautionTopic::ChlorineGas));
    EXPECT_EQ(shift.notes.cautions.back(), CautionTopic::Advice);
}

TEST(ShiftPh, ReachesTheAimWhereTheDoseIsMeasuredFinely) {
    for (const ReagentKind kind :
         {ReagentKind::Phosphoric, ReagentKind::Nitric, ReagentKind::Sulfuric, ReagentKind::Citric}) {
        PhQuestion question = hardWater();
        question.reagent = {.kind = kind, .percent = 30, .kilogramsPerLitre = 1.2};
        question.litres = 100'000;
        question.tools.syringe = 0.001;
        EXPECT_NEAR(core::shiftPh(question)->phOfFirst, 6.0, 1e-6) << core::factsOf(kind).name;
    }
    for (const ReagentKind kind :
         {ReagentKind::PotassiumHydroxide, ReagentKind::PotassiumBicarbonate, ReagentKind::PotassiumCarbonate}) {
        // Dead water that air doesn't bring up: alkalinity next to nothing.
        PhQuestion question{.litres = 100'000,
                            .alkalinity = 0.01,
                            .fromPh = 5.2,
                            .toPh = 6.4,
                            .reagent = {.kind = kind, .percent = 100}};
        question.tools.scale = 0.001;
        question.carbonDioxide = 0.01;
        const core::PhShift shift = core::shiftPh(question).value();
        EXPECT_GT(shift.closed.milliequivalents, 0);
        if (shift.closed.milliequivalents <= shift.bubbled.milliequivalents) {
            EXPECT_NEAR(shift.phOfFirst, 6.4, 1e-6) << core::factsOf(kind).name;
        }
    }
}

TEST(ShiftPh, SaysWhatASyringeDoesToTheAim) {
    PhQuestion question = hardWater();
    question.litres = 2;
    const core::PhShift shift = core::shiftPh(question).value();
    EXPECT_NEAR(shift.first.amount.measured, 0.2, 1e-12);
    EXPECT_LT(shift.first.amount.exact, 0.22);
    EXPECT_NE(shift.phOfFirst, 6.0);
    question.tools.syringe = 1;
    EXPECT_THAT(core::shiftPh(question)->notes.remarks, Contains(HasSubstr("nothing would be taken")));
}

TEST(ShiftPh, NeedsNoBaseWhereBubblingDoesIt) {
    const core::PhShift shift =
        core::shiftPh({.litres = 20, .alkalinity = 1, .fromPh = 6, .toPh = 7, .reagent = hydroxide}).value();
    EXPECT_EQ(shift.first.milliequivalents, 0);
    EXPECT_GT(shift.closed.milliequivalents, 0);
    EXPECT_EQ(shift.ceiling.milliequivalents, shift.closed.milliequivalents);
    EXPECT_THAT(shift.notes.remarks, Contains(HasSubstr("Bubbling alone brings this water to pH 8.19")));
    EXPECT_THAT(shift.notes.cautions, Contains(CautionTopic::Alkalis));
    EXPECT_THAT(shift.notes.cautions, Not(Contains(CautionTopic::Acids)));
}

TEST(ShiftPh, SaysSoWhereAnAcidIsNoneForAHousehold) {
    PhQuestion question = hardWater();
    question.reagent = {.kind = ReagentKind::Nitric, .percent = 68, .kilogramsPerLitre = 1.41};
    EXPECT_THAT(core::shiftPh(question)->notes.remarks, Contains(HasSubstr("not for a household")));
    EXPECT_THAT(core::shiftPh(question)->notes.cautions, Contains(CautionTopic::Oxidisers));
    question.reagent = {.kind = ReagentKind::Citric, .percent = 100};
    EXPECT_THAT(core::shiftPh(question)->notes.remarks, Contains(HasSubstr("drifts back")));
    EXPECT_EQ(core::shiftPh(question)->first.amount.unit, core::AmountUnit::Grams);
}

TEST(ShiftPh, ShowsItsWorkingWithSources) {
    const auto workings = core::shiftPh(hardWater())->notes.workings;
    ASSERT_EQ(workings.size(), 4U);
    EXPECT_THAT(workings[1].withNumbers, HasSubstr("1.343 meq/L of acid"));
    EXPECT_THAT(workings[3].withNumbers, HasSubstr("of phosphoric acid 75 %"));
    for (const core::Working& working : workings) EXPECT_FALSE(working.source.empty());
}

TEST(ShiftPh, RefusesWhatIsOutsideItsDomain) {
    const auto with = [](auto change) {
        PhQuestion question = hardWater();
        change(question);
        const auto shift = core::shiftPh(question);
        return shift ? std::string("not refused") : shift.error().front().sentence;
    };
    EXPECT_EQ(with([](auto& q) { q.toPh = 4.9; }), "pH wanted is 4.9; 5 to 8.5 is allowed.");
    EXPECT_EQ(with([](auto& q) { q.fromPh = 3; }), "pH now is 3; 4 to 10 is allowed.");
    EXPECT_EQ(with([](auto& q) { q.alkalinity = 21; }), "Alkalinity is 21; 0 to 20 meq/L is allowed.");
    EXPECT_THAT(with([](auto& q) {
                    q.alkalinity = 0;
                    q.fromPh = 9;
                }),
                HasSubstr("Alkalinity is 0 meq/L; at pH 9 no less than"));
    EXPECT_EQ(with([](auto& q) { q.toPh = 7.48; }),
              "pH wanted is 7.48; at least 0.05 away from the 7.5 it is is allowed.");
    EXPECT_EQ(with([](auto& q) { q.toPh = 8; }), "Acid or base is phosphoric acid; a base, to raise pH, is allowed.");
    EXPECT_EQ(with([](auto& q) { q.reagent = hydroxide; }),
              "Acid or base is potassium hydroxide; an acid, to lower pH, is allowed.");
    EXPECT_THAT(with([](auto& q) { q.reagent.percent = 0; }), HasSubstr("Strength of the acid or base is 0"));
    EXPECT_THAT(with([](auto& q) { q.reagent.kilogramsPerLitre = 5; }), HasSubstr("Density is 5"));
    EXPECT_THAT(with([](auto& q) { q.litres = 0; }), HasSubstr("Volume is 0"));
    EXPECT_THAT(with([](auto& q) { q.carbonDioxide = 1; }), HasSubstr("Carbon dioxide of the air is 1"));
    EXPECT_THAT(with([](auto& q) { q.fromPh = NAN; }), HasSubstr("pH now is not a number"));
    EXPECT_THAT(with([](auto& q) {
                    q.toPh = 8.5;
                    q.reagent = {.kind = ReagentKind::PotassiumBicarbonate, .percent = 100};
                }),
                HasSubstr("which buffers at about 8.3, less than that"));
}

TEST(EffectiveProtons, RiseWithPhAndEndAtAllOfThem) {
    for (double ph = 2; ph < 12; ph += 0.1)
        EXPECT_LT(core::effectiveProtons(ReagentKind::Phosphoric, ph).value(),
                  core::effectiveProtons(ReagentKind::Phosphoric, ph + 0.1 > 12 ? 12 : ph + 0.1).value() + 1e-12);
    EXPECT_NEAR(core::effectiveProtons(ReagentKind::Citric, 12).value(), 3, 1e-4);
    EXPECT_EQ(core::effectiveProtons(ReagentKind::Nitric, 6).value(), 1);
    EXPECT_NEAR(core::effectiveProtons(ReagentKind::Sulfuric, 6).value(), 2, 2e-4);
    EXPECT_FALSE(core::effectiveProtons(ReagentKind::PotassiumHydroxide, 6));
    EXPECT_FALSE(core::effectiveProtons(ReagentKind::Nitric, 1));
}

TEST(Reagents, AreKnownByTheirWords) {
    for (const core::ReagentFacts& facts : core::allReagents()) {
        EXPECT_EQ(core::reagentFrom(facts.word), facts.kind);
        EXPECT_EQ(&core::factsOf(facts.kind), &facts);
    }
    EXPECT_FALSE(core::reagentFrom("vinegar"));
}

TEST(PhInAir, IsTheInverseOfTheAlkalinityInAir) {
    for (double ph = 3.5; ph <= 9.3; ph += 0.1)
        EXPECT_NEAR(core::phInAir(core::alkalinityInAir(ph).value()).value(), ph, 1e-9);
}

TEST(Carbonate, GoesThereAndBack) {
    for (double alkalinity = 0.5; alkalinity <= 20; alkalinity += 0.5)
        for (double ph = 4; ph <= 9; ph += 0.25)
            EXPECT_NEAR(core::alkalinityAt(core::totalCarbonate(alkalinity, ph).value(), ph), alkalinity, 1e-9);
}

}  // namespace
