// SPDX-License-Identifier: MIT
// A file goes in whole, once, as one step.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/logger/import_log.h"
#include "app/logger/mapping_text.h"
#include "db/actions/records_actions.h"
#include "tests/logger/logger_files.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"

namespace {

using support::timeAndAir;

class ImportLog : public testing::Test {
  protected:
    ImportLog() {
        const auto done = db::addRecords(logbook_, support::recordsOf({}), "shelves", true);
        EXPECT_TRUE(done);
    }

    /// Rows of so many minutes from 10 o'clock, one each ten minutes; their values are 20 and up.
    static logger::LogContents rows(int from, int until, double more = 0) {
        std::string text = "Time,Air °C\n";
        for (int row = from; row < until; ++row)
            text += core::isoText(support::moment("2026-06-01T10:00:00Z") + std::chrono::minutes(10 * row)) + "," +
                    std::to_string(20 + 0.01 * row + more) + "\n";
        return support::readText(text, timeAndAir());
    }
    db::LoggerAdded bringIn(const logger::LogContents& contents, const std::optional<core::LoggerFormat>& format = {}) {
        auto done = logger::importLog(logbook_, contents, "logger.csv", support::loggersNow(), format);
        EXPECT_TRUE(done);
        return done ? *done : db::LoggerAdded();
    }
    std::size_t steps() { return logbook_.history(100).size(); }
    std::int64_t values() {
        std::int64_t count = 0;
        for (const core::LoggerSpan& span : logbook_.loggerSpans()) count += span.samples;
        return count;
    }

    db::Logbook logbook_ = db::Logbook::inMemory(core::LogbookFacts{}, support::testOptions());
};

TEST_F(ImportLog, AddsTheSameFileOnlyOnce) {
    const db::LoggerAdded first = bringIn(rows(0, 300));
    EXPECT_EQ(first.added, 300);
    const std::size_t before = steps();
    const db::LoggerAdded again = bringIn(rows(0, 300));
    EXPECT_EQ(again.added, 0);
    EXPECT_EQ(again.known, 300);
    EXPECT_EQ(steps(), before);
    EXPECT_EQ(logger::addedText(again).toStdString(), "Nothing new: all 300 values were there already.");
}

TEST_F(ImportLog, AddsOfAnOverlappingFileWhatIsNew) {
    (void)bringIn(rows(0, 200));
    const db::LoggerAdded more = bringIn(rows(150, 300));
    EXPECT_EQ(more.added, 100);
    EXPECT_EQ(more.known, 50);
    EXPECT_EQ(values(), 300);
    EXPECT_EQ(logger::addedText(more).toStdString(), "100 new values. 50 were there already.");
}

TEST_F(ImportLog, LeavesWhatIsThereWhereAFileDiffers) {
    (void)bringIn(rows(0, 3));
    const db::LoggerAdded other = bringIn(rows(2, 4, 1));
    EXPECT_EQ(other.added, 1);
    EXPECT_EQ(other.differing, 1);
    EXPECT_THAT(logger::addedText(other).toStdString(), testing::HasSubstr("1 differs"));
}

TEST_F(ImportLog, IsOneStepThatUndoTakesBackWithTheFormat) {
    const std::size_t before = steps();
    (void)bringIn(rows(0, 300), core::LoggerFormat{.name = "Tent", .header = "Time | Air °C", .mapping = "{}"});
    EXPECT_EQ(steps(), before + 1);
    EXPECT_EQ(logbook_.loggerFormats().size(), 1U);
    EXPECT_TRUE(logbook_.undo());
    EXPECT_EQ(values(), 0);
    EXPECT_TRUE(logbook_.loggerFormats().empty());
    EXPECT_TRUE(logbook_.redo());
    EXPECT_EQ(values(), 300);
}

TEST_F(ImportLog, RefusesAFormatWhoseNameIsTakenAndBringsInNothing) {
    const core::LoggerFormat format{.name = "Tent", .header = "Time | Air °C", .mapping = "{}"};
    (void)bringIn(rows(0, 3), format);
    const auto refused = logger::importLog(logbook_, rows(3, 6), "logger.csv", support::loggersNow(), format);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().sentence, testing::HasSubstr("taken"));
    EXPECT_EQ(values(), 3);
}

}  // namespace
