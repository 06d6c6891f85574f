// SPDX-License-Identifier: MIT
#include "core/batch/potting.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/batch/potting_rules.h"
#include "core/units/entered_text.h"
#include "tests/support/builders.h"

namespace {

using core::Potting;
using support::aBatch;
using testing::ElementsAre;
using testing::IsEmpty;

/// Three rooted by day 7, five by day 14.
core::BatchRecord rootedBatch() {
    return aBatch().code("P1").stuck(12).looked(7, {.rooted = 3}).looked(14, {.rooted = 2, .lost = 1});
}

Potting onDay(int afterDays, int potted, int lost = 0) {
    static std::int64_t id = 0;
    return {.id = {++id},
            .batch = {},
            .countedOn = core::addDays(support::stickingDay(), afterDays),
            .potted = potted,
            .lost = lost};
}

std::vector<std::string> pottingSentences(const Potting& potting, const std::vector<Potting>& others = {}) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(potting, rootedBatch(), others, support::today()))
        sentences.push_back(refusal.sentence);
    return sentences;
}

TEST(PottedTally, SumsWhatWasNewEachTime) {
    EXPECT_EQ(core::pottedTallyOf({}).usable(), 0);
    const std::vector<Potting> counts{onDay(7, 3), onDay(14, 2, 1), onDay(40, 0, 1)};
    EXPECT_EQ(core::pottedTallyOf(counts), (core::PottedTally{.potted = 5, .lost = 2}));
    EXPECT_EQ(core::pottedTallyOf(counts).usable(), 3);
}

TEST(PottingRules, PassAsManyAsRootedByThatDay) {
    EXPECT_THAT(pottingSentences(onDay(7, 3)), IsEmpty());
    EXPECT_THAT(pottingSentences(onDay(14, 2), {onDay(7, 3)}), IsEmpty());
    EXPECT_THAT(pottingSentences(onDay(30, 0, 3), {onDay(7, 3)}), IsEmpty());
    EXPECT_THAT(pottingSentences(onDay(30, 5, 5)), IsEmpty());
}

TEST(PottingRules, RefuseMoreThanRootedByThatDay) {
    EXPECT_THAT(pottingSentences(onDay(6, 1)), ElementsAre("Potted is 1 in all by 2026-03-08; only 0 is allowed, since "
                                                           "so many of P1 had rooted by then."));
    EXPECT_THAT(pottingSentences(onDay(13, 4)), ElementsAre("Potted is 4 in all by 2026-03-15; 0 to 3 is allowed, "
                                                            "since so many of P1 had rooted by then."));
    EXPECT_THAT(pottingSentences(onDay(7, 3), {onDay(20, 3)}),
                ElementsAre("Potted is 6 in all by 2026-03-22; 0 to 5 is allowed, since so many of P1 had rooted by "
                            "then."))
        << "a count that is written down late may be one too many for those after it";
}

TEST(PottingRules, RefuseMoreLostThanPotted) {
    EXPECT_THAT(pottingSentences(onDay(20, 2, 3)),
                ElementsAre("Lost after potting is 3 in all by 2026-03-22; 0 to 2 is allowed, since so many of P1 had "
                            "been potted by then."));
    EXPECT_THAT(pottingSentences(onDay(15, 0, 1), {onDay(20, 5)}), testing::SizeIs(1)) << "before any was potted";
}

TEST(PottingRules, AChangedCountIsNotCountedTwice) {
    Potting potting = onDay(14, 5);
    std::vector<Potting> others{potting};
    potting.potted = 4;
    EXPECT_THAT(pottingSentences(potting, others), IsEmpty());
}

TEST(PottingRules, RefuseWhatIsNoCount) {
    EXPECT_THAT(pottingSentences(onDay(14, 0)),
                ElementsAre("Potted is 0 and nothing was lost; at least one of the two is needed."));
    EXPECT_THAT(pottingSentences(onDay(14, -1, 13)),
                ElementsAre("Potted is -1; 0 to 12 is allowed.", "Lost after potting is 13; 0 to 12 is allowed."));
    EXPECT_THAT(pottingSentences(onDay(-1, 1)),
                ElementsAre("Counted on is 2026-03-01; 2026-03-02 to 2026-06-30 is allowed."));
    EXPECT_THAT(pottingSentences(onDay(500, 1)), testing::SizeIs(1)) << "still to come";
    Potting noted = onDay(14, 1);
    noted.note = std::string(core::longestNote + 1, 'x');
    EXPECT_THAT(pottingSentences(noted), testing::SizeIs(1));
}

TEST(PottingRules, AskedOfChecksThatChangeSayOnceWhatIsWrong) {
    core::BatchRecord record = rootedBatch();
    const std::vector<Potting> counts{onDay(7, 3), onDay(14, 2), onDay(30, 0, 1)};
    EXPECT_THAT(core::faultsInPottings(record, counts), IsEmpty());
    record.checks.pop_back();
    const core::Refusals faults = core::faultsInPottings(record, counts);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults.front().field, "Potted");
    record.checks.clear();
    EXPECT_EQ(core::faultsInPottings(record, counts).size(), 1U);
}

}  // namespace
