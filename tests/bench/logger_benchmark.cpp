// SPDX-License-Identifier: MIT
// A million rows of a logger, three quantities, invented: looked at, read, and brought into an empty logbook. A program of its own, so that the
// most memory that it ever held is that of this.
#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "app/logger/file_look.h"
#include "app/logger/import_log.h"
#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"

namespace {

constexpr int rows = 1'000'000;
constexpr core::Moment start{std::chrono::sys_days{std::chrono::year{2024} / 1 / 1}};
constexpr core::Moment now{std::chrono::sys_days{std::chrono::year{2026} / 9 / 1}};

/// One row a minute, nearly two years; days that are the day's only on the whole column, decimal commas, both changes of the clocks.
const std::filesystem::path& millionRows() {
    static const std::filesystem::path file = [] {
        auto path = std::filesystem::temp_directory_path() / "strikebook_bench_logger.csv";
        std::ofstream out(path);
        out << "Time;Water temp (°C);EC (µS/cm);RH (%)\n";
        for (int row = 0; row < rows; ++row) {
            const core::Moment moment = start + std::chrono::minutes(row);
            const std::string iso = core::isoText(moment);
            std::array<char, 80> line{};
            std::snprintf(line.data(), line.size(), "%s.%s.%s %s;2%d,%d;12%02d;%d,%d\n", iso.substr(8, 2).c_str(),
                          iso.substr(5, 2).c_str(), iso.substr(0, 4).c_str(), iso.substr(11, 8).c_str(), row % 5,
                          row % 10, row % 100, 50 + row % 40, row % 10);
            out << line.data();
        }
        return path;
    }();
    return file;
}

db::Logbook emptyLogbook() {
    const auto path = std::filesystem::temp_directory_path() / "strikebook_bench_logger.strikebook";
    std::filesystem::remove(path);
    core::Records records =
        core::demoSeason({.batches = 1, .seed = 1, .today = core::Date{std::chrono::year{2026} / 9 / 1}});
    auto logbook = db::Logbook::create(path, records.shelves.facts, {.clock = [] { return now; }, .author = "bench"});
    if (!db::addRecords(logbook, std::move(records), "benchmark records", true)) std::abort();
    return logbook;
}

double mostMegabytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    constexpr double kilobytes = 1024;
    return static_cast<double>(usage.ru_maxrss) / kilobytes;
}

void bringInAMillionRows(benchmark::State& state) {
    const auto& file = millionRows();
    for (auto _ : state) {
        state.PauseTiming();
        db::Logbook logbook = emptyLogbook();
        const core::Shelves shelves = logbook.shelves();
        state.ResumeTiming();
        logger::FileLook look = logger::lookAt(file, shelves);
        for (core::LoggerColumn& column : look.guess.columns) column.station = shelves.stations.front().id;
        look.guess.zone = "UTC";
        const logger::LogContents contents = logger::readLog(file, look.top.form, look.guess, now);
        if (!contents.faults.empty()) std::abort();
        state.counters["peak_MB_read"] = mostMegabytes();
        const auto added = logger::importLog(logbook, contents, "logger.csv", now);
        if (!added || added->added != 3 * std::int64_t{rows}) std::abort();
    }
    state.counters["peak_MB"] = mostMegabytes();
}
BENCHMARK(bringInAMillionRows)->Unit(benchmark::kMillisecond)->Iterations(1);

void readAMillionRows(benchmark::State& state, const char* zone) {
    const auto& file = millionRows();
    const db::Logbook logbook = emptyLogbook();
    const core::Shelves shelves = logbook.shelves();
    logger::FileLook look = logger::lookAt(file, shelves);
    for (core::LoggerColumn& column : look.guess.columns) column.station = shelves.stations.front().id;
    look.guess.zone = zone;
    look.guess.twiceHour = core::TwiceHour::Winter;
    for (auto _ : state) benchmark::DoNotOptimize(logger::readLog(file, look.top.form, look.guess, now));
}
BENCHMARK_CAPTURE(readAMillionRows, utc, "UTC")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(readAMillionRows, berlin, "Europe/Berlin")->Unit(benchmark::kMillisecond);

void lookAtAMillionRows(benchmark::State& state) {
    const auto& file = millionRows();
    const core::Shelves shelves = emptyLogbook().shelves();
    for (auto _ : state) benchmark::DoNotOptimize(logger::lookAt(file, shelves));
}
BENCHMARK(lookAtAMillionRows)->Unit(benchmark::kMillisecond);

}  // namespace
