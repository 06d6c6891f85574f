// SPDX-License-Identifier: MIT
#include "app/plot/climate_figure.h"

#include <QLocale>

#include "app/plot/climate_text.h"
#include "app/plot/local_time.h"
#include "app/plot/thinned_line.h"
#include "app/plot/time_axis.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "stats/numeric/seeded_random.h"
#include "tests/plot/drawn_texts.h"

namespace {

using core::Moment;
using core::TimedValue;
using std::chrono::hours;
using std::chrono::minutes;
using testing::HasSubstr;

Moment start() {
    return plot::momentOf(*core::dateFromIso("2026-03-14"), 0);
}

core::StageBand humidityBand(double low, double high, core::Stage stage) {
    return {.stage = stage,
            .quantity = core::ClimateQuantity::RelativeHumidity,
            .owner = core::BandOwner::Trade,
            .band = {.low = low, .high = high, .source = "common practice, no source"},
            .note = {}};
}

/// Two days every ten minutes with five hours missing, and two readings by hand. Invented.
plot::ClimateChart humidity() {
    plot::ClimateChart chart;
    chart.quantity = core::ClimateQuantity::RelativeHumidity;
    chart.station = QStringLiteral("Tub south");
    chart.from = start();
    chart.to = start() + hours{48};
    std::vector<TimedValue> values;
    for (int minute = 0; minute <= 2880; minute += 10)
        if (minute < 600 || minute > 900) values.push_back({start() + minutes{minute}, minute < 1440 ? 92.0 : 85.0});
    chart.values = std::make_shared<const std::vector<TimedValue>>(values);
    chart.byHand = {{start() + hours{9}, 92}, {start() + hours{30}, 85}};
    chart.bands = {{start(), start() + hours{36}, humidityBand(90, 100, core::Stage::BeforeRoots)},
                   {start() + hours{36}, chart.to, humidityBand(80, 95, core::Stage::FirstRoots)}};
    chart.care = {
        {.doneAt = start() + hours{20}, .kind = core::CareKind::ToppedUp, .note = "rainwater", .litres = 2.0}};
    chart.figures =
        core::figuresOver(*chart.values, chart.quantity, plot::bandsInTime(chart), chart.from, chart.to, 10);
    return chart;
}

TEST(ClimateFigure, SaysHowOftenItWasReadAndForHowLongItWasOutside) {
    const std::string sentence = plot::climateFigure(humidity())->sentence().toStdString();
    EXPECT_THAT(sentence, HasSubstr("Relative humidity at Tub south: 257 readings"));
    EXPECT_THAT(sentence, HasSubstr("12 h of 43 h outside its band"));  // 24:00 to 36:00, of 48 less 5 h 10 min
    EXPECT_THAT(plot::climateFigure(humidity())->method().toStdString(), HasSubstr("89\u202f% of the time covered"));
}

TEST(ClimateFigure, ShowsBandsWithTheirStageAndOwnerAndCareWithItsLitres) {
    const auto figure = plot::climateFigure(humidity());
    const std::string texts = examples::drawnTexts(*figure, {900, 360}).join(u'\n').toStdString();
    EXPECT_THAT(texts, HasSubstr("good: 90 to 100 % (before roots, the trade's), then 80 to 95 % (first roots, the "));
    EXPECT_THAT(texts, HasSubstr("topped up"));
    QStringList hints;
    for (const plot::Hint& hint : examples::drawn(*figure, {900, 360}).hints) hints << hint.text;
    const std::string all = hints.join(u'\n').toStdString();
    EXPECT_THAT(all, HasSubstr("topped up, 2 L: rainwater"));
    EXPECT_THAT(all, HasSubstr("relative humidity 92 %, read by hand; 257 readings"));
    EXPECT_THAT(all, HasSubstr("outside 90 to 100 %"));
    EXPECT_THAT(all, HasSubstr("Source: common practice, no source"));
}

TEST(ClimateFigure, HasItsFiguresWithCareAndBandsInOrderOfTime) {
    const plot::FigureTable table = plot::climateFigure(humidity())->table();
    EXPECT_EQ(table.rows.size(), 257U + 1 + 2);
    for (const QStringList& row : table.rows) EXPECT_EQ(row.size(), table.headings.size());
    EXPECT_TRUE(std::ranges::any_of(
        table.rows, [](const QStringList& row) { return row[1] == QStringLiteral("topped up, 2 L: rainwater"); }));
}

TEST(ClimateFigure, HasARowADayWhereThereAreTooManyValues) {
    plot::ClimateChart chart = humidity();
    std::vector<TimedValue> values;
    for (int minute = 0; minute < 2880; ++minute) values.push_back({start() + minutes{minute}, 91.0});
    chart.values = std::make_shared<const std::vector<TimedValue>>(values);
    const plot::FigureTable table = plot::climateFigure(chart)->table();
    EXPECT_EQ(table.rows.size(), 2U + 1 + 2);
}

TEST(ClimateFigure, DrawsTheLightOfDaysAsBars) {
    plot::ClimateChart chart;
    chart.quantity = core::ClimateQuantity::DailyLight;
    chart.station = QStringLiteral("Tub south");
    chart.from = start();
    chart.to = start() + hours{72};
    for (int day = 0; day < 3; ++day)
        chart.days.push_back({.day = core::addDays(*core::dateFromIso("2026-03-14"), day),
                              .from = start() + hours{24 * day},
                              .to = start() + hours{24 * day + 24},
                              .moles = 5.0 + day,
                              .covered = day == 2 ? 0.5 : 1.0});
    chart.figures = core::figuresOverDays(chart.days, {}, chart.from, chart.to);
    const auto figure = plot::climateFigure(chart);
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("2 whole days, mean 5.5 mol/m²"));
    QStringList hints;
    for (const plot::Hint& hint : examples::drawn(*figure, {900, 360}).hints) hints << hint.text;
    EXPECT_THAT(hints.join(u'\n').toStdString(), HasSubstr("16 March 2026: 7.0 mol/m²; 50\u202f% of the day covered"));
}

TEST(ClimateFigure, SaysSoWhereNothingWasRead) {
    plot::ClimateChart chart = humidity();
    chart.values = nullptr;
    chart.byHand.clear();
    chart.figures.reset();
    EXPECT_THAT(examples::drawnTexts(*plot::climateFigure(chart)).join(u'\n').toStdString(),
                HasSubstr("Nothing was read in this time"));
}

TEST(ThinnedLine, KeepsEveryPeakAndOpensEveryGap) {
    stats::SeededRandom random(3);
    std::vector<TimedValue> values;
    Moment at = start();
    for (int i = 0; i < 200'000; ++i) {
        values.push_back({at, random.uniform()});
        at += std::chrono::seconds{i % 50'000 == 49'999 ? 40'000 : 60};
    }
    values[123'456].value = 17;
    values[34'567].value = -5;
    const auto lines = plot::thinnedLines(values, start(), at, hours{3}, 800);
    ASSERT_EQ(lines.size(), 4U);
    std::size_t points = 0;
    double highest = 0, lowest = 0;
    for (const plot::Line& line : lines) {
        points += line.size();
        for (std::size_t i = 0; i < line.size(); ++i) {
            highest = std::max(highest, line[i].value);
            lowest = std::min(lowest, line[i].value);
            EXPECT_LE(line[i == 0 ? 0 : i - 1].at, line[i].at);
        }
    }
    EXPECT_EQ(highest, 17);
    EXPECT_EQ(lowest, -5);
    EXPECT_LE(points, 4U * 810);
}

TEST(ThinnedLine, LeavesAFewValuesAsTheyAre) {
    const std::vector<TimedValue> values{{start(), 1}, {start() + hours{1}, 3}, {start() + hours{9}, 2}};
    const auto lines = plot::thinnedLines(values, start(), start() + hours{10}, hours{3}, 500);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0], (plot::Line{{start(), 1}, {start() + hours{1}, 3}}));
    EXPECT_EQ(lines[1].size(), 1U);
    EXPECT_TRUE(plot::thinnedLines({}, start(), start() + hours{10}, hours{3}, 500).empty());
}

TEST(TimeAxis, HasNoMoreTicksThanThereIsRoomFor) {
    for (const int span : {1, 5, 24, 60, 24 * 20, 24 * 200, 24 * 3650})
        for (const int most : {3, 8, 14}) {
            const auto ticks = plot::timeTicks(start() + minutes{17}, start() + minutes{17} + hours{span}, most);
            EXPECT_LE(ticks.size(), static_cast<std::size_t>(most) + 1) << span << " h, " << most;
            for (const plot::TimeTick& tick : ticks) {
                EXPECT_GE(tick.at, start() + minutes{17});
                EXPECT_FALSE(tick.text.isEmpty());
            }
        }
}

TEST(ClimateText, WritesBandsWithBothEndsOrWithOne) {
    const auto text = [](core::ClimateQuantity quantity, double low, double high) {
        return plot::bandText({.low = low, .high = high, .source = {}}, quantity, {}).toStdString();
    };
    EXPECT_EQ(text(core::ClimateQuantity::SolutionEc, 0.5, 1.0), "0.50 to 1.00 mS/cm");
    EXPECT_EQ(text(core::ClimateQuantity::SolutionEc, 0, 0.5), "up to 0.50 mS/cm");
    EXPECT_EQ(text(core::ClimateQuantity::DissolvedOxygen, 5, 50), "5.0 mg/L or more");
    EXPECT_EQ(text(core::ClimateQuantity::RelativeHumidity, 90, 100), "90 to 100 %");
    EXPECT_EQ(text(core::ClimateQuantity::VapourDeficit, 0.3, 0.6), "0.30 to 0.60 kPa");
    EXPECT_EQ(text(core::ClimateQuantity::SolutionPh, 5.6, 6.2), "pH 5.6 to 6.2");
}

TEST(ClimateText, TellsAgesInTheWordsOfPeople) {
    const auto text = [](std::chrono::seconds age) { return plot::agoText(start() - age, start()).toStdString(); };
    EXPECT_EQ(text(minutes{1}), "just now");
    EXPECT_EQ(text(minutes{40}), "40 minutes ago");
    EXPECT_EQ(text(hours{5}), "5 hours ago");
    EXPECT_EQ(text(hours{24 * 12}), "12 days ago");
}

}  // namespace
