// SPDX-License-Identifier: MIT
// A disk that fails on command: while one of these exists, everything that SQLite opens goes through it. Reads work, and nothing is really
// synced, so tests are quick.
#pragma once

struct sqlite3_vfs;

namespace support {

enum class DiskFault {
    Full,        // a write finds no room; half of it is written
    SyncFails,   // the disk reports an error
    OpenFails,   // of a file that is to be written
    DeleteFails  // of a journal
};

class FaultyDisk {
  public:
    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;

    /// The n-th operation of that kind from now on fails, counted from 1; with `staysBroken` all after it too.
    void failAt(DiskFault fault, int n, bool staysBroken);
    void heal();
    /// Whether the fault has come.
    [[nodiscard]] bool hasFailed() const;

  private:
    sqlite3_vfs* before_;
};

}  // namespace support
