// SPDX-License-Identifier: MIT
// The worked regressions of tests/data/reference/regression.json, which regression.R beside it writes.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "stats/regression/binomial_rows.h"
#include "stats/regression/dose_response.h"

struct RegressionCase {
    std::string id;
    std::string source;
    std::vector<stats::BinomialRow> rows;
    nlohmann::json maximumLikelihood;  // null where it doesn't exist
    nlohmann::json firth;              // at level 0.95
};

struct DoseResponseCase {
    std::string id;
    std::string source;
    std::vector<stats::DoseTray> trays;
    nlohmann::json expected;
};

[[nodiscard]] std::vector<RegressionCase> regressionCases();
[[nodiscard]] std::vector<DoseResponseCase> doseResponseCases();
/// std::runtime_error where there is none of that id.
[[nodiscard]] RegressionCase regressionCase(const std::string& id);
/// EXPECT_NEAR within `tolerance` times 1 + |want|, and a row in the accuracy ledger.
void expectFigure(const std::string& function, const std::string& source, const std::string& independent, double got,
                  double want, double tolerance);
