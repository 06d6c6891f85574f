// SPDX-License-Identifier: MIT
// The statistics that a grower waits for.
#include <benchmark/benchmark.h>

#include <limits>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/intraclass_correlation.h"
#include "stats/surveillance/change_point.h"
#include "stats/time_to_event/cluster_bootstrap.h"
#include "stats/time_to_event/competing_risks_npmle.h"
#include "stats/two_proportions/barnard_test.h"
#include "stats/two_proportions/boschloo_test.h"

namespace {

void boschlooOf100Against100(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(stats::boschlooTest({63, 100, 41, 100}));
}
BENCHMARK(boschlooOf100Against100)->Unit(benchmark::kMillisecond);

void barnardOf100Against100(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(stats::barnardTest({63, 100, 41, 100}));
}
BENCHMARK(barnardOf100Against100)->Unit(benchmark::kMillisecond);

/// Batches looked at every third day, some a day late; six in ten cuttings root, one in ten is lost.
std::vector<std::vector<stats::Observation>> season(int batches, int cuttingsPerBatch) {
    stats::SeededRandom random(7);
    constexpr double never = std::numeric_limits<double>::infinity();
    std::vector<std::vector<stats::Observation>> all(static_cast<std::size_t>(batches));
    for (auto& batch : all) {
        const double late = static_cast<double>(random.below(3));
        for (int cutting = 0; cutting < cuttingsPerBatch; ++cutting) {
            const double fate = random.uniform();
            const double after = late + 3.0 * static_cast<double>(2 + random.below(10));
            if (fate < 0.6) {
                batch.push_back({.after = after, .by = after + 3, .cause = 1, .weight = 1});
            } else if (fate < 0.7) {
                batch.push_back({.after = after, .by = after + 3, .cause = 2, .weight = 1});
            } else {
                batch.push_back({.after = late + 42, .by = never, .cause = 0, .weight = 1});
            }
        }
    }
    return all;
}

void curveOf10000Cuttings(benchmark::State& state) {
    std::vector<stats::Observation> observations;
    for (const auto& batch : season(200, 50)) observations.insert(observations.end(), batch.begin(), batch.end());
    for (auto _ : state) benchmark::DoNotOptimize(stats::competingRisksNpmle(observations));
}
BENCHMARK(curveOf10000Cuttings)->Unit(benchmark::kMillisecond);

void bootstrapOf60BatchesTwoThousandTimes(benchmark::State& state) {
    const auto batches = season(60, 17);
    stats::BootstrapQuestion question;
    question.quantiles = {{.target = 0.5, .of = stats::ShareOf::Everyone}};
    question.replicates = 2000;
    for (auto _ : state) {
        stats::SeededRandom random(11);
        benchmark::DoNotOptimize(stats::clusterBootstrap(batches, question, random));
    }
}
BENCHMARK(bootstrapOf60BatchesTwoThousandTimes)->Unit(benchmark::kMillisecond);

/// Seven in ten succeed in the first 120 batches of twenty, six in ten from then on.
void turningPointAmong200Batches(benchmark::State& state) {
    constexpr int trials = 20, turn = 120;
    stats::SeededRandom random(20261129);
    stats::PastBatches question{.batches = {}, .spread = stats::pooledSpread({}).law, .prior = {}};
    for (int batch = 0; batch < 200; ++batch) {
        stats::Tray tray{.successes = 0, .trials = trials};
        for (int trial = 0; trial < trials; ++trial)
            if (random.uniform() < (batch < turn ? 0.7 : 0.6)) ++tray.successes;
        question.batches.push_back(tray);
    }
    for (auto _ : state) benchmark::DoNotOptimize(stats::changePoint(question, 0.95));
}
BENCHMARK(turningPointAmong200Batches)->Unit(benchmark::kMillisecond);

}  // namespace
