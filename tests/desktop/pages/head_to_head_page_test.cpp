// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/head_to_head_page.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/head_to_head/arm_table_model.h"
#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/head_to_head/pair_figures.h"
#include "app/desktop/head_to_head/pair_table.h"
#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/plot/figure_view.h"
#include "app/plot/number_text.h"
#include "app/plot/speed_figure.h"
#include "app/report/sheet.h"
#include "db/actions/records_actions.h"
#include "gmock/gmock.h"
#include "tests/desktop/pages/desk.h"
#include "tests/support/scratch_folder.h"

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

    bool hasRowWith(const QString& words) {
        const QAbstractItemModel* rows = named<QTableView>(*page_, "pairTable").model();
        for (int row = 0; row < rows->rowCount(); ++row)
            if (rows->index(row, 0).data().toString().contains(words)) return true;
        return false;
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
    const plot::FigureTable figures = desktop::pairFigures(expected(), 0).table;
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

TEST_F(HeadToHead, StoppedKeepsTheFormerAnswerSaysSoAndGoesOnWhenAsked) {
    open();
    const QString before = named<QLabel>(*page_, "comparisonInWords").text();
    const QString rooted = cell(0, desktop::ArmTableModel::Rooted);
    auto& horizon = named<QLineEdit>(*page_, "horizon");
    QTest::keyClicks(&horizon, QStringLiteral("14"));
    QTest::keyClick(&horizon, Qt::Key_Return);
    named<QPushButton>(*page_, "stopWork").click();  // no event came in between: the answer can't be there yet
    EXPECT_TRUE(named<QWidget>(*page_, "stopped").isVisible());
    EXPECT_FALSE(named<QPushButton>(*page_, "printComparison").isEnabled());
    EXPECT_EQ(page_->sheet(), nullptr) << "what stands there answers another question";
    EXPECT_EQ(named<QLabel>(*page_, "comparisonInWords").text(), before);
    EXPECT_EQ(cell(0, desktop::ArmTableModel::Rooted), rooted);
    named<QPushButton>(*page_, "workItOut").click();
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    EXPECT_FALSE(named<QWidget>(*page_, "stopped").isVisible());
    EXPECT_NE(cell(0, desktop::ArmTableModel::Rooted), rooted);
}

TEST_F(HeadToHead, StoppedBeforeTheFirstAnswerSaysNothingElse) {
    page_ = std::make_unique<desktop::HeadToHeadPage>(context());
    page_->show();
    named<QPushButton>(*page_, "stopWork").click();
    EXPECT_EQ(named<QLabel>(*page_, "comparisonEmptyTitle").text(), QStringLiteral("Stopped"));
    EXPECT_TRUE(named<QWidget>(*page_, "stopped").isVisibleTo(page_.get()));
    named<QPushButton>(*page_, "workItOut").click();
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
}

TEST_F(HeadToHead, ReadsTheRecordsOfAFileAwayFromTheWindow) {
    const support::ScratchFolder folder;
    const core::Records records = logbook().records();
    db::Logbook file = db::Logbook::create(folder / "season.strikebook", records.shelves.facts,
                                           {.clock = workspace_.clock(), .author = "Tester"});
    ASSERT_TRUE(db::addRecords(file, records, "records of a test", true));
    workspace_.use(std::move(file));
    desktop::HeadToHeadModel model(workspace_);
    model.setWatched(true);
    EXPECT_TRUE(model.view().isReading) << "it came back before they were read";
    EXPECT_TRUE(model.view().isWorking);
    ASSERT_TRUE(pages::comesTrue([&] { return !model.view().isWorking; }));
    ASSERT_NE(model.view().comparison, nullptr);
    EXPECT_EQ(model.view().comparison->inWords, expected().inWords);
    workspace_.use(db::Logbook::inMemory(records.shelves.facts, {.clock = workspace_.clock(), .author = {}}));
    EXPECT_EQ(model.view().comparison, nullptr) << "what it said was of another logbook";
}

TEST_F(HeadToHead, ShowsThatItIsAtWork) {
    open();
    named<QTimer>(*page_, "untilProgress").setInterval(0);
    named<QComboBox>(*page_, "level").setCurrentIndex(1);
    EXPECT_TRUE(pages::comesTrue([&] { return named<QWidget>(*page_, "progress").isVisible(); }));
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    EXPECT_FALSE(named<QWidget>(*page_, "progress").isVisible());
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

TEST_F(HeadToHead, AsksForTheChosenInterval) {
    open();
    auto& intervals = named<QComboBox>(*page_, "interval");
    ASSERT_EQ(intervals.count(), 1 + static_cast<int>(core::everyRateInterval.size())) << "and the logbook's own";
    for (const core::RateInterval interval : core::everyRateInterval) {
        intervals.setCurrentIndex(intervals.findData(static_cast<int>(interval)));
        ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
        core::ComparisonQuestion question;
        question.interval = interval;
        EXPECT_EQ(cell(0, desktop::ArmTableModel::AsCounted), plot::limitsText(*expected(question).arms[0].asCounted));
        const QString method = named<desktop::FigurePanel>(*page_, "ratesFigure").view()->accessibleDescription();
        EXPECT_TRUE(method.contains(QString::fromUtf8(core::nameOf(interval)))) << method.toStdString();
    }
}

TEST_F(HeadToHead, AsksWhetherOneIsAsGoodWithinAMargin) {
    open();
    EXPECT_FALSE(hasRowWith(QStringLiteral("as good as")));
    QTest::keyClicks(&named<QLineEdit>(*page_, "margin"), QStringLiteral("12,5"));
    QTest::keyClick(&named<QLineEdit>(*page_, "margin"), Qt::Key_Return);
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    EXPECT_TRUE(hasRowWith(QStringLiteral("within 12.5 of 100")));
    core::ComparisonQuestion question;
    question.margin = 0.125;
    EXPECT_EQ(named<QLabel>(*page_, "comparisonInWords").text(), QString::fromStdString(expected(question).inWords));
    named<QLineEdit>(*page_, "margin").clear();
    QTest::keyClick(&named<QLineEdit>(*page_, "margin"), Qt::Key_Return);
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    EXPECT_FALSE(hasRowWith(QStringLiteral("as good as")));
}

TEST_F(HeadToHead, RefusesAMarginInASentence) {
    open();
    auto& margin = named<QLineEdit>(*page_, "margin");
    for (const char* typed : {"0", "0.5", "100", "-5", "ten"}) {
        margin.clear();
        QTest::keyClicks(&margin, QLatin1String(typed));
        QTest::keyClick(&margin, Qt::Key_Return);
        QStringList sentences;
        for (const auto* label : page_->findChildren<desktop::FaultLabel*>()) sentences.append(label->fault());
        const std::string said = sentences.join(QLatin1Char(' ')).toStdString();
        EXPECT_THAT(said, testing::HasSubstr("The margin (as good as, within)"));
        EXPECT_THAT(said, testing::HasSubstr(typed));
        EXPECT_THAT(said, testing::HasSubstr("from 1 to 99"));
        EXPECT_EQ(margin.text(), QLatin1String(typed));
    }
    margin.clear();
    QTest::keyClick(&margin, Qt::Key_Return);
    for (const auto* label : page_->findChildren<desktop::FaultLabel*>()) EXPECT_EQ(label->fault(), QString());
}

TEST_F(HeadToHead, ChoosesInTheOrderOfReading) {
    open();
    const QStringList wanted{"factor", "plant", "trial", "horizon", "level", "interval", "margin", "printComparison"};
    QStringList visited;
    for (QWidget* widget = &named<QComboBox>(*page_, "factor"); visited.size() < wanted.size();
         widget = widget->nextInFocusChain())
        if (wanted.contains(widget->objectName())) visited << widget->objectName();
    EXPECT_EQ(visited, wanted) << visited.join(u' ').toStdString();
}

TEST_F(HeadToHead, TellsOfEachFieldWhatItIs) {
    open();
    for (const char* name : {"factor", "plant", "trial", "horizon", "level", "interval", "margin"}) {
        const auto* field = page_->findChild<QWidget*>(QLatin1String(name));
        ASSERT_NE(field, nullptr) << name;
        const QList<QLabel*> labels = page_->findChildren<QLabel*>();
        EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [field](const QLabel* label) {
            return label->buddy() == field;
        })) << name;
    }
}

TEST_F(HeadToHead, ShowsWhoRootsAndHowFastAndWhatWentWithIt) {
    open();
    const core::Comparison comparison = expected();
    auto& speed = named<desktop::FigurePanel>(*page_, "speedFigure");
    EXPECT_EQ(speed.view()->accessibleName(), plot::speedFigure(comparison)->sentence());
    EXPECT_TRUE(named<QLabel>(*page_, "goesWithFigureWords")
                    .text()
                    .startsWith(QString::fromStdString(comparison.goesWith.inWords)));
    EXPECT_EQ(named<desktop::FigurePanel>(*page_, "goesWithFigure").isVisibleTo(page_.get()),
              !comparison.goesWith.associations.empty());
    EXPECT_FALSE(named<QLabel>(*page_, "severalArms").isVisibleTo(page_.get()));
}

TEST_F(HeadToHead, SaysOnEveryFigureHowItIsWorkedOut) {
    open();
    for (const char* name : {"ratesFigure", "differenceFigure", "curvesFigure", "speedFigure", "forestFigure"}) {
        auto& panel = named<desktop::FigurePanel>(*page_, name);
        auto& button = named<QPushButton>(panel, (std::string(name) + "WorkedOut").c_str());
        ASSERT_TRUE(button.isVisibleTo(&panel)) << name;
        button.click();
        auto* dialog = pages::opened<desktop::MethodDialog>(panel);
        ASSERT_NE(dialog, nullptr) << name;
        EXPECT_FALSE(dialog->shownText().isEmpty()) << name;
        EXPECT_FALSE(dialog->shownText().contains(pages::aBrace())) << dialog->shownText().toStdString();
        dialog->close();
    }
}

TEST_F(HeadToHead, ExplainsAFigureOfTheTableOnEnter) {
    open();
    named<QPushButton>(*page_, "allFigures").click();
    auto& table = named<desktop::PairTable>(*page_, "pairTable");
    table.setFocus();
    table.selectRow(1);  // Newcombe's
    QTest::keyClick(&table, Qt::Key_Return);
    auto* dialog = pages::opened<desktop::MethodDialog>(table);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->shownText().contains(QStringLiteral("Newcombe"))) << dialog->shownText().toStdString();
    dialog->close();
}

TEST_F(HeadToHead, HasAPageOfTheMethodsForEachRowThatHasAFigure) {
    core::ComparisonQuestion question;
    question.margin = 0.1;
    const core::Comparison comparison = expected(question);
    const desktop::PairFigures figures = desktop::pairFigures(comparison, 0);
    ASSERT_EQ(figures.pages.size(), static_cast<qsizetype>(figures.table.rows.size()));
    for (const QString& page : figures.pages) EXPECT_FALSE(report::methodTitle(page).isEmpty()) << page.toStdString();
    for (const report::MethodNote& note : desktop::notesOnPair(comparison, 0))
        EXPECT_FALSE(report::workedOut(note).contains(pages::aBrace())) << note.page.toStdString();
}

TEST_F(HeadToHead, FitsASmallWindowAlsoInLargeType) {
    open();
    const QFont usual = QApplication::font();
    QFont large = usual;
    large.setPointSizeF(usual.pointSizeF() * 1.5);
    QApplication::setFont(large);
    page_->ensurePolished();
    QCoreApplication::processEvents();
    EXPECT_LE(page_->minimumSizeHint().width(), 1280 - 220);  // the list of pages beside it
    QApplication::setFont(usual);
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
