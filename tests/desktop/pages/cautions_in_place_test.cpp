// SPDX-License-Identifier: MIT
// Each of the trade's cautions stands where the hand is.
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <algorithm>
#include <map>

#include "app/desktop/batches/batch_dialog.h"
#include "app/desktop/batches/close_dialog.h"
#include "app/desktop/printing/label_preview.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/readings/care_dialog.h"
#include "app/desktop/session/session_dialog.h"
#include "app/desktop/session/session_model.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/stations/station_dialog.h"
#include "app/desktop/template/drilling_dialog.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/report/caution_words.h"
#include "core/batch/licence.h"
#include "tests/desktop/pages/desk.h"

namespace {

using core::CautionTopic;
using desktop::CautionStrip;
using desktop::SessionColumn;
using pages::named;
using enum core::CautionTopic;

class CautionsInPlace : public pages::Desk {
  protected:
    CautionsInPlace() {
        core::Records records = support::recordsOf(
            {support::aBatch().code("B260001C"), support::aBatch().of(support::deutzia).code("B260002D")});
        for (core::Plant& plant : records.shelves.plants)
            if (plant.id == support::hebe) plant.isEdible = true;
        fill(records);
    }

    /// A session with one row.
    std::unique_ptr<desktop::SessionDialog> session(core::PlantId plant, core::TreatmentId treatment) {
        auto dialog = std::make_unique<desktop::SessionDialog>(context());
        const core::Shelves& shelves = workspace_.shelves();
        const auto set = [&](SessionColumn column, const std::string& text) {
            auto* grid = dialog->model().grid();
            grid->setData(grid->index(0, static_cast<int>(column)), QString::fromStdString(text));
        };
        set(SessionColumn::Plant, core::fullName(*core::find(shelves.plants, plant)));
        set(SessionColumn::Treatment, core::find(shelves.treatments, treatment)->name);
        set(SessionColumn::Station, core::find(shelves.stations, support::tubNorth)->name);
        set(SessionColumn::Count, "12");
        return dialog;
    }

    std::unique_ptr<QDialog> care(core::CareKind kind) {
        const core::Care care{.station = support::tubNorth, .doneAt = workspace_.clock()(), .kind = kind};
        return std::make_unique<desktop::CareDialog>(care, "tub", core::DisplayUnits{}, support::today(),
                                                     [](const core::Care&) { return desktop::Outcome{}; });
    }

    std::unique_ptr<QDialog> plantForm(const QString& name, bool isProtected, bool isEdible) {
        std::unique_ptr<QDialog> form(desktop::plantForm(context(), 0, nullptr));
        named<QLineEdit>(*form, "plantBotanical").setText(name);
        named<QCheckBox>(*form, "plantProtected").setChecked(isProtected);
        named<QCheckBox>(*form, "plantEaten").setChecked(isEdible);
        return form;
    }

    std::unique_ptr<QDialog> closing(const std::string& code) {
        return std::make_unique<desktop::CloseDialog>(batch(code), workspace_.shelves(), support::today(),
                                                      [](core::Date, const QString&) { return desktop::Outcome{}; });
    }

    std::unique_ptr<QDialog> correcting(const std::string& code) {
        return std::make_unique<desktop::BatchDialog>(batch(code).batch, workspace_.shelves(),
                                                      [](const core::Batch&) { return desktop::Outcome{}; });
    }

    std::unique_ptr<QDialog> form(QDialog* (*make)(const desktop::PageContext&, std::int64_t, QWidget*),
                                  std::int64_t id) {
        return std::unique_ptr<QDialog>(make(context(), id, nullptr));
    }
};

/// What a place shows to the eye: the words of each, not only that it is meant.
std::vector<CautionTopic> topicsSeenIn(QWidget& place) {
    pages::show(place);
    std::vector<CautionTopic> seen;
    for (const CautionStrip* strip : place.findChildren<CautionStrip*>()) {
        if (!strip->isVisible()) continue;
        EXPECT_FALSE(strip->accessibleName().isEmpty());
        EXPECT_TRUE(strip->textInteractionFlags() & Qt::TextSelectableByMouse);
        EXPECT_GT(strip->height(), strip->fontMetrics().height());
        const QString text = strip->toPlainText();
        for (const core::TradeCaution& caution : core::allTradeCautions())
            if (text.contains(report::cautionText(caution.topic))) seen.push_back(caution.topic);
    }
    return seen;
}

TEST_F(CautionsInPlace, EveryTopicIsShownAtEachOfItsPlaces) {
    const std::unique_ptr<QDialog> dipping = session(support::hebe, support::weakGel);
    std::map<std::string, std::vector<CautionTopic>> seen;
    const auto look = [&seen](const std::string& place, const std::unique_ptr<QDialog>& dialog) {
        seen[place] = topicsSeenIn(*dialog);
    };
    look("session with hormone", dipping);
    look("care: topped up", care(core::CareKind::ToppedUp));
    look("care: changed", care(core::CareKind::SolutionChanged));
    look("care: sprayed", care(core::CareKind::Sprayed));
    look("care: pump", care(core::CareKind::PumpOff));
    look("plant", plantForm("Ficus carica", true, true));
    look("stock plant", form(desktop::stockPlantForm, 0));
    look("medium", form(desktop::mediumForm, support::coirMix.value));
    look("treatment", form(desktop::treatmentForm, support::weakGel.value));
    look("station", form(desktop::stationForm, support::tubNorth.value));
    look("drilling", std::make_unique<desktop::DrillingDialog>(context()));
    look("closing", closing("B260002D"));
    look("correcting", correcting("B260002D"));
    desktop::PrintPreview* labels = desktop::showLabelPreview({batch("B260001C").batch}, context(), nullptr);
    seen["labels"] = topicsSeenIn(*labels);
    delete labels;

    const std::map<CautionTopic, std::vector<std::string>> places{
        {GrowthRegulators, {"session with hormone", "treatment"}},
        {EdibleCrops, {"session with hormone", "treatment", "plant"}},
        {HormoneHygiene, {"session with hormone", "treatment"}},
        {Acids, {"care: topped up", "care: changed"}},
        {ChlorineGas, {"care: changed"}},
        {Alkalis, {"care: topped up", "care: changed"}},
        {Oxidisers, {"care: topped up", "care: changed"}},
        {Concentrates, {"care: topped up", "care: changed"}},
        {ElectricityNearWater, {"station", "care: pump"}},
        {BackSiphon, {"station", "care: pump"}},
        {DrillingAndHotGlue, {"drilling"}},
        {Lamps, {"station"}},
        {HeatUnderADome, {"station"}},
        {MouldAndDust, {"medium"}},
        {FungicidesAndPesticides, {"care: sprayed"}},
        {ProtectedVarieties, {"plant", "closing", "correcting"}},
        {PlantHealth, {"closing", "labels"}},
        {WildPlants, {"stock plant"}},
        {InvasivePlants, {"closing", "labels"}},
        {IrritantPlants, {"plant"}},
        {Advice, {"session with hormone", "station", "plant", "labels", "drilling", "care: sprayed"}}};
    for (const core::TradeCaution& caution : core::allTradeCautions()) {
        ASSERT_TRUE(places.contains(caution.topic)) << caution.name << " has no place";
        for (const std::string& place : places.at(caution.topic)) {
            ASSERT_TRUE(seen.contains(place)) << place;
            EXPECT_TRUE(std::ranges::count(seen.at(place), caution.topic)) << caution.name << " is not at: " << place;
        }
    }
}

TEST_F(CautionsInPlace, NothingIsMindedWhereThereIsNothing) {
    for (const auto& [name, dialog] : std::vector<std::pair<const char*, std::shared_ptr<QDialog>>>{
             {"session", session(support::hebe, support::nothing)},
             {"care", care(core::CareKind::Vented)},
             {"plant", plantForm("Hebe albicans", false, false)},
             {"treatment", form(desktop::treatmentForm, 0)}})
        EXPECT_TRUE(topicsSeenIn(*dialog).empty()) << name;
}

TEST_F(CautionsInPlace, AStationMindsWaterAsSoonAsItsMethodHasSome) {
    const std::unique_ptr<QDialog> dialog = form(desktop::stationForm, support::benchWest.value);
    EXPECT_EQ(std::ranges::count(topicsSeenIn(*dialog), ElectricityNearWater), 0);
    named<QComboBox>(*dialog, "stationMethod").setCurrentText("aerated water");
    EXPECT_EQ(std::ranges::count(topicsSeenIn(*dialog), ElectricityNearWater), 1);
}

class LicenceOfASession : public CautionsInPlace {
  protected:
    void open() { dialog_ = session(support::deutzia, support::nothing); }
    QLineEdit& licence() { return named<QLineEdit>(*dialog_, "sessionLicence"); }
    core::Batch saved() {
        const desktop::SessionSaved done = dialog_->model().save();
        EXPECT_TRUE(done.isDone) << dialog_->model().view().headerFault.toStdString();
        return done.batches.empty() ? core::Batch{} : logbook().batch(done.batches.front().id)->batch;
    }
    bool saysNone() {
        return dialog_->model().view().notes.join('\n').contains("is protected: no licence written down");
    }

    std::unique_ptr<desktop::SessionDialog> dialog_;
};

TEST_F(LicenceOfASession, IsAskedForOnlyOfAProtectedPlantAndWrittenIntoItsBatch) {
    EXPECT_EQ(session(support::hebe, support::nothing)->findChild<QLineEdit*>("sessionLicence"), nullptr);
    dialog_.reset();
    open();
    pages::show(*dialog_);
    ASSERT_TRUE(licence().isVisible());
    EXPECT_EQ(licence().text(), "");
    EXPECT_TRUE(saysNone());
    licence().setFocus();
    QTest::keyClicks(&licence(), " PVR 1234 ");
    EXPECT_FALSE(saysNone());
    EXPECT_EQ(saved().licence, "PVR 1234");
}

TEST_F(LicenceOfASession, BeginsWithThatOfTheNewestBatchAndMayBeTakenAway) {
    open();
    QTest::keyClicks(&licence(), "PVR 1234");
    EXPECT_EQ(saved().licence, "PVR 1234");
    open();
    EXPECT_EQ(licence().text(), "PVR 1234");
    EXPECT_EQ(saved().licence, "PVR 1234");
    open();
    licence().selectAll();
    QTest::keyClick(&licence(), Qt::Key_Delete);
    EXPECT_TRUE(saysNone());
    const core::Batch without = saved();
    EXPECT_EQ(without.licence, "");
    EXPECT_EQ(core::licenceInWords(without, workspace_.shelves()), "protected: no licence written down");
}

TEST_F(LicenceOfASession, IsCorrectedAtTheBatchAndTakenBack) {
    const core::Batch before = batch("B260002D").batch;
    desktop::BatchDialog dialog(before, workspace_.shelves(), [this](const core::Batch& changed) {
        return workspace_.run([&](db::Logbook& book) { return db::changeBatch(book, changed, workspace_.today()); });
    });
    named<QLineEdit>(dialog, "batchLicence").setText("  PVR  1234 ");
    named<QPushButton>(dialog, "saveBatch").click();
    EXPECT_EQ(batch("B260002D").batch.licence, "PVR 1234");
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260002D").batch, before);
}

}  // namespace
