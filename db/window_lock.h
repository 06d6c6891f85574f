// SPDX-License-Identifier: MIT
// One window for each logbook: an advisory lock on the file (flock), which a second window finds taken. It goes with the process, so a
// crash leaves nothing behind.
//
// It must be let go only after SQLite has closed the file: closing any descriptor of a file drops all POSIX locks that the process has on
// it, SQLite's included. Hence the order of members in Logbook::Inside.
#pragma once

#include <filesystem>

namespace db {

class WindowLock {
  public:
    WindowLock() = default;
    /// Tries once. On a file system without locks nobody is kept out.
    explicit WindowLock(const std::filesystem::path& file);
    ~WindowLock();
    WindowLock(WindowLock&& other) noexcept;
    WindowLock& operator=(WindowLock&& other) noexcept;

    [[nodiscard]] bool isHeldElsewhere() const { return isHeldElsewhere_; }

  private:
    int descriptor_ = -1;
    bool isHeldElsewhere_ = false;
};

}  // namespace db
