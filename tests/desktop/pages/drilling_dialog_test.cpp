// SPDX-License-Identifier: MIT
#include "app/desktop/template/drilling_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/desktop/printing/print_preview.h"
#include "app/desktop/stations/station_dialog.h"
#include "db/actions/shelf_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::DrillingDialog;
using desktop::FaultLabel;
using pages::named;

class Drilling : public pages::Desk {
  protected:
    void open() {
        dialog_ = std::make_unique<DrillingDialog>(context());
        pages::show(*dialog_);
    }
    void typeInto(const char* name, const QString& text) {
        auto& line = named<QLineEdit>(*dialog_, name);
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, text);
    }
    bool says(const QString& words) {
        const auto faults = dialog_->findChildren<FaultLabel*>();
        return std::ranges::any_of(faults, [&](const FaultLabel* each) { return each->fault().contains(words); });
    }
    QString text(const char* name) { return named<QAbstractButton>(*dialog_, name).text(); }

    std::unique_ptr<DrillingDialog> dialog_;
};

TEST_F(Drilling, CountsHolesOfBothPatternsWhileMeasuresAreTyped) {
    open();
    EXPECT_TRUE(text("lidSquare").endsWith(": 45")) << text("lidSquare").toStdString();
    EXPECT_TRUE(text("lidStaggered").endsWith(": 51")) << text("lidStaggered").toStdString();
    EXPECT_TRUE(named<QRadioButton>(*dialog_, "lidStaggered").isChecked()) << "the one that holds more";
    EXPECT_EQ(named<QLabel>(*dialog_, "lidSum").text(), "51 holes of 44 mm in staggered rows.");
    typeInto("lidLength", "300");
    typeInto("lidWidth", "200");
    typeInto("lidEdge", "15");
    typeInto("lidWeb", "10");
    EXPECT_TRUE(text("lidSquare").endsWith(": 15"));
    EXPECT_TRUE(named<QRadioButton>(*dialog_, "lidSquare").isChecked());
}

TEST_F(Drilling, KeepsToThePatternThatWasChosen) {
    open();
    named<QRadioButton>(*dialog_, "lidSquare").click();
    EXPECT_EQ(dialog_->layoutShown().count(), 45);
    typeInto("lidHole", "44.45");
    EXPECT_EQ(dialog_->layoutShown().pattern, core::RowPattern::Square);
    EXPECT_EQ(dialog_->layoutShown().count(), 40);
}

TEST_F(Drilling, SaysWhatIsWrongWhereItStands) {
    open();
    typeInto("lidHole", "wide");
    EXPECT_TRUE(says("Hole is \u201cwide\u201d; a length in mm is allowed."));
    EXPECT_FALSE(named<QPushButton>(*dialog_, "previewTemplate").isEnabled());
    EXPECT_EQ(named<QLineEdit>(*dialog_, "lidHole").text(), "wide") << "nothing typed is lost";
    typeInto("lidHole", "44");
    typeInto("lidWeb", "0");
    EXPECT_TRUE(says("Web is 0 mm; 1 to 1000 mm is allowed."));
    typeInto("lidWeb", "6");
    typeInto("lidLength", "60");
    EXPECT_TRUE(says("does not fit on a lid of 60"));
    typeInto("lidLength", "600");
    EXPECT_TRUE(named<QPushButton>(*dialog_, "previewTemplate").isEnabled());
}

TEST_F(Drilling, AsksARoundLidForItsDiameterAlone) {
    open();
    auto& shape = named<QComboBox>(*dialog_, "lidShape");
    shape.setCurrentIndex(shape.findData(true));
    EXPECT_FALSE(named<QLineEdit>(*dialog_, "lidWidth").isVisible());
    typeInto("lidLength", "200");
    typeInto("lidWeb", "10");
    typeInto("lidEdge", "10");
    EXPECT_EQ(dialog_->layoutShown().count(), 7);
    typeInto("lidLength", "5");
    EXPECT_TRUE(says("Diameter is 5 mm; 20 to 3000 mm is allowed."));
}

TEST_F(Drilling, TakesInchesWhereTheGrowerDoesAndKeepsMillimetres) {
    const desktop::Outcome changed = workspace_.run([](db::Logbook& logbook) {
        core::LogbookFacts facts = logbook.shelves().facts;
        facts.units.length = core::LengthUnit::Inches;
        return db::keep(logbook, facts);
    });
    ASSERT_TRUE(changed.isDone);
    open();
    typeInto("lidLength", "24");
    typeInto("lidWidth", "16");
    typeInto("lidHole", "1.75");
    typeInto("lidWeb", "0.5");
    typeInto("lidEdge", "1");
    EXPECT_NEAR(dialog_->layoutShown().across * dialog_->layoutShown().down, 24 * 25.4 * 16 * 25.4, 0.01);
    EXPECT_TRUE(named<QLabel>(*dialog_, "lidSum").text().contains("of 1.75 in"));
    typeInto("lidWidth", "0");
    EXPECT_TRUE(says("Width is 0 in; 0.787 to 118.11 in is allowed."));
}

TEST_F(Drilling, IsSavedAsPdfFromItsPreview) {
    open();
    named<QPushButton>(*dialog_, "previewTemplate").click();
    auto* preview = pages::opened<desktop::PrintPreview>(*dialog_);
    ASSERT_NE(preview, nullptr);
    const QTemporaryDir folder;
    prompts_.willPickFileToSave(folder.filePath("lid.pdf"));
    const QSignalSpy said(dialog_.get(), &DrillingDialog::said);
    named<QPushButton>(*preview, "savePdf").click();
    EXPECT_TRUE(QFile::exists(folder.filePath("lid.pdf")));
    EXPECT_EQ(said.count(), 1);
}

TEST_F(Drilling, GivesItsLayoutToTheFormOfAStation) {
    fill(support::recordsOf({}));
    const std::unique_ptr<desktop::StationDialog> form(desktop::StationDialog::keeping(context(), support::tubNorth));
    pages::show(*form);
    named<QPushButton>(*form, "stationTemplate").click();
    auto* drilling = pages::opened<DrillingDialog>(*form);
    ASSERT_NE(drilling, nullptr);
    EXPECT_TRUE(named<QPushButton>(*drilling, "takeLayout").isVisible());
    named<QPushButton>(*drilling, "takeLayout").click();
    EXPECT_EQ(named<QLineEdit>(*form, "stationRows").text(), "6");
    EXPECT_EQ(named<QLineEdit>(*form, "stationColumns").text(), "9");
    EXPECT_TRUE(named<QCheckBox>(*form, "stationStaggered").isChecked());
    EXPECT_EQ(named<QLineEdit>(*form, "stationBlocked").text(), "B9, D9, F9");
    EXPECT_EQ(core::find(workspace_.shelves().stations, support::tubNorth)->columns, 10)
        << "nothing is kept before the form is";
}

}  // namespace
