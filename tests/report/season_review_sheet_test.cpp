// SPDX-License-Identifier: MIT
#include "app/report/season_review_sheet.h"

#include <algorithm>
#include <chrono>

#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "core/demo/demo_season.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/report/sheet_examples.h"
#include "tests/support/builders.h"

namespace {

using namespace std::chrono_literals;
using support::aBatch;
using testing::HasSubstr;

const core::ReviewQuestion wholeYear{.from = 2026y / 1 / 1, .until = 2026y / 12 / 31};

report::Sheet sheetOfSeason(const core::Records& records, core::ReviewQuestion question = wholeYear,
                            core::Date today = 2026y / 11 / 26) {
    const auto review = core::seasonReview(
        question, {.shelves = records.shelves,
                   .batches = records.batches,
                   .sessions = records.sessions,
                   .care = records.care,
                   .expenses = records.expenses,
                   .pottings = records.pottings,
                   .today = today,
                   .dayStart = [](core::Date day) { return core::Moment(std::chrono::sys_days(day)); }});
    EXPECT_TRUE(review.has_value());
    return report::seasonReviewSheet(*review, records.shelves, examples::printedAt());
}

std::string seasonText(const report::Sheet& sheet) {
    return report::plainText(sheet).toStdString();
}

int pagesOfSeason(const report::Sheet& sheet) {
    return std::max(report::pageCount(sheet, report::Paper::A4), report::pageCount(sheet, report::Paper::Letter));
}

core::Records demoOf(int batches, std::uint32_t seed = 1) {
    return core::demoSeason({.batches = batches, .seed = seed, .today = 2026y / 11 / 26});
}

}  // namespace

TEST(SeasonReviewSheet, HasTwoToFourPagesWhateverTheLogbooksSize) {
    for (const int batches : {20, 60, 250, 1500}) {
        const report::Sheet sheet = sheetOfSeason(demoOf(batches));
        SCOPED_TRACE(batches);
        EXPECT_GE(pagesOfSeason(sheet), 2);
        EXPECT_LE(pagesOfSeason(sheet), 4);
    }
}

TEST(SeasonReviewSheet, BeginsWithTheAnswerAndWhatToTryNext) {
    const std::string text = seasonText(sheetOfSeason(demoOf(60)));
    EXPECT_THAT(text, HasSubstr("Season review: 2026"));
    EXPECT_LT(text.find("cuttings stuck in"), text.find("WHAT TO TRY NEXT"));
    EXPECT_LT(text.find("WHAT TO TRY NEXT"), text.find("[Figure]"));
    for (const char* heading : {"WHAT WAS STUCK AND WHAT BECAME OF IT", "STRIKE RATES BY PLANT AND METHOD",
                                "THE BEST METHOD BY PLANT, AND HOW SURE", "LOST BY CAUSE", "WHAT WAS LEARNED", "MONEY",
                                "HOW THIS WAS WORKED OUT"})
        EXPECT_THAT(text, HasSubstr(heading));
}

TEST(SeasonReviewSheet, PutsNToEveryFigure) {
    const report::Sheet sheet = sheetOfSeason(demoOf(60));
    int figures = 0;
    for (const report::Block& block : sheet.blocks) {
        const auto* picture = std::get_if<report::Picture>(&block);
        if (picture == nullptr) continue;
        ++figures;
        const plot::FigureTable table = picture->figure->table();
        const QString words = picture->figure->sentence() + picture->figure->method() + table.headings.join(u' ');
        EXPECT_THAT(words.toStdString(), testing::ContainsRegex("[0-9]+ of [0-9]+|Assessed|[0-9]+ batches"))
            << picture->figure->sentence().toStdString();
        EXPECT_FALSE(table.rows.empty());
    }
    EXPECT_GE(figures, 2);
}

TEST(SeasonReviewSheet, SaysOnceThatItDescribesAndThatATrialDecides) {
    const std::string text = seasonText(sheetOfSeason(demoOf(60)));
    const std::size_t first = text.find("A span is no planned comparison");
    ASSERT_NE(first, std::string::npos);
    EXPECT_EQ(text.find("A span is no planned comparison", first + 1), std::string::npos);
}

TEST(SeasonReviewSheet, MarksInventedData) {
    EXPECT_TRUE(sheetOfSeason(demoOf(20)).isInvented);
}

TEST(SeasonReviewSheet, OfASpanWithoutABatchIsASentence) {
    const report::Sheet sheet = sheetOfSeason(demoOf(20), {.from = 1999y / 1 / 1, .until = 1999y / 12 / 31});
    EXPECT_THAT(seasonText(sheet), HasSubstr("Nothing was stuck in this span"));
    EXPECT_EQ(sheet.blocks.size(), 1U);
    EXPECT_EQ(pagesOfSeason(sheet), 1);
}

TEST(SeasonReviewSheet, OfFewBatchesSaysWhatIsMissing) {
    const core::Records few =
        support::recordsOf({aBatch().looked(35, {.rooted = 12, .lost = 12}), aBatch().looked(35, {.rooted = 20})});
    const std::string text = seasonText(sheetOfSeason(few));
    EXPECT_THAT(text, HasSubstr("No trial was decided in this span"));
    EXPECT_THAT(text, HasSubstr("No price and no expense is on record"));
    EXPECT_THAT(text, HasSubstr("one method"));
    EXPECT_THAT(text, HasSubstr("Stuck in 1 session: 2 batches of 1 plant."));
}

TEST(SeasonReviewSheet, NamesAnySpanByItsDays) {
    const report::Sheet sheet = sheetOfSeason(demoOf(60), {.from = 2026y / 3 / 1, .until = 2026y / 10 / 31});
    EXPECT_TRUE(sheet.title.contains("2026")) << sheet.title.toStdString();
    EXPECT_TRUE(sheet.title.contains(" to "));
}

TEST(SeasonReviewSheet, ShortensWhatFindsNoRoomWithASentence) {
    core::Records many = demoOf(1500);
    for (core::Plant& plant : std::vector<core::Plant>(many.shelves.plants)) {
        plant.id.value += 5000;
        plant.botanicalName += " again";
        many.shelves.plants.push_back(plant);
    }
    for (std::size_t i = 0; i < many.batches.size(); i += 2) many.batches[i].batch.plant.value += 5000;
    const report::Sheet sheet = sheetOfSeason(many);
    EXPECT_LE(pagesOfSeason(sheet), 4);
    EXPECT_THAT(seasonText(sheet), HasSubstr("more are left out here."));
}
