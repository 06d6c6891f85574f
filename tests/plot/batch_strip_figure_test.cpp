// SPDX-License-Identifier: MIT
#include "app/plot/batch_strip_figure.h"

#include "app/plot/local_time.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/plot/drawn_texts.h"
#include "tests/plot/more_examples.h"

namespace {

using testing::HasSubstr;

core::Batch someBatch() {
    core::Batch batch;
    batch.code = "B260047K";
    batch.stuckOn = *core::dateFromIso("2026-03-14");
    batch.stuck = 24;
    return batch;
}

core::Moment onDay(int day, int hour = 9) {
    return plot::momentOf(core::addDays(someBatch().stuckOn, day), 60 * hour);
}

/// Most of it found rooted on day 14.
core::BatchRecord someRecord() {
    core::BatchRecord record{.batch = someBatch(), .checks = {}};
    core::Check check;
    check.checkedOn = core::addDays(someBatch().stuckOn, 14);
    check.rooted = 18;
    record.checks.push_back(check);
    return record;
}

/// Six weeks in a tub that grew too warm. Invented.
plot::BatchLife warmLife() {
    plot::BatchLife life;
    life.station = QStringLiteral("Tub south");
    life.until = core::addDays(someBatch().stuckOn, 28);
    life.bands = plot::bandsOf(someRecord(), {});
    for (int day = 0; day <= 28; day += 4) {
        life.readings.push_back(
            {.quantity = core::Quantity::SolutionEc, .readAt = onDay(day), .value = day < 14 ? 0.45 : 0.65});
        life.readings.push_back(
            {.quantity = core::Quantity::SolutionTemperature, .readAt = onDay(day), .value = day < 20 ? 22.5 : 32.0});
    }
    life.care.push_back({.doneAt = onDay(7), .kind = core::CareKind::ToppedUp, .note = "2 L"});
    life.care.push_back({.doneAt = onDay(14), .kind = core::CareKind::SolutionChanged});
    life.photos.push_back({.takenOn = core::addDays(someBatch().stuckOn, 10), .caption = "callus"});
    return life;
}

std::shared_ptr<const plot::Figure> strip(const plot::BatchLife& life, const core::DisplayUnits& units = {}) {
    return plot::batchStripFigure(examples::batchSummary(), someBatch(), life, units);
}

TEST(BatchStripFigure, SaysWhatWasOutsideItsBand) {
    EXPECT_THAT(strip(warmLife())->sentence().toStdString(),
                HasSubstr("outside the good band: solution temperature in 3 of 8"));
}

TEST(BatchStripFigure, DrawsEachQuantityWithItsUnitItsBandAndHowOftenItWasRead) {
    const QStringList texts = examples::drawnTexts(*strip(warmLife()));
    for (const char* text : {"solution EC, mS/cm; 8 readings", "good: up to 0.50, then 0.50 to 1.00",
                             "solution temperature, °C; 8 readings", "good: 18.0 to 24.0", "topped up",
                             "solution changed", "photos", "32.0 °C"})
        EXPECT_TRUE(texts.contains(QString::fromUtf8(text))) << text << "\n" << texts.join(u'\n').toStdString();
}

TEST(BatchStripFigure, FollowsTheGrowersUnits) {
    core::DisplayUnits units;
    units.temperature = core::TemperatureUnit::Fahrenheit;
    units.ec = core::EcUnit::MicroSiemens;
    const QStringList texts = examples::drawnTexts(*strip(warmLife(), units));
    EXPECT_TRUE(texts.contains(QStringLiteral("good: 64.4 to 75.2"))) << texts.join(u'\n').toStdString();
    EXPECT_TRUE(texts.contains(QStringLiteral("solution EC, µS/cm; 8 readings")));
}

TEST(BatchStripFigure, GivesDayFigureUnitAndCountInItsHints) {
    QStringList hints;
    for (const plot::Hint& hint : examples::drawn(*strip(warmLife())).hints) hints << hint.text;
    const std::string all = hints.join(u'\n').toStdString();
    EXPECT_THAT(all, HasSubstr("day 28 (11 April 2026"));
    EXPECT_THAT(all, HasSubstr("solution temperature 32.0 °C; 8 readings\noutside 18.0 to 24.0"));
    EXPECT_THAT(all, HasSubstr("photo, day 10"));
    EXPECT_THAT(all, HasSubstr("day 28: 18 of 24 stuck had rooted, 4 lost, 2 waiting"));
}

TEST(BatchStripFigure, HasEverythingInItsTableInOrderOfTime) {
    const plot::FigureTable table = strip(warmLife())->table();
    ASSERT_EQ(table.rows.size(), 4U + 16 + 2 + 1);
    for (std::size_t row = 1; row < table.rows.size(); ++row)
        EXPECT_LE(table.rows[row - 1][0].toInt(), table.rows[row][0].toInt());
    for (const QStringList& row : table.rows) EXPECT_EQ(row.size(), table.headings.size());
}

TEST(BatchStripFigure, SaysSoWhereNothingWasReadAndHowToAddSome) {
    plot::BatchLife life;
    life.station = QStringLiteral("Tub south");
    life.until = core::addDays(someBatch().stuckOn, 28);
    life.bands = plot::bandsOf(someRecord(), {});
    EXPECT_THAT(strip(life)->sentence().toStdString(), HasSubstr("nothing was read where it stands"));
    const std::string texts = examples::drawnTexts(*strip(life)).join(u' ').toStdString();
    EXPECT_THAT(texts, HasSubstr("Nothing was read at Tub south in this time."));
    EXPECT_THAT(texts, HasSubstr("Ctrl+E"));
}

TEST(BatchStripFigure, LeavesPanelsOutWithAWordWhereThereIsNoRoom) {
    plot::BatchLife life = warmLife();
    for (const core::Quantity quantity : core::allQuantities)
        life.readings.push_back({.quantity = quantity, .readAt = onDay(3), .value = 50});
    EXPECT_THAT(examples::drawnTexts(*strip(life), {700, 340}).join(u'\n').toStdString(),
                HasSubstr("Left out for want of room"));
}

TEST(BatchStripFigure, PutsUpWithASingleReadingAndNoLooks) {
    plot::BatchLife life;
    life.station = QStringLiteral("Tub south");
    life.until = someBatch().stuckOn;
    life.readings.push_back({.quantity = core::Quantity::SolutionPh, .readAt = onDay(0), .value = 0});
    core::BatchSummary summary;
    summary.tally.stuck = 24;
    const auto figure = plot::batchStripFigure(summary, someBatch(), life, {});
    EXPECT_THAT(figure->sentence().toStdString(), HasSubstr("not looked at yet"));
    EXPECT_FALSE(examples::drawnTexts(*figure).isEmpty());
}

}  // namespace
