// SPDX-License-Identifier: MIT
#include "core/review/season_review.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "core/demo/demo_season.h"
#include "core/money/costs_of_batches.h"
#include "core/trial/trial_progress.h"
#include "tests/support/builders.h"

namespace {

using namespace std::chrono_literals;
using core::HowSure;
using core::SeasonReview;
using support::aBatch;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

constexpr core::ReviewQuestion spring{.from = 2026y / 3 / 1, .until = 2026y / 4 / 30};

core::Result<SeasonReview> asked(const core::Records& records, core::ReviewQuestion question, core::Date today,
                                 const std::stop_token& stop = {}) {
    return core::seasonReview(question,
                              {.shelves = records.shelves,
                               .batches = records.batches,
                               .sessions = records.sessions,
                               .care = records.care,
                               .expenses = records.expenses,
                               .pottings = records.pottings,
                               .today = today,
                               .dayStart = [](core::Date day) { return core::Moment(std::chrono::sys_days(day)); }},
                              stop);
}

SeasonReview reviewed(const core::Records& records, core::ReviewQuestion question = spring,
                      core::Date today = support::today()) {
    const auto review = asked(records, question, today);
    EXPECT_TRUE(review.has_value());
    return review.value_or(SeasonReview{});
}

SeasonReview reviewed(std::vector<core::BatchRecord> batches, core::ReviewQuestion question = spring,
                      core::Date today = support::today()) {
    return reviewed(support::recordsOf(std::move(batches)), question, today);
}

/// 20 cuttings in each, at two stations by turns.
std::vector<core::BatchRecord> batchesOf20(core::StationId one, core::StationId other, std::vector<int> rooted) {
    std::vector<core::BatchRecord> batches;
    for (const int count : rooted)
        batches.push_back(aBatch()
                              .at(batches.size() % 2 == 0 ? one : other)
                              .stuck(20)
                              .looked(35, {.rooted = count, .lost = 20 - count}));
    return batches;
}

std::vector<core::BatchRecord> tubsAgainstTrays(std::vector<int> inTubs, std::vector<int> inTrays) {
    std::vector<core::BatchRecord> all = batchesOf20(support::tubNorth, support::tubSouth, std::move(inTubs));
    std::ranges::move(batchesOf20(support::benchWest, support::benchEast, std::move(inTrays)), std::back_inserter(all));
    return all;
}

std::vector<std::string> sentences(const SeasonReview& review, core::AdviceKind kind) {
    std::vector<std::string> found;
    for (const core::Advice& advice : review.next)
        if (advice.kind == kind) found.push_back(advice.inWords);
    return found;
}

TEST(SeasonReview, CountsWhatWasStuckFromItsFirstToItsLastDayAndAddsUp) {
    const auto on = [](core::Date day, int stuck) {
        return aBatch().stuckOn(day).stuck(stuck).looked(14, {.rooted = 5, .lost = 2, .withdrawn = 1});
    };
    const SeasonReview review =
        reviewed({on(2026y / 2 / 28, 30), on(spring.from, 10), on(spring.until, 20), on(2026y / 5 / 1, 40)});
    EXPECT_EQ(review.counts.batches, 2);
    EXPECT_EQ(review.sessions, 2);
    EXPECT_EQ(review.counts, (core::ReviewCounts{
                                 .batches = 2, .stuck = 30, .rooted = 10, .lost = 4, .withdrawn = 2, .undecided = 14}));
    EXPECT_EQ(review.losses.lost, 4) << "of the batches stuck in the span";
    ASSERT_THAT(review.months, SizeIs(2));
    EXPECT_EQ(review.months[0].counts.stuck, 10);
    EXPECT_EQ(review.months[1].counts.stuck, 20);
}

TEST(SeasonReview, ShowsMonthsInWhichNothingWasStuckAndYearsWhereMonthsWouldBeTooMany) {
    const SeasonReview months = reviewed({aBatch().stuckOn(2026y / 1 / 31), aBatch().stuckOn(2026y / 4 / 1)},
                                         {.from = 2026y / 1 / 15, .until = 2026y / 4 / 10});
    ASSERT_THAT(months.months, SizeIs(4));
    EXPECT_EQ(months.months.front().from, core::Date(2026y / 1 / 15));
    EXPECT_EQ(months.months[1].counts.batches, 0);
    EXPECT_EQ(months.months.back().until, core::Date(2026y / 4 / 10));
    const SeasonReview years = reviewed({aBatch().stuckOn(2022y / 5 / 1), aBatch().stuckOn(2026y / 4 / 1)},
                                        {.from = 2022y / 1 / 1, .until = 2026y / 12 / 31});
    ASSERT_THAT(years.months, SizeIs(5));
    EXPECT_EQ(years.months[4].counts.batches, 1);
}

TEST(SeasonReview, TellsApartWhatWasUndecidedAtItsEndAndWhatIsStill) {
    const SeasonReview review = reviewed(
        {aBatch().stuckOn(2026y / 4 / 20).stuck(20).looked(5, {.rooted = 3}).looked(30, {.rooted = 10, .lost = 5})});
    EXPECT_EQ(review.undecidedAtEnd, 17);
    EXPECT_EQ(review.counts.undecided, 2);
}

TEST(SeasonReview, LeavesBatchesOutOfTheRatesThatWereNotWatchedToTheEnd) {
    const SeasonReview review =
        reviewed({aBatch().stuck(20).looked(35, {.rooted = 12}), aBatch().stuck(20).looked(10, {.rooted = 9}),
                  aBatch().stuckOn(2026y / 4 / 20).stuck(20).looked(8, {.rooted = 8})},
                 spring, 2026y / 5 / 1);
    EXPECT_EQ(review.counts.rooted, 29);
    EXPECT_EQ(review.youngBatches, 1);
    EXPECT_EQ(review.unwatchedBatches, 1);
    EXPECT_EQ(review.assessed, 20);
    ASSERT_THAT(review.plants, SizeIs(1));
    EXPECT_EQ(review.plants[0].ratedBatches, 1);
    EXPECT_EQ(review.plants[0].methods.at(0).rooted, 12);
    EXPECT_THAT(sentences(review, core::AdviceKind::Record),
                testing::Contains(HasSubstr("1 batch had cuttings undecided")));
}

TEST(SeasonReview, NamesTheBetterMethodWhereBatchesSaySoAndHowSureThatIs) {
    const SeasonReview review = reviewed(tubsAgainstTrays({4, 5, 6, 5, 4}, {15, 16, 14, 16, 15}));
    ASSERT_THAT(review.plants, SizeIs(1));
    const core::PlantInReview& plant = review.plants[0];
    EXPECT_EQ(plant.best.sure, HowSure::BetterThanAll);
    EXPECT_EQ(plant.methods.at(static_cast<std::size_t>(plant.best.method)).name, "media tray");
    ASSERT_TRUE(plant.best.chanceAhead.has_value());
    EXPECT_GT(*plant.best.chanceAhead, 0.99);
    EXPECT_THAT(plant.best.inWords, HasSubstr("did better by more than luck would explain"));
    ASSERT_THAT(review.lessons, SizeIs(1));
    EXPECT_EQ(review.lessons[0].kind, core::LessonKind::ClearDifference);
    EXPECT_THAT(sentences(review, core::AdviceKind::TakeTheBetter),
                testing::ElementsAre(HasSubstr("Hebe albicans: stick most by media tray; repeat aerated water")));
    EXPECT_THAT(review.inWords, HasSubstr("1 has a method that did better"));
}

TEST(SeasonReview, SaysThatItCantBeToldYetAndProposesATrialWithItsNumbers) {
    const SeasonReview review = reviewed(tubsAgainstTrays({4, 16, 8, 14, 6}, {7, 17, 9, 15, 12}));
    const core::BestMethod& best = review.plants.at(0).best;
    EXPECT_EQ(best.sure, HowSure::CannotTell);
    EXPECT_THAT(best.inWords, HasSubstr("Can't be told yet. No clear difference"));
    EXPECT_GT(best.chanceAhead.value_or(0), 0.5);
    EXPECT_LT(best.chanceAhead.value_or(1), 0.9);
    EXPECT_THAT(review.lessons, IsEmpty());
    EXPECT_THAT(sentences(review, core::AdviceKind::Trial),
                testing::ElementsAre(testing::AllOf(HasSubstr("compare media tray and aerated water in a trial"),
                                                    HasSubstr("eight times in ten"))));
}

TEST(SeasonReview, SendsAMethodThatStoodAtOneStationToTwo) {
    std::vector<core::BatchRecord> batches = batchesOf20(support::tubNorth, support::tubNorth, {5, 6, 4, 5, 6});
    std::ranges::move(batchesOf20(support::benchWest, support::benchEast, {15, 14, 16, 15, 14}),
                      std::back_inserter(batches));
    const SeasonReview review = reviewed(batches);
    EXPECT_EQ(review.plants.at(0).best.sure, HowSure::CannotTell);
    EXPECT_EQ(review.pairsJudged, 0);
    EXPECT_THAT(sentences(review, core::AdviceKind::Trial),
                testing::ElementsAre(HasSubstr("each at two stations or more")));
}

TEST(SeasonReview, AdvisesTheSimplerOfTwoThatHardlyDiffer) {
    const SeasonReview review = reviewed(tubsAgainstTrays({14, 15, 14, 15, 14}, {15, 14, 15, 14, 15}));
    EXPECT_THAT(sentences(review, core::AdviceKind::Trial),
                testing::ElementsAre(HasSubstr("take the simpler or the cheaper")));
}

TEST(SeasonReview, ComparesNothingWhereAPlantHasOneMethodOrTooFewCuttings) {
    const SeasonReview review = reviewed({aBatch().stuck(20).looked(35, {.rooted = 4, .lost = 16}),
                                          aBatch().of(support::deutzia).stuck(3).looked(28, {.rooted = 2, .lost = 1})});
    ASSERT_THAT(review.plants, SizeIs(2));
    EXPECT_EQ(review.plants[0].best.sure, HowSure::OneMethodOnly);
    EXPECT_EQ(review.plants[1].best.sure, HowSure::NothingKnown);
    EXPECT_THAT(review.inWords, HasSubstr("No plant has rates of two methods"));
}

TEST(SeasonReview, DoesNotReadOutATrialThatStillGoesOn) {
    core::Records records = support::recordsOf(tubsAgainstTrays({4, 5, 6, 5, 4}, {15, 16, 14, 16, 15}));
    core::Trial& trial = records.shelves.trials.front();
    trial.factor = core::Factor::Method;
    trial.arms = {{.method = support::aeratedWater}, {.method = support::mediaTray}};
    trial.horizonDay = 200;
    for (core::BatchRecord& record : records.batches) record.batch.trial = trial.id;
    const SeasonReview going = reviewed(records);
    EXPECT_EQ(going.trialBatches, 10);
    EXPECT_EQ(going.counts.stuck, 200);
    EXPECT_THAT(going.plants.at(0).methods, IsEmpty());
    EXPECT_THAT(going.lessons, IsEmpty());
    EXPECT_THAT(going.unusual, IsEmpty());
    records.shelves.trials.front().horizonDay = 35;
    const SeasonReview decided = reviewed(records);
    ASSERT_THAT(decided.lessons, SizeIs(2));
    EXPECT_EQ(decided.lessons[0].kind, core::LessonKind::Trial);
    EXPECT_EQ(decided.lessons[0].about, "Tub or tray");
    EXPECT_EQ(decided.lessons[0].inWords,
              core::trialResult(records.shelves.trials.front(), records.shelves, records.batches)->inWords);
    EXPECT_THAT(reviewed(records, {.from = spring.from, .until = 2026y / 3 / 5}).lessons, SizeIs(1))
        << "decided after the span";
}

TEST(SeasonReview, PointsOutABatchThatDidMuchWorseThanEarlierOnes) {
    std::vector<core::BatchRecord> batches =
        batchesOf20(support::tubNorth, support::tubSouth, {15, 16, 14, 15, 16, 15, 14, 15});
    batches.push_back(aBatch().code("POOR").stuckOn(2026y / 4 / 20).stuck(20).looked(35, {.rooted = 0, .lost = 20}));
    const SeasonReview review = reviewed(batches);
    ASSERT_THAT(review.unusual, SizeIs(1));
    EXPECT_EQ(review.unusual[0].code, "POOR");
    EXPECT_THAT(
        sentences(review, core::AdviceKind::UnusualBatch),
        testing::ElementsAre(HasSubstr("Ask of batch POOR what may have gone wrong: by day 35 it had rooted 0")));
}

TEST(SeasonReview, SaysWhatToLookAtWhereOneCauseStandsOut) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 4; ++i)
        batches.push_back(aBatch().at(support::tubSouth).stuck(20).looked(35, {.rooted = 8, .lost = 12}));
    for (int i = 0; i < 4; ++i) batches.push_back(aBatch().at(support::tubNorth).stuck(20).looked(35, {.rooted = 20}));
    EXPECT_THAT(
        sentences(reviewed(batches), core::AdviceKind::LossCause),
        testing::ElementsAre(testing::AllOf(HasSubstr("Of 48 cuttings lost, 48 were lost to \"rotted\""),
                                            HasSubstr("first at Tub south, where 48 of 80 were lost to anything"))));
}

TEST(SeasonReview, AsksForCausesThatWereNotWrittenDown) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 3; ++i)
        batches.push_back(aBatch().stuck(20).looked(35, {.rooted = 15, .lost = 5, .cause = core::LossCauseId{}}));
    const auto asked = sentences(reviewed(batches), core::AdviceKind::Record);
    EXPECT_THAT(asked, testing::Contains(HasSubstr("of 15 lost, 15 have no cause on record")));
    EXPECT_THAT(asked, testing::Contains(HasSubstr("on the shelf Prices"))) << "nothing is priced";
}

core::Records priced(std::vector<core::BatchRecord> batches) {
    core::Records records = support::recordsOf(std::move(batches));
    records.shelves.prices = {{.id = core::PriceId{1},
                               .kind = core::PriceKind::Lasting,
                               .what = "air pump",
                               .method = support::aeratedWater,
                               .from = 2025y / 1 / 1,
                               .tenThousandths = 3'650'000,  // a cent for each day of ten years, times ten
                               .lastsYears = 10},
                              {.id = core::PriceId{2},
                               .kind = core::PriceKind::UsedUp,
                               .what = "compost",
                               .method = support::mediaTray,
                               .from = 2025y / 1 / 1,
                               .tenThousandths = 100'000,
                               .lastsFor = 20,
                               .basis = core::PriceBasis::Cutting}};
    return records;
}

TEST(SeasonReview, AddsUpWhatItsBatchesCostAndWhatStoodEmptyOnItsDays) {
    // 365 over ten years are 0.10 a day. Invented.
    const core::Records records = priced(
        {aBatch().stuckOn(2026y / 2 / 1).stuck(20).looked(9, {.rooted = 20}),   // before the span, ten days
         aBatch().stuckOn(2026y / 3 / 11).stuck(20).looked(9, {.rooted = 20}),  // ten days in it
         aBatch().at(support::benchWest).stuckOn(2026y / 3 / 11).stuck(20).looked(35, {.rooted = 10, .lost = 10})});
    const SeasonReview review = reviewed(records);
    ASSERT_TRUE(review.money.has_value());
    EXPECT_EQ(review.money->batches, 2);
    EXPECT_NEAR(review.money->spent.of(core::CostPart::Lasting), 1.0, 1e-9);
    EXPECT_NEAR(review.money->spent.of(core::CostPart::UsedUp), 10.0, 1e-9);
    ASSERT_THAT(review.money->stoodEmpty, SizeIs(1));
    EXPECT_EQ(review.money->stoodEmpty[0].days, 61 - 10);
    EXPECT_NEAR(review.money->stoodEmpty[0].amount, 5.1, 1e-9);
    EXPECT_THAT(review.money->worth.methods, SizeIs(2));
}

TEST(SeasonReview, SaysNothingOfMoneyWhereNothingIsPriced) {
    EXPECT_FALSE(reviewed({aBatch().looked(35, {.rooted = 24})}).money.has_value());
}

TEST(SeasonReview, OfASpanWithoutABatchIsASentence) {
    const SeasonReview review = reviewed({aBatch()}, {.from = 2025y / 1 / 1, .until = 2025y / 12 / 31});
    EXPECT_EQ(review.inWords, "Nothing was stuck in this span, so there is nothing to look back on.");
    EXPECT_THAT(review.plants, IsEmpty());
    EXPECT_THAT(review.months, IsEmpty());
    EXPECT_THAT(review.next, IsEmpty());
}

TEST(SeasonReview, RefusesASpanThatEndsBeforeItBegins) {
    const auto review =
        asked(support::recordsOf({aBatch()}), {.from = 2026y / 3 / 2, .until = 2026y / 3 / 1}, support::today());
    ASSERT_FALSE(review.has_value());
    EXPECT_EQ(review.error().at(0).field, "Until");
    EXPECT_THAT(review.error().at(0).sentence, HasSubstr("2026-03-01"));
    const auto noDay =
        asked(support::recordsOf({aBatch()}), {.from = 2026y / 2 / 30, .until = 2026y / 3 / 1}, support::today());
    ASSERT_FALSE(noDay.has_value());
    EXPECT_EQ(noDay.error().at(0).field, "From");
}

TEST(SeasonReview, StopsWhenItIsToldTo) {
    std::stop_source stop;
    stop.request_stop();
    EXPECT_TRUE(asked(support::recordsOf({aBatch()}), spring, support::today(), stop.get_token())->wasStopped);
}

TEST(SeasonReview, OfTheDemoIsTheSameEachTimeAndGivesFiveAdvicesAtMost) {
    const core::Date today = 2026y / 11 / 1;
    const core::Records demo = core::demoSeason({.batches = 300, .seed = 3, .today = today});
    const core::ReviewQuestion question{.from = 2026y / 1 / 1, .until = 2026y / 12 / 31};
    const SeasonReview one = reviewed(demo, question, today), other = reviewed(demo, question, today);
    EXPECT_LE(one.next.size(), 5U);
    EXPECT_FALSE(one.next.empty());
    EXPECT_EQ(one.inWords, other.inWords);
    EXPECT_TRUE(std::ranges::equal(one.next, other.next, {}, &core::Advice::inWords, &core::Advice::inWords));
    const core::ReviewCounts& counts = one.counts;
    EXPECT_EQ(counts.rooted + counts.lost + counts.withdrawn + counts.undecided, counts.stuck);
    EXPECT_EQ(std::accumulate(one.months.begin(), one.months.end(), 0,
                              [](int sum, const core::ReviewMonth& month) { return sum + month.counts.stuck; }),
              counts.stuck);
    EXPECT_EQ(one.losses.lost, counts.lost);
    int rated = 0;
    for (const core::PlantInReview& plant : one.plants) rated += plant.ratedBatches;
    EXPECT_LE(rated + one.youngBatches + one.trialBatches + one.unwatchedBatches, counts.batches);
}

}  // namespace
