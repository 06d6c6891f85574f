// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batches_page.h"

#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>

#include "app/desktop/batches/check_dialog.h"
#include "app/desktop/batches/close_dialog.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/printing/print_preview.h"
#include "app/plot/figure_view.h"
#include "app/report/sheet.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;
using pages::press;
using pages::type;

class Batches : public pages::Desk {
  protected:
    Batches() {
        fill(support::recordsOf({support::aBatch()
                                     .code("B260001A")
                                     .looked(14, {.rooted = 9, .lost = 2})
                                     .looked(28, {.rooted = 4})
                                     .looked(42, {.rooted = 6}),
                                 support::aBatch().code("B260002C").at(support::benchWest).looked(14, {.rooted = 20}),
                                 support::aBatch().code("B260003E").of(support::deutzia)}));
        page_ = std::make_unique<desktop::BatchesPage>(context());
        pages::show(*page_);
        page_->activated();
    }

    QTableView& table() { return named<QTableView>(*page_, "batchTable"); }
    QTableView& timeline() { return named<QTableView>(*page_, "timeline"); }
    /// Its row in the timeline, where the first is the sticking.
    void chooseCheck(int number) {
        timeline().selectRow(number + 1);
        timeline().setFocus();
    }
    QString shown(int row, int column) { return table().model()->index(row, column).data().toString(); }

    void open(const std::string& code) { page_->showBatch(logbook().batchWithCode(code)); }

    std::unique_ptr<desktop::BatchesPage> page_;
};

TEST_F(Batches, FiltersWhileOneTypes) {
    const pages::Obeys rules(table().model());
    page_->focusFilter();
    type(QStringLiteral("nikko"));
    ASSERT_EQ(table().model()->rowCount(), 1);
    EXPECT_EQ(shown(0, 0), QStringLiteral("B260003E"));
    EXPECT_EQ(named<QLabel>(*page_, "batchCounts").text(), QStringLiteral("1 of 3 batches"));
}

TEST_F(Batches, SaysThatNothingMatchesAndOffersToClearTheFilter) {
    page_->focusFilter();
    type(QStringLiteral("orchid"));
    EXPECT_TRUE(named<QLabel>(*page_, "emptyTitle").isVisible());
    EXPECT_TRUE(named<QLabel>(*page_, "emptyTitle").text().contains(QStringLiteral("orchid")));
    named<QPushButton>(*page_, "emptyButton").click();
    EXPECT_TRUE(table().isVisible());
    EXPECT_EQ(table().model()->rowCount(), 3);
}

TEST_F(Batches, TeachesWhileThereIsNoBatch) {
    fill(support::recordsOf({}));
    EXPECT_EQ(named<QLabel>(*page_, "emptyTitle").text(), QStringLiteral("No batches yet"));
    const QSignalSpy wanted(page_.get(), &desktop::Page::taskWanted);
    named<QPushButton>(*page_, "emptyButton").click();
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(Batches, CopiesTheSelectedRowsWithHeadings) {
    table().selectRow(0);
    table().setFocus();
    press(Qt::Key_C, Qt::ControlModifier);
    const QStringList lines = QGuiApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 2);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("Batch\tStuck on\tPlant\t")));
    EXPECT_TRUE(lines[1].startsWith(shown(0, 0) + QLatin1Char('\t')));
}

TEST_F(Batches, EnterOpensABatchAndEscapeComesBack) {
    table().selectRow(0);
    table().setFocus();
    const QString code = shown(0, 0);
    press(Qt::Key_Return);
    EXPECT_TRUE(named<QLabel>(*page_, "batchTitle").isVisible());
    EXPECT_EQ(named<QLabel>(*page_, "batchTitle").text(), code);
    press(Qt::Key_Escape);
    EXPECT_TRUE(table().isVisible());
    EXPECT_EQ(shown(table().currentIndex().row(), 0), code);
}

TEST_F(Batches, RefusesToChangeAFigureOfLastMonthThatLaterChecksForbid) {
    open("B260001A");
    const pages::Obeys rules(timeline().model());
    chooseCheck(0);
    press(Qt::Key_Return);
    auto* dialog = pages::opened<desktop::CheckDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    auto& rooted = named<QLineEdit>(*dialog, "count0");
    EXPECT_EQ(rooted.text(), QStringLiteral("9"));
    rooted.setFocus();
    rooted.selectAll();
    QTest::keyClicks(&rooted, QStringLiteral("15"));
    named<QPushButton>(*dialog, "saveCheck").click();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(rooted.text(), QStringLiteral("15"));
    QStringList sentences;
    for (const desktop::FaultLabel* label : dialog->findChildren<desktop::FaultLabel*>())
        sentences.append(label->fault());
    const QString said = sentences.join(QLatin1Char(' '));
    EXPECT_TRUE(said.contains(QStringLiteral("Rooted is 15"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("later checks account for 10"))) << said.toStdString();
    EXPECT_EQ(batch("B260001A").checks[0].rooted, 9);
}

TEST_F(Batches, CarriesThroughAChangeThatAllLaterChecksAllow) {
    open("B260001A");
    chooseCheck(0);
    press(Qt::Key_F2);
    auto* dialog = pages::opened<desktop::CheckDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "count0").selectAll();
    QTest::keyClicks(&named<QLineEdit>(*dialog, "count0"), QStringLiteral("11"));
    named<QPushButton>(*dialog, "saveCheck").click();
    EXPECT_EQ(batch("B260001A").checks[0].rooted, 11);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260001A").checks[0].rooted, 9);
    EXPECT_TRUE(timeline().model()->index(1, 3).data().toString().startsWith(QStringLiteral("+9 rooted")));
}

TEST_F(Batches, RecordsACheckOfToday) {
    open("B260003E");
    named<QPushButton>(*page_, "recordCheck").click();
    auto* dialog = pages::opened<desktop::CheckDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    QTest::keyClicks(&named<QLineEdit>(*dialog, "count0"), QStringLiteral("7"));
    EXPECT_TRUE(named<QLabel>(*dialog, "checkInWords").text().contains(QStringLiteral("7 rooted")));
    QTest::keyClick(&named<QLineEdit>(*dialog, "count0"), Qt::Key_Return);
    const core::BatchRecord record = batch("B260003E");
    ASSERT_EQ(record.checks.size(), 1u);
    EXPECT_EQ(record.checks[0].checkedOn, support::today());
    EXPECT_EQ(record.checks[0].rooted, 7);
    EXPECT_EQ(timeline().model()->rowCount(), 2);
}

TEST_F(Batches, DeletesACheckAtOnceAndUndoBringsItBack) {
    open("B260001A");
    chooseCheck(1);
    press(Qt::Key_Delete);
    EXPECT_EQ(batch("B260001A").checks.size(), 2u);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260001A").checks.size(), 3u);
    EXPECT_EQ(timeline().model()->rowCount(), 4);
}

TEST_F(Batches, DeletesABatchWithoutAskingAndUndoBringsItBackWithItsChecks) {
    open("B260001A");
    const core::BatchRecord before = batch("B260001A");
    named<QPushButton>(*page_, "deleteBatch").click();
    EXPECT_FALSE(logbook().batchWithCode("B260001A").isSet());
    EXPECT_TRUE(table().isVisible());
    EXPECT_EQ(table().model()->rowCount(), 2);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260001A"), before);
    EXPECT_EQ(table().model()->rowCount(), 3);
}

TEST_F(Batches, ClosesWithAReasonAndReopens) {
    open("B260003E");
    named<QPushButton>(*page_, "closeOrReopen").click();
    auto* dialog = pages::opened<desktop::CloseDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QComboBox>(*dialog, "closeReason").setEditText(QStringLiteral("frost in the tunnel"));
    named<QPushButton>(*dialog, "closeBatchAgreed").click();
    EXPECT_EQ(batch("B260003E").batch.closeReason, "frost in the tunnel");
    EXPECT_TRUE(named<QLabel>(*page_, "batchState").text().contains(QStringLiteral("frost in the tunnel")));
    named<QPushButton>(*page_, "closeOrReopen").click();
    EXPECT_FALSE(batch("B260003E").batch.closedOn.has_value());
}

TEST_F(Batches, ShowsABatchBesideTheOthersOfItsPlantAndMethod) {
    open("B260001A");
    ASSERT_TRUE(pages::comesTrue([&] { return named<QPushButton>(*page_, "printBatch").isEnabled(); }));
    auto& tabs = named<QTabWidget>(*page_, "batchFigures");
    auto& chart = named<desktop::FigurePanel>(*page_, "batchChart");
    tabs.setCurrentWidget(&chart);
    EXPECT_TRUE(chart.isVisibleTo(page_.get()));
    EXPECT_TRUE(chart.view()->accessibleName().startsWith(QStringLiteral("B260001A: ")))
        << chart.view()->accessibleName().toStdString();
    ASSERT_EQ(chart.table()->rowCount(), 1);
    EXPECT_EQ(chart.table()->index(0, 0).data().toString(), QStringLiteral("B260001A"));
}

TEST_F(Batches, SaysHowTheFiguresOfABatchAreWorkedOut) {
    open("B260001A");
    ASSERT_TRUE(pages::comesTrue([&] { return named<QPushButton>(*page_, "printBatch").isEnabled(); }));
    for (const char* name : {"batchCurve", "batchChart"}) {
        auto& panel = named<desktop::FigurePanel>(*page_, name);
        named<QTabWidget>(*page_, "batchFigures").setCurrentWidget(&panel);
        named<QPushButton>(panel, (std::string(name) + "WorkedOut").c_str()).click();
        auto* dialog = pages::opened<desktop::MethodDialog>(panel);
        ASSERT_NE(dialog, nullptr) << name;
        EXPECT_FALSE(dialog->shownText().contains(pages::aBrace())) << dialog->shownText().toStdString();
        dialog->close();
    }
}

TEST_F(Batches, PrintsTheSummaryOnceItIsWorkedOut) {
    open("B260001A");
    ASSERT_TRUE(pages::comesTrue([&] { return named<QPushButton>(*page_, "printBatch").isEnabled(); }));
    ASSERT_NE(page_->sheet(), nullptr);
    named<QPushButton>(*page_, "printBatch").click();
    ASSERT_NE(pages::opened<desktop::PrintPreview>(*page_), nullptr);
    page_->showBatch({});
    EXPECT_EQ(page_->sheet(), nullptr);
}

}  // namespace
