// SPDX-License-Identifier: MIT
#include "db/safekeeping/checked_copy.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include <algorithm>

#include "db/failure.h"
#include "db/safekeeping/untrusted_open.h"

namespace db {

namespace {

constexpr double shareOfCopying = 0.8;  // the rest is checking what was written

/// Step by step, so that others get at the file in between. False: it was called off.
bool copyPages(Connection& from, Connection& to, const Waiting& waiting) {
    constexpr int pagesAStep = 256;  // 1 MiB
    SQLite::Backup backup(to.database(), from.database());
    while (!waiting.isCalledOff()) {
        const int state = backup.executeStep(pagesAStep);
        if (state != SQLITE_OK && state != SQLITE_DONE) throw SQLite::Exception("the logbook is being written", state);
        const double pages = std::max(1, backup.getTotalPageCount());
        waiting.tellShare(shareOfCopying * (1 - backup.getRemainingPageCount() / pages));
        if (state == SQLITE_DONE) return true;
    }
    return false;
}

/// Reads it as any logbook is read. False: it was called off.
bool passesAsLogbook(const std::filesystem::path& file, const Waiting& waiting, std::span<const Migration> migrations) {
    try {
        const OpenedFile readBack = openUntrusted(file, true, std::chrono::milliseconds(0), migrations, waiting.stop);
        return true;
    } catch (const LogbookError&) {
        if (waiting.isCalledOff()) return false;  // which is what broke it off
        throw;
    }
}

}  // namespace

bool writeCheckedCopy(Connection& from, const std::filesystem::path& to, IfThere ifThere, const std::string& what,
                      const Waiting& waiting, std::span<const Migration> migrations) {
    PartFile part(to, what);
    const bool isCopied = plainly(to, [&] {
        Connection copy(part.path().string(), SQLite::OPEN_READWRITE, 0);
        // What is half written goes away with the part file, and publish() syncs once: no journal is needed.
        copy.runScript("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF");
        return copyPages(from, copy, waiting);
    });
    if (!isCopied || !passesAsLogbook(part.path(), waiting, migrations) || waiting.isCalledOff()) return false;
    part.publish(ifThere);
    waiting.tellShare(1);
    return true;
}

}  // namespace db
