// SPDX-License-Identifier: MIT
#include "core/causes/suspects.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <stop_token>

#include "core/comparison/spread.h"
#include "tests/core/causes/suspect_examples.h"

namespace {

using core::Quantity;
using core::SuspectKind;
using examples::coldNorthTub;
using examples::hebeRooted;
using examples::poorInNorthTub;
using examples::SuspectBench;
using examples::suspectNamed;
using examples::usuallyRooted;
using support::tubNorth;
using support::tubSouth;
using testing::Contains;
using testing::EndsWith;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

TEST(Suspects, NameAColdTubThatOthersSufferedFromToo) {
    const core::Suspects found = coldNorthTub().suspects();
    ASSERT_TRUE(found.isNamed) << found.inWords;
    const core::Suspect& first = found.suspects.front();
    EXPECT_EQ(first.name, "cold solution");
    EXPECT_EQ(first.kind, SuspectKind::Condition);
    EXPECT_EQ(first.batches, 4);
    EXPECT_EQ(first.cuttings, 4 * 24);
    EXPECT_EQ(first.sharedBy.size(), 4u);
    EXPECT_EQ(first.others.batches, 3);
    EXPECT_EQ(first.others.assessed, 3 * 24);
    EXPECT_LT(first.others.rooted, first.others.usualLow);
    EXPECT_GT(first.others.expected, 40);
    EXPECT_THAT(first.speaksFor, Contains(HasSubstr("lay below its band before roots (18 to 24 C) for 336 of the 336 "
                                                    "hours on record in the first 14 days; mean 15.")));
    EXPECT_THAT(first.speaksFor, Contains(HasSubstr("Of the 3 other batches that share it, 17 of 72 cuttings rooted")));
    EXPECT_THAT(first.togetherWith, Contains("station Tub north"));
    EXPECT_THAT(found.inWords, HasSubstr("First suspect: cold solution"));
    EXPECT_THAT(found.warning, HasSubstr("not an experiment"));
}

TEST(Suspects, PreferWhatWasMeasuredToThePlaceItHappenedIn) {
    const core::Suspects found = coldNorthTub().suspects();
    const core::Suspect* station = suspectNamed(found, "station Tub north");
    ASSERT_NE(station, nullptr);
    EXPECT_LT(station->odds, found.suspects.front().odds);
    EXPECT_THAT(station->togetherWith, Contains("cold solution"));
    EXPECT_THAT(station->checkInstead, HasSubstr("no factor of a trial"));
    EXPECT_FALSE(station->trial.has_value());
}

TEST(Suspects, DontLetTheBatchSpeakForItself) {
    SuspectBench bench = coldNorthTub();
    bench.correlation = 0.1;
    const double odds = bench.suspects().suspects.front().odds;
    bench.batches.front().checks.back().rooted = 0;
    EXPECT_DOUBLE_EQ(bench.suspects().suspects.front().odds, odds);
}

TEST(Suspects, NameNothingInABatchThatDidNoWorseThanUsual) {
    SuspectBench bench = coldNorthTub();
    bench.batches.front() = hebeRooted(20, 10, tubNorth);
    const core::Suspects found = bench.suspects();
    EXPECT_FALSE(found.isNamed);
    EXPECT_THAT(found.inWords, HasSubstr("No suspect stands out: cold solution comes first, but there is nothing to "
                                         "explain. It did no worse than usual: 20 of 24 rooted."));
    EXPECT_GT(found.suspects.front().odds, core::oddsToName);  // the others are as poor as before
}

TEST(Suspects, SayThatTheFirstHasRivals) {
    SuspectBench bench = coldNorthTub();
    bench.batches[2].batch.station = support::benchEast;
    bench.batches[3].batch.station = support::benchWest;
    bench.read(support::benchEast, Quantity::SolutionTemperature, 15, 0, 40);
    bench.read(support::benchWest, Quantity::SolutionPh, 7.4, 0, 40);
    bench.read(tubNorth, Quantity::SolutionPh, 7.4, 0, 40);
    const core::Suspects found = bench.suspects();
    EXPECT_GT(found.suspects.front().odds, core::oddsToName);
    EXPECT_FALSE(found.isNamed);
    EXPECT_THAT(found.inWords,
                HasSubstr(" comes first, but luck and the others together are more than half as likely. Luck "
                          "alone would leave so few in 1 of "));
}

TEST(Suspects, EndWithTheBatchsOwnNote) {
    SuspectBench bench = coldNorthTub();
    EXPECT_THAT(bench.suspects().inWords, Not(HasSubstr("own note")));
    bench.batches.front().batch.note = " \n";
    EXPECT_THAT(bench.suspects().inWords, Not(HasSubstr("own note")));
    bench.batches.front().batch.note = "The air pump stood still\nover a weekend.\n";
    EXPECT_THAT(bench.suspects().inWords,
                EndsWith(" Its own note says: \u201cThe air pump stood still over a weekend.\u201d"));
    bench.batches.front().batch.note = "stems soft";
    EXPECT_THAT(bench.suspects().inWords, EndsWith(" Its own note says: \u201cstems soft\u201d."));
}

TEST(Suspects, SayOnWhichDayBatchesAreCountedWhereThatIsBeforeTheHorizon) {
    SuspectBench bench = coldNorthTub();
    EXPECT_THAT(bench.suspects().inWords, Not(HasSubstr("are counted as they stood")));
    for (core::BatchRecord& record : bench.batches)
        record.checks.front().checkedOn = core::addDays(record.batch.stuckOn, 12);
    EXPECT_THAT(bench.suspects().inWords,
                HasSubstr(" Batches of its plant are counted as they stood on day 12 after sticking."));
}

TEST(Suspects, AreSpokenAgainstByBatchesThatSharedThemAndDidFine) {
    SuspectBench bench = poorInNorthTub(0);
    for (int i = 0; i < 4; ++i) bench.batches.push_back(hebeRooted(usuallyRooted + 1, 6 + 3 * i, tubNorth));
    bench.read(tubNorth, Quantity::SolutionTemperature, 15, 0, 40);
    const core::Suspects found = bench.suspects();
    const core::Suspect* cold = suspectNamed(found, "cold solution");
    ASSERT_NE(cold, nullptr);
    EXPECT_FALSE(found.isNamed);
    EXPECT_LT(cold->odds, 1);
    EXPECT_THAT(cold->speaksAgainst, Contains("4 of the 4 others that share it did as well as usual or better."));
    EXPECT_THAT(cold->speaksAgainst, Contains(HasSubstr("no fewer than usual")));
    EXPECT_THAT(cold->oddsInWords, HasSubstr("luck alone is likelier"));
}

TEST(Suspects, AreSpokenAgainstByBatchesThatDidPoorlyWithoutThem) {
    SuspectBench bench = coldNorthTub();
    const double odds = suspectNamed(bench.suspects(), "cold solution")->odds;
    for (int i = 0; i < 4; ++i) bench.batches.push_back(hebeRooted(2, 5 + i, tubSouth));
    const core::Suspects found = bench.suspects();
    const core::Suspect* cold = suspectNamed(found, "cold solution");
    EXPECT_THAT(cold->speaksAgainst, Contains(HasSubstr("stuck within 28 days without it did poorly too.")));
    EXPECT_LT(cold->odds, odds);
}

TEST(Suspects, NameNothingOfTheOnlyBatchThereIs) {
    SuspectBench bench = coldNorthTub();
    bench.batches.resize(1);
    core::Check& check = bench.batches.front().checks.front();
    check.losses = {{.cause = bench.shelves.lossCauses.front().id, .count = 18}};
    const core::Suspects found = bench.suspects();
    EXPECT_EQ(found.considered, 0);
    EXPECT_FALSE(found.isNamed);
    EXPECT_THAT(found.inWords, HasSubstr("There is no other batch to judge by."));
    const auto cause = std::ranges::find(found.suspects, SuspectKind::LossCause, &core::Suspect::kind);
    ASSERT_NE(cause, found.suspects.end());
    EXPECT_LT(cause->odds, 1);
    EXPECT_THAT(cause->oddsInWords, HasSubstr("against it: luck alone is likelier"));
    EXPECT_THAT(cause->speaksFor, Contains(HasSubstr("nothing lost at other times tells what is usual")));
    EXPECT_THAT(cause->speaksFor, Not(Contains(HasSubstr("more than usual"))));
}

TEST(Suspects, SayWhatToRecordWhereNothingIsKnown) {
    SuspectBench bench;
    core::BatchRecord bare = support::aBatch().looked(14, {.lost = 9, .cause = {}}).looked(35, {.rooted = 3});
    bare.batch.station = {};
    bare.batch.stockPlant = {};
    bare.batch.treatment = {};
    bare.batch.session = {};
    bench.batches = {bare};
    const core::Suspects found = bench.suspects();
    EXPECT_FALSE(found.isNamed);
    EXPECT_THAT(found.suspects, IsEmpty());
    EXPECT_EQ(found.considered, 0);
    EXPECT_FALSE(found.againstPast.has_value());
    EXPECT_THAT(found.inWords, HasSubstr("No suspect stands out. No earlier batch"));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("The station")));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("9 of 9 lost here have no cause on record")));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("stock plant")));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("no treatment on record")));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("Who did the session")));
}

TEST(Suspects, AskForReadingsAndLotsThatAreMissing) {
    SuspectBench bench = poorInNorthTub();
    bench.batches.front().batch.treatment = support::weakGel;
    bench.batches.front().batch.medium = support::coirMix;
    const core::Suspects found = bench.suspects();
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("Readings at its station")));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("The lot of \u201cIBA gel 1000\u201d")));
    EXPECT_THAT(found.recordNextTime, Contains(HasSubstr("The lot of the medium")));
}

TEST(Suspects, SayHowOftenLuckAloneLeavesSoFew) {
    SuspectBench bench = poorInNorthTub(0);
    const core::Suspects found = bench.suspects();
    EXPECT_FALSE(found.isNamed);
    EXPECT_THAT(found.inWords, HasSubstr("No suspect stands out; luck alone would do so in 1 of "));
    ASSERT_TRUE(found.againstPast.has_value());
    EXPECT_LT(found.againstPast->chanceOfSoFew, 0.1);
}

TEST(Suspects, CanBeAskedOfABatchThatNobodyHasLookedAt) {
    SuspectBench bench = poorInNorthTub();
    bench.batches.front().checks.clear();
    EXPECT_FALSE(bench.suspects().againstPast.has_value());
}

TEST(Suspects, CanBeStopped) {
    const SuspectBench bench = poorInNorthTub();
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : bench.batches) courses.push_back(core::courseOf(record, 35));
    std::stop_source stop;
    stop.request_stop();
    const auto spread = core::pooledSpreadOf(bench.batches, 35, 0.95);
    const core::Suspects found = core::suspectsFor(
        courses.front(),
        {.batches = courses, .shelves = bench.shelves, .sessions = {}, .care = {}, .conditions = {}, .spread = spread},
        stop.get_token());
    EXPECT_THAT(found.suspects, IsEmpty());
}

}  // namespace
