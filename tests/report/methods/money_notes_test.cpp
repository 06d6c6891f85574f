// SPDX-License-Identifier: MIT
// A page shows the numbers that the figures of "Worth it" and "Losses" show, and there is none where there is no such figure.
#include <gtest/gtest.h>

#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "tests/report/methods/method_examples.h"
#include "tests/support/builders.h"

namespace {

QString numberOn(const report::MethodNote& note, const char* name) {
    const auto found = note.numbers.find(QLatin1String(name));
    return found == note.numbers.end() ? QStringLiteral("none") : found->second;
}

TEST(NotesOnCosts, AreThoseOfTheFirstShown) {
    const core::Worth worth = examples::worthOfTubs();
    for (const auto& shown : {worth.methods, worth.byPlant}) {
        const core::WorthOfMethod& first = shown.front();
        const auto notes = report::notesOnCosts(worth, shown);
        ASSERT_EQ(notes.size(), 1U);
        EXPECT_EQ(numberOn(notes.front(), "rooted"), QString::number(first.strike.succeeded));
        EXPECT_NEAR(numberOn(notes.front(), "cost_r").toDouble(), first.perCutting.total(), 1e-9);
        EXPECT_EQ(numberOn(notes.front(), "rate_low"), plot::decimalText(first.strike.limits.low, 4));
        EXPECT_EQ(numberOn(notes.front(), "each"),
                  plot::decimalText(*first.perRooted.value, report::decimalsFor(*first.perRooted.value)));
        EXPECT_TRUE(report::methodText(notes.front()).contains(QString::fromStdString(first.name)));
    }
}

TEST(NotesOnCosts, SayWhereNoneRootedWhatAPlantCostsAtLeast) {
    core::Worth worth = examples::worthOfTubs();
    core::WorthOfMethod& none = worth.methods.front();
    none.perRooted.value.reset();
    none.perRooted.limits.high = HUGE_VAL;
    const auto notes = report::notesOnCosts(worth, worth.methods);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(numberOn(notes.front(), "each"), QStringLiteral("none, as none rooted"));
    EXPECT_EQ(numberOn(notes.front(), "each_high"), QStringLiteral("no bound"));
    EXPECT_EQ(numberOn(notes.front(), "each_r"), QStringLiteral("Inf"));
    EXPECT_EQ(numberOn(notes.front(), "each_high_r"), QStringLiteral("Inf"));
}

TEST(NotesOnCosts, PassByMethodsThatNothingWasPricedOfAndThoseWithoutARate) {
    core::Worth worth = examples::worthOfTubs();
    worth.methods.front().perCutting = {};
    const auto notes = report::notesOnCosts(worth, worth.methods);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(numberOn(notes.front(), "method"), QString::fromStdString(worth.methods.back().name));
    worth.methods.back().rates.clear();
    EXPECT_TRUE(report::notesOnCosts(worth, worth.methods).empty());
    EXPECT_TRUE(report::notesOnCosts(worth, {}).empty());
}

TEST(NotesOnWorth, ShowTheChanceAndTheLine) {
    const core::Worth worth = examples::worthOfTubs(support::hebe);
    const core::WorthOfPair& pair = worth.pairs.front();
    const auto notes = report::notesOnWorth(worth, 0);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(numberOn(notes.front(), "chance"), plot::decimalText(pair.chanceDearPays, 3));
    EXPECT_EQ(numberOn(notes.front(), "tie"),
              pair.dearStrikeToTie ? plot::decimalText(*pair.dearStrikeToTie, 4) : QStringLiteral("no rate up to 1"));
    EXPECT_NEAR(numberOn(notes.front(), "shift_r").toDouble(), pair.line.shift, 1e-9);
    for (const int noPair : {-1, 1}) EXPECT_TRUE(report::notesOnWorth(worth, noPair).empty());
}

TEST(NotesOnWorth, HaveNoPageWhereNothingWasWeighed) {
    core::Worth worth = examples::worthOfTubs(support::hebe);
    core::WorthOfPair& pair = worth.pairs.front();
    pair.dearStrikeToTie.reset();
    EXPECT_EQ(numberOn(report::notesOnWorth(worth, 0).front(), "tie_r"), QStringLiteral("NA: no rate up to 1"));
    pair.breakEven.reset();
    EXPECT_TRUE(report::notesOnPayOff(worth, 0).empty());
    pair.verdict = core::WorthVerdict::NothingPriced;
    EXPECT_TRUE(report::notesOnWorth(worth, 0).empty());
    pair.plants.clear();
    EXPECT_TRUE(report::notesOnWorth(worth, 0).empty());
}

TEST(NotesOnPayOff, ShowFromWhenOnItIsPaidForAlsoWhenNever) {
    core::Worth worth = examples::worthOfTubs(support::hebe);
    core::BreakEvenBatches& even = *worth.pairs.front().breakEven;
    even.low = 12, even.middle = 40, even.high.reset();
    const auto notes = report::notesOnPayOff(worth, 0);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(numberOn(notes.front(), "ever"), plot::decimalText(even.chanceEver, 4));
    EXPECT_EQ(numberOn(notes.front(), "low_r"), QStringLiteral("12"));
    EXPECT_EQ(numberOn(notes.front(), "middle"), QStringLiteral("40"));
    EXPECT_EQ(numberOn(notes.front(), "high"), QStringLiteral("never"));
    EXPECT_EQ(numberOn(notes.front(), "high_r"), QStringLiteral("Inf"));
}

TEST(NotesOnLosses, AreThoseOfTheCauseThatTookMost) {
    const core::Losses losses = examples::lossesOfTubs();
    const core::LossRow& row = losses.rows.front();
    const auto notes = report::notesOnLosses(losses);
    ASSERT_EQ(notes.size(), 3U);
    EXPECT_EQ(numberOn(notes[0], "count"), QString::number(row.loss.count));
    EXPECT_EQ(numberOn(notes[0], "lost"), QString::number(losses.lost));
    EXPECT_EQ(notes[1].page, QStringLiteral("wilson_interval"));
    EXPECT_EQ(numberOn(notes[1], "high"), plot::decimalText(row.asCounted.high, 4));
    EXPECT_EQ(notes[2].page, QStringLiteral("interval_with_spread"));
    EXPECT_EQ(numberOn(notes[2], "low"), plot::decimalText(row.withSpread->low, 4));
    EXPECT_EQ(numberOn(notes[2], "batches"), QString::number(losses.batchesWithLosses));
    EXPECT_TRUE(report::notesOnLosses({}).empty());
}

TEST(NotesOnLosses, ByMonthAndStationAreOfTheWorst) {
    const core::Losses losses = examples::lossesOfTubs();
    const auto byMonth = report::notesOnLossesByMonth(losses), byStation = report::notesOnLossesByStation(losses);
    ASSERT_EQ(byMonth.size(), 2U);
    ASSERT_EQ(byStation.size(), 2U);
    const core::StationOfLosses& worst = losses.stations.front();
    EXPECT_EQ(numberOn(byStation[0], "name"), QString::fromStdString(worst.name));
    EXPECT_EQ(numberOn(byStation[0], "stood"), QString::number(worst.count.stood));
    EXPECT_EQ(numberOn(byStation[1], "low"), plot::decimalText(worst.count.asCounted.low, 4));
    EXPECT_EQ(numberOn(byMonth[0], "name"), QStringLiteral("March 2026"));
    EXPECT_TRUE(report::notesOnLossesByMonth({}).empty());
    EXPECT_TRUE(report::notesOnLossesByStation({}).empty());
}

TEST(NotesOnMoneyAndLosses, FillTheirPages) {
    for (const core::PlantId plant : {core::PlantId{}, support::hebe}) {
        const core::Worth worth = examples::worthOfTubs(plant);
        for (const auto& notes :
             {report::notesOnCosts(worth, worth.methods), report::notesOnCosts(worth, worth.byPlant),
              report::notesOnWorth(worth, 0), report::notesOnPayOff(worth, 0)})
            for (const report::MethodNote& note : notes) {
                const QString text = report::methodText(note);
                EXPECT_FALSE(text.contains(QStringLiteral("nan"))) << text.toStdString();
                EXPECT_LT(text.size(), 20'000);
            }
    }
}

}  // namespace
