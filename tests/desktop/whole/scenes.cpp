// SPDX-License-Identifier: MIT
#include "tests/desktop/whole/scenes.h"

#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/scenes.h"

namespace whole {

namespace {

desktop::Album visiting(desktop::MainWindow& window, const Visit& visit) {
    return {window, [&window, visit](const QString& name, QWidget* dialog) {
                settle();
                visit(name, dialog ? *dialog : static_cast<QWidget&>(window));
                settle();
                return true;
            }};
}

}  // namespace

void visitPages(desktop::MainWindow& window, const Visit& visit) {
    desktop::Album album = visiting(window, visit);
    desktop::takePages(album);
    desktop::takeFind(album);
    EXPECT_TRUE(album.isWhole());
}

void visitDialogs(desktop::MainWindow& window, const Visit& visit) {
    desktop::Album album = visiting(window, visit);
    for (const desktop::DialogScene& scene : desktop::dialogScenes()) album.takeScene(scene);
    EXPECT_TRUE(album.isWhole());
}

void visitBeginnings(desktop::MainWindow& window, const Visit& visit) {
    desktop::Album album = visiting(window, visit);
    desktop::takeEmptyBench(album);
    desktop::takeFirstRun(album);
    EXPECT_TRUE(album.isWhole());
}

}  // namespace whole
