// SPDX-License-Identifier: MIT
#include "app/desktop/printing/map_preview.h"

#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>

#include "app/desktop/positions/position_look_dialog.h"
#include "app/desktop/printing/print_preview.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class MapOnPaper : public pages::Desk {
  protected:
    void fillNorthTub() {
        core::BatchRecord record = support::aBatch().stuck(6).code("B260001C");
        record.batch.positions = "A1-A6";
        fill(support::recordsOf({record}));
    }
};

TEST_F(MapOnPaper, IsPrintedFromTheLookHoleByHole) {
    fillNorthTub();
    desktop::PositionLookDialog look(context(), logbook().batchWithCode("B260001C"));
    pages::show(look);
    named<QPushButton>(look, "lookPrintMap").click();
    auto* preview = pages::opened<desktop::PrintPreview>(look);
    ASSERT_NE(preview, nullptr);
    EXPECT_TRUE(preview->windowTitle().contains("with batch B260001C")) << preview->windowTitle().toStdString();
    const QTemporaryDir folder;
    prompts_.willPickFileToSave(folder.filePath("map.pdf"));
    named<QPushButton>(*preview, "savePdf").click();
    EXPECT_TRUE(QFile::exists(folder.filePath("map.pdf")));
}

TEST_F(MapOnPaper, IsThereForAWholeStation) {
    fillNorthTub();
    QWidget window;
    const desktop::PrintPreview* preview = desktop::showMapPreview(support::tubNorth, {}, context(), &window);
    ASSERT_NE(preview, nullptr);
    EXPECT_FALSE(preview->windowTitle().contains("with batch"));
}

TEST_F(MapOnPaper, IsNotThereForAStationThatIsGone) {
    QWidget window;
    EXPECT_EQ(desktop::showMapPreview({4711}, {}, context(), &window), nullptr);
}

}  // namespace
