// SPDX-License-Identifier: MIT
// Includes are written from the root, so any file could see any other; this test is what keeps the layers apart.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>

#include "tests/house/source_tree.h"

namespace {

/// For each place, the folders of ours that it may include from.
const std::map<std::string, std::set<std::string>> mayInclude = {
    {"stats", {"stats"}},
    {"core", {"stats", "core"}},
    {"db", {"stats", "core", "db"}},
    {"app/plot", {"stats", "core", "db", "app/plot"}},
    {"app/logger", {"stats", "core", "db", "app/plot", "app/logger"}},
    {"app/report", {"stats", "core", "db", "app/plot", "app/report"}},
    {"app/console", {"stats", "core", "db", "app/plot", "app/logger", "app/report", "app/console"}},
    {"app/desktop", {"stats", "core", "db", "app/plot", "app/logger", "app/report", "app/desktop"}},
};

struct Include {
    std::string where;
    std::string what;
    bool isOurs{};
};

std::string placeOf(const std::string& path) {
    for (const auto& [place, allowed] : mayInclude)
        if (path.starts_with(place + "/")) return place;
    return {};
}

std::vector<Include> includesOf(const house::SourceFile& source) {
    static const std::regex pattern(R"re(^\s*#\s*include\s*([<"])([^>"]+)[>"])re");
    std::vector<Include> includes;
    for (std::size_t line = 0; line < source.lines.size(); ++line) {
        std::smatch found;
        if (std::regex_search(source.lines[line], found, pattern))
            includes.push_back({source.path + ":" + std::to_string(line + 1), found[2], found[1] == "\""});
    }
    return includes;
}

std::vector<house::SourceFile> programSources() {
    return house::sourcesIn({"stats", "core", "db", "app"});
}

TEST(Layering, IncludesOnlyFromTheSameFolderOrFromThoseBelow) {
    int seen = 0;
    for (const auto& source : programSources())
        for (const Include& include : includesOf(source)) {
            const std::string target = placeOf(include.what);
            if (!include.isOurs || target.empty()) continue;
            ++seen;
            EXPECT_TRUE(mayInclude.at(placeOf(source.path)).contains(target))
                << include.where << " includes " << include.what;
        }
    EXPECT_GT(seen, 100);
}

TEST(Layering, KeepsEachLibraryInItsPlace) {
    struct Rule {
        std::regex header;
        std::vector<std::string> places;
    };
    const Rule rules[] = {
        {std::regex("^Q[A-Z]|^Qt"), {"app/plot", "app/logger", "app/report", "app/console", "app/desktop"}},
        {std::regex("^SQLiteCpp/|^sqlite3"), {"db"}},
        {std::regex("^boost/|^Eigen/"), {"stats"}},
        {std::regex("^tl/"), {"core"}},
        {std::regex("^libical/|^qrencode"), {"app/report"}},
    };
    for (const auto& source : programSources())
        for (const Include& include : includesOf(source))
            for (const Rule& rule : rules)
                if (std::regex_search(include.what, rule.header)) {
                    EXPECT_TRUE(std::ranges::count(rule.places, placeOf(source.path)))
                        << include.where << " includes " << include.what;
                }
}

TEST(Layering, KeepsBoostAndEigenOutOfHeaders) {
    for (const auto& source : house::sourcesIn({"stats"})) {
        if (!source.isHeader() || source.path == "stats/numeric/boost_policy.h") continue;
        for (const Include& include : includesOf(source))
            EXPECT_FALSE(include.what.starts_with("boost/") || include.what.starts_with("Eigen/")) << include.where;
    }
}

}  // namespace
