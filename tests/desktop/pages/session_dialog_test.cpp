// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_dialog.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <algorithm>
#include <cstdio>

#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/session/allocation_table_model.h"
#include "app/desktop/session/session_model.h"
#include "app/desktop/session/split_dialog.h"
#include "app/desktop/stations/station_dialog.h"
#include "core/trial/allocation.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::SessionColumn;
using desktop::SessionDialog;
using pages::named;
using pages::press;
using pages::type;

class NewSession : public pages::Desk {
  protected:
    NewSession() {
        fill(support::recordsOf(
            {support::aBatch().looked(14, {.rooted = 6}), support::aBatch().at(support::benchWest)}));
        open();
    }

    void open() {
        dialog_ = std::make_unique<SessionDialog>(context());
        dialog_->model().setSeedSource([] { return 20260630u; });
        pages::show(*dialog_);
        grid().setFocus();
    }

    QTableView& grid() { return named<QTableView>(*dialog_, "sessionGrid"); }
    QString cell(int row, SessionColumn column) {
        return grid().model()->index(row, static_cast<int>(column)).data().toString();
    }
    void goTo(int row, SessionColumn column) {
        grid().setCurrentIndex(grid().model()->index(row, static_cast<int>(column)));
        grid().setFocus();
    }

    /// Types as a person does: while offers are shown, the keys go to them.
    void typeOrOffer(const QString& text) {
        for (const QChar letter : text) key(letter.toLatin1());
    }
    template <class Key>
    void key(Key which, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QWidget* popup = QApplication::activePopupWidget();
        QTest::keyClick(popup != nullptr ? popup : QApplication::focusWidget(), which, with);
        QCoreApplication::processEvents();
        keys_ += 1 + (with == Qt::NoModifier ? 0 : 1);
    }
    void keysOf(const QString& text) { typeOrOffer(text), key(Qt::Key_Return); }

    /// Types one cell and goes on.
    void enter(const QString& text) {
        if (!text.isEmpty()) type(text);
        press(Qt::Key_Return);
    }

    /// From plant to count, then a note, whatever Enter would do; an empty text leaves a cell as it stands.
    void enterRow(const QStringList& cells) {
        using enum SessionColumn;
        const int row = grid().currentIndex().row();
        for (const SessionColumn column : {Plant, StockPlant, CuttingKind, Treatment, Station, Medium}) {
            goTo(row, column);
            enter(cells[column < Method ? static_cast<int>(column) : 5]);
        }
        if (!cells[7].isEmpty()) {
            goTo(row, Note);
            enter(cells[7]);
        }
        goTo(row, Count);
        enter(cells[6]);
    }

    QString nameOf(core::StationId station) {
        return QString::fromStdString(core::find(workspace_.shelves().stations, station)->name);
    }
    QString nameOf(core::PlantId plant) {
        return QString::fromStdString(core::fullName(*core::find(workspace_.shelves().plants, plant)));
    }

    /// Ticks both a tub and a bench in the split dialog of row `row`.
    desktop::SplitDialog* splitOver(const std::vector<core::StationId>& stations) {
        named<QPushButton>(*dialog_, "splitByChance").click();
        auto* split = pages::opened<desktop::SplitDialog>(*dialog_);
        if (split == nullptr) return nullptr;
        auto& arms = named<QListWidget>(*split, "arms");
        for (int row = 0; row < arms.count(); ++row) {
            const QString name = arms.item(row)->data(Qt::UserRole).toString();
            const bool isWanted =
                std::any_of(stations.begin(), stations.end(), [&](auto id) { return nameOf(id) == name; });
            arms.item(row)->setCheckState(isWanted ? Qt::Checked : Qt::Unchecked);
        }
        return split;
    }

    std::unique_ptr<SessionDialog> dialog_;
    int keys_{};
};

/// Three plants and four stations on the shelves, nothing stuck yet.
core::Records shelvesForTwelve() {
    core::Records records = support::recordsOf({});
    core::Plant weigela;
    weigela.id = {103};
    weigela.botanicalName = "Weigela florida";
    records.shelves.plants.push_back(weigela);
    return records;
}

TEST_F(NewSession, SavesSeveralBatchesTypedWithTheKeyboardAlone) {
    const pages::Obeys rules(grid().model());
    const std::size_t before = logbook().batchLines().size();
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "24", ""});
    // The row below is a copy: another station and count, the rest as above.
    enterRow({"", "", "", "", nameOf(support::benchWest), "", "18", "second tray"});
    enterRow({"Weigela florida", "by the shed", "heel", "", nameOf(support::tubSouth), "", "12", ""});
    press(Qt::Key_Return, Qt::ControlModifier);

    EXPECT_TRUE(named<QWidget>(*dialog_, "savedSession").isVisible()) << "with the codes, to write them down or print";
    const std::vector<core::BatchLine> lines = logbook().batchLines();
    ASSERT_EQ(lines.size(), before + 3);
    const core::Session session = logbook().sessions().back();
    EXPECT_EQ(session.date, support::today());
    std::vector<int> counts;
    for (const core::BatchLine& line : lines)
        if (line.batch.session == session.id) counts.push_back(line.batch.stuck);
    EXPECT_EQ(counts, (std::vector<int>{24, 18, 12}));
    const core::Batch& last = lines.back().batch;
    EXPECT_EQ(core::fullName(*core::find(workspace_.shelves().plants, last.plant)), "Weigela florida");
    EXPECT_EQ(core::find(workspace_.shelves().stockPlants, last.stockPlant)->label, "by the shed");
    EXPECT_EQ(core::find(workspace_.shelves().methods, last.method)->name, "aerated water");
    // One step of history for all three.
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(logbook().batchLines().size(), before);
}

TEST_F(NewSession, TakesTheMarkedOfferWithOneEnterAndGoesOn) {
    typeOrOffer(QStringLiteral("heb"));
    const auto* completer = qobject_cast<QLineEdit*>(QApplication::focusWidget())->completer();
    ASSERT_NE(completer, nullptr);
    ASSERT_TRUE(completer->popup()->isVisible());
    EXPECT_EQ(completer->popup()->currentIndex().data().toString(), nameOf(support::hebe));
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), "heb") << "the field keeps what is typed";
    QTest::keyClick(completer->popup(), Qt::Key_Return);
    ASSERT_TRUE(pages::comesTrue([&] { return grid().currentIndex().column() == 1; }));
    EXPECT_EQ(cell(0, SessionColumn::Plant), nameOf(support::hebe));
}

TEST_F(NewSession, TakesWhatWasTypedWhenTheOfferIsTurnedDown) {
    typeOrOffer(QStringLiteral("Hebe"));
    ASSERT_TRUE(QApplication::activePopupWidget());
    QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_Escape);
    EXPECT_FALSE(QApplication::activePopupWidget());
    EXPECT_TRUE(dialog_->isVisible());
    press(Qt::Key_Return);
    EXPECT_EQ(cell(0, SessionColumn::Plant), "Hebe");
}

TEST_F(NewSession, TakesWhatWasTypedWithOneEnterWhileOffersAreShown) {
    goTo(0, SessionColumn::Station);
    type(QStringLiteral("bench w"));
    const auto* completer = qobject_cast<QLineEdit*>(QApplication::focusWidget())->completer();
    ASSERT_TRUE(completer->popup()->isVisible());
    QTest::keyClick(completer->popup(), Qt::Key_Return);
    ASSERT_TRUE(
        pages::comesTrue([&] { return grid().currentIndex().column() == static_cast<int>(SessionColumn::Medium); }));
    EXPECT_EQ(cell(0, SessionColumn::Station), nameOf(support::benchWest));
}

TEST_F(NewSession, TellsTheCodesThatWereGiven) {
    const QSignalSpy said(dialog_.get(), &SessionDialog::said);
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "24", ""});
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(said.count(), 1);
    const std::string code = logbook().batchLines().back().batch.code;
    EXPECT_TRUE(said.front().front().toString().contains(QString::fromStdString(code)));
}

TEST_F(NewSession, TheQuotationMarkCopiesTheCellAbove) {
    enterRow({nameOf(support::hebe), "", "nodal", "", nameOf(support::tubNorth), "", "24", "from the north side"});
    goTo(1, SessionColumn::Note);
    type(QStringLiteral("\""));
    EXPECT_EQ(cell(1, SessionColumn::Note), QStringLiteral("from the north side"));
}

TEST_F(NewSession, AnOfferedRowIsNotSavedUntilSomebodyTouchesIt) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "24", ""});
    ASSERT_EQ(grid().model()->rowCount(), 2);
    EXPECT_TRUE(named<QLabel>(*dialog_, "sums").text().startsWith(QStringLiteral("1 batch,")));
    press(Qt::Key_Return);
    EXPECT_TRUE(named<QLabel>(*dialog_, "sums").text().startsWith(QStringLiteral("2 batches,")));
}

TEST_F(NewSession, JumpsToTheFirstFaultAndKeepsWhatWasTyped) {
    const std::size_t before = logbook().batchLines().size();
    enterRow({nameOf(support::hebe), "", "", "", "Moon", "", "two dozen", ""});
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(grid().currentIndex().row(), 0);
    EXPECT_EQ(grid().currentIndex().column(), static_cast<int>(SessionColumn::Station));
    EXPECT_EQ(cell(0, SessionColumn::Station), QStringLiteral("Moon"));
    EXPECT_EQ(cell(0, SessionColumn::Count), QStringLiteral("two dozen"));
    EXPECT_TRUE(
        grid().currentIndex().data(desktop::SessionGridModel::FaultRole).toString().contains(QStringLiteral("Moon")));
    EXPECT_TRUE(named<QPushButton>(*dialog_, "saveSession").isEnabled());
    EXPECT_EQ(logbook().batchLines().size(), before);
}

TEST_F(NewSession, LosesNothingWhenItIsClosedUnsaved) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "24", ""});
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    open();
    EXPECT_EQ(cell(0, SessionColumn::Plant), nameOf(support::hebe));
    EXPECT_EQ(cell(0, SessionColumn::Count), QStringLiteral("24"));
    EXPECT_TRUE(named<QPushButton>(*dialog_, "startAfresh").isVisible());
    named<QPushButton>(*dialog_, "startAfresh").click();
    EXPECT_TRUE(cell(0, SessionColumn::Plant).isEmpty());
}

TEST_F(NewSession, SplitsACountByChanceAndStoresTheSeed) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "25", ""});
    goTo(0, SessionColumn::Count);
    auto* split = splitOver({support::tubNorth, support::benchWest});
    ASSERT_NE(split, nullptr);
    const pages::Obeys rules(named<QTableView>(*split, "allocation").model());
    EXPECT_EQ(named<QLineEdit>(*split, "horizonDay").text(), QStringLiteral("35"));  // the plant's usual upper limit
    named<QLineEdit>(*split, "trialName").setText(QStringLiteral("ignored, typing counts"));
    named<QLineEdit>(*split, "trialName").selectAll();
    QTest::keyClicks(&named<QLineEdit>(*split, "trialName"), QStringLiteral("Tub or bench"));
    QTest::keyClick(&named<QLineEdit>(*split, "trialName"), Qt::Key_Return);
    ASSERT_EQ(grid().model()->rowCount(), 3);  // two arms and the offered row
    EXPECT_EQ(cell(0, SessionColumn::Count).toInt() + cell(1, SessionColumn::Count).toInt(), 25);
    press(Qt::Key_Return, Qt::ControlModifier);

    const auto& trials = workspace_.shelves().trials;
    const auto trial =
        std::find_if(trials.begin(), trials.end(), [](const core::Trial& it) { return it.name == "Tub or bench"; });
    ASSERT_NE(trial, trials.end());
    ASSERT_TRUE(trial->allocationSeed.has_value());
    EXPECT_EQ(*trial->allocationSeed, 20260630u);
    EXPECT_EQ(trial->horizonDay, 35);
    const core::Allocation allocation = core::allocateByChance(25, 2, *trial->allocationSeed);
    std::vector<int> counts;
    for (const core::BatchLine& line : logbook().batchLines())
        if (line.batch.trial == trial->id) counts.push_back(line.batch.stuck);
    std::sort(counts.begin(), counts.end());
    std::vector<int> dealt = allocation.perArm;
    std::sort(dealt.begin(), dealt.end());
    EXPECT_EQ(counts, dealt);
    EXPECT_EQ(counts[0] + counts[1], 25);
}

TEST_F(NewSession, AsksForTwoArmsBeforeItSplits) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "25", ""});
    goTo(0, SessionColumn::Count);
    auto* split = splitOver({support::tubNorth});
    ASSERT_NE(split, nullptr);
    named<QPushButton>(*split, "agree").click();
    EXPECT_TRUE(split->isVisible());
    EXPECT_EQ(grid().model()->rowCount(), 2);
}

TEST_F(NewSession, JoinsASplitAgain) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "25", ""});
    goTo(0, SessionColumn::Count);
    named<QPushButton>(*splitOver({support::tubNorth, support::benchWest}), "agree").click();
    goTo(1, SessionColumn::Medium);
    EXPECT_FALSE((grid().model()->index(0, static_cast<int>(SessionColumn::Count)).flags() & Qt::ItemIsEditable) != 0);
    named<QPushButton>(*dialog_, "joinAgain").click();
    EXPECT_EQ(cell(0, SessionColumn::Count), QStringLiteral("25"));
    EXPECT_EQ(cell(0, SessionColumn::Station), nameOf(support::tubNorth));
}

TEST_F(NewSession, ShowsWhichCuttingGoesWhere) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "13", ""});
    goTo(0, SessionColumn::Count);
    auto* split = splitOver({support::tubNorth, support::benchWest});
    const QAbstractItemModel& map = *named<QTableView>(*split, "allocation").model();
    const core::Allocation allocation = core::allocateByChance(13, 2, 20260630u);
    EXPECT_EQ(map.rowCount(), 2);
    EXPECT_EQ(map.index(1, 2).data().toString(),
              QStringLiteral("13 %1").arg(allocation.armOfCutting[12] == 0 ? "A" : "B"));
    EXPECT_FALSE(map.index(1, 3).data().isValid());
}

TEST_F(NewSession, DescribesANewStationOnTheSpot) {
    enterRow({nameOf(support::hebe), "", "", "", "Windowsill", "", "8", ""});
    goTo(0, SessionColumn::Station);
    named<QPushButton>(*dialog_, "newStation").click();
    auto* described = pages::opened<desktop::StationDialog>(*dialog_);
    ASSERT_NE(described, nullptr);
    EXPECT_EQ(named<QLineEdit>(*described, "stationName").text(), QStringLiteral("Windowsill"));
    named<QPushButton>(*described, "describeStation").click();
    EXPECT_FALSE(cell(0, SessionColumn::Method).isEmpty());
    press(Qt::Key_Return, Qt::ControlModifier);
    const core::Batch& batch = logbook().batchLines().back().batch;
    EXPECT_EQ(core::find(workspace_.shelves().stations, batch.station)->name, "Windowsill");
}

TEST_F(NewSession, SaysWhenAStationIsTooFullButSavesAllTheSame) {
    core::Records records = support::recordsOf({});
    for (core::Station& station : records.shelves.stations) station.rows = 2, station.columns = 5;
    fill(records);
    open();
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "12", ""});
    EXPECT_TRUE(named<QLabel>(*dialog_, "notes").text().contains(QStringLiteral("10 of its 10 positions free")))
        << named<QLabel>(*dialog_, "notes").text().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(logbook().batchLines().size(), 1u);
}

TEST_F(NewSession, OfTwelveBatchesOverThreePlantsTakesAtMost120Keys) {
    fill(shelvesForTwelve());
    open();
    keys_ = 2;  // Ctrl+N has opened it
    const char* stations[] = {"n", "s", "w", "e"};
    int count = 12;
    for (const char* plant : {"h", "d", "w"}) {
        const bool isFirst = keys_ == 2;
        keysOf(plant);
        // The copied row brings kind and treatment; its stock plant comes with the plant.
        for (const char* typed : {isFirst ? "g" : "", isFirst ? "st" : "", isFirst ? "i" : ""}) keysOf(typed);
        for (int station = 0; station < 4; ++station) {
            if (station > 0) keysOf("");  // the plant stays
            keysOf(stations[station]);
            keysOf(isFirst && station == 0 ? "c" : "");  // medium
            keysOf(QString::number(count++));
        }
    }
    key(Qt::Key_Return, Qt::ControlModifier);
    key(Qt::Key_Return);  // Close, on what was saved
    std::printf("keystrokes for a session of 12 batches: %d\n", keys_);
    RecordProperty("keystrokes", keys_);
    EXPECT_EQ(keys_, 106) << "the figure that docs/manual/first_batch.md gives";
    EXPECT_LE(keys_, 120);
    EXPECT_FALSE(dialog_->isVisible());

    const std::vector<core::BatchLine> lines = logbook().batchLines();
    ASSERT_EQ(lines.size(), 12U);
    const core::StationId placed[] = {support::tubNorth, support::tubSouth, support::benchWest, support::benchEast};
    const core::PlantId plants[] = {support::hebe, support::deutzia, {103}};
    for (std::size_t number = 0; number < 12; ++number) {
        const core::Batch& batch = lines[number].batch;
        EXPECT_EQ(batch.plant, plants[number / 4]) << number;
        EXPECT_EQ(batch.station, placed[number % 4]) << number;
        EXPECT_EQ(batch.stuck, 12 + static_cast<int>(number));
        EXPECT_EQ(batch.treatment, support::weakGel);
        EXPECT_EQ(batch.cuttingKind, support::stemTip);
        EXPECT_EQ(batch.medium, support::coirMix);
        const auto positions = core::positionsFrom(batch.positions);
        ASSERT_TRUE(positions);
        EXPECT_EQ(std::ssize(*positions), batch.stuck) << "positions fill themselves";
    }
    EXPECT_EQ(lines[0].batch.stockPlant, support::hebeByTheGate);
    EXPECT_EQ(lines[4].batch.stockPlant, support::deutziaInThePotYard);
    EXPECT_FALSE(lines[8].batch.stockPlant.isSet()) << "no stock plant of another plant";
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(logbook().batchLines().empty()) << "one step for all twelve";
}

TEST_F(NewSession, MakesAFirstBatchInAnEmptyLogbookInFewKeys) {
    core::Records empty;
    empty.shelves = core::startingShelves();
    fill(empty);
    open();
    keys_ = 2;  // Ctrl+N
    const QString plant = QStringLiteral("Weigela florida"), station = QStringLiteral("Tub 1");
    keysOf(plant);
    for (int cells = 0; cells < 3; ++cells) keysOf("");  // stock plant, kind, treatment
    keysOf(station);
    named<QPushButton>(*dialog_, "newStation").click();  // Alt+T, which offscreen windows don't get
    keys_ += 2;
    const QPointer<desktop::StationDialog> described = pages::opened<desktop::StationDialog>(*dialog_);
    ASSERT_TRUE(described);
    ASSERT_TRUE(pages::comesTrue([&] { return described->isVisible(); }));
    QTest::keyClick(described, Qt::Key_Return);
    ++keys_;
    ASSERT_TRUE(pages::comesTrue([&] { return !described; }));
    QApplication::setActiveWindow(dialog_.get());  // as window managers do, and the offscreen platform doesn't
    ASSERT_TRUE(pages::comesTrue([&] { return QApplication::focusWidget() == &grid(); }));
    keysOf("");  // no medium: the station, as described, is passed
    keysOf("24");
    key(Qt::Key_Return, Qt::ControlModifier);
    key(Qt::Key_Return);
    const int names = static_cast<int>(plant.size() + station.size());
    std::printf("keystrokes for a first batch, without the names: %d\n", keys_ - names);
    EXPECT_EQ(keys_ - names, 17) << "the figure that docs/manual/first_batch.md gives";
    ASSERT_EQ(logbook().batchLines().size(), 1U);
    const core::Batch& batch = logbook().batchLines().front().batch;
    EXPECT_EQ(batch.stuck, 24);
    EXPECT_EQ(core::find(workspace_.shelves().stations, batch.station)->name, "Tub 1");
    EXPECT_EQ(core::find(workspace_.shelves().methods, batch.method)->name, "aerated water");
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(workspace_.shelves().plants.empty()) << "the plant and the station go with it";
    EXPECT_TRUE(workspace_.shelves().stations.empty());
}

TEST_F(NewSession, StartsFromTheLastSessionAndSavesOnlyWhatIsAccepted) {
    named<QPushButton>(*dialog_, "startFromLast").click();
    ASSERT_EQ(grid().model()->rowCount(), 2);
    EXPECT_EQ(cell(0, SessionColumn::Count), "24");
    EXPECT_EQ(cell(1, SessionColumn::Station), nameOf(support::benchWest));
    EXPECT_TRUE(named<QLabel>(*dialog_, "sums").text().startsWith("0 batches"));
    goTo(1, SessionColumn::Count);
    press(Qt::Key_Return);
    EXPECT_TRUE(named<QLabel>(*dialog_, "sums").text().startsWith("1 batch,"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(logbook().sessions().back().date, support::today());
    EXPECT_EQ(logbook().batchLines().size(), 3U);
}

TEST_F(NewSession, TakesAllOfTheLastSessionAtOnce) {
    named<QPushButton>(*dialog_, "startFromLast").click();
    EXPECT_FALSE(named<QPushButton>(*dialog_, "startFromLast").isVisible());
    named<QPushButton>(*dialog_, "acceptAll").click();
    EXPECT_FALSE(named<QPushButton>(*dialog_, "acceptAll").isVisible());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(logbook().batchLines().size(), 4U);
}

TEST_F(NewSession, FillsPositionsFromThoseThatAreFree) {
    core::BatchRecord standing = support::aBatch().stuck(3);
    standing.batch.positions = "A1-A3";
    fill(support::recordsOf({standing}));
    open();
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "4", ""});
    EXPECT_EQ(cell(0, SessionColumn::Positions), "A4-A7");
    goTo(1, SessionColumn::Positions);
    enter("B1-B4");
    EXPECT_EQ(cell(1, SessionColumn::Positions), "B1-B4");
    goTo(0, SessionColumn::Count);
    enter("8");
    EXPECT_EQ(cell(0, SessionColumn::Positions), "A4-A10, B5") << "past what was typed below";
    EXPECT_TRUE(named<QLabel>(*dialog_, "room").text().contains("Tub north 45 of 60"))
        << named<QLabel>(*dialog_, "room").text().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(logbook().batchLines().size(), 3U);
    EXPECT_EQ(logbook().batchLines().back().batch.positions, "B1-B4");
}

TEST_F(NewSession, MarksPositionsThatCannotBe) {
    core::BatchRecord standing = support::aBatch().stuck(3);
    standing.batch.positions = "A1-A3";
    fill(support::recordsOf({standing}));
    open();
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "4", ""});
    for (const char* typed : {"A1-A4", "A4-A6", "Z99", "by the window"}) {
        goTo(0, SessionColumn::Positions);
        enter(typed);
        const QModelIndex at = grid().model()->index(0, static_cast<int>(SessionColumn::Positions));
        EXPECT_FALSE(at.data(desktop::SessionGridModel::FaultRole).toString().isEmpty()) << typed;
        EXPECT_EQ(cell(0, SessionColumn::Positions), typed) << "nothing typed is lost";
    }
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(logbook().batchLines().size(), 1U);
}

TEST_F(NewSession, LeavesPositionsBlankWhereOlderBatchesDoNotSayWhereTheyStand) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "4", ""});
    EXPECT_EQ(cell(0, SessionColumn::Positions), "");
}

TEST_F(NewSession, PrintsLabelsAndTheSessionSheetOfWhatWasSaved) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "24", ""});
    press(Qt::Key_Return, Qt::ControlModifier);
    auto& table = named<QTableView>(*dialog_, "savedBatches");
    EXPECT_EQ(table.model()->index(0, 0).data().toString().toStdString(), logbook().batchLines().back().batch.code);
    for (const char* button : {"printLabels", "printSessionSheet"}) {
        named<QPushButton>(*dialog_, button).click();
        auto* preview = pages::opened<desktop::PrintPreview>(*dialog_);
        ASSERT_NE(preview, nullptr) << button;
        preview->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

TEST_F(NewSession, SaysHowASplitIsWorkedOut) {
    enterRow({nameOf(support::hebe), "", "", "", nameOf(support::tubNorth), "", "25", ""});
    goTo(0, SessionColumn::Count);
    auto* split = splitOver({support::tubNorth, support::benchWest});
    ASSERT_NE(split, nullptr);
    named<QPushButton>(*split, "howWorkedOut").click();
    auto* shown = pages::opened<desktop::MethodDialog>(*split);
    ASSERT_NE(shown, nullptr);
    EXPECT_TRUE(shown->shownText().contains("20260630")) << "with its own seed";
}

}  // namespace
