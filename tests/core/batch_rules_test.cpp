// SPDX-License-Identifier: MIT
#include "core/batch/batch_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::someShelves;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> sentencesOf(const core::Refusals& faults) {
    std::vector<std::string> sentences;
    for (const core::Refusal& fault : faults) sentences.push_back(fault.sentence);
    return sentences;
}

std::vector<std::string> sentences(const core::BatchRecord& record) {
    return sentencesOf(core::faultsIn(record.batch, record.checks, someShelves(), support::today()));
}

TEST(BatchRules, PassAnOrdinaryBatch) {
    EXPECT_THAT(sentences(aBatch().looked(7, {.rooted = 12}).looked(14, {.rooted = 12})), IsEmpty());
    EXPECT_THAT(sentences(aBatch().looked(7).closed(7)), IsEmpty());
    EXPECT_THAT(sentences(aBatch().stuckOn(support::today())), IsEmpty());
}

TEST(BatchRules, NeedSomethingStuckAndNotTooMuch) {
    EXPECT_THAT(sentences(aBatch().stuck(0)), ElementsAre("Stuck is 0; 1 to 100000 is allowed."));
    EXPECT_THAT(sentences(aBatch().stuck(-3)), ElementsAre("Stuck is -3; 1 to 100000 is allowed."));
    EXPECT_THAT(sentences(aBatch().stuck(100'001)), ElementsAre("Stuck is 100001; 1 to 100000 is allowed."));
    EXPECT_THAT(sentences(aBatch().stuck(100'000)), IsEmpty());
}

TEST(BatchRules, DoNotLetFewerBeStuckThanTheChecksAccountFor) {
    EXPECT_THAT(
        sentences(aBatch().code("B260047K").stuck(11).looked(7, {.rooted = 8, .lost = 3, .withdrawn = 1})),
        ElementsAre("Stuck is 11, but the checks of B260047K account for 12 cuttings; 12 to 100000 is allowed."));
}

TEST(BatchRules, RefuseADayInTheFutureOrLongAgo) {
    EXPECT_THAT(sentences(aBatch().stuckOn(core::addDays(support::today(), 1))),
                ElementsAre("Stuck on is 2026-07-01, which is in the future; 1800-01-01 to 2026-06-30 is allowed."));
    EXPECT_THAT(sentences(aBatch().stuckOn(*core::dateFromIso("1800-01-01"))), IsEmpty());
    EXPECT_THAT(sentences(aBatch().stuckOn(core::addDays(*core::dateFromIso("1800-01-01"), -1))),
                ElementsAre("Stuck on is 1799-12-31, which is too long ago; 1800-01-01 to 2026-06-30 is allowed."));
}

TEST(BatchRules, RefuseADayAfterTheFirstCheck) {
    core::BatchRecord record = aBatch().code("B260047K").looked(9).looked(7);
    record.batch.stuckOn = core::addDays(record.batch.stuckOn, 8);
    EXPECT_THAT(sentences(record), ElementsAre("Stuck on is 2026-03-10, but B260047K was first checked on 2026-03-09; "
                                               "1800-01-01 to 2026-03-09 is allowed."));
}

TEST(BatchRules, RefuseAClosingBeforeTheLastCheckOrWithoutAReason) {
    EXPECT_THAT(sentences(aBatch().code("B260047K").looked(9).closed(8)),
                ElementsAre("Closed on is 2026-03-10, but B260047K was last checked on 2026-03-11; 2026-03-11 to "
                            "2026-06-30 is allowed."));
    EXPECT_THAT(
        sentences(aBatch().code("B260047K").closed(-1)),
        ElementsAre(
            "Closed on is 2026-03-01, but B260047K was stuck on 2026-03-02; 2026-03-02 to 2026-06-30 is allowed."));
    EXPECT_THAT(sentences(aBatch().code("B260047K").looked(7).closed(7, " ")),
                ElementsAre("Reason for closing is blank, but B260047K is closed by hand; a few words are needed."));
}

TEST(BatchRules, NeedWhatABatchNamesToExist) {
    core::BatchRecord record = aBatch();
    record.batch.plant = {};
    record.batch.stockPlant = {};
    record.batch.medium = core::MediumId{77};
    EXPECT_THAT(
        sentences(record),
        ElementsAre("Plant is not given; one that this logbook has is allowed.",
                    "Medium has the id 77, which this logbook does not have; one that this logbook has is allowed."));
}

TEST(BatchRules, LetImportedRecordsLackAStation) {
    core::BatchRecord record = aBatch();
    record.batch.station = {};
    EXPECT_THAT(sentences(record), IsEmpty());
}

TEST(BatchRules, NeedTheStockPlantToBeOfThePlant) {
    core::BatchRecord record = aBatch().of(support::hebe);
    record.batch.stockPlant = support::deutziaInThePotYard;
    EXPECT_THAT(
        sentences(record),
        ElementsAre(
            "Stock plant is \"pot yard\", which is not a Hebe albicans; a stock plant of Hebe albicans is allowed."));
}

TEST(BatchRules, RefuseACodeThatCannotBeRead) {
    EXPECT_THAT(sentences(aBatch().code(" x")),
                ElementsAre("Code is \" x\"; 1 to 40 characters are allowed, without blanks at the ends and "
                            "without control characters."));
}

TEST(BatchRules, GiveAllFaultsAtOnce) {
    core::BatchRecord record = aBatch().stuck(0).code("").block("\x01");
    record.batch.note = "\xFF";
    EXPECT_EQ(sentences(record).size(), 4U);
}

TEST(SessionRules, JudgeDayAndTexts) {
    core::Session session;
    session.date = support::stickingDay();
    EXPECT_THAT(core::faultsIn(session, support::today()), IsEmpty());
    session.worker = std::string(201, 'x');
    session.note = "\a";
    session.date = core::addDays(support::today(), 3);
    EXPECT_EQ(core::faultsIn(session, support::today()).size(), 3U);
    session = {};
    EXPECT_THAT(
        sentencesOf(core::faultsIn(session, support::today())),
        ElementsAre("Date is 0000-00-00, which is no day of the calendar; 1800-01-01 to 2026-06-30 is allowed."));
}

}  // namespace
