// SPDX-License-Identifier: MIT
#include "db/safekeeping/untrusted_open.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "db/logbook.h"
#include "db/safekeeping/verify.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr core::Date untrustedToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class UntrustedOpen : public testing::Test {
  protected:
    void makeSample() const { const auto made = support::sampleLogbook(file, untrustedToday); }

    /// What opening says; the file must stay as it was, with nothing beside it.
    std::string sentence() const {
        const std::string before = support::contentOf(file);
        std::string said = "it opened";
        try {
            const auto opened = db::Logbook::open(file, support::testOptions());
        } catch (const db::LogbookError& error) {
            said = error.what();
            EXPECT_TRUE(said.ends_with('.')) << said;
            EXPECT_THAT(said, HasSubstr("\"bench.strikebook\""));
        }
        EXPECT_EQ(support::contentOf(file), before);
        EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook"));
        return said;
    }

    void patch(std::size_t at, const std::string& bytes) const {
        std::string content = support::contentOf(file);
        content.replace(at, bytes.size(), bytes);
        support::writeContent(file, content);
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "bench.strikebook";
};

TEST_F(UntrustedOpen, ASoundLogbookOpens) {
    makeSample();
    EXPECT_EQ(sentence(), "it opened");
}

TEST_F(UntrustedOpen, AMissingFile) {
    try {
        const auto opened = db::Logbook::open(file, support::testOptions());
        FAIL() << "it opened";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("There is no file"));
    }
    EXPECT_FALSE(std::filesystem::exists(file));
}

TEST_F(UntrustedOpen, AnEmptyFile) {
    support::writeContent(file, "");
    EXPECT_THAT(sentence(), HasSubstr("is an empty file"));
}

TEST_F(UntrustedOpen, ATextFile) {
    support::writeContent(file, "Salvia, 24 stuck, 18 rooted\n");
    EXPECT_THAT(sentence(), HasSubstr("is not a Strikebook logbook"));
}

TEST_F(UntrustedOpen, NothingButTheFirstWordsOfADatabase) {
    support::writeContent(file, std::string("SQLite format 3\0more", 20));
    EXPECT_THAT(sentence(), HasSubstr("ends too early"));
}

TEST_F(UntrustedOpen, AFolderAndAPipe) {
    for (const bool isPipe : {false, true}) {
        std::filesystem::remove_all(file);
        if (isPipe) {
            ASSERT_EQ(::mkfifo(file.c_str(), 0600), 0);
        } else {
            std::filesystem::create_directory(file);
        }
        try {
            const auto opened = db::Logbook::open(file, support::testOptions());
            FAIL() << "it opened";
        } catch (const db::LogbookError& error) {
            EXPECT_THAT(error.what(), HasSubstr("is not an ordinary file"));
        }
    }
}

TEST_F(UntrustedOpen, AnotherProgramsDatabase) {
    support::runSql(file, "CREATE TABLE songs (title TEXT); INSERT INTO songs VALUES ('one')");
    EXPECT_THAT(sentence(), HasSubstr("is a database of another program"));
}

TEST_F(UntrustedOpen, ATruncatedLogbookAtAnyLength) {
    makeSample();
    const std::string whole = support::contentOf(file);
    for (std::size_t length = 101; length < whole.size(); length += 9001) {
        support::writeContent(file, whole.substr(0, length));
        EXPECT_THAT(sentence(), HasSubstr("ends too early")) << length;
    }
}

/// Each file of tests/data/broken tampers with a sound logbook and says in its second line what opening it must say.
TEST_F(UntrustedOpen, EveryKeptWayToBreakOneIsToldInOneSentence) {
    constexpr std::string_view mark = "-- says: ";
    int files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(STRIKEBOOK_SOURCE_DIR "/tests/data/broken")) {
        SCOPED_TRACE(entry.path().filename());
        const std::string tampering = support::contentOf(entry.path());
        const auto start = tampering.find(mark);
        ASSERT_NE(start, std::string::npos);
        const auto end = tampering.find('\n', start);
        std::filesystem::remove(file);
        makeSample();
        support::runSql(file, tampering);
        EXPECT_THAT(sentence(), HasSubstr(tampering.substr(start + mark.size(), end - start - mark.size())));
        ++files;
    }
    EXPECT_GE(files, 18);
}

// Each byte stands for itself or is found out; whatever opens must be readable to the end and say in words what is wrong.
TEST_F(UntrustedOpen, FlippedBytesNeverCrashAndNeverChangeTheFile) {
    makeSample();
    const std::string whole = support::contentOf(file);
    support::Chance chance(11);
    int refused = 0;
    for (int round = 0; round < 250; ++round) {
        std::string damaged = whole;
        const int flips = 1 + support::pick(chance, 8);
        for (int flip = 0; flip < flips; ++flip)
            damaged[static_cast<std::size_t>(support::pick(chance, static_cast<int>(whole.size())))] ^=
                static_cast<char>(1 << support::pick(chance, 8));
        support::writeContent(file, damaged);
        try {
            auto logbook = db::Logbook::open(file, support::testOptions());
            static_cast<void>(logbook.records());
            static_cast<void>(logbook.batchLines());
            static_cast<void>(logbook.history());
            static_cast<void>(db::verify(logbook, untrustedToday));
        } catch (const db::LogbookError& error) {
            ++refused;
            EXPECT_TRUE(std::string(error.what()).ends_with('.')) << error.what();
        }
        EXPECT_EQ(support::contentOf(file), damaged);
    }
    EXPECT_GT(refused, 20);
}

}  // namespace
