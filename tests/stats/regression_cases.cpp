// SPDX-License-Identifier: MIT
#include "tests/stats/regression_cases.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <stdexcept>

#include "tests/support/accuracy_ledger.h"

namespace {

nlohmann::json regressionFile() {
    const std::string path = std::string(STRIKEBOOK_SOURCE_DIR) + "/tests/data/reference/regression.json";
    std::ifstream stream(path);
    if (!stream) throw std::runtime_error("cannot read " + path);
    return nlohmann::json::parse(stream);
}

}  // namespace

std::vector<RegressionCase> regressionCases() {
    std::vector<RegressionCase> cases;
    const nlohmann::json file = regressionFile();
    for (const nlohmann::json& each : file.at("regressions")) {
        RegressionCase one{.id = each.at("id"),
                           .source = each.at("source"),
                           .rows = {},
                           .maximumLikelihood = each.at("maximum_likelihood"),
                           .firth = each.at("firth")};
        for (const nlohmann::json& row : each.at("rows")) {
            stats::BinomialRow binomial{.successes = row.at(0), .trials = row.at(1), .covariates = {}};
            for (std::size_t i = 2; i < row.size(); ++i) binomial.covariates.push_back(row.at(i));
            one.rows.push_back(binomial);
        }
        cases.push_back(one);
    }
    return cases;
}

RegressionCase regressionCase(const std::string& id) {
    for (const RegressionCase& each : regressionCases()) {
        if (each.id == id) return each;
    }
    throw std::runtime_error("no regression of the id " + id);
}

std::vector<DoseResponseCase> doseResponseCases() {
    std::vector<DoseResponseCase> cases;
    const nlohmann::json file = regressionFile();
    for (const nlohmann::json& each : file.at("dose_responses")) {
        DoseResponseCase one{.id = each.at("id"), .source = each.at("source"), .trays = {}, .expected = each};
        for (std::size_t i = 0; i < each.at("dose").size(); ++i) {
            one.trays.push_back({.dose = each.at("dose").at(i),
                                 .successes = each.at("successes").at(i),
                                 .trials = each.at("trials").at(i)});
        }
        cases.push_back(one);
    }
    return cases;
}

void expectFigure(const std::string& function, const std::string& source, const std::string& independent, double got,
                  double want, double tolerance) {
    EXPECT_NEAR(got, want, tolerance * (1 + std::abs(want))) << function << ", " << source;
    support::prove({.function = function, .source = source, .independent = independent}, got, want);
}
