// SPDX-License-Identifier: MIT
// Records that leave figures out or drive them to their ends: every page still has all of its numbers, and pages without a figure are left out.
#include <gtest/gtest.h>

#include <QRegularExpression>
#include <algorithm>

#include "app/report/methods/notes.h"
#include "tests/core/comparison_examples.h"
#include "tests/report/methods/method_examples.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;
using support::benchEast;
using support::benchWest;
using support::tubNorth;
using support::tubSouth;

core::Comparison compared(const std::vector<core::BatchRecord>& batches, core::ComparisonQuestion question = {}) {
    question.margin = 0.1;
    return examples::compared(batches, question, examples::methodShelves());
}

bool has(const std::vector<report::MethodNote>& notes, const char* page) {
    return std::any_of(notes.begin(), notes.end(),
                       [page](const report::MethodNote& note) { return note.page == QLatin1String(page); });
}

// What people read: without the blocks of code.
QString prose(const QString& text) {
    static const QRegularExpression fenced(QStringLiteral("```.*?```"), QRegularExpression::DotMatchesEverythingOption);
    QString rest = text;
    return rest.remove(fenced);
}

void expectWholePages(const std::vector<report::MethodNote>& notes) {
    static const QRegularExpression noNumber(QStringLiteral("\\b(-?nan|-?inf)\\b"),
                                             QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression nanInCode(QStringLiteral("(?<![\\w.])nan(?!\\w)"));
    static const QRegularExpression leftBrace(QStringLiteral("\\{[a-z][a-z0-9_]*\\}"));
    for (const report::MethodNote& note : notes) {
        QString text;
        ASSERT_NO_THROW(text = report::methodText(note)) << note.page.toStdString();
        EXPECT_FALSE(prose(text).contains(noNumber)) << text.toStdString();
        EXPECT_FALSE(text.contains(nanInCode)) << text.toStdString();
        EXPECT_FALSE(text.contains(leftBrace)) << text.toStdString();
        EXPECT_FALSE(report::workedOut(note).isEmpty());
    }
}

TEST(ExtremeRecords, NoBatchesHaveNoPages) {
    EXPECT_TRUE(examples::everyNoteOn(compared({})).empty());
    EXPECT_TRUE(report::notesOnChart({}).empty());
    EXPECT_TRUE(report::notesOnBatch({}).empty());
    EXPECT_TRUE(report::notesOnSplit({}, 1).empty());
}

TEST(ExtremeRecords, NothingAssessed) {
    const auto notes = examples::everyNoteOn(compared({aBatch().at(tubNorth), aBatch().at(benchWest)}));
    expectWholePages(notes);
    EXPECT_FALSE(has(notes, "strike_rate"));
    EXPECT_FALSE(has(notes, "difference"));
    EXPECT_FALSE(has(notes, "verdict"));
}

TEST(ExtremeRecords, OneArmOnlyAssessed) {
    const auto notes =
        examples::everyNoteOn(compared({aBatch().at(tubNorth).looked(28, {9, 3}), aBatch().at(benchWest)}));
    expectWholePages(notes);
    EXPECT_TRUE(has(notes, "strike_rate"));
    EXPECT_FALSE(has(notes, "difference"));
}

TEST(ExtremeRecords, OneBatchAnArmHasNoSpread) {
    const auto notes = examples::everyNoteOn(
        compared({aBatch().at(tubNorth).looked(28, {9, 3}), aBatch().at(benchWest).looked(28, {20})}));
    expectWholePages(notes);
    EXPECT_TRUE(has(notes, "difference"));
    for (const char* page : {"interval_with_spread", "difference_with_spread", "batch_rates_test", "batch_permutation",
                             "bands", "curves_differ", "as_good_as_by_batch", "several_arms", "holm"})
        EXPECT_FALSE(has(notes, page)) << page;
}

TEST(ExtremeRecords, NoneRootedAgainstAll) {
    const auto none = examples::batchesAt(tubNorth, {0, 0, 0, 0}),
               all = examples::batchesAt(benchWest, {20, 20, 20, 20});
    const core::Comparison noneFirst = compared(examples::together({none, all}));
    expectWholePages(examples::everyNoteOn(noneFirst));
    ASSERT_EQ(noneFirst.pairs.size(), 1U);
    ASSERT_TRUE(noneFirst.pairs.front().riskRatio);
}

TEST(ExtremeRecords, AnInfiniteRatio) {
    const auto some = examples::batchesAt(tubNorth, {5, 9, 7}), none = examples::batchesAt(benchWest, {0, 0, 0});
    const auto notes = examples::everyNoteOn(compared(examples::together({some, none})));
    expectWholePages(notes);
    ASSERT_TRUE(has(notes, "ratio"));
    const auto ratio = std::find_if(notes.begin(), notes.end(),
                                    [](const report::MethodNote& note) { return note.page == QLatin1String("ratio"); });
    EXPECT_TRUE(report::methodText(*ratio).contains(u'∞'));
}

TEST(ExtremeRecords, NoneRootedInEither) {
    const auto notes = examples::everyNoteOn(
        compared(examples::together({examples::batchesAt(tubNorth, {0, 0}), examples::batchesAt(benchWest, {0, 0})})));
    expectWholePages(notes);
    EXPECT_FALSE(has(notes, "ratio"));
    EXPECT_FALSE(has(notes, "odds_ratio"));
    EXPECT_FALSE(has(notes, "who_roots_and_how_fast"));
}

TEST(ExtremeRecords, BatchesThatDoNotDiffer) {
    const auto notes = examples::everyNoteOn(compared(examples::together(
        {examples::batchesAt(tubNorth, {10, 10, 10, 10}), examples::batchesAt(benchWest, {15, 15, 15, 15})})));
    expectWholePages(notes);
    EXPECT_TRUE(has(notes, "verdict"));
    EXPECT_TRUE(has(notes, "batch_permutation"));
    EXPECT_FALSE(has(notes, "batch_rates_test"));
}

TEST(ExtremeRecords, OneCuttingABatch) {
    const auto one = [](core::StationId station, int rooted) {
        return aBatch().at(station).stuck(1).looked(28, {rooted, 1 - rooted});
    };
    expectWholePages(examples::everyNoteOn(
        compared({one(tubNorth, 1), one(tubSouth, 0), one(benchWest, 1), one(benchEast, 0), one(benchEast, 1)})));
}

TEST(ExtremeRecords, EveryLevel) {
    for (const double level : {0.01, 0.5, 0.999999}) {
        core::ComparisonQuestion question;
        question.level = level;
        expectWholePages(examples::everyNoteOn(compared(examples::tubsAndTrays(), question)));
    }
}

TEST(ExtremeRecords, MoreBatchesThanAPageHolds) {
    std::vector<core::BatchRecord> batches;
    for (int i = 0; i < 420; ++i)
        batches.push_back(aBatch().at(i % 2 == 0 ? tubNorth : benchWest).stuck(3).looked(28, {i % 4, 0}));
    core::ComparisonQuestion question;
    question.permutations = 39;
    question.bootstrapReplicates = 39;
    const auto notes = examples::everyNoteOn(compared(batches, question));
    expectWholePages(notes);
    for (const report::MethodNote& note : notes) EXPECT_LT(report::methodText(note).size(), 20'000);
}

TEST(ExtremeRecords, ADoseThatRootedAllTakesFirthsPage) {
    auto season = examples::doseSeason();
    for (core::BatchRecord& record : season) {
        const bool isMiddle = record.batch.treatment.value == 611 || record.batch.treatment.value == 612;
        for (core::Check& check : record.checks) {
            check.losses.clear();
            check.rooted = isMiddle ? record.batch.stuck / 2 : 0;
        }
    }
    core::ComparisonQuestion question;
    question.factor = core::Factor::Treatment;
    const core::Comparison comparison = compared(season, question);
    ASSERT_EQ(comparison.doses.size(), 1U);
    EXPECT_TRUE(comparison.doses.front().isFirth);
    expectWholePages(report::notesOnDoses(comparison.doses.front(), comparison.level));
}

TEST(ExtremeRecords, BatchesBeforeTheirFirstLook) {
    const core::BatchRecord fresh = aBatch();
    const core::BatchSummary summary =
        core::summaryOf(fresh, examples::methodShelves(), std::vector{fresh}, support::today());
    const auto notes = report::notesOnBatch(summary);
    expectWholePages(notes);
    EXPECT_FALSE(has(notes, "rooted_by_day"));
    EXPECT_FALSE(has(notes, "against_the_past"));
    EXPECT_TRUE(report::notesOnChart(summary.chart).empty());
}

}  // namespace
