// SPDX-License-Identifier: MIT
#include "app/report/session_sheet.h"

#include "app/report/plain_text.h"
#include "gtest/gtest.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

core::Batch stuckAt(core::StationId station, const std::string& code, const std::string& positions) {
    core::Batch batch = examples::batchChecked(0).batch;
    batch.code = code;
    batch.station = station;
    batch.positions = positions;
    batch.note.clear();
    return batch;
}

core::Shelves withATub() {
    core::Shelves shelves = examples::smallShelves();
    core::Station tub = shelves.stations.front();
    tub.id = {44};
    tub.name = "tub by the door";
    tub.walkingOrder = 0;
    shelves.stations.push_back(tub);
    return shelves;
}

}  // namespace

TEST(SessionSheet, SaysWhatWasStuckWhereAndUnderWhichCode) {
    std::vector<core::Batch> batches{stuckAt({4}, "B260001C", "A1-A6, B1"), stuckAt({4}, "B260002D", ""),
                                     stuckAt({44}, "B260003E", "A1-D6")};
    batches[1].note = "thin stems";
    batches[2].medium = {};
    examples::expectGolden(
        report::plainText(report::sessionSheet(examples::session(), batches, withATub(), examples::printedAt())),
        "session_sheet");
}

TEST(SessionSheet, SaysWhatWasMixedForIt) {
    const core::KeptMix mix{.title = "Dip for 40 cuttings", .amounts = "to pour out: 20.0 mL\nIBA, 2000 mg/L"};
    const std::vector<core::Batch> batches{stuckAt({4}, "B260001C", "")};
    const QString text = report::plainText(
        report::sessionSheet(examples::session(), batches, withATub(), examples::printedAt(), std::vector{mix}));
    EXPECT_TRUE(text.contains("MIXED FOR IT")) << text.toStdString();
    EXPECT_TRUE(text.simplified().contains("Dip for 40 cuttings: to pour out: 20.0 mL; IBA, 2000 mg/L"))
        << text.toStdString();
}

TEST(SessionSheet, NamesNoStationWhereThereIsNone) {
    core::Batch bare = stuckAt({}, "B260001C", "");
    bare.stockPlant = {}, bare.medium = {}, bare.treatment = {}, bare.cuttingKind = {};
    const QString text = report::plainText(
        report::sessionSheet(examples::session(), std::vector{bare}, withATub(), examples::printedAt()));
    EXPECT_TRUE(text.contains("WITHOUT A STATION")) << text.toStdString();
    EXPECT_FALSE(text.contains(QChar(0xB7))) << "nothing is strung together where nothing is known";
}
