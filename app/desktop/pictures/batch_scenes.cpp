// SPDX-License-Identifier: MIT
// What is opened from a batch's page.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QDialog>

#include "app/desktop/batches/batch_events.h"
#include "app/desktop/main_window.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/drawn_photos.h"
#include "app/desktop/positions/place_batch_dialog.h"

namespace desktop {

namespace {

const QWidget* pageOf(MainWindow& window) {
    window.showBatch(batchInWork(window, true));
    return window.findChild<QWidget*>("batchPage");
}

DialogScene ofBatch(const char* name, const char* button) {
    return {name, [button](MainWindow& window) -> QDialog* {
                const QWidget* page = pageOf(window);
                const auto* found = page == nullptr ? nullptr : page->findChild<QWidget*>(QLatin1String(button));
                // The summary, which is printed, is worked out beside the window.
                if (found == nullptr || !waitFor([found] { return found->isEnabled(); })) return nullptr;
                return broughtBy([&] { press(*page, button); });
            }};
}

QDialog* openEvent(MainWindow& window, EventKind kind) {
    const QWidget* page = pageOf(window);
    auto* only = page == nullptr ? nullptr : page->findChild<QComboBox*>("timelineKind");
    auto* table = page == nullptr ? nullptr : page->findChild<QAbstractItemView*>("timeline");
    if (only == nullptr || table == nullptr) return nullptr;
    only->setCurrentIndex(only->findData(static_cast<int>(kind)));
    table->setCurrentIndex(table->model()->index(0, 0));
    QDialog* dialog = broughtBy([&] { press(*page, "editEvent"); });
    only->setCurrentIndex(0);
    return dialog;
}

QDialog* openPhotos(MainWindow& window, const char* button) {
    addDrawnPhotos(window.parts().context.workspace, batchInWork(window, true));
    const QWidget* page = pageOf(window);
    auto* photos = page == nullptr ? nullptr : page->findChild<QAbstractItemView*>("photoList");
    if (photos == nullptr || !waitFor([photos] { return photos->model()->rowCount() > 0; })) return nullptr;
    const auto* shown = page->findChild<QAbstractButton*>(QLatin1String(button));
    // Facts are one photo's. The wall is read beside the window, perhaps once more, and nothing is chosen on it then.
    QDialog* opened = nullptr;
    const auto opens = [&] {
        photos->setCurrentIndex(photos->model()->index(0, 0));
        if (QLatin1String(button) == QLatin1String("largePhoto")) photos->selectAll();
        if (shown->isEnabled()) opened = broughtBy([&] { press(*page, button); });
        return opened != nullptr;
    };
    return shown != nullptr && waitFor(opens) ? opened : nullptr;
}

QDialog* openSessionExpense(MainWindow& window) {
    const QWidget* page = pageOf(window);
    QDialog* session = page == nullptr ? nullptr : broughtBy([&] { press(*page, "editSession"); });
    return session == nullptr ? nullptr : broughtBy([&] { press(*session, "addSessionExpense"); });
}

QDialog* openPlaces(MainWindow& window) {
    auto* dialog = new PlaceBatchDialog(window.parts().context, batchInWork(window, false), &window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

}  // namespace

std::vector<DialogScene> batchScenes() {
    return {ofBatch("check", "recordCheck"),
            ofBatch("batch_facts", "editBatch"),
            ofBatch("session_facts", "editSession"),
            ofBatch("close_batch", "closeOrReopen"),
            ofBatch("one_reading", "newReading"),
            ofBatch("care", "newCare"),
            ofBatch("expense", "newExpense"),
            ofBatch("potted_on", "newPotting"),
            {"session_expense", openSessionExpense},
            {"readings_corrected", [](MainWindow& window) { return openEvent(window, EventKind::Readings); }},
            {"photo_facts", [](MainWindow& window) { return openPhotos(window, "photoFacts"); }},
            {"photos_side_by_side", [](MainWindow& window) { return openPhotos(window, "largePhoto"); }},
            {"place_batch", openPlaces},
            ofBatch("print", "printBatch")};
}

}  // namespace desktop
