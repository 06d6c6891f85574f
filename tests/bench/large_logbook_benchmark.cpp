// SPDX-License-Identifier: MIT
// A logbook far larger than a grower will ever fill: 20,000 batches, about 1,000,000 cuttings, and what became of each hole by hole.
#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>

#include "core/batch/position_rules.h"
#include "core/causes/losses.h"
#include "core/causes/out_of_the_ordinary.h"
#include "core/comparison/comparison.h"
#include "core/demo/demo_season.h"
#include "core/money/worth_it.h"
#include "db/actions/records_actions.h"
#include "db/logbook.h"

namespace {

constexpr int batches = 20'000;
constexpr core::Date today{std::chrono::year{2026}, std::chrono::month{9}, std::chrono::day{1}};

db::OpenOptions benchOptions() {
    return {.clock = [] { return std::chrono::sys_seconds{std::chrono::sys_days{today}}; }, .author = "bench"};
}

/// Every batch that is closed stood at positions, and its checks say which: all of its cuttings are findings.
void lookHoleByHole(core::Records& records) {
    for (core::Station& station : records.shelves.stations) station.rows = core::mostRows;
    for (auto& [batch, checks] : records.batches) {
        if (!core::isClosed(batch, core::tallyOf(batch, checks))) continue;
        const core::Station* station = core::find(records.shelves.stations, batch.station);
        std::vector<core::Position> left = core::freePositions(*station, {}, batch.stuck);
        batch.positions = core::textOf(left);
        for (core::Check& check : checks) {
            check.findings.clear();
            const auto found = [&](int count, core::Outcome outcome, core::LossCauseId cause) {
                for (; count > 0; --count, left.pop_back())
                    check.findings.push_back({.position = left.back(), .outcome = outcome, .cause = cause});
            };
            found(check.rooted, core::Outcome::Rooted, {});
            for (const core::Loss& loss : check.losses) found(loss.count, core::Outcome::Lost, loss.cause);
            found(check.withdrawn, core::Outcome::Withdrawn, {});
        }
    }
}

/// Made once a run, in the folder for temporary files.
const std::filesystem::path& largeLogbook() {
    static const std::filesystem::path file = [] {
        auto path = std::filesystem::temp_directory_path() / "strikebook_bench_20000.strikebook";
        std::filesystem::remove(path);
        core::Records records = core::demoSeason({.batches = batches, .seed = 1, .today = today});
        lookHoleByHole(records);
        auto logbook = db::Logbook::create(path, records.shelves.facts, benchOptions());
        if (!db::addRecords(logbook, std::move(records), "benchmark records", true)) std::abort();
        return path;
    }();
    return file;
}

void openAndListLargeLogbook(benchmark::State& state) {
    const auto& file = largeLogbook();
    long long cuttings = 0;
    for (auto _ : state) {
        const auto logbook = db::Logbook::open(file, benchOptions());
        const auto lines = logbook.batchLines();
        cuttings = 0;
        for (const auto& line : lines) cuttings += line.tally.stuck;
        benchmark::DoNotOptimize(lines.data());
    }
    state.counters["cuttings"] = static_cast<double>(cuttings);
}
BENCHMARK(openAndListLargeLogbook)->Unit(benchmark::kMillisecond);

void readAllOfLargeLogbook(benchmark::State& state) {
    const auto logbook = db::Logbook::open(largeLogbook(), benchOptions());
    for (auto _ : state) benchmark::DoNotOptimize(logbook.batchRecords());
}
BENCHMARK(readAllOfLargeLogbook)->Unit(benchmark::kMillisecond);

void compareMethodsOverLargeLogbook(benchmark::State& state) {
    const auto logbook = db::Logbook::open(largeLogbook(), benchOptions());
    const auto shelves = logbook.shelves();
    const auto records = logbook.batchRecords();
    for (auto _ : state) benchmark::DoNotOptimize(core::compare({}, shelves, records));
}
BENCHMARK(compareMethodsOverLargeLogbook)->Unit(benchmark::kMillisecond);

core::Spending spendingOf(const core::Records& records) {
    return {.shelves = records.shelves,
            .batches = records.batches,
            .sessions = records.sessions,
            .care = records.care,
            .expenses = records.expenses,
            .today = today,
            .dayStart = {}};
}

void costsOfLargeLogbook(benchmark::State& state) {
    const core::Records records = core::demoSeason({.batches = batches, .seed = 1, .today = today});
    for (auto _ : state) benchmark::DoNotOptimize(core::costsOfBatches(spendingOf(records)));
}
BENCHMARK(costsOfLargeLogbook)->Unit(benchmark::kMillisecond);

void worthOfMethodsOverLargeLogbook(benchmark::State& state) {
    const core::Records records = core::demoSeason({.batches = batches, .seed = 1, .today = today});
    const core::CostsOfBatches costs = core::costsOfBatches(spendingOf(records));
    for (auto _ : state)
        benchmark::DoNotOptimize(core::worthIt({}, {.shelves = records.shelves,
                                                    .batches = records.batches,
                                                    .pottings = records.pottings,
                                                    .costs = costs,
                                                    .today = today}));
}
BENCHMARK(worthOfMethodsOverLargeLogbook)->Unit(benchmark::kMillisecond);

void lossesOverLargeLogbook(benchmark::State& state) {
    const core::Records records = core::demoSeason({.batches = batches, .seed = 1, .today = today});
    for (auto _ : state) benchmark::DoNotOptimize(core::lossesOver(records.batches, records.shelves, {}));
}
BENCHMARK(lossesOverLargeLogbook)->Unit(benchmark::kMillisecond);

void outOfTheOrdinaryInLargeLogbook(benchmark::State& state) {
    const core::Records records = core::demoSeason({.batches = batches, .seed = 1, .today = today});
    for (auto _ : state) benchmark::DoNotOptimize(core::outOfTheOrdinary(records.batches, records.shelves, {}));
}
BENCHMARK(outOfTheOrdinaryInLargeLogbook)->Unit(benchmark::kMillisecond);

}  // namespace
