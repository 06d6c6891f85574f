// SPDX-License-Identifier: MIT
#include "core/climate/reading_entry.h"

#include <QString>

#include "app/desktop/readings/time_entry.h"
#include "core/climate/stage_bands.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"

namespace {

using core::Quantity;
using testing::HasSubstr;

const core::DisplayUnits metric;

core::ReadingEntry typedAs(std::string_view typed, Quantity quantity, const core::DisplayUnits& units,
                           std::optional<double> last = {}) {
    return core::readingEntryFrom(typed, quantity, units, core::bandWhileRooting({}, quantity), last);
}

TEST(ReadingEntry, KeepsAFigureInItsBand) {
    const core::ReadingEntry entry = typedAs("6,1", Quantity::SolutionPh, metric);
    EXPECT_DOUBLE_EQ(entry.stored.value(), 6.1);
    EXPECT_EQ(entry.question, "");
    EXPECT_EQ(entry.fault, "");
}

TEST(ReadingEntry, RefusesWhatNoMeterShowsAndProposesTheFigureMeant) {
    const core::ReadingEntry entry = typedAs("61", Quantity::SolutionPh, metric);
    EXPECT_FALSE(entry.stored.has_value());
    EXPECT_THAT(entry.fault, HasSubstr("0 to 14 is allowed"));
    EXPECT_THAT(entry.fault, HasSubstr("Did you mean 6.1?"));
}

TEST(ReadingEntry, AsksAboutAnEcTenTimesOff) {
    const core::ReadingEntry entry = typedAs("6", Quantity::SolutionEc, metric);
    EXPECT_TRUE(entry.stored.has_value());
    EXPECT_THAT(entry.question, HasSubstr("cuttings root well at up to 1 mS/cm"));
    EXPECT_THAT(entry.question, HasSubstr("Did you mean 0.6?"));
}

TEST(ReadingEntry, AsksAboutAFigureBesideTheBandWithoutProposingAnother) {
    const core::ReadingEntry entry = typedAs("16.5", Quantity::SolutionTemperature, metric);
    EXPECT_TRUE(entry.stored.has_value());
    EXPECT_THAT(entry.question, HasSubstr("cuttings root well at"));
    EXPECT_THAT(entry.question, testing::Not(HasSubstr("Did you mean")));
}

TEST(ReadingEntry, AsksWhereItIsEightTimesTheLastOne) {
    const core::ReadingEntry entry = typedAs("0.8", Quantity::SolutionEc, metric, 0.08);
    EXPECT_THAT(entry.question, HasSubstr("last time it was 0.08 mS/cm"));
    EXPECT_EQ(typedAs("0.8", Quantity::SolutionEc, metric, 0.5).question, "");
}

TEST(ReadingEntry, ReadsAndAsksInTheGrowersUnits) {
    core::DisplayUnits units;
    units.temperature = core::TemperatureUnit::Fahrenheit;
    units.ec = core::EcUnit::Ppm500;
    EXPECT_NEAR(typedAs("300", Quantity::SolutionEc, units).stored.value(), 0.6, 1e-12);
    EXPECT_NEAR(typedAs("73.4", Quantity::SolutionTemperature, units).stored.value(), 23, 1e-9);
    EXPECT_THAT(typedAs("23", Quantity::SolutionTemperature, units).question, HasSubstr("\u00b0F."));
    EXPECT_THAT(typedAs("9000000", Quantity::SolutionEc, units).fault, HasSubstr("0 to 10000 ppm"));
}

TEST(ReadingEntry, RefusesWhatIsNoNumberAndTakesABlankForNothing) {
    for (const char* typed : {"6.1.2", "abc", "6.", "1,234.5", "1e3"})
        EXPECT_THAT(typedAs(typed, Quantity::SolutionPh, metric).fault, HasSubstr("a number from")) << typed;
    EXPECT_EQ(typedAs("  ", Quantity::SolutionPh, metric), core::ReadingEntry{});
}

TEST(ReadingEntry, NeverProposesAFigureThatCantBe) {
    EXPECT_THAT(typedAs("1234567", Quantity::RelativeHumidity, metric).fault, testing::Not(HasSubstr("Did you mean")));
    EXPECT_THAT(typedAs("-3", Quantity::SolutionPh, metric).fault, testing::Not(HasSubstr("Did you mean")));
}

TEST(HourEntry, ReadsWhatPeopleTypeAndNothingElse) {
    EXPECT_EQ(desktop::minuteFrom(QStringLiteral("9")), 540);
    EXPECT_EQ(desktop::minuteFrom(QStringLiteral("9:30")), 570);
    EXPECT_EQ(desktop::minuteFrom(QStringLiteral("9.30")), 570);
    EXPECT_EQ(desktop::minuteFrom(QStringLiteral("0930")), 570);
    for (const char* typed : {"", "24", "9:60", "9:3", "noon", "12345", "-1"})
        EXPECT_FALSE(desktop::minuteFrom(QString::fromLatin1(typed)).has_value()) << typed;
}

}  // namespace
