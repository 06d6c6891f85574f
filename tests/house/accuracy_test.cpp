// SPDX-License-Identifier: MIT
// Every statistics function has a proof on record, and the page that growers and statisticians read is the one that was measured.
// Runs after the statistics tests, which leave their rows in the build folder.
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>

#include "tests/house/accuracy_page.h"

namespace {

const std::string pagePath = std::string(STRIKEBOOK_SOURCE_DIR) + "/docs/statistics/accuracy.md";

/// Declared in headers for other files of stats, not for callers; each with the function whose proofs cover it.
const std::map<std::string, std::string> provenThroughOthers = {
    {"areRatesAlike", "trayTTest"},
    {"armsByDay", "grayTest"},
    {"batchCovariance", "fitIntervalCensored"},
    {"failuresOf", "barnardTest"},
    {"fitIntervalMixture", "competingRisksNpmle"},
    {"fitSpeedModel", "fitIntervalCensored"},
    {"fitSpeedModelAndBoundary", "fitCureMixture"},
    {"gatherSpeedRows", "fitCureMixture"},
    {"isInformative", "mantelHaenszelOddsRatio"},
    {"limitsOfExp", "fitIntervalCensored"},
    {"limitsOfLogit", "fitCureMixture"},
    {"quadraticForm", "logRankTest"},
    {"rateOf", "trayTTest"},
    {"rateSpread", "trayTTest"},
    {"rateSteps", "ratePosterior"},
    {"speedUncertainty", "fitIntervalCensored"},
    {"stretchLaws", "changePoint"},
    {"traysWithTrials", "raoScottDesignEffect"},
    {"whyNoSpeedFit", "fitCureMixture"},
    {"wilsonIntervalOfEffective", "trayInterval"},
};

house::LedgerRows ledger() {
    return house::ledgerIn(std::string(STRIKEBOOK_BINARY_DIR) + "/accuracy");
}

std::vector<house::PublicFunction> functionsForCallers() {
    std::vector<house::PublicFunction> functions = house::publicStatsFunctions();
    std::erase_if(functions,
                  [](const house::PublicFunction& function) { return provenThroughOthers.contains(function.name); });
    return functions;
}

TEST(AccuracyLedger, HasARowForEveryPublicFunction) {
    const house::LedgerRows rows = ledger();
    for (const house::PublicFunction& function : functionsForCallers())
        EXPECT_TRUE(rows.contains(function.name)) << function.name << " in " << function.header << " has no proof";
}

TEST(AccuracyLedger, NamesOnlyFunctionsThatExist) {
    std::map<std::string, std::string> known;
    for (const house::PublicFunction& function : house::publicStatsFunctions()) known[function.name] = function.header;
    for (const auto& [function, rows] : ledger())
        EXPECT_TRUE(known.contains(function)) << function << " is not declared in stats";
    for (const auto& [function, through] : provenThroughOthers) {
        EXPECT_TRUE(known.contains(function)) << function << " is excused but not declared";
        EXPECT_TRUE(known.contains(through)) << through << " is to cover " << function << " but not declared";
    }
}

TEST(AccuracyLedger, HoldsNoErrorThatIsNotANumber) {
    for (const auto& [function, rows] : ledger())
        for (const house::LedgerRow& row : rows) EXPECT_TRUE(row.worst >= 0) << function << ", " << row.source;
}

TEST(AccuracyLedger, IsThePageInTheDocs) {
    std::ifstream stream(pagePath);
    const std::string committed{std::istreambuf_iterator<char>(stream), {}};
    const std::string measured = house::accuracyPage(functionsForCallers(), ledger(), committed);
    if (std::getenv("STRIKEBOOK_APPROVE") != nullptr) {
        std::ofstream(pagePath) << measured;
        return;
    }
    EXPECT_EQ(committed, measured)
        << "docs/statistics/accuracy.md is stale: STRIKEBOOK_APPROVE=1 tests/run writes it anew";
}

const std::vector<house::PublicFunction> oneFunction{{.name = "wilsonInterval", .header = "stats/proportion/x.h"}};

std::string pageWithError(double worst, const std::string& committed = {}) {
    return house::accuracyPage(
        oneFunction,
        {{"wilsonInterval", {{.source = "a table", .independent = "in print", .cases = 4, .worst = worst}}}},
        committed);
}

TEST(AccuracyPage, KeepsABoundThatStillHoldsWhateverTheLastBitsAre) {
    const std::string page = pageWithError(9.9e-13);
    EXPECT_EQ(pageWithError(1.1e-13, page), page);
    EXPECT_EQ(pageWithError(1e-15, page), page);
}

TEST(AccuracyPage, IsStaleWhenAnErrorGrewOrFellFarBelowItsBound) {
    const std::string page = pageWithError(9.9e-13);
    EXPECT_NE(pageWithError(1.1e-12, page), page);
    EXPECT_NE(pageWithError(1e-16, page), page);
    EXPECT_NE(pageWithError(0, page), page);
}

TEST(AccuracyPage, SaysWhichFunctionHasNoRow) {
    EXPECT_NE(house::accuracyPage(oneFunction, {}).find("No row."), std::string::npos);
}

TEST(ErrorText, RoundsUpToAPowerOfTen) {
    EXPECT_EQ(house::errorText(0), "exact");
    EXPECT_EQ(house::errorText(3e-13), "below 1e-12");
    EXPECT_EQ(house::errorText(1e-17), "below 1e-15");
    EXPECT_EQ(house::errorText(0.04), "below 1e-1");
}

}  // namespace
