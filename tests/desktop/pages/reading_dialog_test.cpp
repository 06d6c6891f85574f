// SPDX-License-Identifier: MIT
#include "app/desktop/readings/reading_dialog.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/readings/station_line.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/event_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using namespace std::chrono_literals;
using pages::named;
using pages::press;
using pages::type;

core::Moment noon(core::Date day) {
    return core::Moment{std::chrono::sys_days{day} + 12h};
}

class ReadingRound : public pages::Desk {
  protected:
    ReadingRound() { fill(support::recordsOf({support::aBatch()})); }
    ~ReadingRound() override { delete dialog_; }

    void open() {
        dialog_ = new desktop::ReadingDialog(context());
        pages::show(*dialog_);
    }

    desktop::StationLine& line(core::StationId station) {
        return named<desktop::StationLine>(*dialog_, ("stationLine" + std::to_string(station.value)).c_str());
    }

    std::vector<core::Reading> readings(core::StationId station) {
        std::vector<core::Reading> found =
            logbook().readings(station, noon(support::stickingDay()) - 24h, noon(support::today()) + 24h);
        std::ranges::stable_sort(found, {}, &core::Reading::quantity);
        return found;
    }

    QString faultsShown() {
        QStringList faults;
        for (const desktop::FaultLabel* label : dialog_->findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) faults << label->fault();
        return faults.join(QLatin1Char('\n'));
    }

    void keep(core::Quantity quantity, double value, core::StationId station = support::tubNorth) {
        const core::Reading reading{
            .station = station, .quantity = quantity, .readAt = noon(support::stickingDay()), .value = value};
        EXPECT_TRUE(db::recordReadings(logbook(), {reading}, noon(support::today())));
    }

    QPointer<desktop::ReadingDialog> dialog_;
};

TEST_F(ReadingRound, GoesFromFigureToFigureAndFromStationToStation) {
    open();
    type(QStringLiteral("0.6"));
    press(Qt::Key_Return);
    type(QStringLiteral("6.0"));
    press(Qt::Key_Return);
    type(QStringLiteral("23"));
    press(Qt::Key_Return);  // the line ends: kept
    const std::vector<core::Reading> kept = readings(support::tubNorth);
    ASSERT_EQ(kept.size(), 3U);
    EXPECT_DOUBLE_EQ(kept[0].value, 0.6);
    EXPECT_EQ(kept[0].readAt, noon(support::today()));
    EXPECT_TRUE(line(support::tubSouth).isAncestorOf(QApplication::focusWidget()));
    EXPECT_TRUE(named<QLabel>(line(support::tubNorth), "lineSaved").text().contains(QStringLiteral("EC 0.60 mS/cm")))
        << named<QLabel>(line(support::tubNorth), "lineSaved").text().toStdString();
}

TEST_F(ReadingRound, IsOneStepToUndoForEachStation) {
    open();
    for (const char* figure : {"0.6", "6.0", "23", "0.7", "6.1", "24"}) {
        type(QString::fromLatin1(figure));
        press(Qt::Key_Return);
    }
    EXPECT_EQ(readings(support::tubSouth).size(), 3U);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(readings(support::tubSouth).empty());
    EXPECT_EQ(readings(support::tubNorth).size(), 3U);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(readings(support::tubNorth).empty());
}

TEST_F(ReadingRound, RefusesAnImpossiblePhInPlaceAndKeepsWhatWasTyped) {
    open();
    press(Qt::Key_Return);  // no EC
    type(QStringLiteral("61"));
    press(Qt::Key_Return);
    EXPECT_TRUE(faultsShown().contains(QStringLiteral("Did you mean 6.1?"))) << faultsShown().toStdString();
    press(Qt::Key_Return);  // a second time changes nothing
    auto* ph = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(ph, nullptr);
    EXPECT_EQ(ph->text(), QStringLiteral("61"));
    EXPECT_TRUE(readings(support::tubNorth).empty());
}

TEST_F(ReadingRound, AsksAboutAFigureOutOfItsBandAndKeepsItOnTheSecondEnter) {
    open();
    type(QStringLiteral("6"));
    press(Qt::Key_Return);
    EXPECT_TRUE(faultsShown().contains(QStringLiteral("Did you mean 0.6?"))) << faultsShown().toStdString();
    press(Qt::Key_Return);
    EXPECT_TRUE(faultsShown().isEmpty());
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_EQ(readings(support::tubNorth).size(), 1U);
    EXPECT_DOUBLE_EQ(readings(support::tubNorth).front().value, 6);
}

TEST_F(ReadingRound, AsksForWhatIsReadThereAndKnowsTheLastFigures) {
    keep(core::Quantity::Light, 100, support::benchWest);
    keep(core::Quantity::AirTemperature, 24, support::benchWest);
    open();
    const QList<QLineEdit*> fields = line(support::benchWest).findChildren<QLineEdit*>(QRegularExpression("^reading"));
    ASSERT_EQ(fields.size(), 2);
    EXPECT_EQ(fields[0]->objectName(), QStringLiteral("reading5"));  // air before light
    EXPECT_TRUE(fields[0]->toolTip().contains(QStringLiteral("24.0")));
}

TEST_F(ReadingRound, KeepsCareWithTheReadingsInTheSameStep) {
    open();
    type(QStringLiteral("0.6"));
    auto& north = line(support::tubNorth);
    named<QComboBox>(north, "care").setCurrentIndex(1);
    named<QLineEdit>(north, "lineNote").setText(QStringLiteral("2 L of rainwater"));
    named<QLineEdit>(north, "lineNote").setFocus();
    press(Qt::Key_Return);
    const std::vector<core::Care> care =
        logbook().care(support::tubNorth, noon(support::today()) - 1h, noon(support::today()) + 1h);
    ASSERT_EQ(care.size(), 1U);
    EXPECT_EQ(care[0].kind, core::CareKind::ToppedUp);
    EXPECT_EQ(care[0].note, "2 L of rainwater");
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(readings(support::tubNorth).empty());
    EXPECT_TRUE(logbook().care(support::tubNorth, noon(support::today()) - 1h, noon(support::today()) + 1h).empty());
}

TEST_F(ReadingRound, NeedsWordsForCareWithoutAName) {
    open();
    auto& care = named<QComboBox>(line(support::tubNorth), "care");
    care.setCurrentIndex(care.count() - 1);
    care.setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(faultsShown().contains(QStringLiteral("a few words are needed"))) << faultsShown().toStdString();
    EXPECT_EQ(care.currentIndex(), care.count() - 1);
}

TEST_F(ReadingRound, TakesADayAndAnHourOfItsOwn) {
    open();
    named<QLineEdit>(*dialog_, "momentDay").setText(QStringLiteral("2026-06-29"));
    named<QLineEdit>(*dialog_, "momentHour").setText(QStringLiteral("7:30"));
    named<QLineEdit>(line(support::tubNorth), "reading0").setText(QStringLiteral("0.5"));
    named<QPushButton>(*dialog_, "readingsDone").click();
    ASSERT_EQ(readings(support::tubNorth).size(), 1U);
    EXPECT_LT(readings(support::tubNorth)[0].readAt, noon(support::today()) - 24h);
}

TEST_F(ReadingRound, RefusesAnHourThatThereIsNot) {
    open();
    named<QLineEdit>(*dialog_, "momentHour").setText(QStringLiteral("25"));
    named<QLineEdit>(line(support::tubNorth), "reading0").setText(QStringLiteral("0.5"));
    named<QPushButton>(*dialog_, "readingsDone").click();
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_TRUE(faultsShown().contains(QStringLiteral("0:00 to 23:59")));
    EXPECT_TRUE(readings(support::tubNorth).empty());
}

TEST_F(ReadingRound, EscDropsNothingWithoutSayingSo) {
    open();
    type(QStringLiteral("0.6"));
    press(Qt::Key_Escape);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_TRUE(faultsShown().contains(QStringLiteral("Esc again drops it")));
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    EXPECT_TRUE(readings(support::tubNorth).empty());
}

}  // namespace
