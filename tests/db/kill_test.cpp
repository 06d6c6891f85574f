// SPDX-License-Identifier: MIT
// kill -9 at 200 random moments while checks are being recorded: everything that was acknowledged is there, verify is content, undo works.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <iostream>
#include <map>
#include <random>
#include <set>

#include "db/actions/session_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using namespace std::chrono_literals;
using std::chrono::steady_clock;

constexpr core::Date today{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};
constexpr int kills = 200;

/// The recording program, its acknowledgements and its end.
class Recorder {
  public:
    explicit Recorder(const std::filesystem::path& file) {
        int ends[2];
        if (::pipe2(ends, O_CLOEXEC) != 0) throw std::runtime_error("no pipe");
        process_ = ::fork();
        if (process_ == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::execl(STRIKEBOOK_KILL_CHILD, STRIKEBOOK_KILL_CHILD, file.c_str(), nullptr);
            ::_exit(127);
        }
        ::close(ends[1]);
        acknowledgements_ = ends[0];
    }
    ~Recorder() { ::close(acknowledgements_); }
    Recorder(const Recorder&) = delete;
    Recorder& operator=(const Recorder&) = delete;

    /// Reads for as long as `time` from the first acknowledgement on; false when the program has ended by itself.
    bool readFor(std::chrono::microseconds time) {
        if (!readMore(-1ms)) return false;
        const auto end = steady_clock::now() + time;
        for (auto now = steady_clock::now(); now < end; now = steady_clock::now())
            if (!readMore(std::chrono::floor<std::chrono::milliseconds>(end - now))) return false;
        return true;
    }

    /// kill -9; then whatever had been acknowledged before it died.
    std::set<std::string> kill() {
        ::kill(process_, SIGKILL);
        int status = 0;
        ::waitpid(process_, &status, 0);
        while (readMore(-1ms)) {
        }
        std::set<std::string> lines;
        for (std::size_t start = 0, end; (end = text_.find('\n', start)) != std::string::npos; start = end + 1)
            lines.insert(text_.substr(start, end - start));
        return lines;
    }

  private:
    bool readMore(std::chrono::milliseconds patience) {
        pollfd waited{.fd = acknowledgements_, .events = POLLIN, .revents = 0};
        if (::poll(&waited, 1, static_cast<int>(patience.count())) <= 0) return true;
        char bytes[4096];
        const auto count = ::read(acknowledgements_, bytes, sizeof bytes);
        if (count > 0) text_.append(bytes, static_cast<std::size_t>(count));
        return count > 0;
    }

    pid_t process_{};
    int acknowledgements_{};
    std::string text_;
};

void makeLogbook(const std::filesystem::path& file) {
    auto logbook = db::Logbook::create(file, {}, support::testOptions());
    core::Plant plant;
    plant.botanicalName = "Hedera helix";
    ASSERT_TRUE(db::keep(logbook, plant));
    db::SessionDraft draft;
    draft.session.date = core::addDays(today, -3000);
    for (int number = 0; number < 40; ++number) {
        core::Batch batch;
        batch.plant = logbook.shelves().plants.front().id;
        batch.method = logbook.shelves().methods.front().id;
        batch.stuck = 100000;
        draft.batches.push_back(batch);
    }
    ASSERT_TRUE(db::stickSession(logbook, std::move(draft), today));
}

std::set<std::string> recordedIn(const db::Logbook& logbook) {
    std::set<std::string> lines;
    std::map<core::BatchId, std::string> codes;
    for (const core::BatchRecord& record : logbook.batchRecords()) {
        codes[record.batch.id] = record.batch.code;
        for (const core::Check& check : record.checks)
            lines.insert(record.batch.code + ' ' + core::isoText(check.checkedOn));
    }
    for (const core::Potting& potting : logbook.allPottings())
        lines.insert(codes[potting.batch] + ' ' + core::isoText(potting.countedOn) + " potted");
    return lines;
}

TEST(Kill, LosesNothingThatWasAcknowledgedAtTwoHundredRandomMoments) {
    const std::uint32_t seed = std::random_device{}();
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    RecordProperty("seed", std::to_string(seed));
    std::cout << "seed " << seed << '\n';
    support::Chance chance(seed);
    const support::ScratchFolder folder;
    const auto file = folder / "kill.strikebook";
    makeLogbook(file);
    const std::string start = support::tableDump(file);

    std::set<std::string> acknowledged;
    int hotJournals = 0;
    for (int round = 0; round < kills; ++round) {
        Recorder recorder(file);
        ASSERT_TRUE(recorder.readFor(std::chrono::microseconds(support::pick(chance, 8000)))) << "ended by itself";
        acknowledged.merge(recorder.kill());
        if (std::filesystem::exists(file.string() + "-journal")) ++hotJournals;
        auto logbook = db::Logbook::open(file, support::testOptions());
        const auto recorded = recordedIn(logbook);
        ASSERT_TRUE(std::ranges::includes(recorded, acknowledged)) << "after kill " << round;
        if (round % 20 != 0) continue;
        ASSERT_THAT(db::verify(logbook, today).faults, testing::IsEmpty()) << "after kill " << round;
        ASSERT_TRUE(logbook.undo());
        ASSERT_EQ(recordedIn(logbook).size(), recorded.size() - 1);
        ASSERT_TRUE(logbook.redo());
        ASSERT_EQ(recordedIn(logbook), recorded);
    }
    std::cout << acknowledged.size() << " checks and counts acknowledged, killed within a commit " << hotJournals
              << " times\n";
    EXPECT_GE(acknowledged.size(), static_cast<std::size_t>(kills));
    EXPECT_THAT(db::verify(db::Logbook::open(file, support::testOptions()), today).faults, testing::IsEmpty());

    auto logbook = db::Logbook::open(file, support::testOptions());
    const auto isTheRecorders = [](const std::string& words) {
        return words.starts_with("check of") || words.starts_with("potting on of");
    };
    while (isTheRecorders(logbook.wordsToUndo().value_or(""))) logbook.undo();
    EXPECT_EQ(support::tableDump(file), start);
}

}  // namespace
