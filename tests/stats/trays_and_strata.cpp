// SPDX-License-Identifier: MIT
#include "tests/stats/trays_and_strata.h"

#include <cmath>
#include <cstddef>

std::vector<stats::Stratum> strataIn(const support::ReferenceCase& each) {
    std::vector<stats::Stratum> strata;
    for (std::size_t i = 0; i < each.inputs.at("a").size(); ++i) {
        strata.push_back({.successes1 = each.inputs.at("a").at(i),
                          .trials1 = each.inputs.at("n1").at(i),
                          .successes2 = each.inputs.at("c").at(i),
                          .trials2 = each.inputs.at("n2").at(i)});
    }
    return strata;
}

std::vector<stats::Tray> traysIn(const support::ReferenceCase& each) {
    std::vector<stats::Tray> trays;
    for (std::size_t i = 0; i < each.inputs.at("y").size(); ++i) {
        trays.push_back({.successes = each.inputs.at("y").at(i), .trials = each.inputs.at("n").at(i)});
    }
    return trays;
}

std::vector<std::vector<stats::Tray>> armsIn(const support::ReferenceCase& each) {
    const std::vector<stats::Tray> trays = traysIn(each);
    std::vector<std::vector<stats::Tray>> arms;
    for (std::size_t i = 0; i < trays.size(); ++i) {
        const std::size_t group = each.inputs.at("group").at(i);
        if (arms.size() < group) arms.resize(group);
        arms[group - 1].push_back(trays[i]);
    }
    return arms;
}

std::vector<stats::Observation> observationsIn(const support::ReferenceCase& each) {
    std::vector<stats::Observation> observations;
    for (std::size_t i = 0; i < each.inputs.at("L").size(); ++i) {
        stats::Observation one;
        one.after = each.inputs.at("L").at(i);
        one.by = support::numberIn(each.inputs.at("R").at(i)).value();
        one.weight = each.inputs.at("w").at(i);
        one.cause = each.inputs.contains("cause") ? each.inputs.at("cause").at(i).get<int>()
                    : std::isinf(one.by)          ? 0
                                                  : 1;
        observations.push_back(one);
    }
    return observations;
}
