// SPDX-License-Identifier: MIT
#include "app/desktop/climate/climate_page.h"

#include <gmock/gmock.h>

#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <iostream>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/readings/care_dialog.h"
#include "app/desktop/readings/reading_dialog.h"
#include "app/desktop/registry.h"
#include "app/plot/local_time.h"
#include "app/report/plain_text.h"
#include "db/actions/event_actions.h"
#include "db/actions/logger_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using namespace std::chrono_literals;
using pages::named;
using testing::HasSubstr;

class Climate : public pages::Desk {
  protected:
    Climate() {
        fill(support::recordsOf({support::aBatch().stuckOn(core::addDays(support::today(), -10)).code("B260001A"),
                                 support::aBatch().at(support::benchWest)}));
    }

    void read(core::Quantity quantity, double value, std::chrono::hours ago,
              core::StationId station = support::tubNorth) {
        const core::Reading reading{
            .station = station, .quantity = quantity, .readAt = workspace_.clock()() - ago, .value = value};
        EXPECT_TRUE(
            workspace_.run([&](db::Logbook& logbook) { return db::recordReadings(logbook, {reading}, now()); }).isDone);
    }

    /// A sample every ten minutes of so many whole days before today (UTC).
    void log(core::Quantity quantity, double value, int days) {
        std::vector<core::LoggerDay> all;
        for (int day = 1; day <= days; ++day) {
            core::LoggerDay one{.station = support::tubNorth,
                                .quantity = quantity,
                                .day = core::addDays(support::today(), -day),
                                .samples = {}};
            for (int second = 0; second < core::secondsInADay; second += 600) one.samples.push_back({second, value});
            all.push_back(std::move(one));
        }
        EXPECT_TRUE(db::addLoggerDays(logbook(), all, "logger file", now()));
    }

    [[nodiscard]] core::Moment now() const { return workspace_.clock()(); }

    void open() {
        page_ = std::make_unique<desktop::ClimatePage>(context());
        pages::show(*page_);
        page_->activated();
    }

    QComboBox& chooser(const char* name) { return named<QComboBox>(*page_, name); }
    void choose(const char* name, const QString& beginning) {
        QComboBox& box = chooser(name);
        for (int i = 0; i < box.count(); ++i)
            if (box.itemText(i).startsWith(beginning)) {
                box.setCurrentIndex(i);
                emit box.activated(i);
                return;
            }
        FAIL() << "nothing begins with " << beginning.toStdString();
    }
    std::string words(const char* quantity) {
        const auto* label = page_->findChild<QLabel*>(QStringLiteral("climate_%1Words").arg(QLatin1String(quantity)));
        return label == nullptr || !label->isVisibleTo(page_.get()) ? std::string() : label->text().toStdString();
    }

    std::unique_ptr<desktop::ClimatePage> page_;
};

TEST_F(Climate, SaysWhatWouldBeHereWhereNothingWasRead) {
    open();
    EXPECT_EQ(named<QLabel>(*page_, "climateEmptyTitle").text(), QStringLiteral("Nothing was read in this time"));
    EXPECT_EQ(page_->sheet(), nullptr);
}

TEST_F(Climate, ShowsEachQuantityWithItsNewestFigureItsAgeAndItsBand) {
    read(core::Quantity::SolutionEc, 0.8, 50h);
    read(core::Quantity::SolutionEc, 0.4, 26h);
    open();
    EXPECT_THAT(words("solution_ec"), HasSubstr("Solution EC: newest 0.40 mS/cm, 26 hours ago"));
    EXPECT_THAT(words("solution_ec"), HasSubstr("outside its band"));
    EXPECT_THAT(words("solution_ec"), HasSubstr("2 readings\ngood: up to 0.50 mS/cm (before roots, the trade's)"));
    EXPECT_THAT(words("solution_ec"), HasSubstr("14\u202f% of the time covered"));
    EXPECT_EQ(words("solution_ph"), "");
}

TEST_F(Climate, WorksOutWhatComesOfLoggers) {
    log(core::Quantity::AirTemperature, 24, 5);
    log(core::Quantity::RelativeHumidity, 80, 5);
    log(core::Quantity::Light, 60, 5);
    open();
    EXPECT_THAT(words("vapour_deficit"), HasSubstr("newest 0.60 kPa"));
    EXPECT_THAT(words("dew_point"), HasSubstr("newest 20.3"));
    EXPECT_THAT(words("daily_light"), HasSubstr("newest 5.1 mol/m²"));  // 60 umol for 23 h 50 min
    EXPECT_THAT(words("daily_light"), HasSubstr("5 whole days"));
    EXPECT_TRUE(named<desktop::FigurePanel>(*page_, "climate_vapour_deficit").isVisibleTo(page_.get()));
}

TEST_F(Climate, GoesByStationSpanAndBands) {
    read(core::Quantity::SolutionPh, 6.0, 24h * 9);
    read(core::Quantity::MediumTemperature, 21, 3h, support::benchWest);
    open();
    EXPECT_EQ(words("solution_ph"), "");  // the last seven days
    choose("climateSpan", QStringLiteral("since sticking of B260001A"));
    EXPECT_THAT(words("solution_ph"), HasSubstr("newest pH 6.0, 9 days ago"));
    choose("climateBands", QStringLiteral("hardening"));
    EXPECT_THAT(words("solution_ph"), HasSubstr("good: pH 5.6 to 6.2 (hardening, the trade's)"));
    choose("climateStation", QStringLiteral("Bench west"));
    EXPECT_EQ(words("solution_ph"), "");
    choose("climateSpan", QStringLiteral("all"));
    EXPECT_THAT(words("medium_temperature"), HasSubstr("newest 21.0"));
}

TEST_F(Climate, FollowsWhatIsRecordedAndTakenBack) {
    open();
    read(core::Quantity::SolutionPh, 6.0, 1h);
    EXPECT_THAT(words("solution_ph"), HasSubstr("1 reading"));
    workspace_.undo();
    EXPECT_EQ(words("solution_ph"), "");
}

TEST_F(Climate, KeepsCareOfTheStationWithItsLitres) {
    open();
    named<QPushButton>(*page_, "climateCare").click();
    auto* dialog = pages::opened<desktop::CareDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "careVolume").setText(QStringLiteral("2,5"));
    named<QPushButton>(*dialog, "saveCare").click();
    const auto care = logbook().care(support::tubNorth, now() - 1h, now() + 1h);
    ASSERT_EQ(care.size(), 1U);
    EXPECT_EQ(care[0].litres, 2.5);
    workspace_.undo();
    EXPECT_TRUE(logbook().care(support::tubNorth, now() - 1h, now() + 1h).empty());
}

TEST_F(Climate, LeadsToReadingsOfThisStationAndToTheRound) {
    open();
    const QSignalSpy tasks(page_.get(), &desktop::Page::taskWanted);
    named<QPushButton>(*page_, "climateRound").click();
    named<QPushButton>(*page_, "climateLogger").click();
    ASSERT_EQ(tasks.size(), 2);
    EXPECT_EQ(tasks[0][0].toString(), desktop::task::reading);
    EXPECT_EQ(tasks[1][0].toString(), desktop::task::logger);
    named<QPushButton>(*page_, "climateReading").click();
    EXPECT_NE(pages::opened<desktop::ReadingDialog>(*page_), nullptr);
}

TEST_F(Climate, PrintsWhatItShows) {
    read(core::Quantity::SolutionPh, 7.4, 5h);
    open();
    const auto sheet = page_->sheet();
    ASSERT_NE(sheet, nullptr);
    const std::string text = report::plainText(*sheet).toStdString();
    EXPECT_THAT(text, HasSubstr("Climate of Tub north"));
    EXPECT_THAT(text, HasSubstr("Solution pH: newest pH 7.4, 5 hours ago"));
}

TEST_F(Climate, IsThereAtOnceWithAMillionSamples) {
    core::LoggerDay day{.station = support::tubNorth, .quantity = {}, .day = {}, .samples = {}};
    std::vector<core::LoggerDay> days;
    for (int second = 0; second < core::secondsInADay; second += 60) day.samples.push_back({second, 24.0});
    for (const core::Quantity quantity : {core::Quantity::AirTemperature, core::Quantity::SolutionTemperature})
        for (int back = 1; back <= 347; ++back) {
            day.quantity = quantity;
            day.day = core::addDays(support::today(), -back);
            days.push_back(day);
        }
    ASSERT_TRUE(db::addLoggerDays(logbook(), days, "logger files", now()));
    open();
    QElapsedTimer clock;
    clock.start();
    choose("climateSpan", QStringLiteral("all"));  // in memory: read and worked out before this returns
    std::cout << "a million samples read, worked out and shown in " << clock.elapsed() << " ms\n";
    EXPECT_THAT(words("air_temperature"), HasSubstr("499680 readings"));
    QElapsedTimer drawing;
    drawing.start();
    static_cast<void>(named<desktop::FigurePanel>(*page_, "climate_air_temperature").grab());
    std::cout << "drawn in " << drawing.elapsed() << " ms\n";
    EXPECT_LT(drawing.elapsed(), 2000);  // an accident, not a measurement
}

}  // namespace
