// SPDX-License-Identifier: MIT
// A session under way, and what is opened from it.
#include <QDialog>
#include <QListWidget>

#include "app/desktop/main_window.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/session/session_dialog.h"
#include "app/desktop/session/session_grid.h"
#include "app/desktop/session/session_model.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

/// Three batches as somebody types them, of what stands on the shelves; the last wants more cuttings than any station holds.
void typeSomeBatches(SessionModel& model) {
    const core::Shelves& shelves = model.workspace().shelves();
    const auto type = [&](int row, SessionColumn column, const QString& text) {
        model.grid()->setData(model.grid()->index(row, static_cast<int>(column)), text);
    };
    if (shelves.plants.size() < 3 || shelves.stations.size() < 3 || shelves.cuttingKinds.empty()) return;
    for (int row = 0; row < 3; ++row) {
        const auto number = static_cast<std::size_t>(row);
        type(row, SessionColumn::Plant, QString::fromStdString(core::fullName(shelves.plants[number])));
        type(row, SessionColumn::CuttingKind, QString::fromStdString(shelves.cuttingKinds.front().name));
        type(row, SessionColumn::Station, QString::fromStdString(shelves.stations[number].name));
        type(row, SessionColumn::Count, row < 2 ? QStringLiteral("12") : QStringLiteral("900"));
        if (row < 2) model.grid()->offerRow();
    }
}

SessionDialog* openTypedSession(MainWindow& window) {
    auto* dialog = qobject_cast<SessionDialog*>(broughtBy([&] { window.startTask(task::session); }));
    if (dialog) typeSomeBatches(dialog->model());
    return dialog;
}

/// What a button opens while the session is on the first row, at the station.
DialogScene inSession(const char* name, const char* button) {
    return {name, [button](MainWindow& window) -> QDialog* {
                SessionDialog* session = openTypedSession(window);
                auto* grid = session == nullptr ? nullptr : session->findChild<SessionGrid*>();
                if (grid == nullptr) return nullptr;
                grid->goTo(0, static_cast<int>(SessionColumn::Station));
                QDialog* dialog = broughtBy([&] { press(*session, button); });
                auto* arms = dialog == nullptr ? nullptr : dialog->findChild<QListWidget*>("arms");
                for (int arm = 0; arms != nullptr && arm < std::min(2, arms->count()); ++arm)
                    arms->item(arm)->setCheckState(Qt::Checked);
                return dialog;
            }};
}

/// With its batches in the logbook; they are taken back at once.
QDialog* openSavedSession(MainWindow& window) {
    SessionDialog* session = openTypedSession(window);
    if (session == nullptr) return nullptr;
    session->model().grid()->remove(2);
    press(*session, "saveSession");
    window.parts().context.workspace.undo();
    return session;
}

}  // namespace

std::vector<DialogScene> sessionScenes() {
    return {{"session_typed", [](MainWindow& window) -> QDialog* { return openTypedSession(window); }},
            {"session_saved", openSavedSession},
            inSession("split", "splitByChance"),
            inSession("new_station", "newStation"),
            inSession("new_treatment", "newTreatment")};
}

}  // namespace desktop
