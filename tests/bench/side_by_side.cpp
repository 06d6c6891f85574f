// SPDX-License-Identifier: MIT
// One piece of statistical work on one thread, timed, for setting beside another program on the same input: see side_by_side.
//     strikebook-side-by-side season staggered|shared CUTTINGS BATCHES FILE   writes the input: batch,after,by (by = Inf: not yet)
//     strikebook-side-by-side curve FILE                                      interval-censored curve of rooting
//     strikebook-side-by-side bootstrap FILE REPLICATES                       whole-batch replicates of its median
//     strikebook-side-by-side boschloo X1 N1 X2 N2
//     strikebook-side-by-side power N P1 P2                                   Boschloo's exact power
// Prints "SECONDS RESULT".
#include <algorithm>
#include <ctime>
#include <fstream>
#include <functional>
#include <iostream>
#include <limits>
#include <sstream>
#include <string>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/planning/exact_power.h"
#include "stats/time_to_event/cluster_bootstrap.h"
#include "stats/time_to_event/turnbull.h"
#include "stats/two_proportions/boschloo_test.h"

namespace {

using Batches = std::vector<std::vector<stats::Observation>>;
constexpr double never = std::numeric_limits<double>::infinity();

// Twenty looks three days apart; six cuttings in ten root. Staggered: each batch's looks are up to two days later than another's.
void writeSeason(bool isStaggered, int cuttings, int batches, const std::string& file) {
    constexpr int looks = 20, apart = 3;
    stats::SeededRandom random(20261125);
    std::ofstream out(file);
    out << "batch,after,by\n";
    std::vector<int> late;
    for (int batch = 0; batch < batches; ++batch) late.push_back(isStaggered ? static_cast<int>(random.below(3)) : 0);
    for (int cutting = 0; cutting < cuttings; ++cutting) {
        const auto batch = static_cast<std::size_t>(cutting % batches);
        const auto look = static_cast<int>(random.below(looks - 1));
        const int after = look == 0 ? 0 : late[batch] + apart * look;
        const int by = late[batch] + apart * (look + 1);
        if (random.uniform() < 0.6)
            out << batch << ',' << after << ',' << by << '\n';
        else
            out << batch << ',' << late[batch] + apart * looks << ",Inf\n";
    }
}

Batches batchesIn(const std::string& file) {
    std::ifstream in(file);
    std::string line;
    std::getline(in, line);
    Batches batches;
    while (std::getline(in, line)) {
        std::istringstream fields(line);
        std::string batch, after, by;
        std::getline(fields, batch, ',');
        std::getline(fields, after, ',');
        std::getline(fields, by);
        const auto index = static_cast<std::size_t>(std::stoul(batch));
        if (batches.size() <= index) batches.resize(index + 1);
        const bool isRooted = by != "Inf";
        batches[index].push_back({.after = std::stod(after),
                                  .by = isRooted ? std::stod(by) : never,
                                  .cause = isRooted ? 1 : 0,
                                  .weight = 1});
    }
    return batches;
}

// Processor time, the shortest of several runs: what the work takes when nothing else gets in the way.
double secondsOf(const std::function<void()>& work) {
    double shortest = never, spent = 0;
    for (int run = 0; run < 3 || (spent < 0.5 && run < 200); ++run) {
        const std::clock_t start = std::clock();
        work();
        const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        shortest = std::min(shortest, seconds);
        spent += seconds;
    }
    return shortest;
}

double timedCurve(const std::string& file, double& result) {
    std::vector<stats::Observation> rows;
    for (const auto& batch : batchesIn(file)) rows.insert(rows.end(), batch.begin(), batch.end());
    return secondsOf([&] { result = stats::cumulativeShare(stats::turnbull(rows).cause1, 30).atLeast; });
}

double timedBootstrap(const std::string& file, int replicates, double& result) {
    const Batches batches = batchesIn(file);
    stats::BootstrapQuestion question;
    question.quantiles = {{.target = 0.5, .of = stats::ShareOf::Everyone}};
    question.replicates = replicates;
    return secondsOf([&] {
        stats::SeededRandom random(1);
        result = stats::clusterBootstrap(batches, question, random)->quantiles.front().limits.high;
    });
}

int complain() {
    std::cerr << "What is asked for isn't known; see the head of side_by_side.cpp.\n";
    return 2;
}

}  // namespace

int main(int count, char** words) {
    const std::vector<std::string> given(words + 1, words + count);
    double seconds = 0, result = 0;
    if (given.size() == 5 && given[0] == "season") {
        writeSeason(given[1] == "staggered", std::stoi(given[2]), std::stoi(given[3]), given[4]);
        return 0;
    }
    if (given.size() == 2 && given[0] == "curve") {
        seconds = timedCurve(given[1], result);
    } else if (given.size() == 3 && given[0] == "bootstrap") {
        seconds = timedBootstrap(given[1], std::stoi(given[2]), result);
    } else if (given.size() == 5 && given[0] == "boschloo") {
        const stats::TwoCounts counts{std::stoi(given[1]), std::stoi(given[2]), std::stoi(given[3]),
                                      std::stoi(given[4])};
        seconds = secondsOf([&] { result = stats::boschlooTest(counts).central; });
    } else if (given.size() == 4 && given[0] == "power") {
        const stats::PlannedArms arms{std::stoi(given[1]), std::stoi(given[1]), std::stod(given[2]),
                                      std::stod(given[3])};
        seconds = secondsOf([&] { result = stats::boschlooPower(arms, 0.05, stats::BoschlooKind::Central).power; });
    } else {
        return complain();
    }
    std::cout.precision(10);
    std::cout << seconds << ' ' << result << '\n';
    return 0;
}
