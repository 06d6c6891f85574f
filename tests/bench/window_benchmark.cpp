// SPDX-License-Identifier: MIT
// The window over a logbook far larger than a grower will ever fill: 20,000 batches, about 1,000,000 cuttings. Drawn offscreen, so these
// are the program's own times without the screen's.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QLineEdit>
#include <QScrollBar>
#include <QTableView>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <memory>

#include "app/desktop/find/find_field.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/memory.h"
#include "app/desktop/prompts.h"
#include "app/desktop/workspace.h"
#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"

namespace {

using Clock = std::chrono::steady_clock;

constexpr int batches = 20'000;
constexpr core::Date today{std::chrono::year{2026}, std::chrono::month{9}, std::chrono::day{1}};

std::chrono::sys_seconds benchTime() {
    return std::chrono::sys_seconds{std::chrono::sys_days{today}};
}

/// Made once a run, in the folder for temporary files.
const std::filesystem::path& largeFile() {
    static const std::filesystem::path file = [] {
        auto path = std::filesystem::temp_directory_path() / "strikebook_bench_window.strikebook";
        std::filesystem::remove(path);
        core::Records records = core::demoSeason({.batches = batches, .seed = 1, .today = today});
        auto logbook = db::Logbook::create(path, records.shelves.facts, {.clock = benchTime, .author = "bench"});
        if (!db::addRecords(logbook, std::move(records), "benchmark records", true)) std::abort();
        return path;
    }();
    return file;
}

double millisecondsSince(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// What a person waits for: everything that was asked for is done, and what of the window has changed is drawn.
void draw(desktop::MainWindow& window) {
    QApplication::processEvents();
    // Else the picture would come with the next beat of a timer.
    QEvent now(QEvent::UpdateRequest);
    QApplication::sendEvent(&window, &now);
}

/// A desk with the large logbook on it. Read only, so that no backup of it is made meanwhile.
class LargeDesk {
  public:
    LargeDesk() {
        openLogbook();
        openWindow();
    }

    void openLogbook() {
        window.reset();
        workspace.use(
            db::Logbook::open(largeFile(), {.clock = benchTime, .author = {}, .access = db::Access::ReadOnly}));
    }

    void openWindow() {
        window.reset();
        window = std::make_unique<desktop::MainWindow>(desktop::WindowParts{.context = {workspace, prompts},
                                                                            .memory = memory,
                                                                            .appearance = appearance,
                                                                            .pages = desktop::pageEntries(),
                                                                            .tasks = desktop::taskEntries()});
        window->resize(1280, 800);
        window->show();
        QApplication::setActiveWindow(window.get());
        draw(*window);
    }

    QTemporaryDir folder;
    desktop::Memory memory{{folder.filePath("settings.ini"), folder.filePath("window.ini")}};
    desktop::SystemTheme system{desktop::paletteFor(desktop::Theme::Light)};
    desktop::Appearance appearance{*qApp, memory, system};
    desktop::DialogPrompts prompts;
    desktop::Workspace workspace{benchTime, "bench"};
    std::unique_ptr<desktop::MainWindow> window;
};

int numberOf(const desktop::MainWindow& window, const QString& page) {
    const auto& pages = window.parts().pages;
    return static_cast<int>(std::ranges::find(pages, page, &desktop::PageEntry::name) - pages.begin());
}

/// The window with the bench, which is its first page: the lines of all batches are read with it.
void openTheWindow(benchmark::State& state) {
    LargeDesk desk;
    for (auto _ : state) {
        desk.openLogbook();
        const auto start = Clock::now();
        desk.openWindow();
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

/// The part of it that is the file's.
void readTheLines(benchmark::State& state) {
    LargeDesk desk;
    for (auto _ : state) {
        desk.openLogbook();
        const auto start = Clock::now();
        benchmark::DoNotOptimize(desk.workspace.batchLines().size());
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

/// The first visit, when the page is made.
void showPageFirst(benchmark::State& state, const QString& page) {
    LargeDesk desk;
    for (auto _ : state) {
        desk.openWindow();
        const auto start = Clock::now();
        desk.window->showPage(numberOf(*desk.window, page));
        draw(*desk.window);
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

/// Until the answer stands there: the records are read and the sums done away from the window meanwhile.
void untilTheAnswer(benchmark::State& state, const QString& page) {
    LargeDesk desk;
    for (auto _ : state) {
        desk.openWindow();
        const auto start = Clock::now();
        desk.window->showPage(numberOf(*desk.window, page));
        while (desk.window->currentPage()->sheet() == nullptr)
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        draw(*desk.window);
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

void showPageAgain(benchmark::State& state, const QString& page) {
    LargeDesk desk;
    const int number = numberOf(*desk.window, page);
    desk.window->showPage(number);
    draw(*desk.window);
    for (auto _ : state) {
        desk.window->showPage(number == 0 ? 1 : 0);
        draw(*desk.window);
        const auto start = Clock::now();
        desk.window->showPage(number);
        draw(*desk.window);
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

/// One after the other, as they are typed, with the list drawn after each.
void typeIntoFind(benchmark::State& state, const QString& words) {
    LargeDesk desk;
    auto* field = desk.window->findChild<desktop::FindField*>("findField");
    field->enter();
    field->setText("b");  // the index is built with the first letter; see firstLetterInFind
    double longest = 0;
    for (auto _ : state) {
        double sum = 0;
        for (int length = 1; length <= words.size(); ++length) {
            const auto start = Clock::now();
            field->setText(words.left(length));
            draw(*desk.window);
            const double took = millisecondsSince(start);
            longest = std::max(longest, took);
            sum += took;
        }
        state.SetIterationTime(sum / 1000 / static_cast<double>(words.size()));
    }
    state.counters["longest_ms"] = longest;
}

void firstLetterInFind(benchmark::State& state) {
    LargeDesk desk;
    for (auto _ : state) {
        desk.openWindow();
        auto* field = desk.window->findChild<desktop::FindField*>("findField");
        field->enter();
        const auto start = Clock::now();
        field->setText("b");
        draw(*desk.window);
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

/// Four hundred steps of so many rows, each drawn: what one frame takes, and the slowest of them. Three rows are a notch of the wheel; forty
/// leave nothing in sight that was there before, as when the bar is dragged.
void scrollTheBatches(benchmark::State& state, int rows) {
    LargeDesk desk;
    desk.window->showPage(numberOf(*desk.window, "batches"));
    draw(*desk.window);
    auto* table = desk.window->findChild<QTableView*>("batchTable");
    constexpr int steps = 400;
    double longest = 0;
    int tooLong = 0;
    for (auto _ : state) {
        table->verticalScrollBar()->setValue(0);
        double sum = 0;
        for (int step = 0; step < steps; ++step) {
            const auto start = Clock::now();
            table->verticalScrollBar()->setValue(step * rows);
            draw(*desk.window);
            const double took = millisecondsSince(start);
            longest = std::max(longest, took);
            if (took > 1000.0 / 60) ++tooLong;
            sum += took;
        }
        state.SetIterationTime(sum / 1000 / steps);
    }
    state.counters["longest_ms"] = longest;
    state.counters["over_16.7_ms"] = tooLong;
}

void filterTheBatches(benchmark::State& state) {
    LargeDesk desk;
    desk.window->showPage(numberOf(*desk.window, "batches"));
    draw(*desk.window);
    auto* filter = desk.window->findChild<QLineEdit*>("batchFilter");
    bool isOn = false;
    for (auto _ : state) {
        isOn = !isOn;
        const auto start = Clock::now();
        filter->setText(isOn ? QStringLiteral("ro") : QString());
        draw(*desk.window);
        state.SetIterationTime(millisecondsSince(start) / 1000);
    }
}

void registerAll() {
    const auto timed = [](benchmark::internal::Benchmark* each, int times) {
        each->UseManualTime()->Iterations(times)->Unit(benchmark::kMillisecond);
    };
    timed(benchmark::RegisterBenchmark("openTheWindow", openTheWindow), 5);
    timed(benchmark::RegisterBenchmark("readTheLines", readTheLines), 5);
    const std::vector<desktop::PageEntry> pages = desktop::pageEntries();
    for (const desktop::PageEntry& page : pages) {
        const std::string name = page.name.toStdString();
        if (page.name != pages.front().name)
            timed(benchmark::RegisterBenchmark(("showPageFirst/" + name).c_str(), showPageFirst, page.name), 5);
        timed(benchmark::RegisterBenchmark(("showPageAgain/" + name).c_str(), showPageAgain, page.name), 5);
    }
    for (const char* page : {"head_to_head", "worth_it"})
        timed(benchmark::RegisterBenchmark((std::string("untilTheAnswer/") + page).c_str(), untilTheAnswer,
                                           QString::fromLatin1(page)),
              5);
    timed(benchmark::RegisterBenchmark("firstLetterInFind", firstLetterInFind), 5);
    timed(benchmark::RegisterBenchmark("typeIntoFind/code", typeIntoFind, QStringLiteral("B2612345")), 5);
    timed(benchmark::RegisterBenchmark("typeIntoFind/words", typeIntoFind, QStringLiteral("ro tub 2")), 5);
    timed(benchmark::RegisterBenchmark("scrollTheBatches/wheel", scrollTheBatches, 3), 3);
    timed(benchmark::RegisterBenchmark("scrollTheBatches/bar", scrollTheBatches, 40), 3);
    timed(benchmark::RegisterBenchmark("filterTheBatches", filterTheBatches), 10);
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    registerAll();
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
