// SPDX-License-Identifier: MIT
#include "app/report/mixing_card.h"

#include <gmock/gmock.h>

#include "app/report/mix_words.h"
#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "gtest/gtest.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

using testing::HasSubstr;

constexpr core::Date mixingDay{std::chrono::year(2026), std::chrono::November, std::chrono::day(26)};

core::NutrientDose twoParts(const core::MeasuringTools& tools = {}) {
    // dose-2 of the reference data on propagation: 7 g of each part.
    return *core::nutrientDose({.litres = 20,
                                .targetEc = 1,
                                .waterEc = 0.3,
                                .fullEc = 2.4,
                                .parts = {{.name = "A", .fullPerLitre = 1.2}, {.name = "B", .fullPerLitre = 1.2}},
                                .tools = tools});
}

report::Sheet cardOf(const report::MixAnswer& answer) {
    return report::mixingCard(answer, mixingDay, examples::smallShelves().facts, examples::printedAt());
}

std::string textOf(const report::MixAnswer& answer) {
    return report::plainText(cardOf(answer)).toStdString();
}

core::PhShift hardWaterShift() {
    return *core::shiftPh({.litres = 20,
                           .alkalinity = 2,
                           .fromPh = 7.5,
                           .toPh = 6,
                           .reagent = {core::ReagentKind::Phosphoric, 75, 1.573}});
}

std::vector<report::MixAnswer> oneOfEach(const core::DisplayUnits& units) {
    const core::Lid lid{.isRound = false, .length = 600, .width = 400, .hole = 44, .web = 20, .edge = 20};
    const std::vector<core::FeedIngredient> bag{*core::saltIngredient("KNO3", 0.5)};
    return {report::answerOf(twoParts(), units),
            report::answerOf(*core::learnNutrient({.litres = 20,
                                                   .readEc = 1,
                                                   .waterEc = 0.3,
                                                   .fullEc = 2.4,
                                                   .parts = {{.name = "A", .fullPerLitre = 10}}}),
                             units),
            report::answerOf(*core::solutionElements(bag), units),
            report::answerOf(*core::diluteTub({.litres = 20, .ec = 1.4, .targetEc = 1, .waterEc = 0.2}), units),
            report::answerOf(hardWaterShift(), units),
            report::answerOf(
                *core::titratedDose(
                    {.sampleLitres = 1, .steps = {{0, 7.6}, {0.4, 6.8}, {0.8, 6.2}}, .toPh = 6.5, .litres = 20}),
                units),
            report::answerOf(*core::thinStock({.stock = {10000}, .wanted = {2000}, .millilitres = 100}), units),
            report::answerOf(*core::weighPowder({.wanted = {3000}, .millilitres = 100}), units),
            report::answerOf(*core::thinTalc({.powderPercent = 0.8, .wantedPercent = 0.3, .grams = 40}), units),
            report::answerOf(*core::dipNeeded({.cuttings = 40}), units),
            report::answerOf(*core::countOtherWay({.given = {10000, core::AuxinForm::Salt}}), units),
            report::answerOf(*core::mixMedium({.components = {{"coir", 1}, {"perlite", 1}}, .litres = 2.64}), units),
            report::answerOf(*core::lidHoles(lid, units.length), units)};
}

constexpr core::DisplayUnits american{.temperature = core::TemperatureUnit::Fahrenheit,
                                      .ec = core::EcUnit::Ppm500,
                                      .volume = core::VolumeUnit::UsGallons,
                                      .length = core::LengthUnit::Inches};

}  // namespace

TEST(MixingCard, SaysWhatToTakeWhatRoundingDoesAndWhatToMind) {
    examples::expectGolden(report::plainText(cardOf(report::answerOf(twoParts({.scale = 1})))), "mixing_card");
}

TEST(MixingCard, IsTheSameMixInGallonsAndInLitres) {
    const report::MixAnswer litres = report::answerOf(twoParts()), gallons = report::answerOf(twoParts(), american);
    EXPECT_EQ(litres.amounts, gallons.amounts);
    EXPECT_EQ(litres.notes, gallons.notes);
    EXPECT_THAT(litres.title.toStdString(), HasSubstr("20 L at EC 1 mS/cm"));
    EXPECT_THAT(gallons.title.toStdString(), HasSubstr("5.28 gal at EC 500 ppm (500 scale)"));
    EXPECT_THAT(textOf(gallons), HasSubstr("1 gal is 3.785 L, 1 mS/cm is 500 ppm (500 scale)"));
}

TEST(MixingCard, MeasuresWaterWithTheGrowersJug) {
    const double step = core::storedVolume(0.25, core::VolumeUnit::UsGallons);
    const core::DilutedTub tub = *core::diluteTub({.litres = core::storedVolume(5, core::VolumeUnit::UsGallons),
                                                   .ec = 1.4,
                                                   .targetEc = 1,
                                                   .waterEc = 0.2,
                                                   .tools = {.jug = step}});
    EXPECT_EQ(report::answerOf(tub, american).amounts.front().take.toStdString(), "2.50 gal");
}

TEST(MixingCard, CarriesEveryFormulaItsSourceAndAllItsCautions) {
    for (const core::DisplayUnits& units : {core::DisplayUnits{}, american})
        for (const report::MixAnswer& answer : oneOfEach(units)) {
            SCOPED_TRACE(answer.title.toStdString());
            std::string card = textOf(answer);
            std::erase(card, '\n');
            std::erase(card, ' ');
            const auto stands = [&card](std::string words) {
                std::erase(words, '\n');
                std::erase(words, ' ');
                return card.find(words) != std::string::npos;
            };
            EXPECT_FALSE(answer.notes.workings.empty());
            for (const core::Working& working : answer.notes.workings) {
                EXPECT_TRUE(stands(working.formula)) << working.formula;
                EXPECT_TRUE(stands(working.withNumbers)) << working.withNumbers;
                EXPECT_FALSE(working.source.empty());
                EXPECT_TRUE(stands(working.source)) << working.source;
            }
            ASSERT_FALSE(answer.notes.cautions.empty());
            EXPECT_EQ(answer.notes.cautions.back(), core::CautionTopic::Advice);
            for (const core::CautionTopic topic : answer.notes.cautions)
                EXPECT_TRUE(stands(std::string(core::tradeCaution(topic).text)));
        }
}

TEST(MixingCard, FitsOnePageOfEitherPaper) {
    for (const report::MixAnswer& answer : oneOfEach(american))
        for (const report::Paper paper : {report::Paper::A4, report::Paper::Letter})
            EXPECT_EQ(report::pageCount(cardOf(answer), paper), 1) << answer.title.toStdString();
}

TEST(MixingCard, IsReadAgainFromWhatWasKept) {
    core::KeptMix kept = report::keptMix(report::answerOf(hardWaterShift()));
    kept.session = {1};
    EXPECT_TRUE(core::faultsIn(kept, core::Moment{}).empty());
    kept.cautions += "\na caution of long ago";
    const std::string card =
        report::plainText(report::mixingCard(kept, mixingDay, examples::smallShelves().facts, examples::printedAt()))
            .toStdString();
    EXPECT_THAT(card, HasSubstr("phosphoric acid 75 % for 20 L from pH 7.5 to 6.0"));
    EXPECT_THAT(card, HasSubstr("start with: 1.1 mL"));
    EXPECT_THAT(card, HasSubstr("never water into acid"));
    EXPECT_THAT(card, HasSubstr("Plummer and Busenberg (1982)"));
    EXPECT_THAT(card, HasSubstr("a caution of long ago"));
}
