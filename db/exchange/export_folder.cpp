// SPDX-License-Identifier: MIT
#include "db/exchange/export_folder.h"

#include <fcntl.h>
#include <unistd.h>

#include "db/actions/session_actions.h"
#include "db/exchange/write_folder.h"
#include "db/logbook_error.h"

namespace db {

namespace {

/// "DIR/NAME/" is the same folder as "DIR/NAME".
std::filesystem::path withoutEndSlash(const std::filesystem::path& folder) {
    if (folder.empty()) throw LogbookError("The name of the folder is empty; name a new or an empty one to export to.");
    std::error_code failed;
    const std::filesystem::path whole = std::filesystem::absolute(folder, failed).lexically_normal();
    if (failed) throw LogbookError("The folder " + folder.string() + " can't be made: " + failed.message() + ".");
    return whole.has_filename() ? whole : whole.parent_path();
}

void requireFree(const std::filesystem::path& folder) {
    std::error_code ignored;
    if (!std::filesystem::exists(std::filesystem::symlink_status(folder, ignored))) return;
    if (!std::filesystem::is_directory(std::filesystem::symlink_status(folder, ignored)))
        throw LogbookError(folder.string() + " is there already and is no folder; name a new one to export to.");
    if (!std::filesystem::is_empty(folder, ignored))
        throw LogbookError("The folder " + folder.string() +
                           " has something in it; name a new or an empty one to export to.");
}

/// A file or a folder.
void sync(const std::filesystem::path& path) {
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    const bool isOnDisk = handle >= 0 && ::fsync(handle) == 0;
    if (handle >= 0) ::close(handle);
    if (!isOnDisk) throw LogbookError("The disk failed to keep " + path.string() + "; see whether it is full.");
}

/// Written beside its place under a name of its own; gone when it was not moved there.
class FolderInTheMaking {
  public:
    explicit FolderInTheMaking(const std::filesystem::path& place)
        : folder_(place.parent_path() / ("." + place.filename().string() + ".unfinished-" + std::to_string(newId()))),
          place_(place) {
        std::error_code failed;
        if (!std::filesystem::create_directory(folder_, failed))
            throw LogbookError("The folder " + place.string() + " can't be made; see whether " +
                               place.parent_path().string() + " is there and yours to write in.");
    }
    FolderInTheMaking(const FolderInTheMaking&) = delete;
    FolderInTheMaking& operator=(const FolderInTheMaking&) = delete;
    ~FolderInTheMaking() {
        std::error_code ignored;
        if (!isMoved_) std::filesystem::remove_all(folder_, ignored);
    }

    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }

    void moveToItsPlace() {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder_)) sync(entry.path());
        sync(folder_);
        std::error_code failed;
        std::filesystem::rename(folder_, place_, failed);  // an empty folder in the way gives way, any other doesn't
        if (failed)
            throw LogbookError("The folder " + place_.string() + " can't be written: " + failed.message() + ".");
        isMoved_ = true;
        sync(place_.parent_path());
    }

  private:
    std::filesystem::path folder_;
    std::filesystem::path place_;
    bool isMoved_{};
};

}  // namespace

bool exportFolder(const Logbook& logbook, const std::filesystem::path& folder, const Waiting& waiting) {
    const std::filesystem::path place = withoutEndSlash(folder);
    requireFree(place);
    FolderInTheMaking making(place);
    constexpr double shareOfReading = 0.3;
    const core::Records records = logbook.records();
    waiting.tellShare(shareOfReading);
    writeFolder(records, making.folder(), waiting.forPiece(shareOfReading, 1));
    if (waiting.isCalledOff()) return false;
    making.moveToItsPlace();
    return true;
}

}  // namespace db
