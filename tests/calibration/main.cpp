// SPDX-License-Identifier: MIT
// strikebook-calibration: simulates seasons and prints, as Markdown, how often what the program shows of them is right.
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <string>
#include <thread>

#include "tests/calibration/report.h"
#include "tests/calibration/simulation.h"

namespace {

void showProgress(double share) {
    constexpr int cells = 50;
    const int done = static_cast<int>(share * cells);
    std::cerr << "\r[" << std::string(static_cast<std::size_t>(done), '#')
              << std::string(static_cast<std::size_t>(cells - done), ' ') << "] " << static_cast<int>(100 * share)
              << " %" << std::flush;
}

}  // namespace

int main(int argc, char** argv) {
    calibration::SimulationOptions options;
    options.threads = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
    CLI::App program("Simulates seasons and prints how often what Strikebook shows of them is right.");
    program
        .add_option("--seasons", options.seasons,
                    "of each kind through the whole program; more where figures alone are judged")
        ->check(CLI::Range(1, 1'000'000))
        ->capture_default_str();
    program.add_option("--seed", options.seed, "the same seed gives the same figures")->capture_default_str();
    program.add_option("--threads", options.threads, "hang on the machine; the figures don't")
        ->check(CLI::Range(1, 256));
    CLI11_PARSE(program, argc, argv);
    const bool isWatched = isatty(STDERR_FILENO) == 1;
    const auto tally = calibration::simulate(calibration::allStudies(), options,
                                             isWatched ? showProgress : std::function<void(double)>());
    if (isWatched) std::cerr << "\n";
    calibration::writeReport(tally, options, std::cout);
}
