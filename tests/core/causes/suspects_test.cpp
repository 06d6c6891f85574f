// SPDX-License-Identifier: MIT
#include "core/causes/suspects.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stop_token>

#include "core/comparison/spread.h"
#include "tests/core/causes/suspect_examples.h"

namespace {

using core::Quantity;
using core::SuspectKind;
using examples::fewRooted;
using examples::hebeRooted;
using examples::poorInNorthTub;
using examples::SuspectBench;
using examples::suspectNamed;
using examples::usuallyRooted;
using support::tubNorth;
using support::tubSouth;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

SuspectBench coldNorthTub() {
    SuspectBench bench = poorInNorthTub();
    bench.read(tubNorth, Quantity::SolutionTemperature, 15, 0, 40);
    bench.read(tubNorth, Quantity::SolutionTemperature, 21, -100, -1);
    bench.read(tubSouth, Quantity::SolutionTemperature, 21, -100, 60);
    std::ranges::sort(bench.measured[tubNorth][Quantity::SolutionTemperature], {}, &core::TimedValue::at);
    return bench;
}

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
    EXPECT_THAT(found.inWords, HasSubstr("No suspect stands out. It did no worse than usual"));
    EXPECT_GT(found.suspects.front().odds, core::oddsToName);  // the others are as poor as before
}

struct Condition {
    Quantity quantity;
    double value;
    const char* name;
};

TEST(Suspects, AreFoundForEachConditionOutsideItsBand) {
    for (const Condition& condition :
         std::initializer_list<Condition>{{Quantity::SolutionTemperature, 15, "cold solution"},
                                          {Quantity::SolutionTemperature, 29, "warm solution"},
                                          {Quantity::SolutionEc, 1.4, "solution EC high"},
                                          {Quantity::SolutionPh, 4.9, "solution pH low"},
                                          {Quantity::SolutionPh, 7.4, "solution pH high"},
                                          {Quantity::DissolvedOxygen, 2, "little oxygen in the solution"},
                                          {Quantity::MediumTemperature, 14, "cold medium"},
                                          {Quantity::MediumTemperature, 31, "hot medium"},
                                          {Quantity::AirTemperature, 12, "cold air"},
                                          {Quantity::AirTemperature, 33, "hot air"},
                                          {Quantity::RelativeHumidity, 40, "dry air"},
                                          {Quantity::RelativeHumidity, 100, "saturated air"},
                                          {Quantity::Light, 20, "little light"},
                                          {Quantity::Light, 300, "strong light"}}) {
        SCOPED_TRACE(condition.name);
        SuspectBench bench = poorInNorthTub();
        bench.read(tubNorth, condition.quantity, condition.value, 0, 40);
        if (condition.quantity == Quantity::RelativeHumidity) bench.read(tubNorth, Quantity::AirTemperature, 23, 0, 40);
        const core::Suspects found = bench.suspects();
        ASSERT_FALSE(found.suspects.empty());
        EXPECT_EQ(found.suspects.front().name, condition.name);
        EXPECT_THAT(found.suspects.front().changeNextTime, HasSubstr("until the first roots."));
        ASSERT_TRUE(found.suspects.front().trial.has_value());
        EXPECT_TRUE(found.suspects.front().trial->methodToAdd.has_value());
    }
}

TEST(Suspects, LeaveOutWhatLayInsideItsBandOrOutsideForHoursOnly) {
    SuspectBench bench = poorInNorthTub();
    bench.read(tubNorth, Quantity::SolutionTemperature, 21, 0, 12);
    bench.read(tubNorth, Quantity::SolutionTemperature, 15, 12, 13);
    bench.read(tubNorth, Quantity::SolutionTemperature, 21, 13, 40);
    EXPECT_EQ(suspectNamed(bench.suspects(), "solution"), nullptr);
}

TEST(Suspects, GoByTheGrowersOwnBand) {
    SuspectBench bench = coldNorthTub();
    core::OwnBand own;
    own.id = {1};
    own.quantity = core::BandQuantity::SolutionTemperature;
    own.low = 10;
    own.high = 20;
    bench.shelves.ownBands = {own};
    EXPECT_EQ(suspectNamed(bench.suspects(), "cold solution"), nullptr);
}

core::LossCauseId causeCalled(const core::Shelves& shelves, const std::string& name) {
    for (const core::LossCause& cause : shelves.lossCauses)
        if (cause.name == name) return cause.id;
    return {};
}

SuspectBench pestsInOne() {
    SuspectBench bench;
    const core::LossCauseId pests = causeCalled(bench.shelves, "pests");
    bench.batches.push_back(
        support::aBatch().at(tubNorth).looked(14, {.lost = 14, .cause = pests}).looked(35, {.rooted = fewRooted}));
    for (int i = 0; i < 12; ++i)
        bench.batches.push_back(support::aBatch()
                                    .at(i % 2 == 0 ? tubNorth : tubSouth)
                                    .stuckOn(core::addDays(support::stickingDay(), -8 * i))
                                    .looked(14, {.lost = 5})
                                    .looked(35, {.rooted = usuallyRooted}));
    return bench;
}

TEST(Suspects, NameACauseOfLossOutOfTheUsualProportion) {
    const core::Suspects found = pestsInOne().suspects();
    ASSERT_TRUE(found.isNamed) << found.inWords;
    const core::Suspect& first = found.suspects.front();
    EXPECT_EQ(first.name, "pests");
    EXPECT_EQ(first.kind, SuspectKind::LossCause);
    EXPECT_THAT(first.speaksFor,
                Contains(HasSubstr("14 of its 14 lost cuttings were lost to \u201cpests\u201d; at other times 0 of ")));
    EXPECT_THAT(first.speaksFor, Contains(HasSubstr("more than usual")));
    ASSERT_TRUE(first.trial.has_value());
    EXPECT_EQ(first.trial->methodToAdd->name, "aerated water, pests kept off");
}

TEST(Suspects, TakeTheUsualProportionOfACauseForNothing) {
    SuspectBench bench = pestsInOne();
    for (core::BatchRecord& record : bench.batches)
        for (core::Check& check : record.checks)
            for (core::Loss& loss : check.losses) loss.cause = support::rotted;
    const core::Suspects found = bench.suspects();
    const core::Suspect* rot = suspectNamed(found, "rotted");
    EXPECT_TRUE(rot == nullptr || rot->odds < 1);
}

SuspectBench badLot() {
    SuspectBench bench;
    const auto batch = [&](int rooted, int day) {
        bench.batches.push_back(hebeRooted(rooted, day, day % 2 == 0 ? tubNorth : tubSouth).treated(support::weakGel));
    };
    for (const int day : {30, 21, 24, 36, 43}) batch(fewRooted, day);
    for (int day = -40; day < 20; day += 6) batch(usuallyRooted, day - day / 6 % 2);
    const core::Date first = support::stickingDay();
    bench.shelves.lots = {
        {.id = {1}, .name = "A", .treatment = support::weakGel, .usedFrom = core::addDays(first, -200)},
        {.id = {2}, .name = "B", .treatment = support::weakGel, .usedFrom = core::addDays(first, 20)}};
    return bench;
}

TEST(Suspects, NameALotOfHormoneWhoseOtherBatchesDidPoorly) {
    const core::Suspects found = badLot().suspects();
    ASSERT_TRUE(found.isNamed) << found.inWords;
    EXPECT_EQ(found.suspects.front().name, "lot B of \u201cIBA gel 1000\u201d");
    ASSERT_TRUE(found.suspects.front().trial.has_value());
    const core::TrialProposal& proposal = *found.suspects.front().trial;
    EXPECT_EQ(proposal.trial.factor, core::Factor::Treatment);
    EXPECT_EQ(proposal.trial.arms[0].treatment, support::weakGel);
    ASSERT_TRUE(proposal.treatmentToAdd.has_value());
    EXPECT_EQ(proposal.treatmentToAdd->name, "IBA gel 1000, new lot");
    EXPECT_EQ(proposal.treatmentToAdd->auxins.size(), 1u);
}

TEST(Suspects, SayWhenALotWasOld) {
    SuspectBench bench = badLot();
    const double odds = suspectNamed(bench.suspects(), "lot B")->odds;
    bench.shelves.lots[1].madeOn = core::addDays(support::stickingDay(), -600);
    const core::Suspects found = bench.suspects();
    EXPECT_EQ(found.suspects.front().name, "old hormone, lot B of \u201cIBA gel 1000\u201d");
    EXPECT_THAT(found.suspects.front().speaksFor, Contains("The lot was 630 days old on the day of sticking."));
    EXPECT_GT(found.suspects.front().odds, odds);
}

TEST(Suspects, SayWhenALotCantBeToldFromWhatItIsALotOf) {
    SuspectBench bench = badLot();
    bench.shelves.lots.pop_back();
    const core::Suspects found = bench.suspects();
    const core::Suspect* lot = suspectNamed(found, "lot A");
    ASSERT_NE(lot, nullptr);
    EXPECT_THAT(lot->speaksAgainst, Contains(HasSubstr("can't be told from what it is a lot of")));
}

TEST(Suspects, ComeFromAPumpThatWasOff) {
    SuspectBench bench = poorInNorthTub();
    const core::Moment noon = core::Moment{std::chrono::sys_days{core::addDays(support::stickingDay(), 16)}};
    bench.care = {
        {.id = {1}, .station = tubNorth, .doneAt = noon, .kind = core::CareKind::PumpOff},
        {.id = {2}, .station = tubNorth, .doneAt = noon + std::chrono::hours{30}, .kind = core::CareKind::PumpOn}};
    const core::Suspects found = bench.suspects();
    EXPECT_EQ(found.suspects.front().name, "pump off");
    EXPECT_THAT(found.suspects.front().speaksFor, Contains(HasSubstr("off for 30 hours")));
    EXPECT_THAT(found.suspects.front().checkInstead, HasSubstr("No trial is needed"));
    EXPECT_EQ(suspectNamed(found, "no care"), nullptr);
}

TEST(Suspects, ComeFromCareThatIsMissing) {
    SuspectBench bench = poorInNorthTub();
    for (int day = -80; day < 60; day += 5)
        bench.care.push_back(
            {.id = {day + 100},
             .station = day < 0 ? tubNorth : tubSouth,
             .doneAt = core::Moment{std::chrono::sys_days{core::addDays(support::stickingDay(), day)}}});
    const core::Suspects found = bench.suspects();
    const core::Suspect* none = suspectNamed(found, "no care on record");
    ASSERT_NE(none, nullptr);
    EXPECT_EQ(none->others.batches, 3);
    EXPECT_THAT(none->speaksAgainst, Contains(HasSubstr("may have been done all the same")));
}

TEST(Suspects, ComeFromWhatIsSharedByCircumstance) {
    SuspectBench bench = poorInNorthTub();
    bench.worker = "Invented";
    for (std::size_t i = 0; i < bench.batches.size(); ++i)
        bench.batches[i].batch.session = {static_cast<int>(i / 2 + 1)};
    const core::Suspects found = bench.suspects();
    for (const char* name : {"stock plant by the gate", "station Tub north", "session of 2026-03-12", "worker Invented",
                             "month 2026-03"}) {
        SCOPED_TRACE(name);
        const core::Suspect* suspect = suspectNamed(found, name);
        ASSERT_NE(suspect, nullptr);
        EXPECT_FALSE(suspect->speaksFor.empty());
        EXPECT_FALSE(suspect->changeNextTime.empty());
        EXPECT_FALSE(suspect->checkInstead.empty());
    }
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

TEST(TrialProposals, TakeAMethodThatIsOnTheShelvesAlready) {
    SuspectBench bench = coldNorthTub();
    bench.shelves.methods.push_back({.id = {399}, .name = "aerated water, warmed"});
    const auto proposal = suspectNamed(bench.suspects(), "cold solution")->trial;
    ASSERT_TRUE(proposal.has_value());
    EXPECT_TRUE(proposal->isReady());
    EXPECT_EQ(proposal->trial.arms[1].method, core::MethodId{399});
    bench.shelves.methods.back().isRetired = true;
    const auto fresh = suspectNamed(bench.suspects(), "cold solution")->trial;
    EXPECT_EQ(fresh->methodToAdd->name, "aerated water, warmed 2");
    EXPECT_FALSE(fresh->methodToAdd->id.isSet());
}

TEST(TrialProposals, AreFilledInForTheDialog) {
    SuspectBench bench = coldNorthTub();
    const auto proposal = suspectNamed(bench.suspects(), "cold solution")->trial;
    ASSERT_TRUE(proposal.has_value());
    const core::Trial& trial = proposal->trial;
    EXPECT_EQ(trial.factor, core::Factor::Method);
    EXPECT_EQ(trial.horizonDay, 35);
    EXPECT_EQ(trial.margin, 0.2);
    ASSERT_EQ(trial.arms.size(), 2u);
    EXPECT_EQ(trial.arms[0].method, support::aeratedWater);
    EXPECT_FALSE(trial.arms[1].method.isSet());
    EXPECT_EQ(proposal->methodToAdd->name, "aerated water, warmed");
    EXPECT_EQ(proposal->plant, support::hebe);
    EXPECT_THAT(trial.question, HasSubstr("Hebe albicans"));
    EXPECT_THAT(trial.name, HasSubstr("aerated water, warmed or not"));
    bench.shelves.trials.push_back(trial);
    EXPECT_NE(suspectNamed(bench.suspects(), "cold solution")->trial->trial.name, trial.name);
}

}  // namespace
