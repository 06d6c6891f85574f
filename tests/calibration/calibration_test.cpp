// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <numeric>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "tests/calibration/claims.h"
#include "tests/calibration/report.h"
#include "tests/calibration/season.h"
#include "tests/calibration/season_records.h"
#include "tests/calibration/simulation.h"
#include "tests/calibration/studies.h"

namespace {

using calibration::Looks;
using calibration::Spread;

struct Moments {
    double mean{}, variance{};
};

Moments momentsOf(const std::vector<double>& values) {
    const double count = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0;
    for (const double value : values) squares += (value - mean) * (value - mean);
    return {.mean = mean, .variance = squares / (count - 1)};
}

calibration::SeasonPlan somePlan() {
    return {.correlation = 0.1, .trays = {6, 6}, .size = {}, .rate = {0.6, 0.3}, .lookEvery = {3, 5}};
}

TEST(ShareDistribution, HasTheMeanAndTheCorrelationThatItClaims) {
    for (const Spread spread : {Spread::Beta, Spread::LogitNormal})
        for (const double rate : {0.1, 0.6, 0.95})
            for (const double correlation : {0.05, 0.2}) {
                SCOPED_TRACE(testing::Message() << static_cast<int>(spread) << " " << rate << " " << correlation);
                const calibration::ShareDistribution shares(rate, correlation, spread);
                stats::SeededRandom random(7);
                std::vector<double> drawn(20'000);
                for (double& share : drawn) share = shares.draw(random);
                const Moments moments = momentsOf(drawn);
                const double variance = correlation * rate * (1 - rate);
                EXPECT_NEAR(moments.mean, rate, 4 * std::sqrt(variance / 20'000));
                EXPECT_NEAR(moments.variance / variance, 1, 0.08);
            }
}

TEST(ShareDistribution, GivesEveryTrayTheRateAtCorrelationNought) {
    stats::SeededRandom random(7);
    EXPECT_EQ(calibration::ShareDistribution(0.3, 0, Spread::LogitNormal).draw(random), 0.3);
}

TEST(Season, RootsAsManyByTheHorizonAndByAnyDayAsItsTruthSays) {
    calibration::SeasonPlan plan = somePlan();
    plan.looks = Looks::AsItComes;
    plan.lookEvery = {1, 1};  // every day, so that nothing is hidden
    stats::SeededRandom random(11);
    double stuck = 0, byHorizon = 0, byDay18 = 0, ever = 0, wantedByDay18 = 0, wantedEver = 0;
    for (int number = 0; number < 1500; ++number) {
        const calibration::Season season = seasonOf(plan, random);
        for (const calibration::SimulatedTray& tray : season.arms[0]) {
            EXPECT_TRUE(tray.stuck >= 5 && tray.stuck <= 30);
            stuck += tray.stuck;
            byHorizon += tray.rootedByHorizon;
            wantedByDay18 += tray.stuck * season.days.shareRooted(0.6, 18);
            wantedEver += tray.stuck * season.days.shareRooted(0.6, 2 * calibration::horizonDay);
            for (const core::Look& look : tray.looks) {
                ever += look.rooted;
                if (look.day <= 18) byDay18 += look.rooted;
            }
        }
    }
    EXPECT_NEAR(byHorizon / stuck, 0.6, 0.01);
    EXPECT_NEAR(byDay18 / stuck, wantedByDay18 / stuck, 0.01);
    EXPECT_NEAR(ever / stuck, wantedEver / stuck, 0.01);
}

TEST(Season, HasItsTruthInOnePiece) {
    const calibration::RootingDays days{.medianDay = 19};
    EXPECT_EQ(days.shareRooted(0.7, 0), 0);
    EXPECT_NEAR(days.shareRooted(0.7, calibration::horizonDay), 0.7, 1e-12);
    EXPECT_NEAR(days.shareRooted(0.7, calibration::horizonDay + 1e-9), 0.7, 1e-9);
    EXPECT_NEAR(days.shareRooted(0.7, 1e6), days.everRooted(0.7), 1e-12);
    EXPECT_NEAR(days.distribution(days.quantile(0.3)), 0.3, 1e-12);
}

TEST(Season, IsKnownInFullWhenLookedAtOnTheHorizon) {
    stats::SeededRandom random(3);
    for (int number = 0; number < 50; ++number) {
        const calibration::Season season = seasonOf(somePlan(), random);
        const auto seen = season.traysSeen();
        for (std::size_t tray = 0; tray < season.arms[1].size(); ++tray) {
            EXPECT_EQ(seen[1][tray].successes, season.arms[1][tray].rootedByHorizon);
            EXPECT_EQ(seen[1][tray].trials, season.arms[1][tray].stuck);
        }
    }
}

TEST(Season, IsWrittenDownAsItWas) {
    stats::SeededRandom random(5);
    calibration::SeasonPlan plan = somePlan();
    plan.looks = Looks::AsItComes;
    const calibration::Season season = seasonOf(plan, random);
    const auto records = recordsOf(season);
    ASSERT_EQ(records.size(), 12U);
    for (std::size_t batch = 0; batch < records.size(); ++batch) {
        const calibration::SimulatedTray& tray = season.arms[batch / 6][batch % 6];
        const core::Tally tally = core::tallyOf(records[batch].batch, records[batch].checks);
        int rooted = 0, lost = 0;
        for (const core::Look& look : tray.looks) {
            rooted += look.rooted;
            lost += look.lost;
        }
        EXPECT_EQ(tally.stuck, tray.stuck);
        EXPECT_EQ(tally.rooted, rooted);
        EXPECT_EQ(tally.lost, lost);
    }
}

TEST(Simulation, GivesTheSameFiguresWithAnyNumberOfThreads) {
    const std::vector<calibration::Study> all = calibration::allStudies();
    std::vector<calibration::Study> chosen;
    for (std::size_t study = 0; study < all.size(); study += 8) chosen.push_back(all[study]);
    calibration::SimulationOptions options{.seasons = 2, .seed = 4, .threads = 1};
    const calibration::Tally one = calibration::simulate(chosen, options).value();
    options.threads = 3;
    EXPECT_TRUE(one == calibration::simulate(chosen, options).value());
    options.seed = 5;
    EXPECT_FALSE(one == calibration::simulate(chosen, options).value());
}

TEST(Simulation, RefutesNoClaimInAFewSeasons) {
    const auto tally =
        calibration::simulate(calibration::allStudies(), {.seasons = 1, .seed = 20260101, .threads = 2}).value();
    constexpr double times = 3;  // the 95 % error of the simulation: a hundred claims, and none may fail by chance
    for (const calibration::Claim& claim : calibration::claimsOn(tally))
        EXPECT_TRUE(claim.mayHold(times)) << claim.words << ": " << claim.found.yes << " of " << claim.found.asked;
}

TEST(Tally, KnowsHowSureItIs) {
    calibration::Tally tally;
    for (int season = 0; season < 400; ++season)
        tally.add("thing", {.correlation = 0.1, .trays = 3}, season % 4 == 0, 2);
    const calibration::Count count = tally.over("thing", 0.1, 1, 6);
    EXPECT_EQ(count.share(), 0.25);
    EXPECT_EQ(count.mean(), 2);
    EXPECT_EQ(count.rootMeanSquare(), 2);
    EXPECT_NEAR(count.simulationError(), 1.96 * std::sqrt(0.25 * 0.75 / 400), 1e-12);
    EXPECT_EQ(tally.of("nothing", {.correlation = 0.1, .trays = 3}).asked, 0);
}

std::string committedPage() {
    std::ifstream in(STRIKEBOOK_SOURCE_DIR "/docs/statistics/calibration.md");
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

TEST(CalibrationPage, NamesTheCommandThatWroteIt) {
    const std::string page = committedPage();
    std::smatch found;
    ASSERT_TRUE(
        std::regex_search(page, found, std::regex("strikebook-calibration --seasons ([0-9]+) --seed ([0-9]+)")));
    EXPECT_GE(std::stoi(found[1]), 250);
    EXPECT_EQ(found[0],
              calibration::commandOf({.seasons = std::stoi(found[1]), .seed = std::stoull(found[2]), .threads = 1}));
}

TEST(CalibrationPage, ShowsThatEveryClaimHolds) {
    const std::string page = committedPage();
    const std::regex row("\\| ([^|]*) \\| (at least|at most) ([0-9]+) \\| ([0-9.]+) \\| ([0-9.]+) \\| (yes|no) \\|");
    std::vector<std::string> words;
    for (std::sregex_iterator it(page.begin(), page.end(), row), end; it != end; ++it) {
        const std::smatch& found = *it;
        words.push_back(found[1]);
        const double demanded = std::stod(found[3]), share = std::stod(found[4]);
        EXPECT_TRUE(found[2] == "at least" ? share >= demanded : share <= demanded) << found[0];
        EXPECT_EQ(found[6], "yes") << found[0];
    }
    std::vector<std::string> wanted;
    for (const calibration::Claim& claim : calibration::claimsOn({})) wanted.push_back(claim.words);
    EXPECT_EQ(words, wanted) << "the page is of another version: write it anew";
}

}  // namespace
