// SPDX-License-Identifier: MIT
// strikebook-calibration: simulates seasons and prints, as Markdown, how often what the program shows of them is right. Says on the error
// stream how far it is; Ctrl+C ends it and leaves nothing half written.
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <atomic>
#include <csignal>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>
#include <thread>

#include "tests/calibration/report.h"
#include "tests/calibration/simulation.h"

namespace {

std::atomic<bool> isInterrupted = false;
static_assert(std::atomic<bool>::is_always_lock_free, "or a signal's handler may not touch it");

void interrupt(int) {
    isInterrupted = true;
}

/// A bar where somebody watches; elsewhere a line for every twentieth.
class ProgressShown {
  public:
    void show(double share) {
        if (isatty(STDERR_FILENO) == 1) return showBar(share);
        const int twentieth = static_cast<int>(share * 20 + 1e-6);  // shares are rounded sums
        if (twentieth == lastTwentieth_) return;
        lastTwentieth_ = twentieth;
        // In one piece: the stream writes each of its parts at once.
        std::cerr << std::to_string(5 * twentieth) + " %\n";
    }

  private:
    static void showBar(double share) {
        constexpr int cells = 50;
        const int done = static_cast<int>(share * cells);
        std::cerr << "\r[" << std::string(static_cast<std::size_t>(done), '#')
                  << std::string(static_cast<std::size_t>(cells - done), ' ') << "] " << static_cast<int>(100 * share)
                  << " %" << std::flush;
    }

    int lastTwentieth_ = -1;
};

/// Beside its place first: whole or not at all.
bool writeWhole(const std::string& file, const std::string& text) {
    const std::string part = file + ".part";
    std::ofstream out(part);
    out << text << std::flush;
    if (out && std::rename(part.c_str(), file.c_str()) == 0) return true;
    std::remove(part.c_str());
    std::cerr << file << " could not be written.\n";
    return false;
}

}  // namespace

int main(int argc, char** argv) {
    constexpr int statusOfInterrupted = 130;
    calibration::SimulationOptions options;
    options.threads = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
    std::string file;
    CLI::App program("Simulates seasons and prints how often what Strikebook shows of them is right.");
    program
        .add_option("--seasons", options.seasons,
                    "of each kind through the whole program; more where figures alone are judged")
        ->check(CLI::Range(1, 1'000'000))
        ->capture_default_str();
    program.add_option("--seed", options.seed, "the same seed gives the same figures")->capture_default_str();
    program.add_option("--threads", options.threads, "hang on the machine; the figures don't")
        ->check(CLI::Range(1, 256));
    program.add_option("--to", file, "the file that the page goes to, whole or not at all; else it is printed");
    CLI11_PARSE(program, argc, argv);
    std::signal(SIGINT, interrupt);
    std::signal(SIGTERM, interrupt);
    ProgressShown progress;
    const auto tally = calibration::simulate(calibration::allStudies(), options, [&progress](double share) {
        progress.show(share);
        return !isInterrupted;
    });
    std::cerr << "\n";
    if (!tally) {
        std::cerr << "Stopped; nothing was written.\n";
        return statusOfInterrupted;
    }
    std::ostringstream page;
    calibration::writeReport(*tally, options, page);
    if (!file.empty()) return writeWhole(file, page.str()) ? 0 : 1;
    std::cout << page.str() << std::flush;
    return std::cout ? 0 : 1;
}
