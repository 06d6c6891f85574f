// SPDX-License-Identifier: MIT
#include "db/window_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

namespace db {

WindowLock::WindowLock(const std::filesystem::path& file) : descriptor_(::open(file.c_str(), O_RDONLY | O_CLOEXEC)) {
    if (descriptor_ >= 0 && ::flock(descriptor_, LOCK_EX | LOCK_NB) != 0) isHeldElsewhere_ = errno == EWOULDBLOCK;
}

WindowLock::~WindowLock() {
    if (descriptor_ >= 0) ::close(descriptor_);
}

WindowLock::WindowLock(WindowLock&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)), isHeldElsewhere_(other.isHeldElsewhere_) {}

WindowLock& WindowLock::operator=(WindowLock&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    std::swap(isHeldElsewhere_, other.isHeldElsewhere_);
    return *this;
}

}  // namespace db
