// SPDX-License-Identifier: MIT
// A file that has grown past its room has usually taken in a second purpose.
#include <gtest/gtest.h>

#include <map>

#include "tests/house/source_tree.h"

namespace {

constexpr std::size_t headerLines = 150;
constexpr std::size_t sourceLines = 300;

/// Files that may be longer, each with its reason. This list should shrink.
const std::map<std::string, std::string> mayBeLonger = {};

TEST(Size, EveryFileFitsItsRoom) {
    for (const auto& source : house::sourcesIn({"stats", "core", "db", "app"})) {
        if (mayBeLonger.contains(source.path)) continue;
        EXPECT_LE(source.lines.size(), source.isHeader() ? headerLines : sourceLines) << source.path;
    }
}

TEST(Size, NoExceptionIsListedThatIsNotNeeded) {
    for (const auto& source : house::sourcesIn({"stats", "core", "db", "app"}))
        if (mayBeLonger.contains(source.path)) {
            EXPECT_GT(source.lines.size(), source.isHeader() ? headerLines : sourceLines) << source.path;
        }
}

TEST(Size, EverySourceNamesItsLicence) {
    for (const auto& source : house::sourcesIn({"stats", "core", "db", "app", "tests"})) {
        ASSERT_FALSE(source.lines.empty()) << source.path;
        EXPECT_EQ(source.lines.front(), "// SPDX-License-Identifier: MIT") << source.path;
    }
}

}  // namespace
