// SPDX-License-Identifier: MIT
// A round of readings with several figures typed at once, and what it costs in keys.
#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <iostream>

#include "app/desktop/readings/reading_dialog.h"
#include "app/desktop/readings/station_line.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/event_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using namespace std::chrono_literals;
using pages::named;
using pages::press;
using testing::HasSubstr;

class RoundOfReadings : public pages::Desk {
  protected:
    /// Eight tubs, in walking order.
    RoundOfReadings() {
        core::Records records = support::recordsOf({});
        records.shelves.stations.clear();
        for (int number = 1; number <= 8; ++number) {
            core::Station station;
            station.id = core::StationId{1000 + number};
            station.name = "Tub " + std::to_string(number);
            station.method = support::aeratedWater;
            station.walkingOrder = number;
            records.shelves.stations.push_back(station);
        }
        fill(records);
    }
    ~RoundOfReadings() override { delete dialog_; }

    void open() {
        dialog_ = new desktop::ReadingDialog(context());
        pages::show(*dialog_);
    }
    void typeCounted(const QString& text) {
        keys_ += static_cast<int>(text.size());
        pages::type(text);
    }
    void pressCounted(Qt::Key key) {
        ++keys_;
        press(key);
    }
    std::vector<core::Reading> readingsOf(int number) {
        return logbook().readings(core::StationId{1000 + number}, workspace_.clock()() - 1h, workspace_.clock()() + 1h);
    }
    std::string faults() {
        QStringList all;
        for (const auto* label : dialog_->findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) all << label->fault();
        return all.join(u'\n').toStdString();
    }

    QPointer<desktop::ReadingDialog> dialog_;
    int keys_{};
};

TEST_F(RoundOfReadings, OfEightStationsWithThreeFiguresEachTakes89Keys) {
    open();
    for (int number = 1; number <= 8; ++number) {
        typeCounted(QStringLiteral("0.6 6.1 21"));
        pressCounted(Qt::Key_Return);
    }
    pressCounted(Qt::Key_Return);  // Done
    std::cout << keys_ << " keys for 8 stations with 3 figures each\n";
    EXPECT_EQ(keys_, 89);
    for (int number = 1; number <= 8; ++number) {
        const auto kept = readingsOf(number);
        ASSERT_EQ(kept.size(), 3U) << number;
        EXPECT_DOUBLE_EQ(kept[0].value, 0.6);
        EXPECT_DOUBLE_EQ(kept[1].value, 6.1);
        EXPECT_DOUBLE_EQ(kept[2].value, 21);
    }
    workspace_.undo();
    EXPECT_TRUE(readingsOf(8).empty());
    EXPECT_EQ(readingsOf(7).size(), 3U);
}

TEST_F(RoundOfReadings, AsksAboutAnOddFigureInItsRow) {
    open();
    pages::type(QStringLiteral("0.6 61 21"));
    press(Qt::Key_Return);
    EXPECT_THAT(faults(), HasSubstr("Did you mean 6.1?"));
    EXPECT_TRUE(readingsOf(1).empty());
    pages::type(QStringLiteral("6.1"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(readingsOf(1).size(), 3U);
}

TEST_F(RoundOfReadings, SaysWhenThereAreMoreFiguresThanFields) {
    open();
    pages::type(QStringLiteral("0.6 6.1 21 5"));
    press(Qt::Key_Return);
    EXPECT_THAT(faults(), HasSubstr("There are 4 figures for 3 fields"));
    EXPECT_TRUE(readingsOf(1).empty());
}

TEST_F(RoundOfReadings, ShowsWhatWasReadLastAndWhen) {
    const core::Reading reading{.station = core::StationId{1001},
                                .quantity = core::Quantity::SolutionPh,
                                .readAt = workspace_.clock()() - 72h,
                                .value = 5.9};
    ASSERT_TRUE(db::recordReadings(logbook(), {reading}, workspace_.clock()()));
    open();
    auto& line = named<desktop::StationLine>(*dialog_, "stationLine1001");
    EXPECT_EQ(named<QLabel>(line, "lineLast").text().toStdString(), "last: pH 5.9; 3 days ago");
}

TEST_F(RoundOfReadings, LeavesEverythingAsItWasOnEsc) {
    open();
    pages::type(QStringLiteral("0.6 6.1"));
    const std::size_t before = logbook().history().size();
    press(Qt::Key_Escape);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_THAT(faults(), HasSubstr("not kept yet"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    EXPECT_TRUE(readingsOf(1).empty());
    EXPECT_EQ(logbook().history().size(), before);
}

}  // namespace
