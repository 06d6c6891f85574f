// SPDX-License-Identifier: MIT
#include "tests/house/source_tree.h"

#include <algorithm>
#include <fstream>

namespace house {

std::vector<SourceFile> sourcesIn(const std::vector<std::string>& folders) {
    const std::filesystem::path root = STRIKEBOOK_SOURCE_DIR;
    std::vector<SourceFile> sources;
    for (const std::string& folder : folders)
        for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder)) {
            const std::string extension = entry.path().extension().string();
            if (!entry.is_regular_file() || (extension != ".h" && extension != ".cpp")) continue;
            SourceFile source{.path = std::filesystem::relative(entry.path(), root).generic_string(), .lines = {}};
            std::ifstream in(entry.path());
            for (std::string line; std::getline(in, line);) source.lines.push_back(line);
            sources.push_back(std::move(source));
        }
    std::ranges::sort(sources, {}, &SourceFile::path);
    return sources;
}

}  // namespace house
