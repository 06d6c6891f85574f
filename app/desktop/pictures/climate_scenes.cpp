// SPDX-License-Identifier: MIT
// The climate of a station since a batch was stuck there, and what holds where.
#include <QComboBox>

#include "app/desktop/climate/own_bands_dialog.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/scenes.h"

namespace desktop {

void takeClimate(Album& album) {
    Page* page = album.front("climatePage");
    auto* span = page ? page->findChild<QComboBox*>("climateSpan") : nullptr;
    constexpr int sinceTheNewest = 4;
    if (!span || span->count() <= sinceTheNewest) return;
    span->setCurrentIndex(sinceTheNewest);
    emit span->activated(sinceTheNewest);
    waitFor([page] { return page->sheet() != nullptr; });
    album.take("climate");
}

std::vector<DialogScene> climateScenes() {
    return {{.name = QStringLiteral("own_bands"), .open = [](MainWindow& window) -> QDialog* {
                 return broughtBy([&] {
                     auto* dialog = new OwnBandsDialog(window.parts().context, &window);
                     dialog->setAttribute(Qt::WA_DeleteOnClose);
                     dialog->open();
                 });
             }}};
}

}  // namespace desktop
