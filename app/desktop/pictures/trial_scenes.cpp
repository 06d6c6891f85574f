// SPDX-License-Identifier: MIT
// The planning of a trial, and a session of one that is to be stuck.
#include <QDialog>
#include <QLabel>
#include <QPushButton>

#include "app/desktop/main_window.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/trials/trial_change_form.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/trials/trial_power_panel.h"
#include "app/desktop/trials/trial_session_dialog.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

constexpr std::uint32_t seedOfScenes = 20260314;

TrialDialog* openPlanning(MainWindow& window) {
    auto* dialog = new TrialDialog(window.parts().context, {}, &window);
    dialog->setSeedSource([] { return seedOfScenes; });
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    const auto* power = dialog->findChild<TrialPowerPanel*>();
    waitFor([power] { return power->isAnswered(); });
    return dialog;
}

QDialog* openDealt(MainWindow& window) {
    TrialDialog* dialog = openPlanning(window);
    press(*dialog, "dealByChance");
    return dialog;
}

/// Of any trial of which a session is to be stuck.
QDialog* openSticking(MainWindow& window) {
    Workspace& workspace = window.parts().context.workspace;
    core::TrialId toStick;
    for (const core::Trial& trial : workspace.shelves().trials)
        if (sessionToStick(trial) > 0) toStick = trial.id;
    if (!toStick.isSet()) return nullptr;
    auto* dialog = new TrialSessionDialog(window.parts().context, toStick, &window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

QDialog* openChanging(MainWindow& window) {
    for (const core::Trial& trial : window.parts().context.workspace.shelves().trials) {
        if (!trial.factor) continue;
        QDialog* form = trialChangeForm(window.parts().context, trial.id, &window);
        form->setAttribute(Qt::WA_DeleteOnClose);
        form->open();
        return form;
    }
    return nullptr;
}

}  // namespace

std::vector<DialogScene> trialScenes() {
    return {{"trial_planned", [](MainWindow& window) -> QDialog* { return openDealt(window); }},
            {"trial_session", openSticking},
            {"trial_changed", openChanging}};
}

}  // namespace desktop
