// SPDX-License-Identifier: MIT
// Questions by chance, most of them nonsense: each is refused with sentences or answered with finite figures.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/mixing/auxin_mix.h"
#include "core/mixing/medium_mix.h"
#include "core/mixing/mixing_faults.h"
#include "core/mixing/ph_shift.h"
#include "core/mixing/tub.h"
#include "stats/numeric/seeded_random.h"

namespace {

constexpr int chanceQuestions = 20'000;

/// Mostly sensible, at times an end of the domain, nothing, below it, huge or no number.
double chanceFigure(stats::SeededRandom& random, double most) {
    switch (random.below(12)) {
        case 0:
            return 0;
        case 1:
            return most;
        case 2:
            return random.below(2) == 0 ? -1 : most * 1.001;
        case 3:
            return random.below(4) == 0 ? std::numeric_limits<double>::quiet_NaN()
                                        : std::numeric_limits<double>::infinity();
        case 4:
            return most * 1e-9;
        default:
            return most * random.uniform();
    }
}

void expectRefusedInWords(const core::Refusals& refusals) {
    ASSERT_FALSE(refusals.empty());
    for (const core::Refusal& refusal : refusals)
        EXPECT_TRUE(refusal.sentence.ends_with(" is allowed.")) << refusal.sentence;
}

void expectSoundAmount(const core::MeasuredAmount& amount) {
    EXPECT_TRUE(std::isfinite(amount.exact) && amount.exact >= 0) << amount.exact;
    EXPECT_TRUE(std::isfinite(amount.measured) && amount.measured >= 0) << amount.measured;
}

void expectSoundNotes(const core::MixNotes& notes) {
    EXPECT_FALSE(notes.workings.empty());
    for (const core::Working& working : notes.workings) {
        EXPECT_FALSE(working.source.empty());
        EXPECT_EQ(working.withNumbers.find("not a number"), std::string::npos) << working.withNumbers;
        EXPECT_EQ(working.withNumbers.find("infinite"), std::string::npos) << working.withNumbers;
    }
    ASSERT_FALSE(notes.cautions.empty());
    EXPECT_EQ(notes.cautions.back(), core::CautionTopic::Advice);
}

core::MeasuringTools chanceTools(stats::SeededRandom& random) {
    return {.scale = random.below(2) == 0 ? 1 : 0.1, .syringe = random.below(2) == 0 ? 1 : 0.1, .jug = 0.5};
}

TEST(AnyQuestion, OfPhIsRefusedOrAnswered) {
    stats::SeededRandom random(11);
    int answered = 0;
    for (int i = 0; i < chanceQuestions; ++i) {
        core::PhQuestion question{
            .litres = chanceFigure(random, core::mostLitres),
            .alkalinity = chanceFigure(random, core::mostAlkalinity),
            .fromPh = 4 + chanceFigure(random, 6),
            .toPh = 5 + chanceFigure(random, 3.5),
            .reagent = {.kind = core::allReagents()[random.below(7)].kind, .percent = chanceFigure(random, 100)},
            .tools = chanceTools(random)};
        if (random.below(2) == 0) question.reagent.kilogramsPerLitre = 0.8 + chanceFigure(random, 1.4);
        const core::Result<core::PhShift> shift = core::shiftPh(question);
        if (!shift) {
            expectRefusedInWords(shift.error());
            continue;
        }
        ++answered;
        for (const core::PhDose* dose : {&shift->closed, &shift->bubbled, &shift->first, &shift->ceiling})
            expectSoundAmount(dose->amount);
        EXPECT_LE(shift->first.amount.exact, shift->ceiling.amount.exact + 1e-9);
        for (const double ph : {shift->phOfFirst, shift->phOfFirstBubbled, shift->phUntreated})
            EXPECT_TRUE(ph > 2 && ph < 12) << ph;
        expectSoundNotes(shift->notes);
    }
    EXPECT_GT(answered, chanceQuestions / 50);
}

TEST(AnyQuestion, OfNutrientInATubIsRefusedOrAnswered) {
    stats::SeededRandom random(12);
    int answered = 0;
    for (int i = 0; i < chanceQuestions; ++i) {
        const core::TubTopUp question{.litres = chanceFigure(random, 50),
                                      .ec = chanceFigure(random, core::mostEc),
                                      .fullLitres = chanceFigure(random, 200),
                                      .feed = {.targetEc = chanceFigure(random, core::mostEc),
                                               .waterEc = chanceFigure(random, 2),
                                               .fullEc = chanceFigure(random, 5),
                                               .parts = {{.name = "A", .fullPerLitre = chanceFigure(random, 10)}},
                                               .tools = chanceTools(random)}};
        const core::Result<core::ToppedUpTub> tub = core::topUpTub(question);
        if (!tub) {
            expectRefusedInWords(tub.error());
            continue;
        }
        ++answered;
        expectSoundAmount(tub->water);
        expectSoundAmount(tub->parts[0].amount);
        EXPECT_TRUE(std::isfinite(tub->ecHigh));
        expectSoundNotes(tub->notes);
    }
    EXPECT_GT(answered, chanceQuestions / 50);
}

TEST(AnyQuestion, OfAuxinIsRefusedOrAnswered) {
    stats::SeededRandom random(13);
    const auto form = [&] { return random.below(2) == 0 ? core::AuxinForm::Acid : core::AuxinForm::Salt; };
    int answered = 0;
    for (int i = 0; i < chanceQuestions; ++i) {
        const core::AuxinKind kind = core::allAuxins()[random.below(3)].kind;
        const core::AuxinStrength wanted{chanceFigure(random, core::mostAuxin), form()};
        const core::Result<core::WorkingSolution> thinned =
            core::thinStock({.kind = kind,
                             .stock = {chanceFigure(random, core::mostAuxin), form()},
                             .wanted = wanted,
                             .millilitres = chanceFigure(random, 1000),
                             .tools = chanceTools(random)});
        const core::Result<core::WeighedPowder> weighed = core::weighPowder({.kind = kind,
                                                                             .powder = form(),
                                                                             .purityPercent = chanceFigure(random, 100),
                                                                             .wanted = wanted,
                                                                             .millilitres = chanceFigure(random, 1000),
                                                                             .tools = chanceTools(random)});
        if (thinned) {
            ++answered;
            expectSoundAmount(thinned->stock);
            expectSoundAmount(thinned->diluent);
            expectSoundNotes(thinned->notes);
        } else {
            expectRefusedInWords(thinned.error());
        }
        if (weighed) {
            expectSoundAmount(weighed->powder);
            expectSoundNotes(weighed->notes);
        } else {
            expectRefusedInWords(weighed.error());
        }
    }
    EXPECT_GT(answered, chanceQuestions / 50);
}

TEST(AnyQuestion, OfMediumIsRefusedOrAnswered) {
    stats::SeededRandom random(14);
    int answered = 0;
    for (int i = 0; i < chanceQuestions; ++i) {
        core::MediumQuestion question{
            .litres = chanceFigure(random, 100), .lossPercent = chanceFigure(random, 60), .tools = chanceTools(random)};
        for (int part = static_cast<int>(random.below(4)); part > 0; --part)
            question.components.push_back({.name = "bark", .parts = chanceFigure(random, 10)});
        const core::Result<core::MixedMedium> mixed = core::mixMedium(question);
        if (!mixed) {
            expectRefusedInWords(mixed.error());
            continue;
        }
        ++answered;
        for (const core::ComponentAmount& component : mixed->components) expectSoundAmount(component.amount);
        expectSoundNotes(mixed->notes);
    }
    EXPECT_GT(answered, chanceQuestions / 50);
}

}  // namespace
