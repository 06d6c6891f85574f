// SPDX-License-Identifier: MIT
// The project's own sources as text, for the tests that police the house.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace house {

struct SourceFile {
    std::string path;  // from the root, with forward slashes
    std::vector<std::string> lines;

    [[nodiscard]] bool isHeader() const { return path.ends_with(".h"); }
    [[nodiscard]] bool isIn(const std::string& folder) const { return path.starts_with(folder + "/"); }
};

/// Every .h and .cpp of `folders`, sorted by path.
[[nodiscard]] std::vector<SourceFile> sourcesIn(const std::vector<std::string>& folders);

}  // namespace house
