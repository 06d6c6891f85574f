// SPDX-License-Identifier: MIT
#include "app/desktop/losses/losses_page.h"

#include <gmock/gmock.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/losses/suspects_dialog.h"
#include "app/desktop/losses/unusual_table_model.h"
#include "app/desktop/registry.h"
#include "app/plot/figure_view.h"
#include "app/report/plain_text.h"
#include "app/report/sheet.h"
#include "db/actions/check_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::UnusualTableModel;
using pages::named;
using testing::HasSubstr;
using testing::Not;

/// Today is 30 June 2026. Eight batches of the last season that rooted well, and of this one an ordinary one and one that failed.
std::vector<core::BatchRecord> twoSeasons() {
    std::vector<core::BatchRecord> batches;
    const core::Date lastSeason = core::addDays(support::today(), -400);
    for (int i = 0; i < 8; ++i)
        batches.push_back(support::aBatch()
                              .stuckOn(core::addDays(lastSeason, 7 * i))
                              .looked(14, {.rooted = 8})
                              .looked(35, {.rooted = 7 + i % 3, .lost = 3, .cause = support::driedOut})
                              .closed(36));
    batches.push_back(support::aBatch()
                          .code("B260001A")
                          .stuckOn(core::addDays(support::today(), -90))
                          .looked(35, {.rooted = 16, .lost = 2}));
    batches.push_back(support::aBatch()
                          .code("B260002C")
                          .stuckOn(core::addDays(support::today(), -80))
                          .looked(35, {.rooted = 1, .lost = 20}));
    batches.push_back(support::aBatch()
                          .code("B260003D")
                          .at(support::benchWest)
                          .of(support::deutzia)
                          .stuckOn(core::addDays(support::today(), -60))
                          .looked(28, {.rooted = 12, .lost = 5, .cause = support::driedOut}));
    return batches;
}

class LossesOnPage : public pages::Desk {
  protected:
    void open(const std::vector<core::BatchRecord>& batches = twoSeasons()) {
        fill(support::recordsOf(batches));
        page_ = std::make_unique<desktop::LossesPage>(context());
        pages::show(*page_);
        page_->activated();
        if (!batches.empty()) {
            EXPECT_TRUE(isThere());
        }
    }

    bool isThere() {
        return pages::comesTrue([this] { return page_->sheet() != nullptr; });
    }

    void choose(const char* name, const QString& beginning) {
        auto& box = named<QComboBox>(*page_, name);
        const int place = box.findText(beginning, Qt::MatchStartsWith);
        ASSERT_GE(place, 0) << "nothing begins with " << beginning.toStdString();
        box.setCurrentIndex(place);
        emit box.activated(place);
        ASSERT_TRUE(isThere());
    }

    std::string label(const char* name) { return named<QLabel>(*page_, name).text().toStdString(); }
    QTableView& unusual() { return named<QTableView>(*page_, "unusualTable"); }
    QString cell(int row, int column) { return unusual().model()->index(row, column).data().toString(); }
    const plot::FigureTable& figures(const char* panel) {
        static plot::FigureTable table;
        table = named<desktop::FigurePanel>(*page_, panel).view()->figure()->table();
        return table;
    }

    std::unique_ptr<desktop::LossesPage> page_;
};

TEST_F(LossesOnPage, SaysWhatWouldBeHereWhereThereAreNoBatches) {
    open({});
    EXPECT_EQ(label("lossesEmptyTitle"), "No batches yet");
    EXPECT_EQ(page_->sheet(), nullptr);
    const QSignalSpy wanted(page_.get(), &desktop::Page::taskWanted);
    QTest::mouseClick(&named<QPushButton>(*page_, "lossesNewSession"), Qt::LeftButton);
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.front().front().toString(), desktop::task::session);
}

TEST_F(LossesOnPage, ShowsWhatThisSeasonWasLostToWithItsCounts) {
    open();
    EXPECT_EQ(named<QComboBox>(*page_, "lossesSpan").currentText(), QStringLiteral("this season (2026)"));
    EXPECT_THAT(label("lossesCovered"), HasSubstr("27 of 72"));
    const plot::FigureTable causes = figures("lossPareto");
    ASSERT_EQ(causes.rows.size(), 2u);
    EXPECT_EQ(causes.rows[0][1].toInt(), 22);
    EXPECT_EQ(causes.rows[1][1].toInt(), 5);
    EXPECT_EQ(figures("lossByStation").rows.size(), 2u);
    EXPECT_GE(figures("lossByMonth").rows.size(), 3u);
}

TEST_F(LossesOnPage, SaysOfEachFigureHowItIsWorkedOut) {
    open();
    choose("lossesSpan", QStringLiteral("all"));
    for (const char* figure : {"lossPareto", "lossByMonth", "lossByStation", "lossChart"})
        EXPECT_TRUE(named<QPushButton>(*page_, (std::string(figure) + "WorkedOut").c_str()).isVisibleTo(page_.get()))
            << figure;
}

TEST_F(LossesOnPage, GoesBySpanPlantAndMethod) {
    open();
    choose("lossesSpan", QStringLiteral("all records"));
    EXPECT_THAT(label("lossesCovered"), HasSubstr("51 of 264"));
    choose("lossesPlant", QStringLiteral("Deutzia"));
    EXPECT_THAT(label("lossesCovered"), HasSubstr("5 of 24"));
    choose("lossesPlant", QStringLiteral("all plants"));
    choose("lossesMethod", QStringLiteral("aerated"));
    EXPECT_THAT(label("lossesCovered"), HasSubstr("46 of 240"));
    choose("lossesSpan", QStringLiteral("last 12 months"));
    EXPECT_THAT(label("lossesCovered"), Not(HasSubstr("46 of 240")));
}

TEST_F(LossesOnPage, ListsBatchesThatLuckAloneWouldSeldomBring) {
    open();
    const pages::Obeys rules(unusual().model());
    ASSERT_EQ(unusual().model()->rowCount(), 1);
    EXPECT_EQ(cell(0, UnusualTableModel::Code), QStringLiteral("B260002C"));
    EXPECT_EQ(cell(0, UnusualTableModel::Rooted), QStringLiteral("1 of 24 by day 35"));
    EXPECT_THAT(cell(0, UnusualTableModel::ByLuck).toStdString(), HasSubstr("1 in "));
    EXPECT_THAT(label("unusualWords"), HasSubstr("1 in 100"));
}

TEST_F(LossesOnPage, LeadsFromTheListToTheSuspectsAndToTheBatch) {
    open();
    unusual().setFocus();
    pages::press(Qt::Key_Return);
    auto* dialog = pages::opened<desktop::SuspectsDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(named<QLabel>(*dialog, "suspectsTitle").text(), QStringLiteral("B260002C"));
    QSignalSpy wanted(page_.get(), &desktop::Page::batchWanted);
    QTest::mouseClick(&named<QPushButton>(*dialog, "suspectsBatch"), Qt::LeftButton);
    EXPECT_EQ(wanted.size(), 1);
    QTest::mouseClick(&named<QPushButton>(*page_, "unusualBatch"), Qt::LeftButton);
    ASSERT_EQ(wanted.size(), 2);
    EXPECT_EQ(wanted[0][0], wanted[1][0]);
}

TEST_F(LossesOnPage, SaysSoWhereNothingIsOutOfTheOrdinary) {
    open();
    choose("lossesPlant", QStringLiteral("Deutzia"));
    EXPECT_FALSE(unusual().isVisibleTo(page_.get()));
    EXPECT_FALSE(named<QPushButton>(*page_, "unusualSuspects").isVisibleTo(page_.get()));
    EXPECT_THAT(label("unusualWords"), HasSubstr("No batch of this time"));
}

TEST_F(LossesOnPage, SaysSoWhereNothingWasLost) {
    open({support::aBatch().stuckOn(core::addDays(support::today(), -30)).looked(14, {.rooted = 9})});
    EXPECT_THAT(label("lossesCovered"), HasSubstr("(0 of 24)"));
    EXPECT_THAT(named<desktop::FigurePanel>(*page_, "lossPareto").view()->figure()->sentence().toStdString(),
                HasSubstr("nothing was lost"));
    EXPECT_THAT(label("lossChartWords"), HasSubstr("A chart needs two batches"));
    EXPECT_FALSE(named<desktop::FigurePanel>(*page_, "lossChart").isVisibleTo(page_.get()));
}

TEST_F(LossesOnPage, ChartsThePlantAndMethodWithMostBatchesAndAnyOther) {
    std::vector<core::BatchRecord> batches = twoSeasons();
    batches.push_back(support::aBatch()
                          .at(support::benchWest)
                          .of(support::deutzia)
                          .stuckOn(core::addDays(support::today(), -50))
                          .looked(28, {.rooted = 14}));
    open(batches);
    auto& charts = named<QComboBox>(*page_, "lossChartOf");
    ASSERT_EQ(charts.count(), 2);
    EXPECT_THAT(charts.currentText().toStdString(), HasSubstr("10 batches"));
    EXPECT_EQ(figures("lossChart").rows.size(), 12u) << "ten batches, and the rates before and after the turn";
    choose("lossChartOf", QStringLiteral("Deutzia"));
    EXPECT_TRUE(pages::comesTrue([this] { return figures("lossChart").rows.size() == 2; }));
    EXPECT_THAT(label("lossChartWords"), HasSubstr("whatever the time chosen above"));
}

TEST_F(LossesOnPage, FollowsTheLogbookAndUndo) {
    open();
    const std::string before = label("lossesCovered");
    core::Check check = support::aCheck(support::today(), {.lost = 3});
    check.batch = batch("B260001A").batch.id;
    ASSERT_TRUE(workspace_
                    .run([&](db::Logbook& logbook) {
                        return db::recordChecks(logbook, {{.check = check, .closesBatch = false, .closeReason = {}}},
                                                support::today());
                    })
                    .isDone);
    ASSERT_TRUE(pages::comesTrue([this] { return label("lossesCovered").find("30 of 72") != std::string::npos; }));
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(pages::comesTrue([&] { return label("lossesCovered") == before; }));
}

TEST_F(LossesOnPage, PrintsWhatItShows) {
    open();
    const std::string text = report::plainText(*page_->sheet()).toStdString();
    for (const char* words :
         {"Losses", "this season (2026)", "27 of 72", "B260002C", "OUT OF THE ORDINARY", "LOST TO WHAT, WHEN AND WHERE",
          "BATCH BY BATCH", "WHAT WENT WITH ROOTING", "HOW THIS WAS WORKED OUT"})
        EXPECT_THAT(text, HasSubstr(words));
}

}  // namespace
