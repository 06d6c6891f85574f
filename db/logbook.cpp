// SPDX-License-Identifier: MIT
#include "db/logbook.h"

#include <stdexcept>

#include "core/units/entered_text.h"
#include "core/units/moment.h"
#include "db/history/changeset.h"
#include "db/history/history.h"
#include "db/inside.h"
#include "db/migrations/new_logbook.h"
#include "db/migrations/open_up_to_date.h"
#include "db/safekeeping/part_file.h"
#include "db/transaction.h"
#include "db/writer.h"

namespace db {

namespace {

constexpr const char* selectDataVersion = "PRAGMA data_version";

std::int64_t dataVersionOf(Connection& connection) {
    Query row = connection.query(selectDataVersion);
    row.step();
    return row.bigNumber(0);
}

/// Fails while it is being written, rather than at the first entry.
void requireClock(const OpenOptions& options) {
    if (!options.clock) throw std::logic_error("a logbook needs a clock");
}

/// A logbook that nobody has named is called as its file is.
core::LogbookFacts named(core::LogbookFacts facts, const std::filesystem::path& file) {
    if (core::isBlank(facts.name)) facts.name = file.stem().string();
    return facts;
}

/// True while an action runs; an action within an action is a mistake of the caller.
class Acting {
  public:
    explicit Acting(bool& flag) : flag_(flag) {
        if (flag_) throw std::logic_error("an action within an action");
        flag_ = true;
    }
    ~Acting() { flag_ = false; }
    Acting(const Acting&) = delete;
    Acting& operator=(const Acting&) = delete;

  private:
    bool& flag_;
};

HistoryRow historyRow(const Logbook::Inside& inside, HistoryEntry::Kind kind, const std::string& words) {
    return {.number = 0,
            .doneAt = core::isoText(inside.options.clock()),
            .author = inside.options.author,
            .words = words,
            .kind = kind,
            .ofNumber = 0,
            .schemaVersion = inside.schemaVersion};
}

/// A newer program may have migrated the file while it was open here.
void requireSameSchema(Connection& connection, const Logbook::Inside& inside) {
    if (schemaVersionOf(connection) != inside.schemaVersion)
        throw LogbookError(quotedName(inside.file) +
                           " has been brought to a newer format by another program. Close it and open it again.");
}

/// Undo or redo of the action that `next` names, within one transaction with its own row of history.
std::optional<Changes> retrace(Logbook::Inside& inside, HistoryEntry::Kind kind,
                               std::optional<HistoryRow> (*next)(Connection&, int), Direction direction) {
    inside.requireWritable();
    const Acting acting(inside.isActing);
    return inside.with([&](Connection& connection) -> std::optional<Changes> {
        WriteTransaction transaction(connection);
        requireSameSchema(connection, inside);
        const auto row = next(connection, inside.schemaVersion);
        if (!row) return std::nullopt;
        const Changeset changeset = changesetOf(connection, actionOf(*row));
        applyChangeset(connection, changeset, direction);
        Changes changes = changesIn(connection, changeset);
        HistoryRow done = historyRow(inside, kind, row->words);
        done.ofNumber = actionOf(*row);
        changes.words = row->words;
        changes.historyNumber = addHistoryRow(connection, done, std::nullopt);
        transaction.commit();
        return changes;
    });
}

}  // namespace

void Logbook::Inside::requireWritable() const {
    if (!whyReadOnly.empty()) throw LogbookError(whyReadOnly);
}

Logbook::Logbook(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Logbook::Logbook(Logbook&&) noexcept = default;
Logbook& Logbook::operator=(Logbook&&) noexcept = default;
Logbook::~Logbook() = default;

Logbook Logbook::create(const std::filesystem::path& file, const core::LogbookFacts& facts, OpenOptions options) {
    requireClock(options);
    {
        PartFile part(file, "The logbook");
        plainly(file, [&] {
            Connection connection(part.path().string(), SQLite::OPEN_READWRITE, 0);
            fillNewLogbook(connection, named(facts, file));
        });
        part.publish(IfThere::Refuse);
    }
    return open(file, std::move(options));
}

Logbook Logbook::open(const std::filesystem::path& file, OpenOptions options) {
    requireClock(options);
    requireLogbookHeader(file, releasedMigrations());
    auto inside = std::make_unique<Inside>();
    inside->file = file;
    inside->options = std::move(options);
    if (inside->options.asWindow) inside->lock = WindowLock(file);
    if (inside->options.access == Access::ReadOnly) {
        inside->whyReadOnly = quotedName(file) + " was opened for reading only. Open it for writing to change it.";
    } else if (inside->lock.isHeldElsewhere()) {
        inside->whyReadOnly = quotedName(file) +
                              " is open in another window, so it can only be looked at here. Make changes there, or "
                              "close that window and open it here again.";
    } else {
        inside->whyReadOnly = whyNotWritable(file);
    }
    OpenedFile opened = openUpToDate(file, !inside->whyReadOnly.empty(), inside->options.patience);
    inside->connection = std::move(opened.connection);
    inside->schemaVersion = opened.schemaVersion;
    inside->seenDataVersion = inside->with(dataVersionOf);
    return Logbook(std::move(inside));
}

Logbook Logbook::inMemory(const core::LogbookFacts& facts, OpenOptions options) {
    requireClock(options);
    auto inside = std::make_unique<Inside>();
    inside->options = std::move(options);
    inside->connection = std::make_unique<Connection>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0);
    inside->with([&](Connection& connection) { fillNewLogbook(connection, facts); });
    inside->schemaVersion = newestVersion(releasedMigrations());
    inside->seenDataVersion = inside->with(dataVersionOf);
    if (inside->options.access == Access::ReadOnly) inside->whyReadOnly = "The logbook was opened for reading only.";
    return Logbook(std::move(inside));
}

std::optional<Logbook> Logbook::beside() const {
    if (inside_->file.empty()) return std::nullopt;
    auto beside = std::make_unique<Inside>();
    beside->file = inside_->file;
    beside->options = inside_->options;
    beside->whyReadOnly = quotedName(inside_->file) + " is only read here.";
    beside->schemaVersion = inside_->schemaVersion;
    // No look at the file itself, as open() has: closing what that opens would drop the locks that SQLite holds on it for this process.
    plainly(beside->file, [&] {
        beside->connection = std::make_unique<Connection>(beside->file.string(), SQLite::OPEN_READONLY,
                                                          static_cast<int>(beside->options.patience.count()));
    });
    beside->seenDataVersion = beside->with(dataVersionOf);
    return Logbook(std::move(beside));
}

const std::filesystem::path& Logbook::file() const {
    return inside_->file;
}

bool Logbook::isReadOnly() const {
    return !inside_->whyReadOnly.empty();
}

bool Logbook::isOpenInAnotherWindow() const {
    return inside_->lock.isHeldElsewhere();
}

bool Logbook::hasChangedOutside() {
    const std::int64_t version = inside_->with(dataVersionOf);
    return std::exchange(inside_->seenDataVersion, version) != version;
}

Changes Logbook::act(const std::string& words, const std::function<void(Writer&)>& change) {
    Inside& inside = *inside_;
    inside.requireWritable();
    const Acting acting(inside.isActing);
    return inside.with([&](Connection& connection) {
        WriteTransaction transaction(connection);
        requireSameSchema(connection, inside);
        Changeset changeset;
        {
            ChangeRecorder recorder(connection);
            Writer writer(inside);
            change(writer);
            changeset = recorder.changeset();
        }
        if (changeset.empty()) return Changes{.tables = {}, .batches = {}, .historyNumber = 0, .words = words};
        Changes changes = changesIn(connection, changeset);
        changes.words = words;
        changes.historyNumber =
            addHistoryRow(connection, historyRow(inside, HistoryEntry::Kind::Action, words), changeset);
        transaction.commit();
        return changes;
    });
}

std::vector<HistoryEntry> Logbook::history(int newest) const {
    return inside_->with([&](Connection& connection) {
        const ReadTransaction reading(connection);
        return historyEntries(connection, inside_->schemaVersion, newest);
    });
}

std::optional<std::string> Logbook::wordsToUndo() const {
    const auto row =
        inside_->with([&](Connection& connection) { return nextToUndo(connection, inside_->schemaVersion); });
    return row ? std::optional(row->words) : std::nullopt;
}

std::optional<std::string> Logbook::wordsToRedo() const {
    const auto row =
        inside_->with([&](Connection& connection) { return nextToRedo(connection, inside_->schemaVersion); });
    return row ? std::optional(row->words) : std::nullopt;
}

std::optional<Changes> Logbook::undo() {
    return retrace(*inside_, HistoryEntry::Kind::Undo, nextToUndo, Direction::Back);
}

std::optional<Changes> Logbook::redo() {
    return retrace(*inside_, HistoryEntry::Kind::Redo, nextToRedo, Direction::Forward);
}

}  // namespace db
