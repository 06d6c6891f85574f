// SPDX-License-Identifier: MIT
#include "tests/desktop/desk.h"

#include <QApplication>
#include <QTest>

#include "app/desktop/bench/bench_page.h"
#include "app/desktop/history/history_page.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/round/round_dialog.h"
#include "db/actions/records_actions.h"
#include "db/actions/shelf_actions.h"
#include "tests/support/builders.h"

namespace support {

namespace {

std::chrono::sys_seconds deskTime() {
    return std::chrono::sys_days{std::chrono::year{2026} / 3 / 30} + std::chrono::hours{10} + std::chrono::minutes{42};
}

template <class Made, class Base>
auto makes() {
    return [](const desktop::PageContext& context, QWidget* parent) -> Base* { return new Made(context, parent); };
}

}  // namespace

Desk::Desk() {
    memory_ = std::make_unique<desktop::Memory>(desktop::MemoryFiles{path("settings.ini"), path("window.ini")});
    system_ = std::make_unique<desktop::SystemTheme>(desktop::paletteFor(desktop::Theme::Light));
    appearance_ = std::make_unique<desktop::Appearance>(*qApp, *memory_, *system_);
}

Desk::~Desk() = default;

core::Date Desk::today() {
    return core::Date{std::chrono::floor<std::chrono::days>(deskTime())};
}

QString Desk::fileWith(const QString& name, std::vector<core::BatchRecord> batches) const {
    const QString file = path(name);
    core::Records records = recordsOf(std::move(batches));
    db::Logbook logbook =
        db::Logbook::create(file.toStdString(), records.shelves.facts, {.clock = deskTime, .author = {}});
    const auto done = db::addRecords(logbook, std::move(records), "the batches of a test", true);
    EXPECT_TRUE(done.has_value());
    return file;
}

std::vector<core::BatchRecord> Desk::dueBatches(int count) {
    std::vector<core::BatchRecord> batches;
    for (int number = 0; number < count; ++number)
        batches.push_back(aBatch().stuckOn(core::addDays(today(), -7)).stuck(24));
    return batches;
}

std::vector<desktop::PageEntry> Desk::pages() const {
    return {{.name = "bench",
             .title = "Bench",
             .icon = "bench",
             .shortcut = "Ctrl+1",
             .make = makes<desktop::BenchPage, desktop::Page>()},
            {.name = "history",
             .title = "History",
             .icon = "history",
             .shortcut = "Ctrl+9",
             .make = makes<desktop::HistoryPage, desktop::Page>()}};
}

desktop::MainWindow& Desk::window() {
    if (window_) return *window_;
    workspace_ = std::make_unique<desktop::Workspace>(deskTime, "HB");
    window_ = std::make_unique<desktop::MainWindow>(
        desktop::WindowParts{.context = {*workspace_, prompts_},
                             .memory = *memory_,
                             .appearance = *appearance_,
                             .pages = pages(),
                             .tasks = {{.name = desktop::task::round,
                                        .title = "Start &round",
                                        .icon = "round",
                                        .shortcut = "Ctrl+R",
                                        .make = makes<desktop::RoundDialog, QDialog>()}}});
    return *window_;
}

void Desk::open(std::vector<core::BatchRecord> batches) {
    file_ = fileWith("season.strikebook", std::move(batches));
    ASSERT_TRUE(window().commands().openFile(file_));
    settle();
}

desktop::Outcome Desk::renameGrower(const std::string& grower) {
    core::LogbookFacts facts = workspace_->shelves().facts;
    facts.grower = grower;
    return workspace_->run([&](db::Logbook& logbook) { return db::keep(logbook, facts); });
}

std::string Desk::growerOnFile() {
    return someShelves().facts.grower;
}

void Desk::startAgain() {
    window_.reset();
    workspace_.reset();
}

void Desk::show() {
    window().show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window()));
}

void settle() {
    QApplication::sendPostedEvents();
    QApplication::processEvents();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

}  // namespace support
