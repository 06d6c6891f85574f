// SPDX-License-Identifier: MIT
// What an open logbook holds. For the files of db only.
#pragma once

#include <filesystem>
#include <memory>

#include "db/connection.h"
#include "db/failure.h"
#include "db/logbook.h"
#include "db/window_lock.h"

namespace db {

struct Logbook::Inside {
    std::filesystem::path file;  // empty: in memory
    OpenOptions options;
    WindowLock lock;  // before the connection: see window_lock.h
    std::unique_ptr<Connection> connection;
    std::string whyReadOnly;  // a sentence; empty: it can be written
    int schemaVersion{};
    std::int64_t seenDataVersion{};
    bool isActing{};

    /// Runs `work` with the connection; what SQLite throws comes out as a sentence about this file.
    template <class Work>
    auto with(Work&& work) {
        return plainly(file, [&] { return work(*connection); });
    }
    /// LogbookError when it can't be written, saying why.
    void requireWritable() const;
};

}  // namespace db
