// SPDX-License-Identifier: MIT
#include "db/exchange/export_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using namespace std::chrono_literals;

db::Logbook smallLogbook() {
    constexpr core::Date today = 2026y / 6 / 30;
    core::Records records = core::demoSeason({.batches = 5, .seed = 1, .today = today});
    db::Logbook logbook = db::Logbook::inMemory(
        records.shelves.facts, {.clock = [] { return std::chrono::sys_days{2026y / 6 / 30} + 12h; }, .author = ""});
    EXPECT_TRUE(db::addRecords(logbook, std::move(records), "import", true));
    return logbook;
}

std::vector<std::string> namesIn(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

TEST(ExportFolder, WritesEveryTableAndItsDescription) {
    const support::TemporaryFolder folder;
    db::exportFolder(smallLogbook(), folder / "out/");  // with or without the slash
    EXPECT_EQ(namesIn(folder / "out"), (std::vector<std::string>{"batches.csv",
                                                                 "care.csv",
                                                                 "check_schedules.csv",
                                                                 "checks.csv",
                                                                 "cutting_kinds.csv",
                                                                 "datapackage.json",
                                                                 "expenses.csv",
                                                                 "findings.csv",
                                                                 "logbook.csv",
                                                                 "logger.csv",
                                                                 "logger_formats.csv",
                                                                 "loss_causes.csv",
                                                                 "lots.csv",
                                                                 "media.csv",
                                                                 "medium_components.csv",
                                                                 "methods.csv",
                                                                 "mixes.csv",
                                                                 "own_bands.csv",
                                                                 "photos.csv",
                                                                 "plans.csv",
                                                                 "plants.csv",
                                                                 "pottings.csv",
                                                                 "prices.csv",
                                                                 "readings.csv",
                                                                 "sessions.csv",
                                                                 "stations.csv",
                                                                 "stock_plants.csv",
                                                                 "treatment_auxins.csv",
                                                                 "treatments.csv",
                                                                 "trial_arms.csv",
                                                                 "trial_batches.csv",
                                                                 "trial_changes.csv",
                                                                 "trials.csv"}));
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"out"});  // nothing unfinished is left
    EXPECT_TRUE(folder.read("out/batches.csv").starts_with(support::batchHeading));
    EXPECT_TRUE(folder.read("out/checks.csv").starts_with(std::string(support::checkHeading) + "\r\n"));
}

TEST(ExportFolder, UsesAnEmptyFolder) {
    const support::TemporaryFolder folder;
    std::filesystem::create_directory(folder / "out");
    db::exportFolder(smallLogbook(), folder / "out");
    EXPECT_TRUE(std::filesystem::exists(folder / "out/batches.csv"));
}

TEST(ExportFolder, LeavesAFolderWithSomethingInItAlone) {
    const support::TemporaryFolder folder;
    std::filesystem::create_directory(folder / "out");
    folder.write("out/mine.txt", "mine");
    EXPECT_THROW(db::exportFolder(smallLogbook(), folder / "out"), db::LogbookError);
    EXPECT_EQ(namesIn(folder / "out"), std::vector<std::string>{"mine.txt"});
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"out"});
}

TEST(ExportFolder, SaysHowFarItIsAndLeavesNothingBehindWhenItIsCalledOff) {
    const support::TemporaryFolder folder;
    std::vector<double> shares;
    EXPECT_TRUE(db::exportFolder(smallLogbook(), folder / "whole",
                                 {.stop = {}, .tell = [&](double share) { shares.push_back(share); }}));
    EXPECT_TRUE(std::ranges::is_sorted(shares));
    EXPECT_GT(shares.size(), 20U);
    EXPECT_DOUBLE_EQ(shares.back(), 1);
    for (std::size_t told = 1; told < shares.size(); ++told) {
        std::stop_source stop;
        std::size_t heard = 0;
        const db::Waiting waiting{.stop = stop.get_token(), .tell = [&](double) {
                                      if (++heard == told) stop.request_stop();
                                  }};
        EXPECT_FALSE(db::exportFolder(smallLogbook(), folder / "out", waiting)) << told;
        EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"whole"}) << told;
    }
}

TEST(ExportFolder, RefusesAFileOfThatNameAndAPlaceThatIsNotThere) {
    const support::TemporaryFolder folder;
    folder.write("out", "a file");
    EXPECT_THROW(db::exportFolder(smallLogbook(), folder / "out"), db::LogbookError);
    EXPECT_EQ(folder.read("out"), "a file");
    EXPECT_THROW(db::exportFolder(smallLogbook(), folder / "no/such/place"), db::LogbookError);
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"out"});
}

}  // namespace
