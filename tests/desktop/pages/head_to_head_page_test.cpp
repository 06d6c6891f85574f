// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/head_to_head_page.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/head_to_head/arm_table_model.h"
#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/head_to_head/pair_figures.h"
#include "app/desktop/printing/print_preview.h"
#include "app/plot/number_text.h"
#include "app/report/sheet.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class HeadToHead : public pages::Desk {
  protected:
    HeadToHead() {
        fill(support::recordsOf(
            {support::aBatch().looked(14, {.rooted = 6, .lost = 4}).looked(28, {.rooted = 5, .lost = 3}),
             support::aBatch().looked(14, {.rooted = 8}).looked(28, {.rooted = 7, .lost = 2}),
             support::aBatch().at(support::benchWest).looked(14, {.rooted = 12}).looked(28, {.rooted = 8}),
             support::aBatch()
                 .at(support::benchEast)
                 .of(support::deutzia)
                 .looked(14, {.rooted = 9, .withdrawn = 2})
                 .looked(28, {.rooted = 6})}));
    }

    void open() {
        page_ = std::make_unique<desktop::HeadToHeadPage>(context());
        pages::show(*page_);
        page_->activated();
        ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    }

    core::Comparison expected(const core::ComparisonQuestion& question = {}) {
        return core::compare(question, workspace_.shelves(), logbook().batchRecords()).value();
    }

    QString cell(int row, int column) {
        return named<QTableView>(*page_, "armTable").model()->index(row, column).data().toString();
    }

    std::unique_ptr<desktop::HeadToHeadPage> page_;
};

TEST_F(HeadToHead, ShowsTheVeryFiguresOfTheComparison) {
    open();
    const pages::Obeys rules(named<QTableView>(*page_, "armTable").model());
    const core::Comparison comparison = expected();
    ASSERT_EQ(comparison.arms.size(), 2u);
    for (int row = 0; row < 2; ++row) {
        const core::Arm& arm = comparison.arms[static_cast<std::size_t>(row)];
        EXPECT_EQ(cell(row, desktop::ArmTableModel::Name), QString::fromStdString(arm.name));
        EXPECT_EQ(cell(row, desktop::ArmTableModel::Stuck).toInt(), arm.stuck);
        EXPECT_EQ(cell(row, desktop::ArmTableModel::Stuck).toInt(),
                  cell(row, desktop::ArmTableModel::Rooted).toInt() + cell(row, desktop::ArmTableModel::Lost).toInt() +
                      cell(row, desktop::ArmTableModel::Withdrawn).toInt() +
                      cell(row, desktop::ArmTableModel::Undecided).toInt());
        EXPECT_EQ(cell(row, desktop::ArmTableModel::Rate), plot::percentText(*arm.rate, arm.rooted, arm.assessed));
        EXPECT_EQ(cell(row, desktop::ArmTableModel::AsCounted), plot::limitsText(*arm.asCounted));
    }
    EXPECT_EQ(named<QLabel>(*page_, "comparisonInWords").text(), QString::fromStdString(comparison.inWords));
    for (const std::string& caution : comparison.cautions)
        EXPECT_TRUE(named<QLabel>(*page_, "comparisonCautions").text().contains(QString::fromStdString(caution)));
}

TEST_F(HeadToHead, ShowsAllFiguresOfThePairBehindAButton) {
    open();
    auto& table = named<QTableView>(*page_, "pairTable");
    const pages::Obeys rules(table.model());
    EXPECT_FALSE(table.isVisible());
    named<QPushButton>(*page_, "allFigures").click();
    EXPECT_TRUE(table.isVisible());
    const plot::FigureTable figures = desktop::pairFigures(expected(), 0);
    ASSERT_EQ(table.model()->rowCount(), static_cast<int>(figures.rows.size()));
    for (int row = 0; row < table.model()->rowCount(); ++row)
        EXPECT_EQ(table.model()->index(row, 1).data().toString(), figures.rows[static_cast<std::size_t>(row)][1]);
}

TEST_F(HeadToHead, AsksAgainForAnotherPlantAndHorizon) {
    open();
    auto& plants = named<QComboBox>(*page_, "plant");
    plants.setCurrentIndex(plants.findData(QVariant::fromValue<qlonglong>(support::hebe.value)));
    auto& horizon = named<QLineEdit>(*page_, "horizon");
    QTest::keyClicks(&horizon, QStringLiteral("14"));
    QTest::keyClick(&horizon, Qt::Key_Return);
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    core::ComparisonQuestion question;
    question.plant = support::hebe;
    question.horizonDay = 14;
    const core::Comparison comparison = expected(question);
    for (int row = 0; row < static_cast<int>(comparison.arms.size()); ++row)
        EXPECT_EQ(cell(row, desktop::ArmTableModel::Rooted).toInt(),
                  comparison.arms[static_cast<std::size_t>(row)].rooted);
    EXPECT_TRUE(named<QLabel>(*page_, "horizonReason").text().contains(QStringLiteral("14")));
}

TEST_F(HeadToHead, MarksAHorizonThatCannotBe) {
    open();
    auto& horizon = named<QLineEdit>(*page_, "horizon");
    QTest::keyClicks(&horizon, QStringLiteral("0"));
    QTest::keyClick(&horizon, Qt::Key_Return);
    QStringList sentences;
    for (const auto* label : page_->findChildren<desktop::FaultLabel*>()) sentences.append(label->fault());
    EXPECT_TRUE(sentences.join(QLatin1Char(' ')).contains(QStringLiteral("from 1 to")))
        << sentences.join(' ').toStdString();
    EXPECT_EQ(horizon.text(), QStringLiteral("0"));
}

TEST_F(HeadToHead, TheNewestQuestionIsTheOneThatIsAnswered) {
    desktop::HeadToHeadModel model(workspace_);
    model.setWatched(true);
    for (int day = 1; day <= 12; ++day) model.setHorizon(day);
    ASSERT_TRUE(pages::comesTrue([&] { return !model.view().isWorking; }));
    ASSERT_NE(model.view().comparison, nullptr);
    EXPECT_EQ(model.view().comparison->horizonDay, 12);
}

TEST_F(HeadToHead, FollowsAnEditOfTheLogbook) {
    open();
    const QString before = cell(0, desktop::ArmTableModel::Stuck);
    EXPECT_TRUE(workspace_.undo());  // takes the records back that the desk was filled with
    ASSERT_TRUE(pages::comesTrue([&] { return named<QLabel>(*page_, "comparisonEmptyTitle").isVisible(); }));
    EXPECT_TRUE(workspace_.redo());
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    EXPECT_EQ(cell(0, desktop::ArmTableModel::Stuck), before);
}

TEST_F(HeadToHead, ShowsTheFiguresOfAPictureAsATable) {
    open();
    auto& panel = named<desktop::FigurePanel>(*page_, "curvesFigure");
    auto& table = named<QTableView>(panel, "curvesFigureTable");
    const pages::Obeys rules(table.model());
    named<QPushButton>(panel, "curvesFigureToggle").click();
    EXPECT_TRUE(table.isVisibleTo(&panel));
    EXPECT_GT(table.model()->rowCount(), 0);
}

TEST_F(HeadToHead, WritesThePdfOfTheComparison) {
    open();
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("comparison.pdf"));
    prompts_.willPickFileToSave(file);
    named<QPushButton>(*page_, "printComparison").click();
    auto* preview = pages::opened<desktop::PrintPreview>(*page_);
    ASSERT_NE(preview, nullptr);
    const QSignalSpy said(page_.get(), &desktop::Page::said);
    named<QPushButton>(*preview, "savePdf").click();
    QFile pdf(file);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
    ASSERT_EQ(said.count(), 1);
    EXPECT_TRUE(said.front().front().toString().contains(QStringLiteral("comparison.pdf")));
}

}  // namespace
