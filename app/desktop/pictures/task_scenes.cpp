// SPDX-License-Identifier: MIT
// The tasks of the registry, and what the menus open beside them.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QDateTime>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QPushButton>
#include <QTextStream>

#include "app/desktop/logger/logger_dialog.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

/// An entry of each sort, the third one refused.
void typeSomeEntries(QDialog& dialog) {
    auto* table = dialog.findChild<QAbstractItemView*>("roundTable");
    if (!table) return;
    int row = 0;
    for (const char* entry : {"*", "+1-1r", "99", "+2/potted on", "+1.", "-1d"}) {
        const QModelIndex cell = table->model()->index(row++, table->currentIndex().column());
        if (cell.isValid()) table->model()->setData(cell, QString(entry));
    }
    table->setCurrentIndex(table->model()->index(2, table->currentIndex().column()));
}

/// Ten days of an invented tent, a row each ten minutes, with a gap of five hours.
QString inventedLog(core::Date today) {
    const QString name = QDir::temp().filePath(QStringLiteral("tent.csv"));
    QFile file(name);
    if (!file.open(QIODevice::WriteOnly)) return {};
    QTextStream text(&file);
    text << "Logger;7041\nTimestamp;Temperature (°C);Humidity (%);Dew point (°C)\n";
    constexpr int days = 10, rows = 1440, gapFrom = 700, gapUntil = 730, stepsOfADay = 144;
    const std::chrono::sys_seconds first = std::chrono::sys_days(core::addDays(today, -days));
    const QDateTime start = QDateTime::fromSecsSinceEpoch(first.time_since_epoch().count(), Qt::UTC);
    for (int row = 0; row < rows; ++row) {
        if (row >= gapFrom && row < gapUntil) continue;
        const int rise = std::abs(row % stepsOfADay - stepsOfADay / 2);  // tenths of a degree, least at noon
        text << start.addSecs(600 * row).toString(QStringLiteral("dd.MM.yyyy HH:mm")) << ';' << 24 - rise / 10 << ','
             << rise % 10 << ';' << 70 + rise / 4 << ",0;17,5\n";
    }
    return name;
}

void showALog(LoggerDialog& dialog, core::Date today) {
    dialog.setFile(inventedLog(today));
    const auto* table = dialog.findChild<QWidget*>("loggerColumns");
    waitFor([&] { return table->isVisible(); });
    if (auto* station = dialog.findChild<QComboBox*>("loggerStation2");
        station != nullptr && station->currentIndex() < 0) {
        station->setCurrentIndex(0);
        emit station->activated(0);
    }
    const auto* done = dialog.findChild<QPushButton*>("loggerBringIn");
    waitFor([&] { return done->isEnabled(); });
}

DialogScene byTask(const QString& name) {
    return {name, [name](MainWindow& window) {
                QDialog* dialog = broughtBy([&] { window.startTask(name); });
                if (dialog) typeSomeEntries(*dialog);
                if (auto* logger = qobject_cast<LoggerDialog*>(dialog))
                    showALog(*logger, window.parts().context.workspace.today());
                return dialog;
            }};
}

DialogScene byAction(const char* name, const char* action) {
    return {name, [action](MainWindow& window) {
                return broughtBy([&] {
                    if (auto* found = window.findChild<QAction*>(QLatin1String(action))) found->trigger();
                });
            }};
}

/// A preview that a button of a task's dialog opens.
DialogScene byButtonOf(const QString& task, const char* name, const char* button) {
    return {name, [task, button](MainWindow& window) -> QDialog* {
                const QDialog* first = broughtBy([&] { window.startTask(task); });
                return first == nullptr ? nullptr : broughtBy([&] { press(*first, button); });
            }};
}

QDialog* openMethod(MainWindow& window) {
    window.goTo({.page = "head_to_head"});
    Page* page = window.currentPage();
    const auto* how = page->findChild<QAbstractButton*>("differenceFigureWorkedOut");
    waitFor([&] { return page->sheet() != nullptr; });
    return how == nullptr ? nullptr : broughtBy([&] { press(*page, "differenceFigureWorkedOut"); });
}

}  // namespace

std::vector<DialogScene> taskScenes() {
    std::vector<DialogScene> scenes;
    for (const TaskEntry& task : taskEntries()) scenes.push_back(byTask(task.name));
    scenes.push_back(byButtonOf(task::papers, "labels", "paperLabels"));
    scenes.push_back(byButtonOf(task::papers, "session_sheet", "paperSheet"));
    scenes.push_back(byAction("settings", "editSettings"));
    scenes.push_back(byAction("keyboard", "helpKeys"));
    scenes.push_back(byAction("about", "helpAbout"));
    scenes.push_back({"method", openMethod});
    return scenes;
}

}  // namespace desktop
