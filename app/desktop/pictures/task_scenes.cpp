// SPDX-License-Identifier: MIT
// The tasks of the registry, and what the menus open beside them.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QDialog>

#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/dialog_scene.h"

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

DialogScene byTask(const QString& name) {
    return {name, [name](MainWindow& window) {
                QDialog* dialog = broughtBy([&] { window.startTask(name); });
                if (dialog) typeSomeEntries(*dialog);
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
