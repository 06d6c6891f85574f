// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_table_model.h"

#include <QElapsedTimer>

#include "app/plot/number_text.h"
#include "core/demo/demo_season.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::BatchColumn;
using desktop::BatchTableModel;

core::BatchLine lineOf(const core::BatchRecord& record) {
    return {.batch = record.batch, .tally = core::tallyOf(record.batch, record.checks)};
}

QString text(const BatchTableModel& model, int row, BatchColumn column) {
    return model.index(row, static_cast<int>(column)).data().toString();
}

std::vector<core::BatchLine> threeLines() {
    return {lineOf(support::aBatch().code("B260001A").stuck(24).looked(14, {.rooted = 18, .lost = 6})),
            lineOf(support::aBatch()
                       .code("B260002C")
                       .stuck(20)
                       .at(support::benchWest)
                       .looked(14, {.rooted = 4, .lost = 1, .withdrawn = 2})),
            lineOf(support::aBatch().code("B260003E").stuck(9).of(support::deutzia))};
}

}  // namespace

TEST(BatchTableModel, ShowsCountsThatAddUpAndARateWithItsCount) {
    BatchTableModel model;
    const pages::Obeys rules(&model);
    model.show(threeLines(), support::someShelves());
    model.sort(static_cast<int>(BatchColumn::Code));
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(text(model, 0, BatchColumn::StrikeRate), plot::percentText(18, 24));
    EXPECT_EQ(text(model, 0, BatchColumn::State), QStringLiteral("closed"));
    EXPECT_EQ(text(model, 1, BatchColumn::Undecided), QStringLiteral("13"));
    EXPECT_EQ(text(model, 2, BatchColumn::Rooted), QStringLiteral("0"));
}

TEST(BatchTableModel, FiltersByAnyPartOfCodePlantOrStation) {
    BatchTableModel model;
    const pages::Obeys rules(&model);
    const core::Shelves shelves = support::someShelves();
    model.show(threeLines(), shelves);
    model.setFilter(QStringLiteral("0002"));
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(text(model, 0, BatchColumn::Code), QStringLiteral("B260002C"));
    model.setFilter(QStringLiteral("NIKKO"));
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(text(model, 0, BatchColumn::Code), QStringLiteral("B260003E"));
    model.setFilter(QString::fromStdString(core::find(shelves.stations, support::benchWest)->name));
    EXPECT_EQ(model.rowCount(), 1);
    model.setFilter(QStringLiteral("0001 nikko"));
    EXPECT_EQ(model.rowCount(), 0);
    model.setFilter(QString());
    EXPECT_EQ(model.rowCount(), 3);
}

TEST(BatchTableModel, SortsRatesByTheirValueAndNotTheirText) {
    BatchTableModel model;
    const pages::Obeys rules(&model);
    model.show({lineOf(support::aBatch().code("a").stuck(100).looked(9, {.rooted = 100})),
                lineOf(support::aBatch().code("b").stuck(100).looked(9, {.rooted = 9})),
                lineOf(support::aBatch().code("c").stuck(10).looked(9, {.rooted = 2}))},
               support::someShelves());
    model.sort(static_cast<int>(BatchColumn::StrikeRate), Qt::DescendingOrder);
    EXPECT_EQ(text(model, 0, BatchColumn::Code), QStringLiteral("a"));
    EXPECT_EQ(text(model, 1, BatchColumn::Code), QStringLiteral("c"));
    EXPECT_EQ(text(model, 2, BatchColumn::Code), QStringLiteral("b"));
}

TEST(BatchTableModel, KeepsTrackOfARowWhileSorting) {
    BatchTableModel model;
    model.show(threeLines(), support::someShelves());
    model.sort(static_cast<int>(BatchColumn::Code));
    const QPersistentModelIndex first(model.index(0, 0));
    model.sort(static_cast<int>(BatchColumn::Code), Qt::DescendingOrder);
    EXPECT_EQ(first.row(), 2);
    EXPECT_EQ(first.data().toString(), QStringLiteral("B260001A"));
}

TEST(BatchTableModel, RefreshesWhatWasTouchedAndDropsWhatIsGone) {
    BatchTableModel model;
    const pages::Obeys rules(&model);
    std::vector<core::BatchLine> lines = threeLines();
    model.show(lines, support::someShelves());
    lines[0].tally.rooted = 20;
    model.refresh({lines[0].batch.id, lines[1].batch.id}, {lines[0]});
    EXPECT_EQ(model.total(), 2);
    EXPECT_EQ(text(model, model.rowOf(lines[0].batch.id), BatchColumn::Rooted), QStringLiteral("20"));
    EXPECT_EQ(model.rowOf(lines[1].batch.id), -1);
}

TEST(BatchTableModel, AnswersQuicklyOverTwentyThousandBatches) {
    std::vector<core::BatchLine> lines;
    for (int i = 0; i < 20'000; ++i) {
        core::Batch batch;
        batch.id = {i + 1};
        batch.code = "B26" + std::to_string(10'000 + i);
        batch.stuckOn = core::addDays(support::stickingDay(), i % 300);
        batch.plant = i % 2 == 0 ? support::hebe : support::deutzia;
        batch.station = support::tubNorth;
        batch.stuck = 50;
        lines.push_back(
            {.batch = batch, .tally = {.stuck = 50, .rooted = i % 51, .lost = 0, .withdrawn = 0, .lastCheckedOn = {}}});
    }
    BatchTableModel model;
    QElapsedTimer timer;
    timer.start();
    model.show(std::move(lines), support::someShelves());
    const auto shown = timer.restart();
    model.setFilter(QStringLiteral("hebe"));
    const auto filtered = timer.restart();
    model.sort(static_cast<int>(BatchColumn::StrikeRate));
    const auto sorted = timer.elapsed();
    RecordProperty("shown_ms", static_cast<int>(shown));
    RecordProperty("filtered_ms", static_cast<int>(filtered));
    RecordProperty("sorted_ms", static_cast<int>(sorted));
    EXPECT_EQ(model.rowCount(), 10'000);
    // Ten times what it takes on two slow cores: this is to catch a query a cell, not a slow day.
    EXPECT_LT(shown, 2000);
    EXPECT_LT(filtered, 500);
    EXPECT_LT(sorted, 500);
}
