// SPDX-License-Identifier: MIT
// Every question is answered on the page with what the reference data on propagation expects, shown as a scale or syringe measures it.
#include <gmock/gmock.h>

#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/template/lid_view.h"
#include "tests/desktop/mix/mix_desk.h"

namespace {

using mixing::reference;
using testing::AllOf;
using testing::HasSubstr;

class MixAnswers : public mixing::MixDesk {
  protected:
    static QString typed(double figure) { return QString::number(figure, 'g', 10); }
    QString given(const support::HorticultureCheck& check, const char* input) { return typed(check.number(input)); }
};

TEST_F(MixAnswers, NutrientForATubIsDose2OfTheReferenceData) {
    const auto check = reference("nutrient_dose_g_each_part", "dose-2");
    ask("nutrient");
    fill("volume", given(check, "volume_L"));
    fill("target", given(check, "ec_target"));
    fillFeed();
    check.expect(7.0);
    EXPECT_EQ(taken(0), "7.0 g");
    EXPECT_EQ(taken(1), "7.0 g");
    EXPECT_EQ(words("mixTitle"), "Nutrient for 20 L at EC 1 mS/cm");
    EXPECT_THAT(words("mixResults"), AllOf(HasSubstr("comes to EC 1 mS/cm"), HasSubstr("cuttings once rooted")));
    EXPECT_THAT(words("mixWorkings"),
                AllOf(HasSubstr("(1 - 0.3) / 2.4 = 0.2917"), HasSubstr("Source: common practice, no source")));
}

TEST_F(MixAnswers, AScaleInWholeGramsShowsWhatItsRoundingDoes) {
    ask("nutrient");
    fill("volume", "15");
    fill("target", "0.6");
    fillFeed();
    fill("water", "0.25");
    fill("scale", "1");
    EXPECT_EQ(taken(0), "3 g");  // dose-3 of the reference data: 2.625 g
    EXPECT_THAT(words("mixResults"), HasSubstr("comes to EC 0.65 mS/cm"));
    EXPECT_THAT(words("mixRemarks"), HasSubstr("14 % too much"));
}

TEST_F(MixAnswers, AReadingTellsTheFullDoseOfLearn2) {
    const auto check = reference("full_dose_from_reading_g_per_L", "learn-2");
    ask("reading");
    fill("volume", given(check, "volume_L"));
    fill("read", given(check, "ec_read"));
    fill("water", given(check, "ec_base"));
    fill("full", given(check, "ec_full"));
    fillCells({{"mixPart1", "A"}, {"mixAmount1", given(check, "g_each")}});
    EXPECT_THAT(words("mixResults"), HasSubstr("A: full dose 1.71 g/L"));
    EXPECT_THAT(words("mixRemarks"), HasSubstr("30 % too low"));
}

TEST_F(MixAnswers, ALabelGivesTheElementsOfLabel1BesideTheStages) {
    const auto check = reference("ppm_from_label", "label-1");
    ask("elements");
    fill("bag", given(check, "g_per_L"));
    fillCells({{"mixLabel1", "P2O5"}, {"mixLabelShare1", given(check, "P2O5_pct")}});
    EXPECT_THAT(words("mixResults"), HasSubstr("In mg/L: P 24."));
    fillCells({{"mixSalt1", "KNO3"}, {"mixSaltAmount1", "0.2"}});
    EXPECT_THAT(words("mixResults"), HasSubstr("N 27.7, P 24, K 77.3"));
    EXPECT_THAT(words("mixCautions"), HasSubstr("advice"));
    QStringList shown;
    for (const QLabel* label : view().findChildren<QLabel*>())
        if (label->isVisible()) shown << label->text();
    EXPECT_TRUE(shown.contains("Hoagland no. 1"));
    EXPECT_TRUE(shown.contains("cuttings once rooted"));
}

TEST_F(MixAnswers, ATubIsMadeWeakerByDilute1AndToppedUp) {
    const auto check = reference("water_to_add_L", "dilute-1");
    ask("dilute");
    fill("volume", given(check, "volume_L"));
    fill("now", given(check, "ec_now"));
    fill("target", given(check, "ec_target"));
    fill("water", given(check, "ec_base"));
    check.expect(10.0);
    EXPECT_EQ(taken(0), "10.0 L");
    EXPECT_EQ(taken(1), "6.7 L");  // taken out: 20 (1.4 - 1) / (1.4 - 0.2)
    ask("topup");
    fill("volume", "10");
    fill("now", "0.8");
    fill("filled", "20");
    fill("target", "1.0");
    fillFeed();
    fill("water", "0.2");
    EXPECT_EQ(taken(0), "10.0 L");
    EXPECT_EQ(taken(1), "5.0 g");
    EXPECT_THAT(words("mixResults"), HasSubstr("Filled up with water alone it reads EC 0.5 mS/cm."));
}

TEST_F(MixAnswers, AcidIsThatOfAcidMl1WithAFirstDoseAndACeiling) {
    const auto check = reference("acid_mL", "acid-ml-1");
    const auto closed = reference("acid_needed_meqL_closed", "acid-closed-2-7.5-6.0");
    ask("ph");
    fill("volume", given(check, "volume_L"));
    fill("alkalinity", given(closed, "alk_meqL"));
    fill("ph", given(closed, "pH_from"));
    fill("target", given(closed, "pH_to"));
    choose("with", "sold 0");
    EXPECT_EQ(words("mixTitle"), "phosphoric acid 75 % for 20 L from pH 7.5 to 6.0");
    EXPECT_EQ(taken(0), "1.1 mL");  // half of the first dose
    EXPECT_EQ(taken(1), "2.1 mL");  // 2.105 mL
    EXPECT_FALSE(field("strength").isVisible());
    choose("with", "citric");
    EXPECT_TRUE(field("strength").isVisible());
    EXPECT_THAT(words("mixHint"), HasSubstr("Strength, by weight"));
    fill("strength", "100");
    EXPECT_THAT(taken(1), testing::EndsWith(" g"));
    choose("alkalinity_in", "caco3");
    fill("alkalinity", "100.086");
    EXPECT_THAT(words("mixWorkings"), HasSubstr("2"));
    EXPECT_THAT(words("mixCautions"), HasSubstr("never water into acid"));
}

TEST_F(MixAnswers, ATrialInAJugIsScaledToTheTub) {
    ask("titration");
    fill("volume", "20");
    fill("target", "6.5");
    fill("sample", "1");
    fillCells({{"mixStep1", "0"}, {"mixStepPh1", "7.6"}});
    for (QPushButton* button : view().findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("&Another reading")) button->click();
    fillCells({{"mixStep2", "0.6"}, {"mixStepPh2", "6.5"}});
    EXPECT_EQ(taken(1), "12.0 mL");  // in proportion: 0.6 mL x 20 L / 1 L
    EXPECT_EQ(taken(0), "6.0 mL");
}

TEST_F(MixAnswers, AStockIsThinnedByC1V1) {
    const auto check = reference("stock_dilution_mL", "c1v1-10000-2000-100");
    ask("thin");
    fill("volume", given(check, "v_final_mL"));
    fill("wanted", given(check, "c_final_ppm"));
    fill("stock", "1%");  // 10 000 ppm
    check.expect({{"stock_mL", 20.0}, {"diluent_mL", 80.0}});
    EXPECT_EQ(taken(0), "20.0 mL");
    EXPECT_EQ(taken(1), "80.0 mL");
    EXPECT_THAT(words("mixRemarks"), HasSubstr("ages in the bottle"));
    EXPECT_THAT(words("mixCautions"), AllOf(HasSubstr("growth regulators"), HasSubstr("edible crops")));
}

TEST_F(MixAnswers, PowderOfTheSaltIsThatOfKibaWeigh) {
    const auto check = reference("powder_g", "kiba-weigh");
    ask("weigh");
    fill("volume", given(check, "volume_mL"));
    fill("wanted", given(check, "ppm_acid_equivalent"));
    EXPECT_EQ(field("purity").text(), given(check, "purity_pct"));
    choose("powder_is", "salt");
    EXPECT_EQ(taken(0), "0.4 g");
    EXPECT_THAT(words("mixRemarks"), HasSubstr("12 % too much"));
    fill("scale", "0.001");
    EXPECT_EQ(taken(0), "0.356 g");
    EXPECT_NEAR(check.expected.get<double>(), 0.356, 0.0005);
    EXPECT_THAT(words("mixWorkings"), HasSubstr("203.241 / 241.331 = 0.8422"));
}

TEST_F(MixAnswers, TalcIsThinnedByWeight) {
    ask("talc");
    fill("grams", "40");
    fill("wanted", "0.3");
    fill("powder", "0.8");
    EXPECT_EQ(taken(0), "15.0 g");  // dilution law: 40 x 0.3 / 0.8
    EXPECT_EQ(taken(1), "25.0 g");
}

TEST_F(MixAnswers, SoManyCuttingsTakeAsMuchAsDipUse) {
    const auto check = reference("dip_volume_mL", "dip-use");
    ask("dip");
    fill("cuttings", given(check, "cuttings"));
    EXPECT_EQ(field("each").text(), given(check, "mL_per_cutting"));
    EXPECT_EQ(field("least").text(), given(check, "minimum_mL"));
    check.expect(20.0);
    EXPECT_EQ(taken(0), "20.0 mL");
}

TEST_F(MixAnswers, SaltIsCountedAsAcidByKibaAsIba) {
    const auto check = reference("acid_ppm_from_salt_ppm", "kiba-as-iba");
    ask("convert");
    fill("strength", given(check, "ppm"));
    choose("is", "salt");
    check.expect(8421.7);
    EXPECT_THAT(words("mixResults"), AllOf(HasSubstr("10000 mg/L K-IBA (1 %)"), HasSubstr("is 8420 mg/L IBA")));
    EXPECT_THAT(words("mixWorkings"), HasSubstr("10000 x 0.8422 = 8422 mg/L"));
}

TEST_F(MixAnswers, MediumIsEnoughForTray60AndByPartsForMedia3) {
    const auto tray = reference("tray_L", "tray-60");
    ask("medium");
    fill("trays", "1");
    fill("cells", given(tray, "cells"));
    fill("cell", given(tray, "cell_mL"));
    fillCells({{"mixComponent1", "coir"}, {"mixComponentParts1", "7"}});
    EXPECT_THAT(words("mixTitle"), HasSubstr("2.64 L"));
    EXPECT_EQ(taken(0), "3.2 L");  // 2.6388 L / (1 - 0.15) = 3.104 L, rounded up
    EXPECT_THAT(words("mixCautions"), HasSubstr("mould and dust"));
    const auto media = reference("media_component_L", "media-3");
    for (QPushButton* button : view().findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("&Another component")) button->click();
    fillCells({{"mixComponent2", "perlite"}, {"mixComponentParts2", "3"}});
    choose("for", "volume");
    EXPECT_FALSE(field("trays").isVisible());
    fill("volume", given(media, "final_L"));
    fill("loss", given(media, "shrink_pct"));
    media.expect({4.2, 1.8});
    EXPECT_EQ(taken(0), "4.2 L");
    EXPECT_EQ(taken(1), "1.8 L");
}

TEST_F(MixAnswers, ALidHoldsTheHolesOfTheReferenceDrawnAndReadyToDrill) {
    // holes-600-400-44-20-20 of the reference data: 45 in square rows, 51 in staggered ones.
    ask("lid");
    EXPECT_EQ(field("length").text(), "600");
    EXPECT_EQ(field("hole").text(), "44");
    EXPECT_THAT(words("mixResults"), AllOf(HasSubstr("51 holes of 44 mm in staggered rows: the better of the two"),
                                           HasSubstr("In square rows it holds 45, in staggered rows 51.")));
    EXPECT_TRUE(pages::named<desktop::LidView>(view(), "mixLid").isVisible());
    EXPECT_THAT(words("mixWorkings"), HasSubstr("9 x 5 = 45"));
    fill("width", "300");
    pages::named<QPushButton>(view(), "mixTemplate").click();
    auto* dialog = pages::opened<QDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(pages::named<QLineEdit>(*dialog, "lidWidth").text(), "300");
}

}  // namespace
