// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plan_page.h"

#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

#include "app/desktop/plan/plan_table_model.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/report/plain_text.h"
#include "core/comparison/spread.h"
#include "core/planning/plan_answer.h"
#include "gmock/gmock.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::PlanTableModel;
using pages::named;
using testing::HasSubstr;

/// Two batches of 24 of one plant, looked at to the end: 31 of 48 rooted.
class Plans : public pages::Desk {
  protected:
    Plans() {
        fill(support::recordsOf(
            {support::aBatch().looked(14, {.rooted = 9, .lost = 2}).looked(35, {.rooted = 7, .lost = 2}),
             support::aBatch().looked(14, {.rooted = 8}).looked(35, {.rooted = 7, .lost = 5})}));
        page_ = std::make_unique<desktop::PlanPage>(context());
        pages::show(*page_);
        page_->activated();
    }

    QTableView& table() { return named<QTableView>(*page_, "planTable"); }
    QString cell(int row, int column) { return table().model()->index(row, column).data().toString(); }
    bool hasRows(int rows) {
        return pages::comesTrue([&] { return table().model()->rowCount() == rows; });
    }
    QDialog* form() { return pages::opened<QDialog>(*page_); }

    /// As a grower does: Insert, plant, method, how many, how sure, by when, Enter.
    void plan(const QString& wanted, const QString& day) {
        QTest::mouseClick(
            &named<QPushButton>(*page_,
                                page_->findChild<QPushButton*>("planFirst")->isVisible() ? "planFirst" : "planNew"),
            Qt::LeftButton);
        ASSERT_NE(form(), nullptr);
        named<QComboBox>(*form(), "planPlant")
            .setCurrentText(
                QString::fromStdString(core::fullName(*core::find(workspace_.shelves().plants, support::hebe))));
        QTest::keyClicks(&named<QLineEdit>(*form(), "planWanted"), wanted);
        named<QLineEdit>(*form(), "planNeedBy").clear();  // a new plan begins with the day of the one before
        QTest::keyClicks(&named<QLineEdit>(*form(), "planNeedBy"), day);
        named<QPushButton>(*form(), "formSave").click();
    }

    std::unique_ptr<desktop::PlanPage> page_;
};

TEST_F(Plans, SayHowManyToStickAndWhenFromTheLogbooksOwnRecords) {
    plan("24", "2026-10-01");
    ASSERT_TRUE(hasRows(1));
    const core::Plan kept = workspace_.shelves().plans.at(0);
    EXPECT_EQ(kept.wanted, 24);
    const auto records = logbook().batchRecords();
    const core::PlanAnswer expected = core::answerTo(
        kept, workspace_.shelves(), records,
        core::pooledSpreadOf(records, workspace_.shelves().facts.horizonDay, workspace_.shelves().facts.level),
        workspace_.today());
    ASSERT_TRUE(expected.howMany && expected.howMany->stick);
    EXPECT_GT(*expected.howMany->stick, 31);  // 24 over the rate of 31 of 48, and more for what is not known
    EXPECT_EQ(cell(0, PlanTableModel::Stick), QString::number(*expected.howMany->stick));
    EXPECT_EQ(named<QLabel>(*page_, "planInWords").text().toStdString(), expected.howMany->answerInWords);
    EXPECT_EQ(named<QLabel>(*page_, "planWhen").text().toStdString(), (*expected.when)->answerInWords);
    EXPECT_THAT(named<QLabel>(*page_, "planRestsOn").text().toStdString(), HasSubstr("31"));
}

TEST_F(Plans, WhatToStickFirstStandsFirst) {
    plan("10", "2027-03-01");
    ASSERT_TRUE(hasRows(1));
    plan("12", "2026-11-01");
    ASSERT_TRUE(hasRows(2));
    EXPECT_EQ(cell(0, PlanTableModel::Wanted), "12");
    EXPECT_EQ(cell(1, PlanTableModel::Wanted), "10");
}

TEST_F(Plans, AnswerWhileTheFormIsOpen) {
    QTest::mouseClick(&named<QPushButton>(*page_, "planFirst"), Qt::LeftButton);
    named<QComboBox>(*form(), "planPlant")
        .setCurrentText(
            QString::fromStdString(core::fullName(*core::find(workspace_.shelves().plants, support::hebe))));
    QTest::keyClicks(&named<QLineEdit>(*form(), "planWanted"), "24");
    EXPECT_TRUE(pages::comesTrue([&] { return named<QLabel>(*form(), "planAnswer").text().contains("24"); }));
    EXPECT_TRUE(named<QLabel>(*form(), "planAnswer").text().contains(" may come of it (95 % prediction interval)."))
        << "beside what to expect: " << named<QLabel>(*form(), "planAnswer").text().toStdString();
    EXPECT_TRUE(workspace_.shelves().plans.empty());
}

TEST_F(Plans, RefuseWhatCannotBeWithTheReasonInTheForm) {
    QTest::mouseClick(&named<QPushButton>(*page_, "planFirst"), Qt::LeftButton);
    QDialog* open = form();
    named<QComboBox>(*open, "planPlant")
        .setCurrentText(
            QString::fromStdString(core::fullName(*core::find(workspace_.shelves().plants, support::hebe))));
    QTest::keyClicks(&named<QLineEdit>(*open, "planWanted"), "0");
    named<QLineEdit>(*open, "planSure").setText("120");
    named<QLineEdit>(*open, "planPottedLive").setText("many");
    named<QLineEdit>(*open, "planNeedBy").setText("31.2");
    named<QPushButton>(*open, "formSave").click();
    EXPECT_TRUE(open->isVisible());
    QStringList faults;
    for (desktop::FaultLabel* label : open->findChildren<desktop::FaultLabel*>())
        if (!label->fault().isEmpty()) faults << label->fault();
    EXPECT_EQ(faults.size(), 4) << faults.join('\n').toStdString();
    EXPECT_TRUE(workspace_.shelves().plans.empty());
}

TEST_F(Plans, AreRemovedByOneKeyAndComeBack) {
    plan("24", "2026-10-01");
    ASSERT_TRUE(hasRows(1));
    table().setFocus();
    QTest::keyClick(&table(), Qt::Key_Delete);
    EXPECT_TRUE(workspace_.shelves().plans.empty());
    EXPECT_TRUE(hasRows(0));
    workspace_.undo();
    EXPECT_EQ(workspace_.shelves().plans.size(), 1u);
    EXPECT_TRUE(hasRows(1));
}

TEST_F(Plans, GiveTheirDaysToACalendar) {
    plan("24", "2026-10-01");
    ASSERT_TRUE(hasRows(1));
    ASSERT_TRUE(pages::comesTrue([&] { return named<QPushButton>(*page_, "planCalendar").isEnabled(); }));
    const QTemporaryDir folder;
    prompts_.willPickFileToSave(folder.filePath("days.ics"));
    named<QPushButton>(*page_, "planCalendar").click();
    QFile file(folder.filePath("days.ics"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const std::string text = file.readAll().toStdString();
    EXPECT_THAT(text, HasSubstr("BEGIN:VCALENDAR"));
    EXPECT_THAT(text, HasSubstr("20261001"));
}

TEST_F(Plans, PrintWhatThePageShows) {
    EXPECT_EQ(page_->sheet(), nullptr);
    plan("24", "2026-10-01");
    ASSERT_TRUE(hasRows(1));
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    const std::string text = report::plainText(*page_->sheet()).toStdString();
    EXPECT_THAT(text, HasSubstr(named<QLabel>(*page_, "planInWords").text().toStdString()));
    EXPECT_THAT(text, HasSubstr("1 October 2026"));
}

}  // namespace
