// SPDX-License-Identifier: MIT
// Each kind of suspect is found where the records hold it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/causes/suspect_examples.h"

namespace {

using core::Quantity;
using core::SuspectKind;
using examples::coldNorthTub;
using examples::fewRooted;
using examples::hebeRooted;
using examples::poorInNorthTub;
using examples::SuspectBench;
using examples::suspectNamed;
using examples::usuallyRooted;
using support::tubNorth;
using support::tubSouth;
using testing::Contains;
using testing::ContainsRegex;
using testing::HasSubstr;
using testing::Not;

struct ConditionRead {
    Quantity quantity;
    double value;
    const char* name;
};

TEST(SuspectSources, AreFoundForEachConditionOutsideItsBand) {
    for (const ConditionRead& condition :
         std::initializer_list<ConditionRead>{{Quantity::SolutionTemperature, 15, "cold solution"},
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

TEST(SuspectSources, SayThatHoursOfFewReadingsRestOnStraightLines) {
    SuspectBench bench = poorInNorthTub();
    bench.read(tubNorth, Quantity::SolutionTemperature, 15, 0, 40);
    std::vector<core::TimedValue>& values = bench.measured[tubNorth][Quantity::SolutionTemperature];
    const auto isSaid = HasSubstr("hours on record (on straight lines between ");
    EXPECT_THAT(suspectNamed(bench.suspects(), "cold solution")->speaksFor, Not(Contains(isSaid)));
    std::erase_if(values, [](const core::TimedValue& value) {
        return std::chrono::floor<std::chrono::days>(value.at) != value.at;
    });
    EXPECT_THAT(
        suspectNamed(bench.suspects(), "cold solution")->speaksFor,
        Contains(ContainsRegex("hours on record \\(on straight lines between 1[0-9] readings\\) in the first")));
}

TEST(SuspectSources, LeaveOutWhatLayInsideItsBandOrOutsideForHoursOnly) {
    SuspectBench bench = poorInNorthTub();
    bench.read(tubNorth, Quantity::SolutionTemperature, 21, 0, 12);
    bench.read(tubNorth, Quantity::SolutionTemperature, 15, 12, 13);
    bench.read(tubNorth, Quantity::SolutionTemperature, 21, 13, 40);
    EXPECT_EQ(suspectNamed(bench.suspects(), "solution"), nullptr);
}

TEST(SuspectSources, GoByTheGrowersOwnBand) {
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

TEST(SuspectSources, NameACauseOfLossOutOfTheUsualProportion) {
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

TEST(SuspectSources, TakeTheUsualProportionOfACauseForNothing) {
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

TEST(SuspectSources, NameALotOfHormoneWhoseOtherBatchesDidPoorly) {
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

TEST(SuspectSources, SayWhenALotWasOld) {
    SuspectBench bench = badLot();
    const double odds = suspectNamed(bench.suspects(), "lot B")->odds;
    bench.shelves.lots[1].madeOn = core::addDays(support::stickingDay(), -600);
    const core::Suspects found = bench.suspects();
    EXPECT_EQ(found.suspects.front().name, "old hormone, lot B of \u201cIBA gel 1000\u201d");
    EXPECT_THAT(found.suspects.front().speaksFor, Contains("The lot was 630 days old on the day of sticking."));
    EXPECT_GT(found.suspects.front().odds, odds);
}

TEST(SuspectSources, SayWhenALotCantBeToldFromWhatItIsALotOf) {
    SuspectBench bench = badLot();
    bench.shelves.lots.pop_back();
    const core::Suspects found = bench.suspects();
    const core::Suspect* lot = suspectNamed(found, "lot A");
    ASSERT_NE(lot, nullptr);
    EXPECT_THAT(lot->speaksAgainst, Contains(HasSubstr("can't be told from what it is a lot of")));
}

TEST(SuspectSources, ComeFromAPumpThatWasOff) {
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

TEST(SuspectSources, ComeFromCareThatIsMissing) {
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

TEST(SuspectSources, ComeFromWhatIsSharedByCircumstance) {
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

}  // namespace
