// SPDX-License-Identifier: MIT
#include "core/event_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::someShelves;
using testing::ElementsAre;
using testing::IsEmpty;
using namespace std::chrono_literals;

const core::Moment presentMoment = std::chrono::sys_days(support::today()) + 10h;

std::vector<std::string> eventSentences(const core::Refusals& faults) {
    std::vector<std::string> all;
    for (const core::Refusal& fault : faults) all.push_back(fault.sentence);
    return all;
}

core::Reading ecOf(double value) {
    return {
        .station = support::tubNorth, .quantity = core::Quantity::SolutionEc, .readAt = presentMoment, .value = value};
}

TEST(ReadingRules, PassWhatAMeterCanShow) {
    for (const core::Quantity quantity : core::allQuantities)
        for (const double value : {core::factsOf(quantity).low, core::factsOf(quantity).high}) {
            core::Reading reading = ecOf(value);
            reading.quantity = quantity;
            EXPECT_THAT(core::faultsIn(reading, someShelves(), presentMoment), IsEmpty());
        }
}

TEST(ReadingRules, RefuseASlipOfThePen) {
    EXPECT_THAT(eventSentences(core::faultsIn(ecOf(120), someShelves(), presentMoment)),
                ElementsAre("Solution EC is 120 mS/cm; 0 to 20 mS/cm is allowed."));
    EXPECT_EQ(core::faultsIn(ecOf(std::numeric_limits<double>::quiet_NaN()), someShelves(), presentMoment).size(), 1U);
    EXPECT_EQ(core::faultsIn(ecOf(-0.1), someShelves(), presentMoment).size(), 1U);
}

TEST(ReadingRules, RefuseAnUnknownStationAndAMomentToCome) {
    core::Reading reading = ecOf(1);
    reading.station = {};
    EXPECT_THAT(eventSentences(core::faultsIn(reading, someShelves(), presentMoment)),
                ElementsAre("Station is not one of this logbook; choose one of its stations."));
    reading = ecOf(1);
    reading.readAt = presentMoment + 5min;
    EXPECT_THAT(core::faultsIn(reading, someShelves(), presentMoment), IsEmpty()) << "a clock may run a little fast";
    reading.readAt = presentMoment + 6min;
    EXPECT_THAT(eventSentences(core::faultsIn(reading, someShelves(), presentMoment)),
                ElementsAre("Read at is 2026-06-30T10:06:00Z; 1800-01-01 to now is allowed."));
    reading.readAt = std::chrono::sys_days(1799y / 12 / 31);
    EXPECT_EQ(core::faultsIn(reading, someShelves(), presentMoment).size(), 1U);
}

TEST(CareRules, WantWordsWhereTheKindHasNone) {
    core::Care care{.station = support::tubNorth, .doneAt = presentMoment, .kind = core::CareKind::Misted};
    EXPECT_THAT(core::faultsIn(care, someShelves(), presentMoment), IsEmpty());
    care.kind = core::CareKind::Other;
    EXPECT_THAT(eventSentences(core::faultsIn(care, someShelves(), presentMoment)),
                ElementsAre("Note is blank, but the care is none of those with a name; a few words are needed."));
    care.note = "shaded with fleece";
    EXPECT_THAT(core::faultsIn(care, someShelves(), presentMoment), IsEmpty());
}

TEST(CareRules, WantLitresAboveNoneWhereTheyAreGiven) {
    core::Care care{.station = support::tubNorth, .doneAt = presentMoment};
    for (const double litres : {0.001, 100'000.0}) {
        care.litres = litres;
        EXPECT_THAT(core::faultsIn(care, someShelves(), presentMoment), IsEmpty());
    }
    for (const double litres : {0.0, -1.0, 100'001.0, std::numeric_limits<double>::quiet_NaN()}) {
        care.litres = litres;
        EXPECT_THAT(eventSentences(core::faultsIn(care, someShelves(), presentMoment)),
                    ElementsAre(testing::EndsWith("; more than 0 and up to 100000 is allowed.")));
    }
}

TEST(CareRules, EveryKindReadsBackByItsWord) {
    for (const core::CareKind kind : core::allCareKinds) EXPECT_EQ(core::careKindFrom(core::wordFor(kind)), kind);
    EXPECT_FALSE(core::careKindFrom("sung to"));
}

TEST(QuantityWords, EveryOneReadsBackByItsWord) {
    for (const core::Quantity quantity : core::allQuantities)
        EXPECT_EQ(core::quantityFrom(core::factsOf(quantity).word), quantity);
    EXPECT_FALSE(core::quantityFrom("moonlight"));
}

TEST(PhotoRules, WantAPictureOfTheBatchsLife) {
    const core::Batch batch = aBatch().code("B260001K").build().batch;
    const core::ImageBytes jpeg{0xFF, 0xD8, 0xFF, 0xE0}, png{0x89, 'P', 'N', 'G', 0x0D};
    core::Photo photo{.batch = batch.id, .takenOn = batch.stuckOn};
    EXPECT_THAT(core::faultsIn(photo, jpeg, batch, support::today()), IsEmpty());
    EXPECT_THAT(core::faultsIn(photo, png, batch, support::today()), IsEmpty());
    photo.takenOn = core::addDays(batch.stuckOn, -1);
    EXPECT_THAT(eventSentences(core::faultsIn(photo, jpeg, batch, support::today())),
                ElementsAre("Taken on is 2026-03-01, but B260001K was stuck on 2026-03-02; 2026-03-02 to 2026-06-30 "
                            "is allowed."));
    photo.takenOn = core::addDays(support::today(), 1);
    EXPECT_EQ(core::faultsIn(photo, jpeg, batch, support::today()).size(), 1U);
}

TEST(PhotoRules, RefuseWhatIsNoPictureOrTooLarge) {
    const core::Batch batch = aBatch().build().batch;
    const core::Photo photo{.batch = batch.id, .takenOn = batch.stuckOn};
    core::ImageBytes large(core::largestImage + 1, 0);
    large[0] = 0xFF, large[1] = 0xD8, large[2] = 0xFF;
    for (const core::ImageBytes& image :
         {core::ImageBytes{}, core::ImageBytes{0xFF, 0xD8}, core::ImageBytes{'G', 'I'}, large})
        EXPECT_EQ(core::faultsIn(photo, image, batch, support::today()).size(), 1U) << image.size();
    large.pop_back();
    EXPECT_THAT(core::faultsIn(photo, large, batch, support::today()), IsEmpty());
}

TEST(ExpenseRules, WantOneBatchOrOneSessionAndMinutesThatCanBe) {
    const core::Batch batch = aBatch().build().batch;
    core::Expense expense{.spentOn = batch.stuckOn, .what = "gel", .hundredths = 850, .session = {7}, .minutes = 45};
    EXPECT_THAT(core::faultsIn(expense, support::today()), IsEmpty());
    expense.batch = batch.id;
    EXPECT_THAT(eventSentences(core::faultsIn(expense, support::today())),
                ElementsAre("An expense belongs to one batch or to one session."));
    expense.batch = {};
    expense.session = {};
    EXPECT_EQ(core::faultsIn(expense, support::today()).size(), 1U);
    expense.batch = batch.id;
    expense.minutes = 0;
    EXPECT_THAT(eventSentences(core::faultsIn(expense, support::today())),
                ElementsAre("Minutes is 0; more than 0 and up to 100000 is allowed, or none."));
}

TEST(ExpenseRules, WantAnAmountAndWhatItWasFor) {
    const core::Batch batch = aBatch().code("B260001K").build().batch;
    core::Expense expense{.batch = batch.id, .spentOn = batch.stuckOn, .what = "gel", .hundredths = 0};
    EXPECT_THAT(core::faultsIn(expense, support::today()), IsEmpty());
    expense.hundredths = -1;
    expense.what = " ";
    EXPECT_THAT(eventSentences(core::faultsIn(expense, support::today())),
                ElementsAre("What for is blank; text of 1 to 200 characters is allowed.",
                            "Amount is -0.01; 0 to 1000000000 is allowed."));
}

}  // namespace
