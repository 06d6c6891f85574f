// SPDX-License-Identifier: MIT
#include "db/safekeeping/backup.h"

#include <algorithm>
#include <cctype>
#include <chrono>
#include <system_error>
#include <utility>

#include "core/units/moment.h"
#include "db/failure.h"
#include "db/inside.h"
#include "db/safekeeping/checked_copy.h"

namespace db {

namespace {

constexpr std::string_view logbookEnding = ".strikebook";
constexpr std::string_view madeAtPattern =
    "dddd-dd-dd dddddd";  // d: a digit; what stands between the name and the ending

/// "2026-03-14T10:42:05Z" as "2026-03-14 104205": no colons, which some file systems don't take.
std::string fileNameMoment(const std::string& moment) {
    return moment.substr(0, 10) + ' ' + moment.substr(11, 2) + moment.substr(14, 2) + moment.substr(17, 2);
}

std::string momentFrom(const std::string& named) {
    return named.substr(0, 10) + 'T' + named.substr(11, 2) + ':' + named.substr(13, 2) + ':' + named.substr(15, 2) +
           'Z';
}

bool isMoment(std::string_view text) {
    return std::equal(text.begin(), text.end(), madeAtPattern.begin(), madeAtPattern.end(),
                      [](char given, char wanted) {
                          return wanted == 'd' ? std::isdigit(static_cast<unsigned char>(given)) != 0 : given == wanted;
                      });
}

/// "bench 2026-03-14 104205.strikebook". A second one of the same second is named for the next that is free.
std::filesystem::path freeBackupName(const std::filesystem::path& logbook, std::chrono::sys_seconds moment) {
    const auto named = [&] {
        return backupFolder(logbook) /
               (logbook.stem().string() + ' ' + fileNameMoment(core::isoText(moment)) + std::string(logbookEnding));
    };
    while (std::filesystem::exists(named())) moment += std::chrono::seconds(1);
    return named();
}

/// Goes away again when nothing was put into it.
class NewFolder {
  public:
    explicit NewFolder(std::filesystem::path folder) : folder_(std::move(folder)) {
        std::error_code failure;
        std::filesystem::create_directories(folder_, failure);
        if (failure) throw systemFailure(failure.value(), "The folder " + quotedName(folder_) + " could not be made");
    }
    ~NewFolder() {
        std::error_code isUsed;
        std::filesystem::remove(folder_, isUsed);
    }
    NewFolder(const NewFolder&) = delete;
    NewFolder& operator=(const NewFolder&) = delete;

  private:
    std::filesystem::path folder_;
};

}  // namespace

bool backUp(const Logbook& logbook, const std::filesystem::path& to, const Waiting& waiting) {
    return logbook.inside().with([&](Connection& connection) {
        return writeCheckedCopy(connection, to, IfThere::Refuse, "The backup", waiting);
    });
}

std::filesystem::path backupFolder(const std::filesystem::path& logbook) {
    const auto whole = std::filesystem::absolute(logbook);
    return whole.parent_path() / (whole.stem().string() + " backups");
}

std::filesystem::path backUpAutomatically(const Logbook& logbook, bool always, int keep, const Waiting& waiting) {
    const std::filesystem::path& file = logbook.file();
    if (file.empty()) return {};
    const std::chrono::sys_seconds now = logbook.inside().options.clock();
    const auto before = backupsOf(file);
    const bool hasTodays = !before.empty() && before.front().madeAt.substr(0, 10) >= core::isoText(now).substr(0, 10);
    if (hasTodays && !always) return {};
    const auto to = freeBackupName(file, now);
    const NewFolder folder(backupFolder(file));
    if (!backUp(logbook, to, waiting)) return {};
    const auto after = backupsOf(file);
    for (auto i = static_cast<std::size_t>(std::max(keep, 1)); i < after.size(); ++i) {
        std::error_code ignored;  // one backup too many does no harm
        std::filesystem::remove(after[i].file, ignored);
    }
    return to;
}

std::vector<BackupFile> backupsOf(const std::filesystem::path& logbook) {
    std::vector<BackupFile> found;
    const std::string start = logbook.stem().string() + ' ';
    std::error_code failure;  // no such folder: no backups
    for (const auto& entry : std::filesystem::directory_iterator(backupFolder(logbook), failure)) {
        const std::string name = entry.path().filename().string();
        if (name.size() != start.size() + madeAtPattern.size() + logbookEnding.size()) continue;
        const std::string moment = name.substr(start.size(), madeAtPattern.size());
        if (name.starts_with(start) && name.ends_with(logbookEnding) && isMoment(moment) &&
            entry.is_regular_file(failure))
            found.push_back({.file = entry.path(), .madeAt = momentFrom(moment)});
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.madeAt > b.madeAt; });
    return found;
}

}  // namespace db
