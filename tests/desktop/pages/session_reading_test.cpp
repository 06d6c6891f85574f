// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_reading.h"

#include "app/desktop/session/name_book.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::SessionColumn;
using desktop::SessionReading;
using desktop::SessionRow;
using desktop::SessionSheet;

SessionRow aRow() {
    SessionRow row;
    row.at(SessionColumn::Plant) = QStringLiteral("hebe");
    row.at(SessionColumn::Station) = QStringLiteral("tub");
    row.at(SessionColumn::Count) = QStringLiteral("24");
    return row;
}

/// A row that names what someShelves() has.
SessionRow aKnownRow() {
    const core::Shelves shelves = support::someShelves();
    SessionRow row = aRow();
    row.at(SessionColumn::Plant) = QString::fromStdString(core::fullName(*core::find(shelves.plants, support::hebe)));
    row.at(SessionColumn::Station) = QString::fromStdString(core::find(shelves.stations, support::tubNorth)->name);
    return row;
}

SessionSheet sheetOf(std::vector<SessionRow> rows) {
    SessionSheet sheet;
    sheet.day = support::today();
    sheet.rows = std::move(rows);
    return sheet;
}

SessionReading read(const SessionSheet& sheet) {
    return desktop::readSession(sheet, support::someShelves(), support::today());
}

}  // namespace

TEST(SessionReading, TakesTheMethodFromTheStation) {
    const SessionReading reading = read(sheetOf({aKnownRow()}));
    ASSERT_TRUE(reading.isClean());
    ASSERT_EQ(reading.draft.batches.size(), 1u);
    EXPECT_EQ(reading.draft.batches[0].station, support::tubNorth);
    EXPECT_EQ(reading.draft.batches[0].method, support::aeratedWater);
    EXPECT_EQ(reading.draft.batches[0].stuck, 24);
    EXPECT_TRUE(reading.news.isEmpty());
}

TEST(SessionReading, MakesAPlantOnTheSpotOnceForAllItsRows) {
    SessionRow row = aKnownRow();
    row.at(SessionColumn::Plant) = QStringLiteral("Weigela florida 'Low Red'");
    SessionRow again = row;
    again.at(SessionColumn::Plant) = QStringLiteral("weigela  florida 'low red'");
    const SessionReading reading = read(sheetOf({row, again}));
    ASSERT_TRUE(reading.isClean());
    ASSERT_EQ(reading.draft.made.plants.size(), 1u);
    EXPECT_EQ(reading.draft.made.plants[0].botanicalName, "Weigela florida");
    EXPECT_EQ(reading.draft.made.plants[0].cultivar, "Low Red");
    EXPECT_EQ(reading.draft.batches[0].plant, reading.draft.batches[1].plant);
    EXPECT_EQ(reading.news.size(), 1);
}

TEST(SessionReading, PassesOverRowsThatAreBlankOrOnlyOffered) {
    SessionRow offered = aKnownRow();
    offered.isOffered = true;
    const SessionReading reading = read(sheetOf({aKnownRow(), offered, SessionRow{}}));
    EXPECT_EQ(reading.draft.batches.size(), 1u);
    EXPECT_TRUE(reading.isClean());
}

TEST(SessionReading, SaysOfEachCellWhatIsWrongWithIt) {
    SessionRow row = aKnownRow();
    row.at(SessionColumn::Station) = QStringLiteral("Tub of the moon");
    row.at(SessionColumn::Count) = QStringLiteral("2x");
    row.at(SessionColumn::Treatment) = QStringLiteral("willow water");
    const SessionReading reading = read(sheetOf({row}));
    ASSERT_EQ(reading.faults.size(), 3u);
    for (const desktop::CellFault& fault : reading.faults) EXPECT_EQ(fault.row, 0);
    EXPECT_TRUE(reading.faults[0].sentence.contains(QStringLiteral("willow water")))
        << reading.faults[0].sentence.toStdString();
    EXPECT_TRUE(reading.faults[1].sentence.contains(QStringLiteral("Tub of the moon")));
    EXPECT_TRUE(reading.faults[2].sentence.contains(QStringLiteral("2x")));
    EXPECT_TRUE(reading.faults[2].sentence.contains(QStringLiteral("from 1 to")));
}

TEST(SessionReading, RefusesADayInTheFuture) {
    SessionSheet sheet = sheetOf({aKnownRow()});
    sheet.day = core::addDays(support::today(), 1);
    EXPECT_FALSE(read(sheet).dayFault.isEmpty());
}

TEST(SessionReading, ReadsARecipeAsAMedium) {
    SessionRow row = aKnownRow();
    row.at(SessionColumn::Medium) = QStringLiteral("bark 2 : pumice 1,5");
    const SessionReading reading = read(sheetOf({row}));
    ASSERT_EQ(reading.draft.made.media.size(), 1u);
    ASSERT_EQ(reading.draft.made.media[0].components.size(), 2u);
    EXPECT_EQ(reading.draft.made.media[0].components[1].name, "pumice");
    EXPECT_DOUBLE_EQ(reading.draft.made.media[0].components[1].parts, 1.5);
}

TEST(NameBook, FindsAPlantByItsCommonNameOnlyWhenOneHasIt) {
    core::Shelves shelves;
    const auto add = [&shelves](core::PlantId id, const char* botanicalName, const char* commonName) {
        core::Plant plant;
        plant.id = id;
        plant.botanicalName = botanicalName;
        plant.commonName = commonName;
        shelves.plants.push_back(plant);
    };
    add({1}, "Cornus alba", "dogwood");
    add({2}, "Ribes nigrum", "blackcurrant");
    add({3}, "Cornus sericea", "dogwood");
    const desktop::NameBook book(shelves);
    ASSERT_NE(book.plant(QStringLiteral("Blackcurrant")), nullptr);
    EXPECT_EQ(book.plant(QStringLiteral("Blackcurrant"))->id, core::PlantId{2});
    EXPECT_EQ(book.plant(QStringLiteral("dogwood")), nullptr);
    EXPECT_EQ(book.plant(QStringLiteral("CORNUS  alba"))->id, core::PlantId{1});
}
