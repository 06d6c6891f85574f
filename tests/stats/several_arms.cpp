// SPDX-License-Identifier: MIT
#include "tests/stats/several_arms.h"

std::vector<stats::ArmCount> armCountsIn(const support::ReferenceCase& each) {
    std::vector<stats::ArmCount> arms;
    for (std::size_t i = 0; i < each.inputs.at("x").size(); ++i) {
        arms.push_back({.successes = each.inputs.at("x").at(i), .trials = each.inputs.at("n").at(i)});
    }
    return arms;
}
