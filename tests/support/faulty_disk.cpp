// SPDX-License-Identifier: MIT
// A thin layer over SQLite's own file system: it hands everything on and counts what may fail.
#include "tests/support/faulty_disk.h"

#include <sqlite3.h>

#include <optional>

namespace support {

namespace {

struct Plan {
    std::optional<DiskFault> fault;
    int countdown{};
    bool staysBroken{};
    bool hasFailed{};

    bool strikes(DiskFault kind) {
        if (fault != kind) return false;
        if (countdown > 0 && --countdown == 0) {
            hasFailed = true;
            return true;
        }
        return hasFailed && staysBroken;
    }
};

Plan plan;  // SQLite's interface has no room for one of each disk; tests have one at a time

/// What SQLite sees as an open file; the real one lies right behind it.
struct FaultyFile {
    sqlite3_file base;
    sqlite3_file* real;
};

sqlite3_file* realOf(sqlite3_file* file) {
    return reinterpret_cast<FaultyFile*>(file)->real;
}

sqlite3_vfs* realDisk(sqlite3_vfs* disk) {
    return static_cast<sqlite3_vfs*>(disk->pAppData);
}

int closeFile(sqlite3_file* file) {
    return realOf(file)->pMethods->xClose(realOf(file));
}
int readFile(sqlite3_file* file, void* to, int count, sqlite3_int64 at) {
    return realOf(file)->pMethods->xRead(realOf(file), to, count, at);
}
int writeFile(sqlite3_file* file, const void* from, int count, sqlite3_int64 at) {
    if (plan.strikes(DiskFault::Full)) {
        realOf(file)->pMethods->xWrite(realOf(file), from, count / 2, at);
        return SQLITE_FULL;
    }
    return realOf(file)->pMethods->xWrite(realOf(file), from, count, at);
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}
int syncFile(sqlite3_file*, int) {
    return plan.strikes(DiskFault::SyncFails) ? SQLITE_IOERR_FSYNC : SQLITE_OK;
}
int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int checkReserved(sqlite3_file* file, int* isReserved) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), isReserved);
}
int controlFile(sqlite3_file* file, int operation, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

// Version 1: no shared memory, no memory mapping; the logbook uses neither.
const sqlite3_io_methods methods = {.iVersion = 1,
                                    .xClose = closeFile,
                                    .xRead = readFile,
                                    .xWrite = writeFile,
                                    .xTruncate = truncateFile,
                                    .xSync = syncFile,
                                    .xFileSize = sizeOfFile,
                                    .xLock = lockFile,
                                    .xUnlock = unlockFile,
                                    .xCheckReservedLock = checkReserved,
                                    .xFileControl = controlFile,
                                    .xSectorSize = sectorSize,
                                    .xDeviceCharacteristics = characteristics,
                                    .xShmMap = nullptr,
                                    .xShmLock = nullptr,
                                    .xShmBarrier = nullptr,
                                    .xShmUnmap = nullptr,
                                    .xFetch = nullptr,
                                    .xUnfetch = nullptr};

int openFile(sqlite3_vfs* disk, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    file->pMethods = nullptr;
    const bool isToBeWritten = (flags & SQLITE_OPEN_READWRITE) != 0;
    if (isToBeWritten && plan.strikes(DiskFault::OpenFails)) return SQLITE_CANTOPEN;
    auto* faulty = reinterpret_cast<FaultyFile*>(file);
    faulty->real = reinterpret_cast<sqlite3_file*>(faulty + 1);
    const int code = realDisk(disk)->xOpen(realDisk(disk), name, faulty->real, flags, outFlags);
    if (faulty->real->pMethods != nullptr) file->pMethods = &methods;
    return code;
}

int deleteFile(sqlite3_vfs* disk, const char* name, int) {
    if (plan.strikes(DiskFault::DeleteFails)) return SQLITE_IOERR_DELETE;
    constexpr int withoutSync = 0;
    return realDisk(disk)->xDelete(realDisk(disk), name, withoutSync);
}

sqlite3_vfs* faultyVfs() {
    static sqlite3_vfs* const made = [] {
        auto* disk = new sqlite3_vfs(*sqlite3_vfs_find(nullptr));  // for the whole run: SQLite keeps it
        disk->pAppData = sqlite3_vfs_find(nullptr);
        disk->szOsFile += static_cast<int>(sizeof(FaultyFile));
        disk->zName = "faulty";
        disk->pNext = nullptr;
        disk->xOpen = openFile;
        disk->xDelete = deleteFile;
        return disk;
    }();
    return made;
}

}  // namespace

FaultyDisk::FaultyDisk() : before_(sqlite3_vfs_find(nullptr)) {
    heal();
    sqlite3_vfs_register(faultyVfs(), 1);
}

FaultyDisk::~FaultyDisk() {
    heal();
    sqlite3_vfs_register(before_, 1);
}

void FaultyDisk::failAt(DiskFault fault, int n, bool staysBroken) {
    plan = {.fault = fault, .countdown = n, .staysBroken = staysBroken, .hasFailed = false};
}

void FaultyDisk::heal() {
    plan = {};
}

bool FaultyDisk::hasFailed() const {
    return plan.hasFailed;
}

}  // namespace support
