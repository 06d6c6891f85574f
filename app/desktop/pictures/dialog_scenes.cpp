// SPDX-License-Identifier: MIT
#include <QAbstractItemView>
#include <QAction>
#include <QDialog>

#include "app/desktop/main_window.h"
#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/scenes.h"

namespace desktop {

namespace {

/// As it looks in the middle of the work: an entry of each sort, the third one refused.
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

void takeByAction(Album& album, const char* action, const QString& name) {
    auto* found = album.window().findChild<QAction*>(action);
    album.takeOpened(name, [found] {
        if (found) found->trigger();
    });
}

}  // namespace

void takeDialogs(Album& album) {
    MainWindow& window = album.window();
    for (const TaskEntry& task : window.parts().tasks)
        album.takeOpened(
            task.name, [&] { window.startTask(task.name); }, typeSomeEntries);
    takeByAction(album, "editSettings", "settings");
    takeByAction(album, "helpKeys", "keyboard");
    takeByAction(album, "helpAbout", "about");
}

}  // namespace desktop
