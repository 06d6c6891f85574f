// SPDX-License-Identifier: MIT
// strikebook-plan-calibration: follows plans through invented seasons and prints docs/statistics/plans.md.
#include <CLI/CLI.hpp>
#include <iostream>

#include "tests/calibration/judged_plans.h"

int main(int argc, char** argv) {
    int seasons = 60;
    std::uint64_t seed = 20260401;
    CLI::App program("Follows plans through invented seasons and prints how often they give enough.");
    program.add_option("--seasons", seasons, "of each true rate, in each scene")
        ->check(CLI::Range(1, 100'000))
        ->capture_default_str();
    program.add_option("--seed", seed, "the same seed gives the same figures")->capture_default_str();
    CLI11_PARSE(program, argc, argv);
    calibration::writePlansPage(seasons, seed, std::cout);
    return std::cout.flush() ? 0 : 1;
}
