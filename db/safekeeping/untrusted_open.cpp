// SPDX-License-Identifier: MIT
#include "db/safekeeping/untrusted_open.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>

#include "db/failure.h"

namespace db {

namespace {

constexpr std::int64_t largestFile = std::int64_t{16} << 30;
constexpr std::size_t headerSize = 100;
constexpr const char* quickCheck = "PRAGMA quick_check(1)";

/// The first bytes of the file and what kind of file they are from.
struct FileStart {
    std::int64_t size{};
    std::array<std::uint8_t, headerSize> bytes{};

    [[nodiscard]] std::uint32_t number(std::size_t at) const {
        return (std::uint32_t{bytes[at]} << 24) | (std::uint32_t{bytes[at + 1]} << 16) |
               (std::uint32_t{bytes[at + 2]} << 8) | std::uint32_t{bytes[at + 3]};
    }
    /// 512 to 65536, the last written as 1.
    [[nodiscard]] std::int64_t pageSize() const {
        const int written = (bytes[16] << 8) | bytes[17];
        return written == 1 ? 65536 : written;
    }
};

class Descriptor {
  public:
    explicit Descriptor(const std::filesystem::path& file)
        : number_(::open(file.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC)) {}  // not waiting for a pipe's other end
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return number_; }

  private:
    int number_;
};

FileStart readStart(const std::filesystem::path& file) {
    if (file.empty()) throw LogbookError("The name of the logbook is empty. Give the name of its file.");
    const std::string name = quotedName(file);
    const Descriptor descriptor(file);
    if (descriptor.number() < 0) {
        if (errno == ENOENT) throw LogbookError("There is no file " + name + ". Check the name and the folder.");
        if (errno == EACCES)
            throw LogbookError("You may not read " + name + ". Ask its owner for the right to read it.");
        throw systemFailure(errno, name + " can't be opened");
    }
    struct stat about {};
    if (::fstat(descriptor.number(), &about) != 0) throw systemFailure(errno, name + " can't be opened");
    if (!S_ISREG(about.st_mode)) throw LogbookError(name + " is not an ordinary file. Choose a logbook file.");
    FileStart start{.size = about.st_size};
    if (start.size == 0)
        throw LogbookError(name + " is an empty file, not a logbook. Choose another file or restore a backup.");
    if (start.size > largestFile) throw LogbookError(name + " is larger than any logbook can be. Choose another file.");
    if (::read(descriptor.number(), start.bytes.data(), headerSize) < 0)
        throw systemFailure(errno, name + " can't be read");
    return start;
}

void requireFormat(const FileStart& start, const std::string& name) {
    static constexpr char magic[] = "SQLite format 3";  // with its final zero
    if (std::memcmp(start.bytes.data(), magic, sizeof magic) != 0)
        throw LogbookError(name + " is not a Strikebook logbook. Choose a file that Strikebook made.");
    if (start.size < static_cast<std::int64_t>(headerSize))
        throw LogbookError(name + " ends too early: part of it is missing. Restore a backup.");
    if (start.number(68) != static_cast<std::uint32_t>(applicationId))
        throw LogbookError(
            name + " is a database of another program, not a Strikebook logbook. Choose a file that Strikebook made.");
    constexpr std::uint8_t rollbackJournal = 1;
    if (start.bytes[18] != rollbackJournal || start.bytes[19] != rollbackJournal)
        throw LogbookError(name +
                           " was last used by another program in a way that Strikebook does not write (write-ahead "
                           "log). Restore a backup.");
}

void requireFullLength(const FileStart& start, const std::filesystem::path& file) {
    // After a crash the journal knows better than the header.
    if (std::filesystem::exists(file.string() + "-journal")) return;
    const std::int64_t due = start.pageSize() * std::int64_t{start.number(28)};
    if (start.number(24) == start.number(92) && start.size < due)
        throw LogbookError(quotedName(file) + " ends too early: " + std::to_string(start.size) + " bytes of " +
                           std::to_string(due) + " are there. Restore a backup.");
}

/// While it lives, a stop request ends whatever the connection runs.
class BrokenOffBy {
  public:
    BrokenOffBy(Connection& connection, const std::stop_token& stop) : handle_(connection.handle()), stop_(stop) {
        constexpr int instructions = 10000;  // between two looks; well under a millisecond
        if (stop_.stop_possible()) sqlite3_progress_handler(handle_, instructions, isStopped, &stop_);
    }
    ~BrokenOffBy() { sqlite3_progress_handler(handle_, 0, nullptr, nullptr); }
    BrokenOffBy(const BrokenOffBy&) = delete;
    BrokenOffBy& operator=(const BrokenOffBy&) = delete;

  private:
    static int isStopped(void* stop) { return static_cast<const std::stop_token*>(stop)->stop_requested() ? 1 : 0; }

    sqlite3* handle_;
    std::stop_token stop_;
};

/// A value that a column's rule can't even be asked about ("now" for a day) stops the check with an ordinary SQL error.
bool passesQuickCheck(Connection& connection) {
    try {
        Query row = connection.query(quickCheck);
        return row.step() && row.text(0) == "ok";
    } catch (const SQLite::Exception& error) {
        if (error.getErrorCode() != SQLITE_ERROR) throw;
        return false;
    }
}

void requireSoundContent(Connection& connection, const std::filesystem::path& file) {
    if (!passesQuickCheck(connection))
        throw LogbookError(quotedName(file) + " is damaged inside. It was not changed. Restore a backup.");
}

}  // namespace

void requireLogbookHeader(const std::filesystem::path& file, std::span<const Migration> migrations) {
    const FileStart start = readStart(file);
    const std::string name = quotedName(file);
    requireFormat(start, name);
    const std::uint32_t version = start.number(60);
    constexpr std::uint32_t largestVersion = 0x7fffffff;  // SQLite keeps it with a sign
    if (version == 0 || version > largestVersion)
        throw LogbookError(name + " was never finished or is damaged. Restore a backup.");
    if (version > static_cast<std::uint32_t>(newestVersion(migrations)))
        throw LogbookError(name + " was written by a newer Strikebook (format " + std::to_string(version) +
                           "; this one knows up to " + std::to_string(newestVersion(migrations)) +
                           "). Install the newer version to open it. The file was not changed.");
    requireFullLength(start, file);
}

OpenedFile openUntrusted(const std::filesystem::path& file, bool readOnly, std::chrono::milliseconds patience,
                         std::span<const Migration> migrations, const std::stop_token& stop) {
    requireLogbookHeader(file, migrations);
    return plainly(file, [&] {
        OpenedFile opened;
        opened.connection =
            std::make_unique<Connection>(file.string(), readOnly ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE,
                                         static_cast<int>(patience.count()));
        opened.schemaVersion = schemaVersionOf(*opened.connection);
        if (schemaOf(*opened.connection) != expectedSchema(migrations, opened.schemaVersion))
            throw LogbookError(
                quotedName(file) +
                " is not laid out as a logbook of its version is: another program has changed it. Restore a backup.");
        const BrokenOffBy breaking(*opened.connection, stop);
        requireSoundContent(*opened.connection, file);
        return opened;
    });
}

std::string whyNotWritable(const std::filesystem::path& file) {
    constexpr unsigned anyWriteBit = 0222;
    const auto isWritable = [](const std::filesystem::path& path) {
        struct stat about {};
        return ::stat(path.c_str(), &about) == 0 && (about.st_mode & anyWriteBit) != 0 &&
               ::access(path.c_str(), W_OK) == 0;
    };
    if (!isWritable(file))
        return quotedName(file) +
               " is read-only, so it can be looked at but not changed. Make the file writable, or work on a copy.";
    const auto folder = std::filesystem::absolute(file).parent_path();
    if (!isWritable(folder))
        return "The folder of " + quotedName(file) +
               " is read-only, so the logbook can be looked at but not changed. Make the folder writable, or work on a "
               "copy.";
    return {};
}

}  // namespace db
