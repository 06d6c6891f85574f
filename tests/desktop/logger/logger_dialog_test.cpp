// SPDX-License-Identifier: MIT
#include "app/desktop/logger/logger_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>

#include "app/desktop/widgets/fault_label.h"
#include "core/climate/logger_day.h"
#include "tests/desktop/pages/desk.h"
#include "tests/support/scratch_folder.h"

namespace {

using pages::comesTrue;
using pages::named;

/// Ten days of June from midnight, a row each ten minutes, without the rows `from` to `until`.
std::string tenDays(int from = -1, int until = -1) {
    std::string text = "Device;7\nTime;Air (°C);Battery\n";
    for (int row = 0; row < 1440; ++row) {
        if (row >= from && row < until) continue;
        const auto moment = std::chrono::sys_days{std::chrono::year{2026} / 6 / 1} + std::chrono::minutes{10 * row};
        std::string time = core::isoText(core::Moment{moment});
        time = time.substr(8, 2) + '.' + time.substr(5, 2) + '.' + time.substr(0, 4) + ' ' + time.substr(11, 5);
        text += time + ";21," + std::to_string(row % 10) + ";3,0\n";
    }
    return text;
}

class LoggerDialog : public pages::Desk {
  protected:
    void open() {
        dialog_ = std::make_unique<desktop::LoggerDialog>(context());
        pages::show(*dialog_);
    }
    QString write(const std::string& name, const std::string& content) {
        support::writeContent(folder_ / name, content);
        return QString::fromStdString((folder_ / name).string());
    }
    void choose(const QString& file) {
        prompts_.willPickFileToOpen(file);
        pages::press(Qt::Key_Return);  // the button to choose a file has the focus
    }
    template <class Widget>
    Widget& find(const char* name) {
        return named<Widget>(*dialog_, name);
    }
    QString sentence() { return find<QLabel>("loggerSentence").text(); }
    bool canBringIn() {
        return comesTrue([&] { return find<QPushButton>("loggerBringIn").isEnabled(); });
    }
    bool says(const QString& words) {
        return comesTrue([&] { return find<desktop::FaultLabel>("loggerUnsaid").fault().contains(words); });
    }
    /// As a person does who opens the list and takes the line.
    void take(const char* box, const QString& line) {
        auto& list = find<QComboBox>(box);
        const int place = list.findText(line);
        ASSERT_GE(place, 0) << line.toStdString();
        list.setFocus();
        list.setCurrentIndex(place);
        emit list.activated(place);
    }
    std::int64_t values() {
        std::int64_t count = 0;
        for (const core::LoggerSpan& span : logbook().loggerSpans()) count += span.samples;
        return count;
    }
    void bringInTenDays() {
        open();
        choose(write("north.csv", tenDays()));
        ASSERT_TRUE(says("no station"));
        take("loggerStation2", "Tub north");
        ASSERT_TRUE(canBringIn());
        QTest::mouseClick(&find<QPushButton>("loggerBringIn"), Qt::LeftButton);
        ASSERT_FALSE(dialog_->isVisible());
    }

    support::ScratchFolder folder_;
    std::unique_ptr<desktop::LoggerDialog> dialog_;
};

TEST_F(LoggerDialog, BringsAFileInAsOneStepAndRemembersItsColumns) {
    bringInTenDays();
    EXPECT_EQ(values(), 1440);
    ASSERT_EQ(logbook().loggerFormats().size(), 1U);
    EXPECT_EQ(logbook().loggerFormats()[0].name, "north");
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(values(), 0);
    EXPECT_TRUE(logbook().loggerFormats().empty());
}

TEST_F(LoggerDialog, SaysBeforehandWhatWouldComeIn) {
    open();
    choose(write("north.csv", tenDays(100, 130)));
    ASSERT_TRUE(says("no station"));
    take("loggerStation2", "Tub north");
    ASSERT_TRUE(canBringIn());
    for (const char* words :
         {"Air temperature of Tub north", "1410 rows", "1 June 2026", "10 June 2026", "10 minutes", "1 gap"})
        EXPECT_TRUE(sentence().contains(words)) << words << " in " << sentence().toStdString();
    EXPECT_TRUE(find<QLabel>("loggerGaps").text().contains("5 hours 10 minutes"));
}

TEST_F(LoggerDialog, NeedsOnlyEnterWhereTheFormatIsKnown) {
    bringInTenDays();
    open();
    QSignalSpy said(dialog_.get(), &desktop::LoggerDialog::said);
    choose(write("later.csv", tenDays() + "11.06.2026 00:00;21,5;3,0\n"));
    ASSERT_TRUE(canBringIn());
    EXPECT_FALSE(find<QTableWidget>("loggerColumns").isVisible());
    pages::press(Qt::Key_Return);
    EXPECT_FALSE(dialog_->isVisible());
    ASSERT_EQ(said.size(), 1);
    EXPECT_EQ(said[0][0].toString(), "1 new value. 1440 were there already.");
    EXPECT_EQ(values(), 1441);
}

TEST_F(LoggerDialog, SaysOfTheSameFileThatNothingIsNew) {
    bringInTenDays();
    const auto steps = logbook().history().size();
    open();
    choose(write("north.csv", tenDays()));
    ASSERT_TRUE(canBringIn());
    pages::press(Qt::Key_Return);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(sentence(), "Nothing new: all 1440 values were there already.");
    EXPECT_EQ(logbook().history().size(), steps);
    pages::press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
}

TEST_F(LoggerDialog, ListsFaultsWithRowAndColumnAndBringsInNothing) {
    open();
    choose(write("north.csv", tenDays() + "11.06.2026 00:00;OFL;3,0\n11.06.2026 00:10;210;3,0\n"));
    ASSERT_TRUE(says("no station"));
    take("loggerStation2", "Tub north");
    auto& faults = find<QTableWidget>("loggerFaults");
    ASSERT_TRUE(comesTrue([&] { return faults.isVisible(); }));
    EXPECT_EQ(faults.rowCount(), 2);
    EXPECT_EQ(faults.item(0, 0)->text(), "1443");
    EXPECT_EQ(faults.item(0, 1)->text(), "Air (°C)");
    EXPECT_TRUE(faults.item(1, 2)->text().contains("−30 to 60 °C"));
    EXPECT_FALSE(find<QPushButton>("loggerBringIn").isEnabled());
    find<QCheckBox>("loggerNoReading").click();
    ASSERT_TRUE(comesTrue([&] { return faults.isVisible() && faults.rowCount() == 1; }));
    EXPECT_EQ(values(), 0);
}

TEST_F(LoggerDialog, AsksWhichOfTheFiguresIsTheDay) {
    open();
    choose(write("day.csv", "Time,Air (°C)\n06/01/2026 10:00,21\n06/01/2026 10:10,21.5\n"));
    ASSERT_TRUE(says("more than one way"));
    take("loggerStation2", "Tub north");
    EXPECT_FALSE(find<QPushButton>("loggerBringIn").isEnabled());
    take("loggerOrder", "day, month, year");
    ASSERT_TRUE(canBringIn());
    EXPECT_TRUE(sentence().contains("6 January 2026")) << sentence().toStdString();
    take("loggerOrder", "month, day, year");
    ASSERT_TRUE(comesTrue([&] { return sentence().contains("1 June 2026"); }));
}

TEST_F(LoggerDialog, AsksForTheLampOfLux) {
    open();
    choose(write("light.csv", "Time,Light (lux)\n2026-06-01 10:00,5400\n2026-06-01 10:10,5400\n"));
    ASSERT_TRUE(says("how many lux"));
    take("loggerStation2", "Tub north");
    auto& lux = find<QLineEdit>("loggerLux2");
    EXPECT_TRUE(lux.isVisible());
    lux.setFocus();
    pages::type("54");
    pages::press(Qt::Key_Tab);
    ASSERT_TRUE(canBringIn());
    QTest::mouseClick(&find<QPushButton>("loggerBringIn"), Qt::LeftButton);
    const auto from = core::Moment{std::chrono::sys_days{std::chrono::year{2026} / 6 / 1}};
    const auto logged =
        logbook().loggerValues(support::tubNorth, core::Quantity::Light, from, from + std::chrono::days(1));
    ASSERT_EQ(logged.size(), 2U);
    EXPECT_NEAR(logged[0].value, 100, 1e-12);
}

TEST_F(LoggerDialog, AsksWhichHourIsMeantWhereRowsGoThroughItOnce) {
    open();
    choose(write("autumn.csv", "Time,Air (°C)\n2025-10-26 01:30,21\n2025-10-26 02:30,21.5\n2025-10-26 03:30,21.5\n"));
    ASSERT_TRUE(says("no station"));
    take("loggerStation2", "Tub north");
    take("loggerZone", "Europe/Berlin");
    ASSERT_TRUE(comesTrue([&] { return find<QTableWidget>("loggerFaults").isVisible(); }));
    EXPECT_TRUE(find<QComboBox>("loggerTwice").isVisible());
    take("loggerTwice", "winter time, the second");
    EXPECT_TRUE(canBringIn());
}

TEST_F(LoggerDialog, TakesAFileThatIsDroppedOnIt) {
    open();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(write("north.csv", tenDays()))});
    QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(dialog_.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(dialog_.get(), &drop);
    EXPECT_TRUE(says("no station"));
}

TEST_F(LoggerDialog, SaysWhatIsWrongWithAFileThatIsNoTable) {
    open();
    choose(write("letter.csv", "Dear grower\n"));
    EXPECT_TRUE(says("letter.csv"));
    EXPECT_FALSE(find<QPushButton>("loggerBringIn").isEnabled());
}

TEST_F(LoggerDialog, KeepsNothingWhenItIsClosedWhileItReads) {
    open();
    std::string text = tenDays();
    for (int i = 0; i < 5; ++i) text += text.substr(text.find("01.06"));
    choose(write("north.csv", text));
    pages::press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    dialog_.reset();
    EXPECT_EQ(values(), 0);
    EXPECT_TRUE(logbook().loggerFormats().empty());
}

}  // namespace
