// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <fstream>
#include <iostream>
#include <regex>
#include <string>

#include "tests/calibration/judged_plans.h"
#include "tests/calibration/studies.h"

namespace {

using calibration::PlanFigures;

TEST(Plans, GiveEnoughAsOftenAsTheySayInAFewSeasons) {
    constexpr std::uint64_t seed = 20260401;
    std::cout << "[ seed " << seed << " ]\n";
    constexpr double times = 1.6;  // the 95 % error of the simulation: a dozen scenes, and none may fail by chance
    for (const double correlation : calibration::correlations)
        for (const int batches : {0, 3, 10}) {
            const PlanFigures figures =
                calibration::judgePlans({.wanted = 24, .correlation = correlation, .pastBatches = batches}, 8, seed);
            EXPECT_GE(figures.enough + times * figures.enoughError, calibration::plannedAssurance)
                << correlation << " " << batches;
            if (batches * calibration::plannedTray >= calibration::recordsThatWillDo) {
                EXPECT_LE(figures.aboveSeer, calibration::mostAboveSeer) << correlation;
            }
        }
}

TEST(Plans, ComeNearerToTheSeerAsRecordsGrow) {
    const auto above = [](int batches) {
        return calibration::judgePlans({.wanted = 24, .correlation = 0.1, .pastBatches = batches}, 6, 3).aboveSeer;
    };
    EXPECT_GT(above(1), above(3));
    EXPECT_GT(above(3), above(20));
}

TEST(PlansPage, ShowsThatWhatIsClaimedHolds) {
    std::ifstream page(STRIKEBOOK_SOURCE_DIR "/docs/statistics/plans.md");
    ASSERT_TRUE(page.is_open());
    const std::regex row(
        R"(\| (\d+) \| ([0-9.]+) \| (none, band|\d+) \| ([0-9.]+) \| ([0-9.]+) \| ([0-9.]+) \| ([0-9.]+) \|)");
    std::size_t rows = 0;
    for (std::string line; std::getline(page, line);) {
        std::smatch found;
        if (!std::regex_match(line, found, row)) continue;
        ++rows;
        EXPECT_GE(std::stod(found[4]) + std::stod(found[5]), calibration::plannedAssurance) << line;
        if (found[3] != "none, band" && std::stoi(found[3]) >= calibration::recordsThatWillDo) {
            EXPECT_LE(std::stod(found[7]), calibration::mostAboveSeer) << line;
        }
    }
    EXPECT_EQ(rows, calibration::allPlanScenes().size()) << "the page is of another version: write it anew";
}

}  // namespace
