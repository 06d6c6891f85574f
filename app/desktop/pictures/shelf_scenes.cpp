// SPDX-License-Identifier: MIT
// A form of each shelf, and two things made one.
#include <QDialog>

#include "app/desktop/main_window.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/shelves/shelf_list.h"
#include "app/desktop/shelves/shelf_view.h"

namespace desktop {

namespace {

QDialog* openAtShelf(MainWindow& window, int shelf, const QString& word, const char* button) {
    window.goTo({.page = {}, .kind = Place::Kind::Shelf, .id = shelf});
    auto* view = window.findChild<ShelfView*>(word);
    if (view == nullptr) return nullptr;
    view->focusTable();
    return broughtBy([&] { press(*view, button); });
}

}  // namespace

std::vector<DialogScene> shelfScenes() {
    std::vector<DialogScene> scenes;
    const std::vector<Shelf> shelves = allShelves();
    const auto add = [&](int shelf, const QString& name, const char* button) {
        const QString word = shelves[static_cast<std::size_t>(shelf)].word;
        scenes.push_back({name, [=](MainWindow& window) { return openAtShelf(window, shelf, word, button); }});
    };
    for (int shelf = 0; shelf < static_cast<int>(shelves.size()); ++shelf)
        add(shelf, "form_" + shelves[static_cast<std::size_t>(shelf)].word, "shelfEdit");
    add(0, "new_plant", "shelfNew");
    add(0, "merge", "shelfMerge");
    return scenes;
}

}  // namespace desktop
