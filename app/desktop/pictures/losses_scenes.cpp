// SPDX-License-Identifier: MIT
// Losses over all records, and what may have gone wrong with the batch that lost most.
#include <QComboBox>
#include <QListWidget>
#include <algorithm>

#include "app/desktop/losses/suspects_dialog.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/scenes.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/trials/trial_power_panel.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

constexpr std::uint32_t seedOfProposals = 20260314;
constexpr int allRecords = 2;

Page* lossesOverAll(MainWindow& window) {
    const std::vector<PageEntry>& pages = window.parts().pages;
    for (int number = 0; number < static_cast<int>(pages.size()); ++number)
        if (pages[static_cast<std::size_t>(number)].name == QStringLiteral("losses")) window.showPage(number);
    auto* page = window.findChild<Page*>("lossesPage");
    auto* span = page ? page->findChild<QComboBox*>("lossesSpan") : nullptr;
    if (!span || span->count() <= allRecords) return nullptr;
    span->setCurrentIndex(allRecords);
    emit span->activated(allRecords);
    return waitFor([page] { return page->sheet() != nullptr; }) ? page : nullptr;
}

/// The batch that lost most.
core::BatchId saddestBatch(const Workspace& workspace) {
    const std::vector<core::BatchLine>& lines = workspace.batchLines();
    const auto most = std::ranges::max_element(lines, {}, [](const core::BatchLine& line) { return line.tally.lost; });
    return most == lines.end() ? core::BatchId{} : most->batch.id;
}

QDialog* openSuspects(MainWindow& window) {
    const PageContext& context = window.parts().context;
    QDialog* dialog = broughtBy([&] { showSuspects(saddestBatch(context.workspace), context, &window); });
    auto* list = dialog ? dialog->findChild<QListWidget*>("suspectList") : nullptr;
    return list && waitFor([list] { return list->count() > 0; }) ? dialog : nullptr;
}

/// The trial of the first suspect that has one.
QDialog* openProposal(MainWindow& window) {
    QDialog* suspects = openSuspects(window);
    auto* list = suspects ? suspects->findChild<QListWidget*>("suspectList") : nullptr;
    const auto* button = suspects ? suspects->findChild<QWidget*>("suspectTrial") : nullptr;
    for (int row = 0; list && row < list->count() && !button->isEnabled(); ++row) list->setCurrentRow(row);
    if (!button || !button->isEnabled()) return suspects;
    auto* dialog = qobject_cast<TrialDialog*>(broughtBy([suspects] { press(*suspects, "suspectTrial"); }));
    if (!dialog) return nullptr;
    dialog->setSeedSource([] { return seedOfProposals; });
    const auto* power = dialog->findChild<TrialPowerPanel*>();
    waitFor([power] { return power->isAnswered(); });
    return dialog;
}

}  // namespace

void takeLosses(Album& album) {
    Page* page = album.front("lossesPage");
    if (!page || !lossesOverAll(album.window())) return;
    album.take("losses");
    album.takePart(*page, "lossesScroll", "lossPareto", "losses_causes");
    album.takePart(*page, "lossesScroll", "lossByStation", "losses_stations");
    album.takePart(*page, "lossesScroll", "lossChartOf", "losses_chart");
}

std::vector<DialogScene> lossesScenes() {
    return {{.name = QStringLiteral("suspects"), .open = openSuspects},
            {.name = QStringLiteral("suspect_trial"), .open = openProposal}};
}

}  // namespace desktop
