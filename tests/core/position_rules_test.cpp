// SPDX-License-Identifier: MIT
#include "core/batch/position_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/batch/check_rules.h"
#include "tests/support/builders.h"

namespace {

using core::Outcome;
using support::aBatch;
using support::someShelves;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> positionSentences(const core::Refusals& faults) {
    std::vector<std::string> all;
    for (const core::Refusal& fault : faults) all.push_back(fault.sentence);
    return all;
}

std::vector<std::string> judgedPlaces(const core::BatchRecord& record,
                                      const std::vector<core::HeldPosition>& held = {}) {
    return positionSentences(core::faultsInPositions(record.batch, record.checks, someShelves(), held));
}

/// Three days of looks at six holes: A1 and A2 rooted, A3 lost.
support::BatchBuilder sixHoles() {
    return aBatch()
        .code("six")
        .standing("A1-A6")
        .looked(7, {.rooted = 1, .lost = 1})
        .foundAt("A1", Outcome::Rooted)
        .foundAt("A3", Outcome::Lost)
        .looked(14, {.rooted = 1})
        .foundAt("A2", Outcome::Rooted);
}

std::string heldText(const core::BatchRecord& record) {
    std::vector<core::Position> positions;
    for (const core::HeldPosition& held : core::heldPositions(record)) positions.push_back(held.position);
    return core::textOf(std::move(positions));
}

TEST(PositionStates, SayWhatIsKnownOfEachOnADay) {
    const core::BatchRecord record = sixHoles();
    const auto now = core::positionStates(record);
    ASSERT_EQ(now.size(), 6U);
    EXPECT_EQ(now[0].finding->outcome, Outcome::Rooted);
    EXPECT_EQ(now[0].foundOn, core::addDays(record.batch.stuckOn, 7));
    EXPECT_EQ(now[2].finding->cause, support::rotted);
    EXPECT_EQ(now[1].foundOn, core::addDays(record.batch.stuckOn, 14));
    EXPECT_FALSE(now[3].finding);
    EXPECT_FALSE(core::positionStates(record, core::addDays(record.batch.stuckOn, 13))[1].finding);
    EXPECT_THAT(core::positionStates(aBatch()), IsEmpty());
}

TEST(HeldPositions, AreThoseOfLivingCuttingsOfOpenBatches) {
    EXPECT_EQ(heldText(sixHoles()), "A1-A2, A4-A6");
    EXPECT_EQ(heldText(sixHoles().closed(20)), "");
    EXPECT_EQ(heldText(sixHoles().looked(21, {.rooted = 4})), "") << "nothing undecided: the batch is closed";
}

TEST(FreePositions, GoRowByRowRoundWhatIsHeldAndBlocked) {
    core::Station lid = someShelves().stations.front();
    lid.rows = 2;
    lid.columns = 4;
    lid.blocked = "A2";
    const std::vector<core::HeldPosition> held = {{{0, 0}, "x"}, {{1, 1}, "y"}};
    EXPECT_EQ(core::textOf(core::freePositions(lid, held, 3)), "A3-A4, B1");
    EXPECT_EQ(core::textOf(core::freePositions(lid, held, 99)), "A3-A4, B1, B3-B4");
    EXPECT_THAT(core::freePositions(lid, held, 0), IsEmpty());
}

TEST(PositionRules, PassABatchWithoutPositionsAndOneThatFits) {
    EXPECT_THAT(judgedPlaces(aBatch()), IsEmpty());
    EXPECT_THAT(judgedPlaces(sixHoles()), IsEmpty());
    EXPECT_THAT(judgedPlaces(aBatch().standing("F10")), IsEmpty());
}

TEST(PositionRules, RefuseWhatCannotBeReadOrDoesNotAddUp) {
    core::BatchRecord record = aBatch().code("a").stuck(4);
    record.batch.positions = "the left half";
    EXPECT_THAT(judgedPlaces(record),
                ElementsAre("Positions are \"the left half\", which can't be read; a list such as "
                            "A1-A6, B2 is allowed."));
    record.batch.positions = "A1-A3";
    EXPECT_THAT(judgedPlaces(record),
                ElementsAre("Positions are A1-A3, which are 3; as many as were stuck, 4, is allowed."));
}

TEST(PositionRules, RefuseAPlaceThatTheStationLacks) {
    EXPECT_THAT(judgedPlaces(aBatch().standing("F10-F11")),
                ElementsAre("Positions are F11, where Tub north holds no cutting; A1-A10, B1-B10, C1-C10, D1-D10, "
                            "E1-E10, F1-F10 is allowed."));
    core::BatchRecord nowhere = aBatch().standing("A1");
    nowhere.batch.station = {};
    EXPECT_THAT(judgedPlaces(nowhere),
                ElementsAre("Positions are A1, but the batch has no station; no position is allowed."));
}

TEST(PositionRules, RefuseABlockedPlaceToCuttingsThatStandThere) {
    core::Shelves shelves = someShelves();
    shelves.stations.front().blocked = "A1";
    const core::BatchRecord standing = aBatch().standing("A1-A2"), stood = aBatch().standing("A1-A2").closed(9);
    EXPECT_EQ(core::faultsInPositions(standing.batch, standing.checks, shelves, {}).size(), 1U);
    EXPECT_THAT(core::faultsInPositions(stood.batch, stood.checks, shelves, {}), IsEmpty())
        << "a cell may break when its batch is gone";
}

TEST(PositionRules, RefuseAPlaceThatAnotherHolds) {
    const std::vector<core::HeldPosition> held = {{{0, 1}, "B260001K"}, {{0, 2}, "B260001K"}};
    EXPECT_THAT(judgedPlaces(aBatch().standing("A1-A4"), held),
                ElementsAre("Positions are A2-A3, where cuttings of B260001K stand; a free position is allowed."));
    EXPECT_THAT(judgedPlaces(sixHoles(), {{{0, 2}, "later"}}), IsEmpty()) << "A3 was lost, so another may stand there";
    EXPECT_THAT(judgedPlaces(sixHoles().closed(20), {{{0, 1}, "later"}}), IsEmpty());
}

TEST(PositionRules, RefuseToTakeAwayAPlaceThatAChecksFindingNames) {
    core::BatchRecord record = sixHoles();
    record.batch.positions = "";
    EXPECT_THAT(judgedPlaces(record),
                ElementsAre("Positions are none without A1-A3, which checks of six name; a list with "
                            "A1-A3 is allowed."));
}

TEST(FindingRules, PassAsManyAsTheCheckCountsOrFewer) {
    const core::BatchRecord record = aBatch().standing("A1-A6");
    core::Check check = support::aCheck(core::addDays(record.batch.stuckOn, 7), {.rooted = 2, .lost = 1});
    EXPECT_THAT(core::faultsInFindings(check, record.batch, {}), IsEmpty());
    check.findings = {{{0, 0}, Outcome::Rooted, {}}, {{0, 5}, Outcome::Lost, support::rotted}};
    EXPECT_THAT(core::faultsInFindings(check, record.batch, {}), IsEmpty());
}

TEST(FindingRules, RefuseMoreThanTheCheckCounts) {
    const core::BatchRecord record = aBatch().standing("A1-A6");
    core::Check check = support::aCheck(core::addDays(record.batch.stuckOn, 7), {.rooted = 1, .lost = 1});
    check.findings = {{{0, 0}, Outcome::Rooted, {}}, {{0, 1}, Outcome::Rooted, {}}};
    EXPECT_THAT(positionSentences(core::faultsIn(check, record.batch, {}, someShelves(), support::today())),
                ElementsAre("Positions marked rooted are 2, but the check counts 1 of them as rooted; up to 1 is "
                            "allowed."));
    check.findings = {{{0, 0}, Outcome::Lost, support::driedOut}};
    EXPECT_EQ(core::faultsInFindings(check, record.batch, {}).size(), 1U) << "counted under another cause";
    check.findings = {{{0, 0}, Outcome::Withdrawn, {}}};
    EXPECT_EQ(core::faultsInFindings(check, record.batch, {}).size(), 1U);
}

TEST(FindingRules, RefuseAPlaceOfAnotherBatchAndOneThatIsDecided) {
    const core::BatchRecord record = sixHoles();
    core::Check check = support::aCheck(core::addDays(record.batch.stuckOn, 20), {.rooted = 3});
    check.findings = {{{0, 0}, Outcome::Rooted, {}}, {{1, 0}, Outcome::Rooted, {}}, {{1, 0}, Outcome::Rooted, {}}};
    EXPECT_THAT(positionSentences(core::faultsInFindings(check, record.batch, record.checks)),
                ElementsAre("Position A1 rooted is decided already, on 2026-03-09; each position once is allowed.",
                            "Position B1 rooted is not one of six; A1-A6 is allowed.",
                            "Position B1 rooted is not one of six; A1-A6 is allowed.",
                            "Position B1 rooted is decided already, on 2026-03-22; each position once is allowed."));
}

TEST(FindingRules, HoldACorrectionOfLastMonthAgainstWhatWasFoundSince) {
    const core::BatchRecord record = sixHoles();
    core::Check corrected = record.checks.front();  // of day 7, where A2 rooted on day 14
    corrected.findings.front().position = {0, 1};
    const std::vector<core::Check> others = {record.checks.back()};
    EXPECT_THAT(positionSentences(core::faultsInFindings(corrected, record.batch, others)),
                ElementsAre("Position A2 rooted is decided already, on 2026-03-16; each position once is allowed."));
    corrected.findings.front().position = {0, 3};
    EXPECT_THAT(core::faultsInFindings(corrected, record.batch, others), IsEmpty());
}

TEST(LayoutRules, KeepEveryBatchThatIsRecordedThereInside) {
    core::Station tub = someShelves().stations.front();
    const std::vector<core::BatchRecord> batches = {aBatch().code("old").standing("F9-F10").closed(30),
                                                    aBatch().code("new").standing("A1-A3")};
    EXPECT_THAT(core::faultsInLayout(tub, batches), IsEmpty());
    tub.rows = 5;
    EXPECT_THAT(positionSentences(core::faultsInLayout(tub, batches)),
                ElementsAre("Rows is 5, but old is recorded at F9-F10; at least 6 is allowed."));
    tub.rows = 6;
    tub.columns = 9;
    EXPECT_THAT(positionSentences(core::faultsInLayout(tub, batches)),
                ElementsAre("Columns is 9, but old is recorded at F10; at least 10 is allowed."));
    tub.columns = 10;
    tub.blocked = "A2, F9";
    EXPECT_THAT(positionSentences(core::faultsInLayout(tub, batches)),
                ElementsAre("Blocked positions are A2, F9, but cuttings of new stand at A2; positions where nothing "
                            "stands are allowed."));
}

}  // namespace
