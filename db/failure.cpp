// SPDX-License-Identifier: MIT
#include "db/failure.h"

#include <sqlite3.h>

#include <cerrno>
#include <system_error>

namespace db {

std::string quotedName(const std::filesystem::path& file) {
    return file.empty() ? "The logbook" : '"' + file.filename().string() + '"';
}

LogbookError failureOf(int code, const std::filesystem::path& file) {
    const std::string name = quotedName(file);
    switch (code & 0xff) {
        case SQLITE_FULL:
            return LogbookError("The disk is full: nothing was written to " + name +
                                ", which is as it was. Free some space and try again.");
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return LogbookError(name +
                                " is being written by another program: nothing was changed. Try again in a moment.");
        case SQLITE_READONLY:
            return LogbookError(
                name +
                " or its folder can't be written to: nothing was changed. Make both writable, or work on a copy.");
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
        case SQLITE_FORMAT:
            return LogbookError(name + " is damaged: nothing was changed. Restore a backup.");
        case SQLITE_CANTOPEN:
            return LogbookError(
                name + " can't be opened: check that it and its folder exist and that you may read and write them.");
        case SQLITE_IOERR:
            return LogbookError("The disk reported an error with " + name +
                                ": nothing was changed. Check the disk and its connection, then try again.");
        case SQLITE_NOMEM:
            return LogbookError("The computer has too little free memory for " + name +
                                ": nothing was changed. Close other programs and try again.");
        case SQLITE_TOOBIG:
            return LogbookError("One entry is too large for " + name +
                                ": nothing was changed. Split it into smaller ones.");
        case SQLITE_CONSTRAINT:
            return LogbookError(
                "What was to be written to " + name +
                " does not fit what is in it already: nothing was changed. Look at the latest state and try again.");
        default:
            return LogbookError(name + " could not be read or written (" + sqlite3_errstr(code) +
                                "): nothing was changed. Try again, and restore a backup if it goes on.");
    }
}

LogbookError systemFailure(int systemError, const std::string& deed) {
    switch (systemError) {
        case ENOSPC:
        case EDQUOT:
            return LogbookError(deed + ": the disk is full. Free some space and try again.");
        case EACCES:
        case EPERM:
            return LogbookError(deed + ": you may not write there. Choose another folder or ask for the right.");
        case EROFS:
            return LogbookError(deed + ": the disk is read-only. Choose another folder.");
        case ENOENT:
        case ENOTDIR:
            return LogbookError(deed + ": there is no such folder. Choose one that exists.");
        case ENAMETOOLONG:
            return LogbookError(deed + ": the name is too long. Choose a shorter one.");
        case EEXIST:
            return LogbookError(deed + ": there is a file of that name already. Choose another name.");
        default:
            return LogbookError(deed + ": " + std::generic_category().message(systemError) +
                                ". Check the disk and try again.");
    }
}

}  // namespace db
