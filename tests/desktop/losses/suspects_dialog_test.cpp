// SPDX-License-Identifier: MIT
#include "app/desktop/losses/suspects_dialog.h"

#include <gmock/gmock.h>

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTextBrowser>

#include "app/desktop/printing/print_preview.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/trial/trial_rules.h"
#include "db/actions/event_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::TrialDialog;
using pages::named;
using testing::HasSubstr;

QString faultsWithin(const QWidget& within) {
    QStringList faults;
    for (const desktop::FaultLabel* label : within.findChildren<desktop::FaultLabel*>())
        if (!label->fault().isEmpty()) faults << label->fault();
    return faults.join(u'\n');
}

/// Ten batches of hebe in the south tub that rooted well; two in the north tub, with cold solution, that didn't.
std::vector<core::BatchRecord> coldTub() {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 10; ++i)
        batches.push_back(support::aBatch()
                              .at(support::tubSouth)
                              .treated(support::weakGel)
                              .stuckOn(core::addDays(support::today(), -140 + 4 * i))
                              .looked(35, {.rooted = 17 + i % 3, .lost = 2}));
    for (int i = 0; i < 4; ++i)
        batches.push_back(support::aBatch()
                              .code("B26000" + std::to_string(i) + "X")
                              .treated(support::weakGel)
                              .stuckOn(core::addDays(support::today(), -100 + 3 * i))
                              .looked(35, {.rooted = 2 + i, .lost = 12}));
    return batches;
}

class SuspectsInDialog : public pages::Desk {
  protected:
    void fillWithColdTub() {
        fill(support::recordsOf(coldTub()));
        std::vector<core::Reading> readings;
        for (int day = 140; day >= 40; --day)
            for (const auto& [station, degrees] :
                 {std::pair(support::tubNorth, 9.0), std::pair(support::tubSouth, 21.0)})
                readings.push_back({.station = station,
                                    .quantity = core::Quantity::SolutionTemperature,
                                    .readAt = workspace_.clock()() - std::chrono::hours{24 * day},
                                    .value = degrees});
        EXPECT_TRUE(db::recordReadings(logbook(), readings, workspace_.clock()()));
    }

    desktop::SuspectsDialog* open(const std::string& code) {
        owner_ = std::make_unique<QWidget>();
        pages::show(*owner_);
        desktop::SuspectsDialog* dialog = desktop::showSuspects(batch(code).batch.id, context(), owner_.get());
        EXPECT_TRUE(pages::comesTrue([dialog] { return named<QPushButton>(*dialog, "suspectsPrint").isEnabled(); }));
        return dialog;
    }

    static QListWidget& list(const QWidget& dialog) { return named<QListWidget>(dialog, "suspectList"); }
    static std::string details(const QWidget& dialog) {
        return named<QTextBrowser>(dialog, "suspectDetails").toPlainText().toStdString();
    }
    static std::string text(const QWidget& dialog, const char* name) {
        return named<QLabel>(dialog, name).text().toStdString();
    }

    /// Chooses the first suspect that offers a trial.
    static bool chooseOneToTry(const QWidget& dialog) {
        for (int row = 0; row < list(dialog).count(); ++row) {
            list(dialog).setCurrentRow(row);
            if (named<QPushButton>(dialog, "suspectTrial").isEnabled()) return true;
        }
        return false;
    }

    TrialDialog* plannedFrom(desktop::SuspectsDialog& dialog) {
        QTest::mouseClick(&named<QPushButton>(dialog, "suspectTrial"), Qt::LeftButton);
        auto* trial = pages::opened<TrialDialog>(dialog);
        if (trial != nullptr) trial->setSeedSource([] { return 20260630u; });
        return trial;
    }

    std::unique_ptr<QWidget> owner_;
};

TEST_F(SuspectsInDialog, ShowsTheVerdictTheWarningAndEachSuspect) {
    fillWithColdTub();
    auto* dialog = open("B260000X");
    EXPECT_THAT(text(*dialog, "suspectsWarning"), HasSubstr("not an experiment"));
    EXPECT_TRUE(named<QLabel>(*dialog, "suspectsWarning").isVisibleTo(dialog));
    EXPECT_FALSE(text(*dialog, "suspectsInWords").empty());
    EXPECT_THAT(text(*dialog, "suspectsAgainst"), HasSubstr("By day 35"));
    ASSERT_GT(list(*dialog).count(), 1);
    EXPECT_EQ(list(*dialog).currentRow(), 0);
    for (const char* words : {"Shared by", "For it", "Against it", "What to change next time"})
        EXPECT_THAT(details(*dialog), HasSubstr(words));
    const std::string first = details(*dialog);
    QTest::keyClick(&list(*dialog), Qt::Key_Down);
    EXPECT_NE(details(*dialog), first);
}

TEST_F(SuspectsInDialog, PlansATrialWithOneClickAndKeepsItWithOneMoreAndOneUndoTakesAllBack) {
    fillWithColdTub();
    auto* dialog = open("B260000X");
    ASSERT_TRUE(chooseOneToTry(*dialog));
    const core::Shelves before = workspace_.shelves();
    TrialDialog* trial = plannedFrom(*dialog);
    ASSERT_NE(trial, nullptr);
    const core::Trial shown = trial->draft().trial;
    EXPECT_EQ(shown.arms.size(), 2u);
    EXPECT_FALSE(shown.name.empty());
    EXPECT_FALSE(shown.question.empty());
    EXPECT_EQ(faultsWithin(*trial).toStdString(), "");
    EXPECT_EQ(workspace_.shelves(), before) << "nothing is written before it is saved";
    QTest::mouseClick(&named<QPushButton>(*trial, "saveTrial"), Qt::LeftButton);
    EXPECT_EQ(faultsWithin(*trial).toStdString(), "");
    const core::Shelves after = workspace_.shelves();
    ASSERT_EQ(after.trials.size(), before.trials.size() + 1);
    const auto written = std::ranges::find(after.trials, shown.name, &core::Trial::name);
    ASSERT_NE(written, after.trials.end());
    EXPECT_FALSE(written->batches.empty()) << "dealt by chance";
    for (const core::TrialArm& arm : written->arms)
        EXPECT_NE(core::nameOf(arm, *written->factor, after), "not set") << "both arms are on their shelf";
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(workspace_.shelves(), before) << "the trial and what was added for it";
    ASSERT_TRUE(workspace_.redo());
    EXPECT_EQ(workspace_.shelves(), after);
}

TEST_F(SuspectsInDialog, LeavesNothingBehindWhenTheTrialIsCalledOff) {
    fillWithColdTub();
    auto* dialog = open("B260000X");
    ASSERT_TRUE(chooseOneToTry(*dialog));
    const core::Shelves before = workspace_.shelves();
    TrialDialog* trial = plannedFrom(*dialog);
    ASSERT_NE(trial, nullptr);
    trial->reject();
    EXPECT_EQ(workspace_.shelves(), before);
    EXPECT_TRUE(dialog->isVisible());
}

TEST_F(SuspectsInDialog, LooksAgainWhenATrialWasPlannedAndKeepsTheChoice) {
    fillWithColdTub();
    auto* dialog = open("B260000X");
    ASSERT_TRUE(chooseOneToTry(*dialog));
    const QString chosen = list(*dialog).currentItem()->text();
    TrialDialog* trial = plannedFrom(*dialog);
    ASSERT_NE(trial, nullptr);
    QTest::mouseClick(&named<QPushButton>(*trial, "saveTrial"), Qt::LeftButton);
    ASSERT_TRUE(pages::comesTrue([dialog] { return named<QPushButton>(*dialog, "suspectsPrint").isEnabled(); }));
    ASSERT_NE(list(*dialog).currentItem(), nullptr);
    EXPECT_EQ(list(*dialog).currentItem()->text(), chosen);
    TrialDialog* again = plannedFrom(*dialog);
    ASSERT_NE(again, nullptr);
    QTest::mouseClick(&named<QPushButton>(*again, "saveTrial"), Qt::LeftButton);
    EXPECT_EQ(faultsWithin(*again).toStdString(), "") << "a second one has a name of its own";
}

TEST_F(SuspectsInDialog, SaysSoOfABatchWithoutAPast) {
    fill(support::recordsOf({support::aBatch()
                                 .code("B260001A")
                                 .stuckOn(core::addDays(support::today(), -40))
                                 .looked(35, {.rooted = 1, .lost = 12})}));
    auto* dialog = open("B260001A");
    EXPECT_THAT(text(*dialog, "suspectsInWords"), HasSubstr("No earlier batch of this plant by this method"));
    EXPECT_FALSE(named<QLabel>(*dialog, "suspectsAgainst").isVisibleTo(dialog));
    EXPECT_TRUE(named<QLabel>(*dialog, "suspectsWarning").isVisibleTo(dialog));
}

TEST_F(SuspectsInDialog, NamesNothingWhereABatchDidAsUsual) {
    std::vector<core::BatchRecord> batches = coldTub();
    batches.push_back(support::aBatch()
                          .code("B260009T")
                          .at(support::tubSouth)
                          .stuckOn(core::addDays(support::today(), -60))
                          .looked(35, {.rooted = 19}));
    fill(support::recordsOf(batches));
    auto* dialog = open("B260009T");
    EXPECT_THAT(text(*dialog, "suspectsInWords"), HasSubstr("No suspect stands out"));
}

TEST_F(SuspectsInDialog, IsPrintedAndClosedByEscape) {
    fillWithColdTub();
    auto* dialog = open("B260000X");
    QTest::mouseClick(&named<QPushButton>(*dialog, "suspectsPrint"), Qt::LeftButton);
    auto* preview = pages::opened<desktop::PrintPreview>(*dialog);
    ASSERT_NE(preview, nullptr);
    preview->reject();
    QTest::keyClick(&list(*dialog), Qt::Key_Escape);
    EXPECT_FALSE(dialog->isVisible());
}

TEST_F(SuspectsInDialog, LeavesOutTheWayToTheBatchWhereItCameFromThere) {
    fillWithColdTub();
    auto* dialog = open("B260000X");
    EXPECT_TRUE(named<QPushButton>(*dialog, "suspectsBatch").isVisibleTo(dialog));
    dialog->leaveOutBatch();
    EXPECT_FALSE(named<QPushButton>(*dialog, "suspectsBatch").isVisibleTo(dialog));
}

}  // namespace
