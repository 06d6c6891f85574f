// SPDX-License-Identifier: MIT
#include "app/desktop/pictures/pictures.h"

#include <QDir>

#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/scenes.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

struct Look {
    const char* name;
    Theme theme;
    int textPercent;
};

constexpr Look looks[] = {{"light", Theme::Light, 100}, {"dark", Theme::Dark, 100}, {"large", Theme::Light, 150}};

}  // namespace

bool takePictures(MainWindow& window, Appearance& appearance, const QString& folder) {
    if (!QDir().mkpath(folder)) return false;
    bool isWhole = true;
    const int textPercent = appearance.textPercent();
    const QString file = QString::fromStdString(window.parts().context.workspace.logbook().file().string());
    for (const Look& look : looks) {
        appearance.wear(look.theme);
        appearance.setTextPercent(look.textPercent);
        window.resize(1280, 800);
        Album album(window, folder, QString::fromLatin1(look.name));
        takePages(album);
        for (const DialogScene& scene : dialogScenes()) album.takeScene(scene);
        takeFind(album);
        takeEmptyBench(album);
        takeFirstRun(album);
        isWhole = window.commands().openFile(file) && album.isWhole() && isWhole;
    }
    appearance.setTextPercent(textPercent);
    return isWhole;
}

}  // namespace desktop
