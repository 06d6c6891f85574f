// SPDX-License-Identifier: MIT
#include <algorithm>

#include "app/desktop/positions/mark_keys.h"
#include "app/desktop/positions/position_look.h"
#include "tests/desktop/pages/desk.h"

namespace {

using core::Outcome;
using desktop::LookMark;
using desktop::Mark;
using desktop::MarkKey;
using desktop::PositionLook;

const Mark rooted{.outcome = Outcome::Rooted, .cause = {}};
const Mark rotted{.outcome = Outcome::Lost, .cause = support::rotted};

QString letters(const std::vector<MarkKey>& keys) {
    QString text;
    for (const MarkKey& key : keys) text += key.letter.isNull() ? QLatin1Char('-') : key.letter;
    return text;
}

core::LossCause aCause(std::int64_t id, const char* name, char key, bool isRetired = false) {
    return {.id = {id}, .name = name, .key = key, .isRetired = isRetired};
}

core::BatchRecord placed(core::BatchRecord record, const char* positions) {
    record.batch.positions = positions;
    return record;
}

core::Date day(int afterDays) {
    return core::addDays(support::stickingDay(), afterDays);
}

std::vector<core::Position> at(const char* positions) {
    return core::positionsFrom(positions).value();
}

/// Eight cuttings in row A; on day 14 three had rooted and one was lost, nobody said where.
PositionLook lookOnDay(int afterDays) {
    return PositionLook({placed(support::aBatch().stuck(8).looked(14, {.rooted = 3, .lost = 1}), "A1-A8")},
                        day(afterDays));
}

}  // namespace

TEST(MarkKeys, GiveACauseWhoseLetterIsTakenTheFirstFreeOneOfItsName) {
    const std::vector<MarkKey> keys = desktop::markKeysFor(support::someShelves().lossCauses);
    // Rooted has R; rotted would have it, and O is that of "other".
    EXPECT_EQ(letters(keys), QStringLiteral("RTDPBOLWU"));
    EXPECT_EQ(desktop::markFor(keys, QLatin1Char('t')), rotted);
    EXPECT_EQ(desktop::markFor(keys, QLatin1Char('r')), rooted);
    EXPECT_EQ(desktop::letterFor(keys, rotted), QLatin1Char('T'));
}

TEST(MarkKeys, NeverGiveOneLetterTwice) {
    std::vector<core::LossCause> causes;
    for (int number = 0; number < 40; ++number) causes.push_back(aCause(900 + number, "root rot", '\0'));
    QString given = letters(desktop::markKeysFor(causes)).remove(QLatin1Char('-'));
    EXPECT_EQ(given.size(), 26);
    std::ranges::sort(given);
    EXPECT_EQ(std::ranges::adjacent_find(given), given.end());
}

TEST(MarkKeys, KeepAHabitRatherThanServeANameWithoutALetter) {
    const std::vector<core::LossCause> causes{aCause(901, "drowned", '\0'), aCause(902, "dried out", 'd')};
    const std::vector<MarkKey> keys = desktop::markKeysFor(causes);
    EXPECT_EQ(desktop::markFor(keys, QLatin1Char('d'))->cause, core::LossCauseId{902});
    EXPECT_EQ(desktop::markFor(keys, QLatin1Char('o'))->cause, core::LossCauseId{901});
}

TEST(MarkKeys, LeaveOutCausesThatAreRetired) {
    const std::vector<core::LossCause> causes{aCause(901, "slugs", 's', true)};
    EXPECT_EQ(desktop::markFor(desktop::markKeysFor(causes), QLatin1Char('s')), std::nullopt);
}

TEST(PositionLook, CountsWhatIsMarkedAsNew) {
    PositionLook look = lookOnDay(21);
    EXPECT_TRUE(look.mark(at("A1-A2"), {.mark = rooted}));
    EXPECT_TRUE(look.mark(at("A3"), {.mark = rotted}));
    ASSERT_EQ(look.checks().size(), 1u);
    const core::Check check = look.checks().front();
    EXPECT_FALSE(check.id.isSet());
    EXPECT_EQ(check.checkedOn, day(21));
    EXPECT_EQ(check.rooted, 2);
    EXPECT_EQ(check.losses, (std::vector<core::Loss>{{.cause = support::rotted, .count = 1}}));
    EXPECT_EQ(check.findings.size(), 3u);
    EXPECT_EQ(look.sums().rooted, 5);
    EXPECT_EQ(look.sums().newRooted, 2);
    EXPECT_EQ(look.sums().undecided, 1);
    EXPECT_TRUE(look.faults(support::someShelves(), support::today()).empty());
}

TEST(PositionLook, FillsWhatTheCheckOfThatDayCountedBeforeItGrows) {
    PositionLook look = lookOnDay(14);
    look.mark(at("A1-A2"), {.mark = rooted});
    ASSERT_EQ(look.checks().size(), 1u);
    EXPECT_TRUE(look.checks().front().id.isSet());
    EXPECT_EQ(look.checks().front().rooted, 3);  // never below what it says
    look.mark(at("A3-A5"), {.mark = rooted});
    EXPECT_EQ(look.checks().front().rooted, 5);
    look.mark(at("A4-A5"), {.mark = {}});
    EXPECT_EQ(look.checks().front().rooted, 3);
    EXPECT_EQ(look.checks().front().lost(), 1);
}

TEST(PositionLook, LetsALossWithItsCauseTakeThePlaceOfOneWithout) {
    PositionLook look({placed(support::aBatch().stuck(8).looked(14, {.lost = 2, .cause = {}}), "A1-A8")}, day(14));
    look.mark(at("A1"), {.mark = rotted});
    EXPECT_EQ(look.checks().front().lost(), 2);
    look.mark(at("A2-A3"), {.mark = rotted});
    EXPECT_EQ(look.checks().front().losses, (std::vector<core::Loss>{{.cause = support::rotted, .count = 3}}));
}

TEST(PositionLook, GivesWhatWasCountedEarlierItsPlaceWithoutCountingItAgain) {
    PositionLook look = lookOnDay(21);
    EXPECT_TRUE(look.mark(at("A1-A3"), {.mark = rooted, .wasCounted = true}));
    EXPECT_EQ(look.sums().rooted, 3);
    EXPECT_EQ(look.sums().newRooted, 0);
    ASSERT_EQ(look.checks().size(), 2u);
    EXPECT_EQ(look.checks().front().checkedOn, day(14));
    EXPECT_EQ(look.checks().front().rooted, 3);
    EXPECT_EQ(look.checks().front().findings.size(), 3u);
    EXPECT_TRUE(look.checks().back().findings.empty());
    // A fourth was not counted.
    EXPECT_FALSE(look.mark(at("A4"), {.mark = rooted, .wasCounted = true}));
    EXPECT_EQ(look.markAt(at("A4").front()), Mark{});
    ASSERT_EQ(look.unplacedBefore().size(), 1u);
    EXPECT_EQ(look.unplacedBefore().front().mark, rotted);
}

TEST(PositionLook, SaysWhenTheDayIsMovedBeforeTheCheckThatCountedIt) {
    PositionLook look = lookOnDay(21);
    look.mark(at("A2"), {.mark = rooted, .wasCounted = true});
    look.setDay(day(10));
    const core::Refusals faults = look.faults(support::someShelves(), support::today());
    ASSERT_FALSE(faults.empty());
    EXPECT_EQ(faults.front().field, "Position A2");
}

TEST(PositionLook, RefusesMoreThanIsUndecidedAsCoreDoes) {
    PositionLook look = lookOnDay(21);
    look.mark(at("A1-A5"), {.mark = rooted});
    const core::Refusals faults = look.faults(support::someShelves(), support::today());
    ASSERT_FALSE(faults.empty());
    EXPECT_EQ(faults.front().allowed, "0 to 4");
}

TEST(PositionLook, LeavesACuttingThatAnotherDayDecidedAsItIs) {
    core::BatchRecord record = placed(support::aBatch().stuck(8).looked(14, {.rooted = 1}), "A1-A8");
    record.checks.front().findings = {{.position = {0, 0}, .outcome = Outcome::Rooted, .cause = {}}};
    PositionLook look({record}, day(21));
    EXPECT_FALSE(look.canMark({0, 0}));
    look.mark(at("A1-A2"), {.mark = rotted});
    EXPECT_EQ(look.markAt({0, 0}), rooted);
    EXPECT_EQ(look.markAt({0, 1}), rotted);
    // On the day itself it can be corrected, and the count goes with it.
    look.setDay(day(14));
    EXPECT_TRUE(look.canMark({0, 0}));
    look.mark(at("A1"), {.mark = {}});
    EXPECT_EQ(look.checks().front().rooted, 0);
    EXPECT_EQ(look.checks().front().lost(), 1);
}

TEST(PositionLook, LeavesACheckAloneThatSaysTheSame) {
    EXPECT_TRUE(lookOnDay(14).checks().empty());
    // A look at one batch that finds nothing new is a check all the same.
    EXPECT_EQ(lookOnDay(21).checks().size(), 1u);
}

TEST(PositionLook, WritesOneCheckForEachBatchWithAMark) {
    PositionLook look({placed(support::aBatch().stuck(4), "A1-A4"), placed(support::aBatch().stuck(4), "B1-B4")},
                      day(21));
    look.mark(at("B2"), {.mark = rooted});
    EXPECT_EQ(look.checks().size(), 1u);
    look.setLooksAtAll(true);
    EXPECT_EQ(look.checks().size(), 2u);
    look.setNote("warm");
    EXPECT_EQ(look.checks().front().note, "warm");
}
