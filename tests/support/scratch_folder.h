// SPDX-License-Identifier: MIT
// A folder of a test's own that goes away with it.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace support {

class ScratchFolder {
  public:
    ScratchFolder();
    ~ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
    /// The names of what is in it, in order.
    [[nodiscard]] std::vector<std::string> names() const;

  private:
    std::filesystem::path path_;
};

[[nodiscard]] std::string contentOf(const std::filesystem::path& file);
void writeContent(const std::filesystem::path& file, const std::string& content);

}  // namespace support
