// SPDX-License-Identifier: MIT
// The logbook file: open it, read it, act on it. Most callers need no other header of db.
//
//   auto logbook = db::Logbook::open("bench.strikebook", {.clock = systemClock});
//   for (const core::BatchLine& line : logbook.batchLines()) ...
//   auto done = db::recordChecks(logbook, drafts, today);      // actions/check_actions.h: every edit a user can make
//   logbook.undo();
//
// Not thread-safe: one thread opens, reads and writes. For another thread there is beside().
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/climate/over_time.h"
#include "core/records.h"
#include "db/logbook_error.h"

namespace db {

class Writer;  // writer.h; only act() makes one

/// The moment written into history, in UTC. Nothing below app asks what time it is.
using Clock = std::function<std::chrono::sys_seconds()>;

enum class Access { ReadWrite, ReadOnly };

struct OpenOptions {
    Clock clock;
    std::string author;  // who is acting, for the history; may be empty
    Access access{Access::ReadWrite};
    bool asWindow{};                           // take the window lock: see Logbook::isOpenInAnotherWindow()
    std::chrono::milliseconds patience{3000};  // how long to wait while another process writes
};

struct HistoryEntry {
    std::int64_t number{};  // rising
    std::string at;         // "2026-03-14T10:42:05Z"
    std::string author;
    std::string words;  // "check of B260047K"; for an undo the words of what was undone
    enum class Kind { Action, Undo, Redo } kind{Kind::Action};
    bool isUndone{};     // an action that was taken back and not redone
    bool canBeUndone{};  // the newest action still standing that no migration has sealed
    bool canBeRedone{};
};

/// Which tables an action, undo or redo touched; what a window refreshes from.
struct Changes {
    std::vector<std::string> tables;
    std::vector<core::BatchId> batches;  // whose own row, checks, photos, expenses or pottings changed
    std::int64_t historyNumber{};        // 0: nothing really changed and nothing was written
    std::string words;
};

class Logbook {
  public:
    /// Makes a new file; LogbookError when something is there already or it can't be written. Starts with
    /// core::startingShelves(); a blank name becomes the file's.
    static Logbook create(const std::filesystem::path& file, const core::LogbookFacts& facts, OpenOptions options);
    /// Opens a file as untrusted: right application id, known version (older ones are migrated after a backup beside the file), defensive
    /// mode, quick check, exactly the schema we know. LogbookError says in a sentence what is wrong; the file is left as it was.
    static Logbook open(const std::filesystem::path& file, OpenOptions options);
    /// In memory, for tests and previews.
    static Logbook inMemory(const core::LogbookFacts& facts, OpenOptions options);

    /// The same file once more, for reading only, to be handed to another thread: it was checked when it was opened here. Nothing when it is
    /// in memory only.
    [[nodiscard]] std::optional<Logbook> beside() const;

    Logbook(Logbook&&) noexcept;
    Logbook& operator=(Logbook&&) noexcept;
    ~Logbook();

    [[nodiscard]] const std::filesystem::path& file() const;
    [[nodiscard]] bool isReadOnly() const;
    /// With asWindow: another window holds this file; this one was opened read-only.
    [[nodiscard]] bool isOpenInAnotherWindow() const;
    /// True once after another process has changed the file since we last looked (PRAGMA data_version).
    [[nodiscard]] bool hasChangedOutside();

    // Reading. Everything comes in a stable order: shelves by name (loss causes as made), sessions by date, batches by date then code.
    [[nodiscard]] core::Shelves shelves() const;
    [[nodiscard]] std::vector<core::Session> sessions() const;
    [[nodiscard]] std::vector<core::BatchLine> batchLines() const;
    [[nodiscard]] std::vector<core::BatchLine> batchLinesOf(const std::vector<core::BatchId>& batches) const;
    [[nodiscard]] std::optional<core::BatchRecord> batch(core::BatchId id) const;
    [[nodiscard]] core::BatchId batchWithCode(const std::string& code) const;  // unset: none
    [[nodiscard]] std::vector<core::BatchRecord> batchRecords() const;
    [[nodiscard]] std::vector<core::BatchRecord> batchRecords(core::PlantId plant) const;
    [[nodiscard]] core::Records records() const;  // the pictures of all photos included
    [[nodiscard]] std::vector<core::BatchRecord> batchRecordsAt(core::StationId station) const;
    // Readings and care in order of time, the ends included; photos without their pictures, by day.
    [[nodiscard]] std::vector<core::Reading> readings(core::StationId station, core::Moment from,
                                                      core::Moment until) const;
    [[nodiscard]] std::vector<core::Reading> newestReadings() const;  // one of each station and quantity; by hand
    // What loggers recorded; both kinds of reading together; of each station and quantity the last recorded, as a reading without an id.
    [[nodiscard]] std::vector<core::TimedValue> loggerValues(core::StationId station, core::Quantity quantity,
                                                             core::Moment from, core::Moment until) const;
    [[nodiscard]] std::vector<core::TimedValue> valuesOverTime(core::StationId station, core::Quantity quantity,
                                                               core::Moment from, core::Moment until) const;
    [[nodiscard]] std::vector<core::Reading> newestLoggerValues() const;
    [[nodiscard]] std::vector<core::LoggerSpan> loggerSpans() const;
    [[nodiscard]] std::vector<core::LoggerFormat> loggerFormats() const;
    // By time; those at a station by when the care was done that they were mixed for, the ends included.
    [[nodiscard]] std::vector<core::KeptMix> mixes(core::SessionId session) const;
    [[nodiscard]] std::vector<core::KeptMix> mixes(core::CareId care) const;
    [[nodiscard]] std::vector<core::KeptMix> mixesAt(core::StationId station, core::Moment from,
                                                     core::Moment until) const;
    [[nodiscard]] std::vector<core::Care> care(core::StationId station, core::Moment from, core::Moment until) const;
    [[nodiscard]] std::vector<core::Photo> photos(core::BatchId batch) const;
    [[nodiscard]] core::ImageBytes photoImage(core::PhotoId photo) const;  // empty: there is none
    [[nodiscard]] std::vector<core::Expense> expenses(core::BatchId batch) const;
    [[nodiscard]] std::vector<core::Expense> expenses(core::SessionId session) const;  // its own, not its batches'
    [[nodiscard]] std::vector<core::Potting> pottings(core::BatchId batch) const;
    [[nodiscard]] std::vector<core::Expense> allExpenses() const;
    [[nodiscard]] std::vector<core::Care> allCare() const;
    [[nodiscard]] std::vector<core::Potting> allPottings() const;
    [[nodiscard]] std::vector<core::LossCauseUse> lossCauseUses() const;  // of those that are used
    /// The highest running number among this year's batch codes, 0 when there are none.
    [[nodiscard]] int lastBatchNumber(int year) const;

    // Writing. One call is one transaction and one row in history. Throws LogbookError when the world fails; nothing is written then.
    // An exception from `change` also writes nothing. When act() returns, the change survives kill -9 and power loss.
    Changes act(const std::string& words, const std::function<void(Writer&)>& change);

    // History. Undo and redo are actions of the file, not of a session: they work after a restart.
    [[nodiscard]] std::vector<HistoryEntry> history(int newest = 1000) const;  // newest first
    [[nodiscard]] std::optional<std::string> wordsToUndo() const;
    [[nodiscard]] std::optional<std::string> wordsToRedo() const;
    /// Nothing when there is nothing to undo. LogbookError, with nothing changed, when a later change stands in the way.
    std::optional<Changes> undo();
    std::optional<Changes> redo();

    // Used by the rest of db only.
    struct Inside;
    [[nodiscard]] Inside& inside() const { return *inside_; }

  private:
    explicit Logbook(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

}  // namespace db
