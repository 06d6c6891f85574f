// SPDX-License-Identifier: MIT
#include "tests/desktop/whole/whole_window.h"

#include <QApplication>
#include <QTest>

#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"

namespace whole {

namespace {

constexpr core::Date demoDay{std::chrono::year{2026}, std::chrono::March, std::chrono::day{30}};

std::chrono::sys_seconds noonOfDemoDay() {
    return std::chrono::sys_days(demoDay) + std::chrono::hours(12);
}

db::Logbook seasonInMemory() {
    constexpr int batches = 60;
    constexpr int seed = 20260330;
    core::Records records = core::demoSeason({.batches = batches, .seed = seed, .today = demoDay});
    db::Logbook logbook = db::Logbook::inMemory(records.shelves.facts, {.clock = noonOfDemoDay, .author = {}});
    const auto done = db::addRecords(logbook, std::move(records), "an invented season", true);
    if (!done) throw std::logic_error("the season was refused");
    return logbook;
}

}  // namespace

Window::Window(desktop::Prompts* prompts)
    : memory_({folder_.filePath("settings.ini"), folder_.filePath("window.ini")}),
      system_(desktop::paletteFor(desktop::Theme::Light)),
      appearance_(*qApp, memory_, system_),
      workspace_(noonOfDemoDay, "HB"),
      window_(std::make_unique<desktop::MainWindow>(desktop::WindowParts{
          .context = {.workspace = workspace_, .prompts = prompts ? *prompts : prompts_, .memory = &memory_},
          .memory = memory_,
          .appearance = appearance_,
          .pages = desktop::pageEntries(),
          .tasks = desktop::taskEntries()})) {
    workspace_.use(seasonInMemory());
    window_->resize(1280, 800);
    window_->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window_.get()));
}

Window::~Window() = default;

void Window::front(int page) {
    window_->showPage(page);
    settle();
}

void settle() {
    // What is laid out anew may ask for another size once it knows its width.
    constexpr int rounds = 3;
    for (int round = 0; round < rounds; ++round) {
        QApplication::sendPostedEvents();
        QApplication::processEvents();
    }
}

}  // namespace whole
