// SPDX-License-Identifier: MIT
#include "app/desktop/bench/bench_page.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTreeView>

#include "app/desktop/bench/attention_model.h"
#include "app/desktop/bench/fill_delegate.h"
#include "app/desktop/bench/station_model.h"
#include "app/desktop/registry.h"
#include "db/writer.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::comesTrue;
using pages::named;
using pages::press;

/// Eight earlier batches of 20 that rooted about 15, and one of which a single cutting has by the same day. Today is 30 June 2026.
std::vector<core::BatchRecord> oneFarBehind() {
    std::vector<core::BatchRecord> batches;
    for (const int rooted : {15, 16, 14, 15, 16, 15, 14, 15})
        batches.push_back(support::aBatch().stuck(20).looked(35, {.rooted = rooted}));
    batches.push_back(support::aBatch()
                          .code("BEHIND")
                          .stuck(20)
                          .stuckOn(core::addDays(support::stickingDay(), 60))
                          .looked(35, {.rooted = 1}));
    return batches;
}

class Bench : public pages::Desk {
  protected:
    void put(const std::vector<core::BatchRecord>& batches, const std::vector<core::Reading>& readings = {}) {
        core::Records records = support::recordsOf(batches);
        core::Station& tub = *std::ranges::find(records.shelves.stations, support::tubNorth, &core::Station::id);
        tub.rows = 6;
        tub.columns = 10;
        fill(records);
        static_cast<void>(logbook().act("readings", [&](db::Writer& writer) {
            for (const core::Reading& reading : readings) writer.add(reading);
        }));
        page_ = std::make_unique<desktop::BenchPage>(context());
        pages::show(*page_);
        page_->activated();
    }

    static core::Reading acidityOfTub(double value, int daysAgo) {
        const core::Date day = core::addDays(support::today(), -daysAgo);
        return {.station = support::tubNorth,
                .quantity = core::Quantity::SolutionPh,
                .readAt = std::chrono::sys_days(day) + std::chrono::hours(9),
                .value = value};
    }

    QTableView& attention() { return named<QTableView>(*page_, "benchAttention"); }
    QTableView& stations() { return named<QTableView>(*page_, "benchStations"); }
    QString state() { return named<QLabel>(*page_, "benchAttentionState").text(); }
    /// Once every open batch has been judged.
    bool hasJudged() {
        return comesTrue([this] { return !state().contains(QStringLiteral("Comparing")); });
    }
    QString why(int row) { return attention().model()->index(row, desktop::AttentionModel::Why).data().toString(); }

    std::unique_ptr<desktop::BenchPage> page_;
};

TEST_F(Bench, PointsOutABatchThatDoesWorseThanItsForerunnersAndLeadsToIt) {
    put(oneFarBehind());
    ASSERT_TRUE(hasJudged());
    const pages::Obeys rules(attention().model());
    ASSERT_EQ(attention().model()->rowCount(), 1);
    EXPECT_EQ(attention().model()->index(0, 0).data().toString(), QStringLiteral("BEHIND"));
    EXPECT_TRUE(why(0).startsWith(QStringLiteral("1 of 20 rooted by day 35; 8 batches before it: ")))
        << why(0).toStdString();
    const QSignalSpy wanted(page_.get(), &desktop::Page::batchWanted);
    attention().setFocus();
    attention().selectRow(0);
    press(Qt::Key_Return);
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted[0][0].value<core::BatchId>(), logbook().batchWithCode("BEHIND"));
}

TEST_F(Bench, SaysThatNothingIsOutOfTheOrdinary) {
    put({support::aBatch().stuck(20).looked(35, {.rooted = 15})});
    ASSERT_TRUE(hasJudged());
    EXPECT_EQ(attention().model()->rowCount(), 0);
    EXPECT_TRUE(state().startsWith(QStringLiteral("Nothing:"))) << state().toStdString();
}

TEST_F(Bench, JudgesAgainWhenACheckIsWrittenDownAndTakenBack) {
    put(oneFarBehind());
    ASSERT_TRUE(hasJudged());
    const auto outcome = workspace_.run([this](db::Logbook& logbook) -> core::Result<db::Changes> {
        core::Check check = batch("BEHIND").checks.front();
        check.rooted = 15;
        return logbook.act("correction", [&](db::Writer& writer) { writer.change(check); });
    });
    ASSERT_TRUE(outcome.isDone);
    EXPECT_TRUE(comesTrue([this] { return attention().model()->rowCount() == 0; }));
    workspace_.undo();
    EXPECT_TRUE(comesTrue([this] { return attention().model()->rowCount() == 1; }));
}

TEST_F(Bench, PointsOutAFreshReadingOutsideItsBandWithTheBand) {
    put({support::aBatch()}, {acidityOfTub(7.4, 1)});
    ASSERT_EQ(attention().model()->rowCount(), 1);
    EXPECT_EQ(why(0),
              QStringLiteral("solution pH 7.4, 27 hours ago; before roots: good at pH 5.6 to 6.2 (the trade's)"));
    const QSignalSpy wanted(page_.get(), &desktop::Page::placeWanted);
    emit attention().activated(attention().model()->index(0, 0));
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted[0][0].value<desktop::Place>(), desktop::placeOf(support::tubNorth));
}

TEST_F(Bench, LetsOldReadingsRest) {
    put({support::aBatch()}, {acidityOfTub(7.4, 30)});
    EXPECT_EQ(attention().model()->rowCount(), 0);
}

TEST_F(Bench, LetsReadingsOfEmptyStationsRest) {
    put({support::aBatch().at(support::benchWest)}, {acidityOfTub(7.4, 1)});
    EXPECT_EQ(attention().model()->rowCount(), 0);
}

TEST_F(Bench, ShowsHowFullAStationIsAndWhatWasReadThere) {
    put({support::aBatch().stuck(24).looked(14, {.rooted = 4, .lost = 9})}, {acidityOfTub(6.0, 1)});
    const pages::Obeys rules(stations().model());
    for (int row = 0; row < stations().model()->rowCount(); ++row) {
        if (stations().model()->index(row, desktop::StationModel::Name).data() != QStringLiteral("Tub north")) continue;
        const QModelIndex places = stations().model()->index(row, desktop::StationModel::Places);
        EXPECT_EQ(places.data().toString(), QStringLiteral("45 of 60 free")) << "11 undecided and 4 rooted stand there";
        EXPECT_DOUBLE_EQ(places.data(desktop::FillDelegate::shareRole).toDouble(), 0.25);
        EXPECT_EQ(stations().model()->index(row, desktop::StationModel::Readings).data().toString(),
                  QStringLiteral("pH 6.0"));
        return;
    }
    FAIL() << "the tub is not there";
}

TEST_F(Bench, OffersThreeWaysToBeginInAnEmptyLogbook) {
    put({});
    EXPECT_TRUE(named<QLabel>(*page_, "benchEmpty").isVisible());
    const QSignalSpy task(page_.get(), &desktop::Page::taskWanted), tables(page_.get(), &desktop::Page::tablesWanted);
    named<QPushButton>(*page_, "benchFirstSession").click();
    named<QPushButton>(*page_, "benchFirstStation").click();
    named<QPushButton>(*page_, "benchFirstTables").click();
    ASSERT_EQ(task.size(), 2);
    EXPECT_EQ(task[0][0].toString(), desktop::task::session);
    EXPECT_EQ(task[1][0].toString(), desktop::task::station);
    EXPECT_EQ(tables.size(), 1);
}

}  // namespace
