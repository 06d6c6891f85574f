// SPDX-License-Identifier: MIT
// A form of each shelf, two things made one, and the first prices.
#include <QDialog>
#include <algorithm>

#include "app/desktop/main_window.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/shelves/shelf_list.h"
#include "app/desktop/shelves/shelf_view.h"
#include "app/desktop/shelves/usual_prices_dialog.h"
#include "app/desktop/workspace.h"
#include "db/actions/price_actions.h"

namespace desktop {

namespace {

/// Invented ones for a logbook that has none: a shelf with nothing on it has no form to show.
void addInventedPrices(Workspace& workspace) {
    const core::Shelves& shelves = workspace.shelves();
    const core::Date from = core::addDays(workspace.today(), -100);
    core::Price pump;
    pump.what = "air pump";
    pump.from = from;
    pump.tenThousandths = 249'000;
    pump.lastsYears = 4;
    core::Price medium = pump;
    medium.kind = core::PriceKind::UsedUp;
    medium.what = "coir";
    medium.lastsYears.reset();
    medium.lastsFor = 300;
    medium.basis = core::PriceBasis::Cutting;
    const auto hormone = std::ranges::find_if(
        shelves.treatments, [](const core::Treatment& treatment) { return !treatment.auxins.empty(); });
    const core::Lot lot{.id = {},
                        .name = "bottle 3",
                        .treatment = hormone == shelves.treatments.end() ? core::TreatmentId{} : hormone->id,
                        .usedFrom = from};
    const bool hasPrices = !shelves.prices.empty(), hasLots = !shelves.lots.empty();
    const auto keep = [&](const Workspace::Edit& edit) { return workspace.run(edit).isDone; };
    if (!hasPrices)
        keep([&](db::Logbook& logbook) { return db::addPrices(logbook, {pump, medium}, workspace.today()); });
    if (!hasLots) keep([&](db::Logbook& logbook) { return db::keep(logbook, lot, workspace.today()); });
}

QDialog* openUsualPrices(MainWindow& window) {
    return broughtBy([&] {
        QDialog* dialog = usualPricesDialog(window.parts().context, 0, &window);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->open();
    });
}

QDialog* openAtShelf(MainWindow& window, int shelf, const QString& word, const char* button) {
    addInventedPrices(window.parts().context.workspace);
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
    const int prices = static_cast<int>(ShelfKind::Prices);
    add(prices, "new_price", "shelfNew");
    add(prices, "price_from", "shelfAnother");
    scenes.push_back({"usual_prices", openUsualPrices});
    return scenes;
}

}  // namespace desktop
