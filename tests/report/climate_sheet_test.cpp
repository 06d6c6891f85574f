// SPDX-License-Identifier: MIT
#include "app/report/climate_sheet.h"

#include <QTemporaryDir>

#include "app/plot/climate_figure.h"
#include "app/plot/local_time.h"
#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/report/sheet_examples.h"

namespace {

using testing::HasSubstr;

core::LivedFigures livedFigures(double mean, bool isOfReadings) {
    return {.hours = 72,
            .hoursCovered = isOfReadings ? 0.0 : 36.0,
            .readings = 6,
            .mean = mean,
            .isMeanOfReadings = isOfReadings,
            .lowest = mean - 1,
            .highest = mean + 2,
            .hoursWithBand = isOfReadings ? 0.0 : 36.0,
            .hoursBelow = 0,
            .hoursAbove = isOfReadings ? 0.0 : 4.5,
            .degreeDays = {}};
}

TEST(LivedTable, HasARowForEachQuantityWithWhatItRestsOn) {
    core::LivedQuantity temperature{.quantity = core::ClimateQuantity::SolutionTemperature};
    temperature.first[0] = livedFigures(22, false);
    temperature.all = livedFigures(23, false);
    core::LivedQuantity acidity{.quantity = core::ClimateQuantity::SolutionPh};
    acidity.all = livedFigures(6, true);
    const report::Table table = report::livedTable({temperature, acidity}, {});
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.headings.size(), table.aligned.size());
    EXPECT_EQ(table.rows[0].join(u'|').toStdString(),
              "solution temperature, °C|22.0|–|–|23.0|22.0 to 25.0|4.5 h of 36 h|50\u202f%|6");
    EXPECT_EQ(table.rows[1].join(u'|').toStdString(), "solution pH|–|–|–|(6.0)|5.0 to 8.0|–|0\u202f%|6");
}

TEST(LivedTable, FollowsTheGrowersUnits) {
    core::LivedQuantity temperature{.quantity = core::ClimateQuantity::SolutionTemperature};
    temperature.all = livedFigures(20, false);
    core::DisplayUnits units;
    units.temperature = core::TemperatureUnit::Fahrenheit;
    EXPECT_EQ(report::livedTable({temperature}, units).rows[0][4].toStdString(), "68.0");
}

TEST(ClimateSheet, PutsWordsAndChartsOfAStationOnPaper) {
    plot::ClimateChart chart;
    chart.quantity = core::ClimateQuantity::AirTemperature;
    chart.station = QStringLiteral("Tub south");
    chart.from = plot::momentOf(*core::dateFromIso("2026-03-14"), 0);
    chart.to = chart.from + std::chrono::hours{24};
    std::vector<core::TimedValue> values;
    for (int hour = 0; hour <= 24; ++hour) values.push_back({chart.from + std::chrono::hours{hour}, 20.0 + hour % 3});
    chart.values = std::make_shared<const std::vector<core::TimedValue>>(values);
    chart.figures = core::figuresOver(values, chart.quantity, {}, chart.from, chart.to, 10);
    const report::ClimatePaper paper{
        .station = chart.station,
        .span = QStringLiteral("last day"),
        .bands = QStringLiteral("before roots, plants in general"),
        .parts = {{QStringLiteral("Air temperature: 25 readings"), plot::climateFigure(chart)}}};
    const report::Sheet sheet = report::climateSheet(paper, examples::smallShelves(), examples::printedAt());
    const std::string text = report::plainText(sheet).toStdString();
    EXPECT_THAT(text, HasSubstr("Climate of Tub south"));
    EXPECT_THAT(text, HasSubstr("last day; bands of before roots, plants in general"));
    EXPECT_THAT(text, HasSubstr("Air temperature: 25 readings"));
    EXPECT_THAT(text, HasSubstr("across a gap nothing is counted"));
}

}  // namespace
