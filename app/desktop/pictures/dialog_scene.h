// SPDX-License-Identifier: MIT
// Every dialog in the middle of the work that opens it: for the pictures of the manual, and for whoever has to go through all of them.
//
//   for (const DialogScene& scene : dialogScenes()) {
//       QDialog* dialog = scene.open(window);      // over a logbook with records
//       ...
//       endScene(window);
//   }
#pragma once

#include <QString>
#include <functional>
#include <vector>

#include "core/records.h"

class QDialog;
class QWidget;

namespace desktop {

class MainWindow;

struct DialogScene {
    QString name;  // its pictures are called after it
    /// What came to the front, with other dialogs below it where the work goes through them; nullptr: nothing did.
    std::function<QDialog*(MainWindow& window)> open;
};

[[nodiscard]] std::vector<DialogScene> dialogScenes();
/// Closes every dialog, innermost first, and forgets what was typed into them.
void endScene(MainWindow& window);

// Parts of the list, by what the dialogs belong to.
[[nodiscard]] std::vector<DialogScene> taskScenes();
[[nodiscard]] std::vector<DialogScene> sessionScenes();
[[nodiscard]] std::vector<DialogScene> batchScenes();
[[nodiscard]] std::vector<DialogScene> shelfScenes();
[[nodiscard]] std::vector<DialogScene> trialScenes();
[[nodiscard]] std::vector<DialogScene> climateScenes();
[[nodiscard]] std::vector<DialogScene> lossesScenes();
[[nodiscard]] std::vector<DialogScene> fileScenes();

// What scenes are made with.

/// The dialog that `act` opens; nullptr when it opens none.
QDialog* broughtBy(const std::function<void()>& act);
/// A button of this name below `within`; nothing happens where there is none.
void press(const QWidget& within, const char* button);
/// Until `claim` holds, with events going on; false when it never does.
bool waitFor(const std::function<bool()>& claim);
/// The newest batch that still has undecided cuttings, with positions or without; the newest of all where there is none such.
[[nodiscard]] core::BatchId batchInWork(MainWindow& window, bool hasPositions);

}  // namespace desktop
