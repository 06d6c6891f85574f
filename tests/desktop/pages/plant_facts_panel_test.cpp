// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/plant_facts_panel.h"

#include <QCheckBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/widgets/count_edit.h"
#include "db/actions/shelf_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::comesTrue;
using pages::named;

class PlantPanel : public pages::Desk {
  protected:
    void lookAt(const std::string& botanicalName, const std::vector<core::BatchRecord>& batches) {
        core::Records records = support::recordsOf(batches);
        for (core::Plant& plant : records.shelves.plants)
            if (plant.id == support::hebe) plant.botanicalName = botanicalName, plant.cultivar.clear();
        fill(records);
        panel_ = std::make_unique<desktop::PlantFactsPanel>(context());
        pages::show(*panel_);
        panel_->showThing(support::hebe.value);
        EXPECT_TRUE(comesTrue([this] { return !text("plantFactsPlannedBy").isEmpty(); }));
    }
    QString text(const char* name) { return named<QLabel>(*panel_, name).text(); }

    std::unique_ptr<desktop::PlantFactsPanel> panel_;
};

core::BatchRecord watchedWell() {
    return support::aBatch().stuck(24).looked(14, {.rooted = 10}).looked(35, {.rooted = 8});
}

TEST_F(PlantPanel, HasWhatIsPrintedWithHowItIsKnownBesideOnesOwn) {
    lookAt("Lavandula angustifolia", {watchedWell(), support::aBatch().stuck(10)});
    EXPECT_TRUE(text("plantFactsHeading").contains("lavender"));
    EXPECT_EQ(text("plantPrinted_5"), "80 to 90 of 100 stuck");
    EXPECT_EQ(text("plantPrintedSource_5"), "read in KREM");
    EXPECT_EQ(text("plantPrintedSource_3"), "common practice, no source");
    EXPECT_TRUE(text("plantFactsCitations").contains("KREM: "));
    EXPECT_EQ(text("plantOwn_0"), "2 batches, 34 cuttings");
    EXPECT_TRUE(text("plantOwn_1").contains("18 of 24")) << text("plantOwn_1").toStdString();
    EXPECT_TRUE(text("plantOwn_1").contains("interval"));
    EXPECT_EQ(text("plantOwnSource_2"), "18 cuttings rooted");
    EXPECT_TRUE(text("plantFactsPlannedBy").contains("planned by both"));
}

TEST_F(PlantPanel, LeavesUnknownWhatIsUnknown) {
    lookAt("Laurus nobilis", {});
    EXPECT_EQ(text("plantPrinted_5"), "unknown");
    EXPECT_TRUE(text("plantPrintedSource_3").contains("from memory of DIRR"));
    EXPECT_EQ(text("plantOwn_0"), "0 batches, 0 cuttings");
    EXPECT_EQ(text("plantOwn_1"), "unknown");
    lookAt("Blue Lagoon", {});
    EXPECT_TRUE(text("plantFactsHeading").contains("doesn\u2019t have this plant"));
    EXPECT_EQ(panel_->findChild<QLabel*>("plantPrinted_0"), nullptr);
}

TEST_F(PlantPanel, FollowsTheLogbook) {
    lookAt("Lavandula angustifolia", {watchedWell()});
    core::Plant plant = *core::find(workspace_.shelves().plants, support::hebe);
    plant.botanicalName = "Laurus nobilis";
    ASSERT_TRUE(workspace_.run([&](db::Logbook& book) { return db::keep(book, plant); }).isDone);
    EXPECT_TRUE(comesTrue([this] { return text("plantFactsHeading").contains("bay"); }));
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(comesTrue([this] { return text("plantFactsHeading").contains("lavender"); }));
}

class PlantForm : public pages::Desk {
  protected:
    PlantForm() : form_(desktop::plantForm(context(), 0, nullptr)) { pages::show(*form_); }
    QLineEdit& line(const char* name) { return named<QLineEdit>(*form_, name); }
    void type(const char* name, const QString& text) {
        line(name).setFocus();
        QTest::keyClicks(&line(name), text);
    }
    QString read() { return named<QLabel>(*form_, "plantRead").text(); }
    QPushButton& offer() { return named<QPushButton>(*form_, "plantOffer"); }

    std::unique_ptr<QDialog> form_;
};

TEST_F(PlantForm, OffersWhatTheTableKnowsAndEnterTakesItWithoutOverwriting) {
    EXPECT_FALSE(offer().isVisible());
    type("plantCommon", "my own lavender");
    type("plantBotanical", "Lavandula angustifolia");
    ASSERT_TRUE(offer().isVisible());
    EXPECT_TRUE(offer().text().contains("usually rooted by")) << offer().text().toStdString();
    QTest::keyClick(&line("plantBotanical"), Qt::Key_Return);
    EXPECT_TRUE(form_->isVisible()) << "Enter takes the offer, it doesn't save yet";
    EXPECT_EQ(line("plantCommon").text(), "my own lavender");
    EXPECT_EQ(line("plantDays").text(), "42");
    EXPECT_FALSE(offer().isVisible()) << "nothing is left to take";
    QTest::keyClick(&line("plantBotanical"), Qt::Key_Return);
    EXPECT_FALSE(form_->isVisible());
}

TEST_F(PlantForm, SaysHowItReadsTheNameAndKeepsWhatItCannotRead) {
    type("plantBotanical", "Mentha \u00d7piperita");
    EXPECT_EQ(read(), "Read as: genus Mentha, hybrid species piperita.");
    line("plantBotanical").clear();
    type("plantBotanical", "Blue Lagoon trade");
    EXPECT_TRUE(read().contains("Kept as you typed it"));
    named<QCheckBox>(*form_, "plantEaten").click();
    named<QPushButton>(*form_, "formSave").click();
    ASSERT_FALSE(form_->isVisible());
    const auto& plants = workspace_.shelves().plants;
    const auto kept = std::ranges::find(plants, "Blue Lagoon trade", &core::Plant::botanicalName);
    ASSERT_NE(kept, plants.end());
    EXPECT_TRUE(kept->isEdible);
}

}  // namespace
