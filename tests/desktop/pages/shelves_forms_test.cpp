// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelf_forms.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/fault_label.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class ShelfForms : public pages::Desk {
  protected:
    void open(QDialog* form) {
        form_.reset(form);
        pages::show(*form_);
    }
    QLineEdit& line(const char* name) { return named<QLineEdit>(*form_, name); }
    void type(const char* name, const QString& text) {
        line(name).setFocus();
        line(name).selectAll();
        QTest::keyClick(&line(name), Qt::Key_Delete);
        QTest::keyClicks(&line(name), text);
    }
    void save() { named<QPushButton>(*form_, "formSave").click(); }
    QString faults() {
        QStringList sentences;
        for (const auto* label : form_->findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) sentences << label->fault();
        return sentences.join('\n');
    }
    template <class Thing>
    Thing called(const std::vector<Thing>& things, const std::string& name) {
        for (const Thing& thing : things)
            if (thing.name == name) return thing;
        return {};
    }

    std::unique_ptr<QDialog> form_;
};

TEST_F(ShelfForms, KeepTheComponentsOfAMediumAndTheirParts) {
    open(desktop::mediumForm(context(), 0, nullptr));
    type("mediumName", "loose mix");
    type("component1", "coir");
    type("parts1", "3");
    for (auto* button : form_->findChildren<QPushButton*>())
        if (button->text().contains("component")) button->click();
    type("component2", "perlite");
    type("parts2", "0,5");
    EXPECT_EQ(named<QLabel>(*form_, "mediumRecipe").text(), "coir 3 : perlite 0.5");
    save();
    EXPECT_FALSE(form_->isVisible()) << faults().toStdString();
    const auto medium = called(workspace_.shelves().media, "loose mix");
    ASSERT_EQ(medium.components.size(), 2U);
    EXPECT_EQ(medium.components[1], (core::MediumComponent{.name = "perlite", .parts = 0.5}));
}

TEST_F(ShelfForms, JudgeAPartWhileItIsTypedAndLoseNothing) {
    open(desktop::mediumForm(context(), 0, nullptr));
    EXPECT_EQ(faults(), QString()) << "a fresh form blames nobody";
    type("component1", "coir");
    type("parts1", "lots");
    EXPECT_TRUE(faults().contains("lots")) << faults().toStdString();
    EXPECT_FALSE(faults().contains("Name")) << "nobody has typed there yet";
    save();
    EXPECT_TRUE(form_->isVisible());
    EXPECT_TRUE(faults().contains("Name"));
    EXPECT_EQ(line("parts1").text(), "lots");
    type("parts1", "0");
    EXPECT_TRUE(faults().contains("more than 0"));
}

TEST_F(ShelfForms, TakeAComponentAway) {
    open(desktop::mediumForm(context(), support::coirMix.value, nullptr));
    const core::Medium before = *core::find(workspace_.shelves().media, support::coirMix);
    ASSERT_GE(before.components.size(), 2U);
    named<QAbstractButton>(*form_, "componentAway1").click();
    save();
    const core::Medium after = *core::find(workspace_.shelves().media, support::coirMix);
    ASSERT_EQ(after.components.size(), before.components.size() - 1);
    EXPECT_EQ(after.components.front(), before.components[1]);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(*core::find(workspace_.shelves().media, support::coirMix), before);
}

TEST_F(ShelfForms, KeepTwoAuxinsOfATreatment) {
    open(desktop::treatmentForm(context(), 0, nullptr));
    type("treatmentName", "two auxins");
    type("auxin1", "IBA");
    type("dose1", "1000");
    for (auto* button : form_->findChildren<QPushButton*>())
        if (button->text().contains("Add an")) button->click();
    type("auxin2", "NAA");
    type("dose2", "500");
    named<QComboBox>(*form_, "auxinForm2").setCurrentIndex(1);
    auto& carrier = named<QComboBox>(*form_, "carrier");
    carrier.setCurrentIndex(carrier.findData(static_cast<int>(core::Carrier::LiquidDip)));
    type("seconds", "5");
    named<QCheckBox>(*form_, "wounded").click();
    save();
    ASSERT_FALSE(form_->isVisible()) << faults().toStdString();
    const auto kept = called(workspace_.shelves().treatments, "two auxins");
    ASSERT_EQ(kept.auxins.size(), 2U);
    EXPECT_EQ(kept.auxins[1], (core::Auxin{.name = "NAA", .form = core::AuxinForm::Salt, .milligramsPerLitre = 500}));
    EXPECT_EQ(kept.carrier, core::Carrier::LiquidDip);
    EXPECT_EQ(kept.seconds, 5);
    EXPECT_TRUE(kept.isWounded);
}

TEST_F(ShelfForms, RefuseAnAuxinWithoutADose) {
    open(desktop::treatmentForm(context(), 0, nullptr));
    type("treatmentName", "half told");
    type("auxin1", "IBA");
    save();
    EXPECT_TRUE(form_->isVisible());
    EXPECT_TRUE(faults().contains("IBA has no dose")) << faults().toStdString();
    type("dose1", "much");
    EXPECT_TRUE(faults().contains("much"));
}

TEST_F(ShelfForms, ShowAPlantsNameAsItIsWrittenAndTheCautionOfAProtectedOne) {
    open(desktop::plantForm(context(), 0, nullptr));
    type("plantBotanical", "Hebe albicans");
    type("plantCultivar", "Sussex Carpet");
    const QString shown = named<QLabel>(*form_, "plantShown").text();
    EXPECT_TRUE(shown.contains("<i>Hebe albicans</i>")) << shown.toStdString();
    EXPECT_FALSE(shown.contains("<i>Sussex"));
    auto& cautions = named<desktop::CautionStrip>(*form_, "cautionStrip");
    EXPECT_FALSE(cautions.isVisible());
    named<QCheckBox>(*form_, "plantProtected").click();
    EXPECT_TRUE(cautions.isVisible());
    type("plantDays", "soon");
    EXPECT_TRUE(faults().contains("soon"));
    type("plantDays", "");
    EXPECT_EQ(faults(), QString()) << "the days may be blank";
    type("plantDays", "35");
    save();
    ASSERT_FALSE(form_->isVisible()) << faults().toStdString();
    const core::Plant& kept = *std::ranges::find(workspace_.shelves().plants, "Sussex Carpet", &core::Plant::cultivar);
    EXPECT_TRUE(kept.isProtected);
    EXPECT_EQ(kept.usualRootingDaysHigh, 35);
}

TEST_F(ShelfForms, GiveAPlantACheckSchedule) {
    open(desktop::checkScheduleForm(context(), 0, nullptr));
    type("scheduleName", "slow");
    type("scheduleFirst", "21");
    type("scheduleEvery", "0");
    EXPECT_TRUE(faults().contains("1 to 365")) << faults().toStdString();
    type("scheduleEvery", "14");
    save();
    ASSERT_EQ(workspace_.shelves().checkSchedules.size(), 1U);
    open(desktop::plantForm(context(), support::hebe.value, nullptr));
    auto& schedule = named<QComboBox>(*form_, "plantSchedule");
    EXPECT_EQ(schedule.currentText(), "as its method or the logbook says");
    schedule.setCurrentIndex(schedule.findText("slow"));
    save();
    EXPECT_EQ(core::find(workspace_.shelves().plants, support::hebe)->checkSchedule,
              workspace_.shelves().checkSchedules.front().id);
}

TEST_F(ShelfForms, RefuseAKeyThatIsTakenOrMoreThanALetter) {
    open(desktop::lossCauseForm(context(), 0, nullptr));
    type("lossCauseName", "slugs");
    type("lossCauseKey", "r");
    EXPECT_TRUE(faults().contains("taken")) << faults().toStdString();
    type("lossCauseKey", "sl");
    EXPECT_TRUE(faults().contains("one letter")) << faults().toStdString();
    type("lossCauseKey", "S");
    save();
    EXPECT_EQ(called(workspace_.shelves().lossCauses, "slugs").key, 's');
}

}  // namespace
