// SPDX-License-Identifier: MIT
#include "db/safekeeping/part_file.h"

#include <fcntl.h>
#include <stdio.h>
#include <unistd.h>

#include <cerrno>
#include <random>
#include <system_error>

#include "db/failure.h"

namespace db {

namespace {

void syncPath(const std::filesystem::path& path, int flags, const std::string& deed) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) throw systemFailure(errno, deed);
    const int failure = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    if (failure != 0 && failure != EINVAL)
        throw systemFailure(failure, deed);  // EINVAL: this file system can't sync it
}

int renameUnlessThere(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return 0;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    // A file system that has no such renaming: look first. Somebody may still come between, but nobody is expected there.
    if (std::filesystem::exists(to)) return EEXIST;
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

std::filesystem::path wholePath(const std::filesystem::path& target, const std::string& what) {
    if (target.empty()) throw LogbookError(what + " could not be written: its name is empty. Give it one.");
    std::error_code failure;
    std::filesystem::path whole = std::filesystem::absolute(target, failure);
    if (failure) throw systemFailure(failure.value(), what + ' ' + quotedName(target) + " could not be written");
    return whole;
}

}  // namespace

PartFile::PartFile(std::filesystem::path target, std::string what)
    : target_(wholePath(target, what)), what_(std::move(what)) {
    const std::string ending = std::to_string(std::random_device{}());
    path_ = target_.parent_path() / ("." + target_.filename().string() + "." + ending + ".part");
    const int descriptor = ::open(path_.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor < 0) throw systemFailure(errno, deed());
    ::close(descriptor);
}

PartFile::~PartFile() {
    std::error_code gone;
    std::filesystem::remove(path_, gone);
    std::filesystem::remove(path_.string() + "-journal", gone);
}

void PartFile::publish(IfThere ifThere) {
    syncPath(path_, O_RDONLY, deed());
    const int failure = ifThere == IfThere::Refuse                      ? renameUnlessThere(path_, target_)
                        : ::rename(path_.c_str(), target_.c_str()) == 0 ? 0
                                                                        : errno;
    if (failure != 0) throw systemFailure(failure, deed());
    syncFolder(target_.parent_path(), deed());
}

std::string PartFile::deed() const {
    return what_ + ' ' + quotedName(target_) + " could not be written";
}

void syncFolder(const std::filesystem::path& folder, const std::string& deed) {
    syncPath(folder, O_RDONLY | O_DIRECTORY, deed);
}

}  // namespace db
