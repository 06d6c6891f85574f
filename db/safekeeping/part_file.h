// SPDX-License-Identifier: MIT
// A file that is written under a temporary name beside its place and only takes its place when it is whole: synced, renamed, folder synced.
// Goes away by itself when it was not published.
#pragma once

#include <filesystem>

namespace db {

enum class IfThere { Refuse, Replace };

class PartFile {
  public:
    /// Makes an empty file beside `target`. `what` as in "The backup", for the sentences. LogbookError when it can't.
    PartFile(std::filesystem::path target, std::string what);
    ~PartFile();
    PartFile(const PartFile&) = delete;
    PartFile& operator=(const PartFile&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    void publish(IfThere ifThere);

  private:
    [[nodiscard]] std::string deed() const;

    std::filesystem::path target_;
    std::filesystem::path path_;
    std::string what_;
};

/// Renames that went before survive power loss.
void syncFolder(const std::filesystem::path& folder, const std::string& deed);

}  // namespace db
