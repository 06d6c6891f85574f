// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trials_view.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <algorithm>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/trials/check_list.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/trials/trial_power_panel.h"
#include "app/desktop/trials/trial_session_dialog.h"
#include "app/desktop/trials/trial_table_model.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/report/plain_text.h"
#include "app/report/sheet.h"
#include "core/trial/trial_progress.h"
#include "db/actions/check_actions.h"
#include "db/actions/trial_actions.h"
#include "gmock/gmock.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::TrialDialog;
using desktop::TrialTableModel;
using pages::named;
using testing::HasSubstr;
using testing::Not;

QString allFaults(const QWidget& within) {
    QStringList faults;
    for (const desktop::FaultLabel* label : within.findChildren<desktop::FaultLabel*>())
        if (!label->fault().isEmpty()) faults << label->fault();
    return faults.join(u'\n');
}

/// Two tubs and two benches of sixty positions each, with two batches of the past.
class Trials : public pages::Desk {
  protected:
    Trials() {
        fill(support::recordsOf({support::aBatch().looked(14, {.rooted = 9}).looked(28, {.rooted = 7, .lost = 8}),
                                 support::aBatch().at(support::benchWest).looked(28, {.rooted = 12, .lost = 12})}));
        view_ = std::make_unique<desktop::TrialsView>(context());
        pages::show(*view_);
        view_->activated();
    }

    QTableView& table() { return named<QTableView>(*view_, "trialTable"); }
    QString cell(int row, int column) { return table().model()->index(row, column).data().toString(); }
    QString label(const char* name) { return named<QLabel>(*view_, name).text(); }
    /// The dialog that a button opens, with the keyboard in it.
    template <class Dialog>
    Dialog* openedBy(const char* button) {
        click(*view_, button);
        auto* dialog = pages::opened<Dialog>(*view_);
        if (dialog != nullptr) QApplication::setActiveWindow(dialog);
        EXPECT_TRUE(dialog != nullptr && QTest::qWaitForWindowActive(dialog));
        return dialog;
    }

    void click(const QWidget& within, const char* button) {
        QTest::mouseClick(&named<QPushButton>(within, button), Qt::LeftButton);
    }

    TrialDialog* planning() {
        table().setFocus();
        pages::press(Qt::Key_Insert);
        auto* dialog = pages::opened<TrialDialog>(*view_);
        if (dialog != nullptr) dialog->setSeedSource([] { return 20260630u; });
        return dialog;
    }

    const core::Trial* called(const std::string& name) {
        const auto& trials = workspace_.shelves().trials;
        const auto found = std::ranges::find(trials, name, &core::Trial::name);
        return found == trials.end() ? nullptr : &*found;
    }

    /// Tubs against benches, twelve per arm at each of two stations, of hebe.
    core::Trial planned(bool isBlinded = false) {
        core::Trial trial;
        trial.name = "Tubs or trays";
        trial.question = "Is the tub worth its pump?";
        trial.factor = core::Factor::Method;
        trial.arms = {{.method = support::aeratedWater}, {.method = support::mediaTray}};
        trial.horizonDay = 28;
        trial.margin = 0.2;
        trial.perArm = 24;
        trial.isBlinded = isBlinded;
        trial.allocationSeed = 7;
        core::TrialLayout layout;
        for (const core::Station& station : workspace_.shelves().stations)
            layout.stations.push_back(db::roomAt(logbook(), station));
        layout.blocks = {{.name = "Hebe albicans", .plant = support::hebe}};
        core::Trial written;
        const auto outcome = workspace_.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
            auto done = db::planTrial(logbook, trial, layout, core::addDays(support::today(), -60));
            if (!done) return core::refused(done.error());
            written = done->trial;
            return done->changes;
        });
        EXPECT_TRUE(outcome.isDone) << (outcome.refusals.empty() ? "" : outcome.refusals.front().sentence);
        return written;
    }

    std::vector<core::Batch> stuck(const core::Trial& trial, int daysAgo) {
        db::TrialSessionDraft draft{.trial = trial.id};
        draft.session.date = core::addDays(support::today(), -daysAgo);
        draft.batches = core::batchesToStick(trial, 1, workspace_.shelves());
        std::vector<core::Batch> batches;
        const auto outcome = workspace_.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
            auto done = db::stickTrialSession(logbook, draft, support::today());
            if (!done) return core::refused(done.error());
            batches = done->batches;
            return done->changes;
        });
        EXPECT_TRUE(outcome.isDone) << (outcome.refusals.empty() ? "" : outcome.refusals.front().sentence);
        return batches;
    }

    void look(const std::vector<core::Batch>& batches, int afterDays) {
        std::vector<db::CheckDraft> checks;
        for (const core::Batch& batch : batches) {
            core::Check check = support::aCheck(core::addDays(batch.stuckOn, afterDays),
                                                {.rooted = batch.method == support::aeratedWater ? 9 : 5, .lost = 1});
            check.batch = batch.id;
            checks.push_back({.check = check, .closesBatch = false, .closeReason = {}});
        }
        const auto outcome =
            workspace_.run([&](db::Logbook& logbook) { return db::recordChecks(logbook, checks, support::today()); });
        EXPECT_TRUE(outcome.isDone);
    }

    void choose(const std::string& name) {
        for (int row = 0; row < table().model()->rowCount(); ++row)
            if (cell(row, TrialTableModel::Name).toStdString() == name) table().selectRow(row);
    }

    std::unique_ptr<desktop::TrialsView> view_;
};

TEST_F(Trials, ArePlannedByKeyboardAloneAndGoByOneUndo) {
    const pages::Obeys rules(table().model());
    ASSERT_NE(planning(), nullptr);
    pages::type("Spring tubs");
    pages::press(Qt::Key_Return);
    const core::Trial* trial = called("Spring tubs");
    ASSERT_NE(trial, nullptr);
    EXPECT_EQ(trial->factor, core::Factor::Method);
    EXPECT_EQ(trial->arms.size(), 2u);
    EXPECT_EQ(trial->batches.size(), 4u) << "24 per arm over two tubs and two benches";
    EXPECT_EQ(trial->setOn, support::today());
    EXPECT_EQ(trial->allocationSeed, 20260630u);
    EXPECT_EQ(cell(table().currentIndex().row(), TrialTableModel::Name), "Spring tubs") << "the new one is in front";
    EXPECT_THAT(label("trialDesign").toStdString(), HasSubstr("Dealt by chance with seed: 20260630"));
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(called("Spring tubs"), nullptr);
}

TEST_F(Trials, ShowWhatTheNumberPerArmIsWorthWhileItIsTyped) {
    TrialDialog* dialog = planning();
    ASSERT_NE(dialog, nullptr);
    auto& power = *dialog->findChild<desktop::TrialPowerPanel*>();
    const auto isAnswered = [&power] { return power.isAnswered(); };
    ASSERT_TRUE(QTest::qWaitFor(isAnswered, 30'000));
    EXPECT_THAT(named<QLabel>(*dialog, "powerAnswer").text().toStdString(), HasSubstr("difference of 20 of 100"));
    EXPECT_THAT(named<QLabel>(*dialog, "powerRestsOn").text().toStdString(), HasSubstr("16 of 24 rooted"));
    EXPECT_THAT(named<QLabel>(*dialog, "powerRestsOn").text().toStdString(), HasSubstr("of 100 fits (95 % interval"));
    EXPECT_THAT(named<QLabel>(*dialog, "powerWarning").text().toStdString(), HasSubstr("no verdict"))
        << "two batches an arm can't judge their luck";
    const QString before = named<QLabel>(*dialog, "powerOfPlanned").text();
    auto& perArm = named<QLineEdit>(*dialog, "trialPerArm");
    perArm.setFocus();
    perArm.selectAll();
    pages::type("60");
    EXPECT_FALSE(power.isAnswered());
    ASSERT_TRUE(QTest::qWaitFor(isAnswered, 30'000));
    EXPECT_NE(named<QLabel>(*dialog, "powerOfPlanned").text(), before);
    EXPECT_GT(named<desktop::FigurePanel>(*dialog, "powerCurve").table()->rowCount(), 10);
}

TEST_F(Trials, OfOneStationPerArmGetAdviceButNoRefusal) {
    TrialDialog* dialog = planning();
    ASSERT_NE(dialog, nullptr);
    auto& stations = named<desktop::CheckList>(*dialog, "trialStations");
    stations.tick(support::tubSouth.value, false);
    stations.tick(support::benchEast.value, false);
    EXPECT_THAT(named<QLabel>(*dialog, "trialAdvice").text().toStdString(),
                HasSubstr("the answer is about these stations, not about the methods"));
    click(*dialog, "saveTrial");
    EXPECT_FALSE(dialog->isVisible()) << allFaults(*dialog).toStdString();
    EXPECT_EQ(workspace_.shelves().trials.size(), 2u);
}

TEST_F(Trials, AreRefusedWhereTheStationsAreTooSmallAndSayHowManyFit) {
    TrialDialog* dialog = planning();
    ASSERT_NE(dialog, nullptr);
    auto& perArm = named<QLineEdit>(*dialog, "trialPerArm");
    perArm.setFocus();
    perArm.selectAll();
    pages::type("500");
    pages::press(Qt::Key_Return);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_THAT(allFaults(*dialog).toStdString(), HasSubstr("the stations have room for 120; up to 120"));
    EXPECT_TRUE(perArm.hasFocus());
    EXPECT_EQ(perArm.text(), "500") << "nothing typed is lost";
    EXPECT_EQ(workspace_.shelves().trials.size(), 1u);
}

TEST_F(Trials, MarkEveryFaultOfTypingWhereItStands) {
    TrialDialog* dialog = planning();
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "trialHorizon").setText("soon");
    named<QLineEdit>(*dialog, "trialMargin").setText("much");
    named<QLineEdit>(*dialog, "trialExpected").setText("140");
    named<desktop::CheckList>(*dialog, "trialArms").tick(support::mediaTray.value, false);
    named<QLineEdit>(*dialog, "trialName").clear();
    click(*dialog, "saveTrial");
    const std::string faults = allFaults(*dialog).toStdString();
    for (const char* words : {"Name is", "Horizon day is \u201csoon\u201d", "The difference is \u201cmuch\u201d",
                              "Expected of the first arm is \u201c140\u201d", "Arms are 1"})
        EXPECT_THAT(faults, HasSubstr(words));
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(workspace_.shelves().trials.size(), 1u);
}

TEST_F(Trials, AreKeptAsTheMapShowedThem) {
    TrialDialog* dialog = planning();
    ASSERT_NE(dialog, nullptr);
    click(*dialog, "dealByChance");
    EXPECT_THAT(named<QLabel>(*dialog, "trialDealt").text().toStdString(),
                HasSubstr("4 batches, dealt with seed 20260630"));
    auto& station = named<QComboBox>(*dialog, "mapStation");
    ASSERT_EQ(station.count(), 4);
    std::vector<std::string> shown;
    for (int each = 0; each < station.count(); ++each) {
        station.setCurrentIndex(each);
        for (const QStringList& row : named<desktop::FigurePanel>(*dialog, "trialMap").table()->table().rows)
            shown.push_back(row.last().toStdString());
    }
    click(*dialog, "saveTrial");
    std::vector<std::string> kept;
    for (const core::TrialBatch& dealt : workspace_.shelves().trials.back().batches) kept.push_back(dealt.positions);
    if (kept.empty())
        for (const core::TrialBatch& dealt : workspace_.shelves().trials.front().batches)
            kept.push_back(dealt.positions);
    EXPECT_EQ(shown, kept);
    EXPECT_FALSE(kept.empty());
}

TEST_F(Trials, AreStuckASessionAtATimeWithTheirCodesAndTakenBackByOneUndo) {
    const core::Trial trial = planned();
    choose(trial.name);
    const std::size_t before = logbook().batchLines().size();
    auto* dialog = openedBy<desktop::TrialSessionDialog>("trialStick");
    ASSERT_NE(dialog, nullptr);
    QSignalSpy said(dialog, &desktop::TrialSessionDialog::said);
    EXPECT_EQ(named<QTableWidget>(*dialog, "dealtBatches").rowCount(), 4);
    pages::press(Qt::Key_Return);
    ASSERT_EQ(logbook().batchLines().size(), before + 4) << allFaults(*dialog).toStdString();
    EXPECT_TRUE(named<QWidget>(*dialog, "savedSession").isVisible()) << "with labels and the sheet to print";
    EXPECT_EQ(said.count(), 1);
    const core::Trial* now = called(trial.name);
    for (const core::TrialBatch& dealt : now->batches) {
        const auto record = logbook().batch(dealt.batch);
        ASSERT_TRUE(record);
        EXPECT_EQ(record->batch.positions, dealt.positions);
        EXPECT_EQ(record->batch.station, dealt.station);
        EXPECT_EQ(record->batch.trial, trial.id);
        EXPECT_EQ(record->batch.method, trial.arms[static_cast<std::size_t>(dealt.arm)].method);
        EXPECT_EQ(record->batch.plant, support::hebe);
    }
    EXPECT_FALSE(named<QPushButton>(*view_, "trialStick").isEnabled()) << "nothing is left to stick";
    EXPECT_FALSE(named<QPushButton>(*view_, "trialRemove").isEnabled());
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(logbook().batchLines().size(), before);
    EXPECT_TRUE(named<QPushButton>(*view_, "trialStick").isEnabled());
}

TEST_F(Trials, RefuseToBeStuckWithoutAPlant) {
    ASSERT_NE(planning(), nullptr);
    pages::type("Of whatever comes");
    pages::press(Qt::Key_Return);
    choose("Of whatever comes");
    const std::size_t before = logbook().batchLines().size();
    auto* dialog = openedBy<desktop::TrialSessionDialog>("trialStick");
    ASSERT_NE(dialog, nullptr);
    pages::press(Qt::Key_Return);
    EXPECT_THAT(allFaults(*dialog).toStdString(), HasSubstr("Plant"));
    EXPECT_TRUE(named<QComboBox>(*dialog, "trialCuttingsOf").hasFocus());
    EXPECT_EQ(logbook().batchLines().size(), before);
    auto& plant = named<QComboBox>(*dialog, "trialCuttingsOf");
    plant.setCurrentIndex(plant.findData(QVariant::fromValue<qlonglong>(support::hebe.value)));
    click(*dialog, "saveTrialSession");
    EXPECT_EQ(logbook().batchLines().size(), before + 4) << allFaults(*dialog).toStdString();
}

TEST_F(Trials, ThatAreBlindedTellNoArmBeforeTheHorizon) {
    const core::Trial trial = planned(true);
    choose(trial.name);
    EXPECT_EQ(named<QComboBox>(*view_, "mapSession").count(), 1) << "whoever sticks it has to see the map";
    look(stuck(trial, 10), 7);
    choose(trial.name);
    EXPECT_EQ(cell(table().currentIndex().row(), TrialTableModel::Arms), "arm A, arm B");
    const auto& counts = named<QTableView>(*view_, "trialArmCounts");
    EXPECT_EQ(counts.model()->index(0, 0).data().toString(), "arm A");
    EXPECT_TRUE(named<QLabel>(*view_, "trialMapWhy").isVisible());
    EXPECT_EQ(named<QComboBox>(*view_, "mapSession").count(), 0);
    EXPECT_THAT(label("trialInWords").toStdString(), HasSubstr("Not before"));
    const std::string printed = report::plainText(*view_->sheet()).toStdString();
    EXPECT_THAT(printed, HasSubstr("not told yet"));
    EXPECT_THAT(printed, HasSubstr("arm A"));
}

TEST_F(Trials, GiveTheirResultAtTheHorizonAndNotBefore) {
    const core::Trial trial = planned();
    look(stuck(trial, 28), 28);
    choose(trial.name);
    ASSERT_TRUE(pages::comesTrue([&] { return view_->sheet() != nullptr; }));
    const auto expected = core::trialResult(*called(trial.name), workspace_.shelves(), logbook().batchRecords());
    ASSERT_TRUE(expected);
    EXPECT_EQ(label("trialInWords").toStdString(), expected->inWords);
    EXPECT_TRUE(named<desktop::FigurePanel>(*view_, "trialRates").isVisible());
    const std::string printed = report::plainText(*view_->sheet()).toStdString();
    EXPECT_THAT(printed, HasSubstr("Is the tub worth its pump?"));
    EXPECT_THAT(printed, HasSubstr("18 of 24")) << "all were seen on the day";
    QSignalSpy wanted(view_.get(), &desktop::TrialsView::placeWanted);
    click(*view_, "trialCompare");
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(Trials, ChangeTheirHorizonAfterTheFirstCheckOnlyWithAReasonThatIsPrinted) {
    const core::Trial trial = planned();
    look(stuck(trial, 10), 7);
    choose(trial.name);
    table().setFocus();
    pages::press(Qt::Key_F2);
    auto* form = pages::opened<QDialog>(*view_);
    ASSERT_NE(form, nullptr);
    named<QLineEdit>(*form, "changeHorizon").setText("35");
    click(*form, "formSave");
    EXPECT_TRUE(form->isVisible());
    EXPECT_THAT(allFaults(*form).toStdString(), HasSubstr("a change of its horizon day needs one"));
    EXPECT_EQ(called(trial.name)->horizonDay, 28);
    named<QLineEdit>(*form, "changeReason").setText("a cold spring");
    click(*form, "formSave");
    EXPECT_FALSE(form->isVisible()) << allFaults(*form).toStdString();
    EXPECT_EQ(called(trial.name)->horizonDay, 35);
    EXPECT_THAT(label("trialChanges").toStdString(),
                HasSubstr("horizon day, 28 before, 35 after. Reason: a cold spring"));
    EXPECT_THAT(report::plainText(*view_->sheet()).toStdString(), HasSubstr("Reason: a cold spring"));
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(called(trial.name)->horizonDay, 28);
    EXPECT_THAT(label("trialChanges").toStdString(), Not(HasSubstr("a cold spring")));
}

TEST_F(Trials, AreDealtAgainOnlyWhileNothingOfThemIsStuck) {
    const core::Trial trial = planned();
    choose(trial.name);
    auto* dialog = openedBy<TrialDialog>("trialDealAgain");
    ASSERT_NE(dialog, nullptr);
    dialog->setSeedSource([] { return 99u; });
    EXPECT_EQ(named<desktop::CheckList>(*dialog, "trialStations").ticked().size(), 4u);
    auto& perArm = named<QLineEdit>(*dialog, "trialPerArm");
    perArm.setFocus();
    perArm.selectAll();
    pages::type("30");
    click(*dialog, "dealByChance");
    click(*dialog, "saveTrial");
    const core::Trial* now = called(trial.name);
    EXPECT_EQ(now->perArm, 30) << allFaults(*dialog).toStdString();
    EXPECT_EQ(now->allocationSeed, 99u);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(called(trial.name)->perArm, 24);
    stuck(*called(trial.name), 3);
    EXPECT_FALSE(named<QPushButton>(*view_, "trialDealAgain").isEnabled());
}

TEST_F(Trials, GoByOneKeyAndComeBack) {
    const core::Trial trial = planned();
    choose(trial.name);
    table().setFocus();
    pages::press(Qt::Key_Delete);
    EXPECT_EQ(called(trial.name), nullptr);
    ASSERT_TRUE(workspace_.undo());
    ASSERT_NE(called(trial.name), nullptr);
    EXPECT_EQ(*called(trial.name), trial);
}

TEST_F(Trials, PrintTheMapOfWhatWasDealt) {
    const core::Trial trial = planned();
    choose(trial.name);
    click(*view_, "trialPrintMap");
    EXPECT_NE(pages::opened<desktop::PrintPreview>(*view_), nullptr);
}

TEST_F(Trials, SayWhatWouldBeHereWhereThereAreNone) {
    core::Records none = support::recordsOf({});
    none.shelves.trials.clear();
    fill(none);
    EXPECT_TRUE(named<QLabel>(*view_, "trialEmptyTitle").isVisible());
    view_->activated();
    EXPECT_TRUE(named<QPushButton>(*view_, "trialFirst").hasFocus());
    EXPECT_EQ(view_->sheet(), nullptr);
}

}  // namespace
