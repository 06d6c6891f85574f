// SPDX-License-Identifier: MIT
#include "app/desktop/pictures/dialog_scene.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QElapsedTimer>
#include <QPointer>
#include <algorithm>

#include "app/desktop/main_window.h"
#include "app/desktop/positions/kept_marks.h"
#include "app/desktop/round/unfinished_round.h"
#include "app/desktop/session/unfinished_session.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

QList<QDialog*> dialogsInSight() {
    QList<QDialog*> dialogs;
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* dialog = qobject_cast<QDialog*>(widget); dialog != nullptr && dialog->isVisible()) dialogs << dialog;
    return dialogs;
}

/// Also across windows, where QWidget::isAncestorOf() ends; that is true of a widget and itself, too.
bool standsOver(const QDialog* one, const QDialog* other) {
    const QWidget* above = one->parentWidget();
    while (above != nullptr && above != other) above = above->parentWidget();
    return above != nullptr;
}

/// One that no other stands over.
QDialog* innermost() {
    const QList<QDialog*> dialogs = dialogsInSight();
    const auto found = std::ranges::find_if(dialogs, [&](const QDialog* dialog) {
        return std::ranges::none_of(dialogs, [&](const QDialog* each) { return standsOver(each, dialog); });
    });
    return found == dialogs.end() ? nullptr : *found;
}

}  // namespace

std::vector<DialogScene> dialogScenes() {
    std::vector<DialogScene> scenes;
    for (auto part :
         {taskScenes, sessionScenes, batchScenes, shelfScenes, trialScenes, climateScenes, lossesScenes, fileScenes}) {
        std::vector<DialogScene> more = part();
        scenes.insert(scenes.end(), more.begin(), more.end());
    }
    return scenes;
}

void endScene(MainWindow& window) {
    // done(), not close(): what stands in a form is meant to be thrown away, and nobody is there to be asked.
    // Deleted at once, so that the next scene doesn't find one that is only hidden.
    while (const QPointer<QDialog> dialog = innermost()) {
        dialog->done(QDialog::Rejected);
        delete dialog.data();
    }
    // Those that closed by themselves and wait to be deleted would miss what is forgotten below.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    window.bar().hush();
    Workspace& workspace = window.parts().context.workspace;
    UnfinishedRound::of(workspace).forget();
    UnfinishedSession::of(workspace).sheet = {};
    for (const core::Station& station : workspace.shelves().stations) KeptMarks::of(workspace).keep(station.id, {});
}

QDialog* broughtBy(const std::function<void()>& act) {
    const QList<QDialog*> before = dialogsInSight();
    act();
    for (QDialog* each : dialogsInSight())
        if (!before.contains(each)) return each;
    return nullptr;
}

void press(const QWidget& within, const char* button) {
    if (auto* found = within.findChild<QAbstractButton*>(QLatin1String(button))) found->click();
}

bool waitFor(const std::function<bool()>& claim) {
    constexpr int mostMilliseconds = 60'000;
    QElapsedTimer timer;
    timer.start();
    while (!claim() && timer.elapsed() < mostMilliseconds) QApplication::processEvents(QEventLoop::AllEvents, 50);
    return claim();
}

core::BatchId batchInWork(MainWindow& window, bool hasPositions) {
    const std::vector<core::BatchLine>& lines = window.parts().context.workspace.batchLines();
    const auto found = std::ranges::find_if(lines.rbegin(), lines.rend(), [&](const core::BatchLine& line) {
        return !core::isClosed(line.batch, line.tally) && line.tally.lastCheckedOn.has_value() &&
               line.batch.positions.empty() != hasPositions;
    });
    if (found != lines.rend()) return found->batch.id;
    return lines.empty() ? core::BatchId{} : lines.back().batch.id;
}

}  // namespace desktop
