// SPDX-License-Identifier: MIT
#include "core/batch/check_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

#include "stats/numeric/seeded_random.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::aCheck;
using support::Seen;
using testing::ElementsAre;
using testing::IsEmpty;

core::BatchRecord theBatch() {
    return aBatch().code("B260047K").stuck(24).looked(7, {.rooted = 3, .lost = 1}).looked(14, {.rooted = 8});
}

std::vector<std::string> judged(const core::BatchRecord& record, const core::Check& check) {
    std::vector<std::string> sentences;
    for (const core::Refusal& fault :
         core::faultsIn(check, record.batch, record.checks, support::someShelves(), support::today()))
        sentences.push_back(fault.sentence);
    return sentences;
}

std::vector<std::string> judged(const core::BatchRecord& record, int afterDays, Seen seen) {
    return judged(record, aCheck(core::addDays(record.batch.stuckOn, afterDays), seen));
}

TEST(CheckRules, PassWhatIsStillUndecided) {
    EXPECT_THAT(judged(theBatch(), 19, {}), IsEmpty());
    EXPECT_THAT(judged(theBatch(), 19, {.rooted = 12}), IsEmpty());
    EXPECT_THAT(judged(theBatch(), 19, {.rooted = 4, .lost = 4, .withdrawn = 4}), IsEmpty());
}

TEST(CheckRules, RefuseMoreThanAreUndecided) {
    const core::BatchRecord record = theBatch();
    const core::Check check = aCheck(core::addDays(record.batch.stuckOn, 19), {.rooted = 14});
    const core::Refusals faults =
        core::faultsIn(check, record.batch, record.checks, support::someShelves(), support::today());
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults.front().field, "Rooted");
    EXPECT_EQ(faults.front().value, "14");
    EXPECT_EQ(faults.front().allowed, "0 to 12");
    EXPECT_EQ(
        faults.front().sentence,
        "Rooted is 14, but only 12 of the 24 cuttings of B260047K are undecided on 2026-03-21; 0 to 12 is allowed.");
}

TEST(CheckRules, BlameTheFirstCountThatAsksForTooMuch) {
    EXPECT_THAT(judged(theBatch(), 19, {.rooted = 10, .lost = 3}),
                ElementsAre("Lost is 3, but only 12 of the 24 cuttings of B260047K are undecided on 2026-03-21, and 10 "
                            "rooted at this check; 0 "
                            "to 2 is allowed."));
    EXPECT_THAT(judged(theBatch(), 19, {.rooted = 10, .lost = 2, .withdrawn = 1}),
                ElementsAre("Withdrawn is 1, but only 12 of the 24 cuttings of B260047K are undecided on 2026-03-21, "
                            "and 10 rooted and 2 were "
                            "lost at this check; only 0 is allowed."));
}

TEST(CheckRules, BlameTheFigureThatWasRaisedWhereACheckIsChanged) {
    const core::BatchRecord record = theBatch();
    const core::Date day = core::addDays(record.batch.stuckOn, 19);
    const core::Check before = aCheck(day, {.rooted = 3, .lost = 4});
    const auto changedTo = [&](const support::Seen& seen) {
        const core::Refusals faults = core::faultsIn(aCheck(day, seen), record.batch, record.checks,
                                                     support::someShelves(), support::today(), &before);
        return faults.size() == 1 ? faults.front() : core::Refusal{};
    };
    EXPECT_EQ(changedTo({.rooted = 10, .lost = 4}).field, "Rooted") << "not what was lost, which nobody touched";
    EXPECT_EQ(changedTo({.rooted = 10, .lost = 4}).allowed, "0 to 8");
    EXPECT_EQ(changedTo({.rooted = 3, .lost = 10}).field, "Lost");
    EXPECT_EQ(changedTo({.rooted = 3, .lost = 4, .withdrawn = 6}).field, "Withdrawn");
    EXPECT_THAT(changedTo({.rooted = 10, .lost = 4}).sentence, testing::HasSubstr("and 4 were lost at this check"));
}

TEST(CheckRules, JudgeLastMonthsCheckByAllThatFollows) {
    // On day 10, 20 were undecided; the check of day 14 took 8 of them.
    EXPECT_THAT(judged(theBatch(), 10, {.rooted = 12}), IsEmpty());
    EXPECT_THAT(judged(theBatch(), 10, {.rooted = 13}),
                ElementsAre("Rooted is 13, but of the 20 cuttings of B260047K undecided on 2026-03-12 later checks "
                            "account for 8; 0 to 12 is "
                            "allowed."));
}

TEST(CheckRules, SurviveCountsThatWouldOverflow) {
    constexpr int most = std::numeric_limits<int>::max();
    EXPECT_EQ(judged(theBatch(), 19, {.rooted = most, .lost = most, .withdrawn = most}).size(), 1U);
}

TEST(CheckRules, RefuseNegativeCounts) {
    EXPECT_THAT(judged(theBatch(), 19, {.rooted = -1}), ElementsAre("Rooted is -1; 0 to 24 is allowed."));
    EXPECT_THAT(judged(theBatch(), 19, {.withdrawn = -1}), ElementsAre("Withdrawn is -1; 0 to 24 is allowed."));
    EXPECT_THAT(judged(theBatch(), 19, {.lost = -2}), ElementsAre("Lost (rotted) is -2; 1 to 24 is allowed."));
}

TEST(CheckRules, RefuseADayBeforeTheBatchOrInTheFuture) {
    EXPECT_THAT(
        judged(theBatch(), -1, {}),
        ElementsAre(
            "Checked on is 2026-03-01, but B260047K was stuck on 2026-03-02; 2026-03-02 to 2026-06-30 is allowed."));
    EXPECT_THAT(judged(theBatch(), 0, {}), IsEmpty());
    EXPECT_THAT(judged(theBatch(), 121, {}),
                ElementsAre("Checked on is 2026-07-01, which is in the future; 1800-01-01 to 2026-06-30 is allowed."));
}

TEST(CheckRules, RefuseASecondCheckOfTheDay) {
    EXPECT_THAT(judged(theBatch(), 14, {}), ElementsAre("Checked on is 2026-03-16, but B260047K has a check of that "
                                                        "day already; a day without a check is allowed."));
}

TEST(CheckRules, RefuseACheckAfterTheBatchWasClosed) {
    const core::BatchRecord closed = aBatch().code("B260047K").looked(7).closed(9);
    EXPECT_THAT(judged(closed, 9, {}), IsEmpty());
    EXPECT_THAT(
        judged(closed, 10, {}),
        ElementsAre(
            "Checked on is 2026-03-12, but B260047K was closed on 2026-03-11; 2026-03-02 to 2026-03-11 is allowed."));
}

TEST(CheckRules, RefuseACauseTwiceOrUnknown) {
    core::Check check = aCheck(core::addDays(support::stickingDay(), 19));
    check.losses = {{support::rotted, 1}, {support::driedOut, 1}, {support::rotted, 1}};
    EXPECT_THAT(judged(theBatch(), check),
                ElementsAre("Lost (rotted) is given a second time, with 1; each cause once is allowed."));
    check.losses = {{core::LossCauseId{99}, 1}};
    EXPECT_THAT(judged(theBatch(), check), ElementsAre("Cause is one that this logbook does not have (its id is 99); a "
                                                       "cause of loss of this logbook is allowed."));
    check.losses = {{{}, 1}};
    EXPECT_THAT(judged(theBatch(), check), IsEmpty());
}

TEST(CheckRules, RefuseANoteThatIsNoText) {
    core::Check check = aCheck(core::addDays(support::stickingDay(), 19));
    check.note = "caf\xE9";
    EXPECT_THAT(judged(theBatch(), check),
                ElementsAre("Note, \"caf?\", is not readable text; text in UTF-8 is allowed."));
}

bool holdsEveryDay(const core::BatchRecord& record, const core::Check& added) {
    std::vector<core::Check> checks = record.checks;
    checks.push_back(added);
    for (int day = 0; day <= 45; ++day)
        if (core::tallyOf(record.batch, checks, core::addDays(record.batch.stuckOn, day)).undecided() < 0) return false;
    return true;
}

TEST(CheckRules, AgreeWithCountingDayByDay) {
    stats::SeededRandom random(20260302);
    const auto upTo = [&random](int most) {
        return static_cast<int>(random.below(static_cast<std::uint64_t>(most) + 1));
    };
    int refused = 0;
    for (int trial = 0; trial < 3000; ++trial) {
        support::BatchBuilder builder = aBatch().stuck(12);
        for (int day = 2; day <= 30; day += 2 + upTo(8))
            builder.looked(day, {.rooted = upTo(2), .lost = upTo(1), .withdrawn = upTo(1)});
        const core::BatchRecord record = builder;
        if (core::tallyOf(record.batch, record.checks).undecided() < 0) continue;
        const core::Check check = aCheck(core::addDays(record.batch.stuckOn, 1 + 2 * upTo(20)),
                                         {.rooted = upTo(5), .lost = upTo(3), .withdrawn = upTo(2)});
        const bool isDayTaken =
            std::ranges::find(record.checks, check.checkedOn, &core::Check::checkedOn) != record.checks.end();
        if (isDayTaken) continue;
        const bool isRefused = !judged(record, check).empty();
        EXPECT_EQ(isRefused, !holdsEveryDay(record, check));
        refused += isRefused ? 1 : 0;
    }
    EXPECT_GT(refused, 200);
}

}  // namespace
