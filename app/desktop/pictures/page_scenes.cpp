// SPDX-License-Identifier: MIT
#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QListWidget>
#include <QTabWidget>
#include <QTemporaryDir>

#include "app/desktop/find/find_field.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/drawn_photos.h"
#include "app/desktop/pictures/scenes.h"
#include "app/desktop/workspace.h"
#include "core/comparison/comparison.h"

namespace desktop {

namespace {

void waitForHeadToHead(Album& album) {
    if (Page* page = album.front("headToHeadPage")) waitFor([page] { return page->sheet() != nullptr; });
}

void waitForWorth(Album& album) {
    Page* page = album.front("worthItPage");
    const auto* unpriced = page ? page->findChild<QWidget*>("worthEmptyPrices") : nullptr;
    if (unpriced) waitFor([page, unpriced] { return unpriced->isVisible() || page->sheet() != nullptr; });
}

void waitForLosses(Album& album) {
    if (Page* page = album.front("lossesPage")) waitFor([page] { return page->sheet() != nullptr; });
}

/// Of the first plant whose records are many enough to tell what went with rooting.
void takeRecords(Album& album, Page& page) {
    auto* plants = page.findChild<QComboBox*>("plant");
    auto* figure = page.findChild<QWidget*>("goesWithFigure");
    if (!plants || !figure) return;
    for (int plant = 0; plant < plants->count() && figure->isHidden(); ++plant) {
        plants->setCurrentIndex(plant);
        waitForHeadToHead(album);
    }
    album.takePart(page, "answerScroll", "goesWithFigureWords", "head_to_head_records");
    plants->setCurrentIndex(0);
    waitForHeadToHead(album);
}

void takeDoses(Album& album, Page& page) {
    auto* factor = page.findChild<QComboBox*>("factor");
    if (!factor) return;
    factor->setCurrentIndex(factor->findData(static_cast<int>(core::Factor::Treatment)));
    waitForHeadToHead(album);
    album.takePart(page, "answerScroll", "doseFigure1Words", "head_to_head_doses");
    factor->setCurrentIndex(0);
    waitForHeadToHead(album);
}

void takeShelves(Album& album) {
    Page* page = album.front("shelvesPage");
    auto* kinds = page ? page->findChild<QListWidget*>("shelfList") : nullptr;
    if (!kinds) return;
    for (int kind = 1; kind < kinds->count(); ++kind) {
        kinds->setCurrentRow(kind);
        album.take(QStringLiteral("shelves_%1").arg(kind));
    }
    kinds->setCurrentRow(0);
}

/// The first trial on the second tab of the plan.
void takeTrials(Album& album) {
    Page* page = album.front("planPage");
    auto* tabs = page ? page->findChild<QTabWidget*>("planTabs") : nullptr;
    if (!tabs) return;
    tabs->setCurrentIndex(1);
    waitFor([page] { return page->sheet() != nullptr; });
    album.take("trials");
    tabs->setCurrentIndex(0);
}

}  // namespace

void takePages(Album& album) {
    MainWindow& window = album.window();
    const std::vector<PageEntry>& pages = window.parts().pages;
    for (int number = 0; number < static_cast<int>(pages.size()); ++number) {
        window.showPage(number);
        waitForHeadToHead(album);
        waitForLosses(album);
        waitForWorth(album);
        album.take(pages[static_cast<std::size_t>(number)].name);
        takeHeadToHead(album);
        takeShelves(album);
        takeTrials(album);
        takeMixes(album);
        takeClimate(album);
        takeLosses(album);
        takeWorth(album);
    }
    takeOneBatch(album);
    window.showPage(0);
}

void takeHeadToHead(Album& album) {
    Page* page = album.front("headToHeadPage");
    if (!page) return;
    album.takePart(*page, "answerScroll", "speedFigure", "head_to_head_speed");
    takeRecords(album, *page);
    if (auto* all = page->findChild<QAbstractButton*>("allFigures")) {
        all->setChecked(true);
        album.takePart(*page, "answerScroll", "allFigures", "head_to_head_figures");
        all->setChecked(false);
    }
    takeDoses(album, *page);
}

void takeWorth(Album& album) {
    Page* page = album.front("worthItPage");
    if (!page || page->sheet() == nullptr) return;
    album.takePart(*page, "worthScroll", "costPartsFigure", "worth_it_parts");
    album.takePart(*page, "worthScroll", "strikePlaneFigure", "worth_it_turning");
    album.takePart(*page, "worthScroll", "payOffFigure", "worth_it_paid");
    album.takePart(*page, "worthScroll", "worthPlants", "worth_it_plants");
}

void takeOneBatch(Album& album) {
    MainWindow& window = album.window();
    const core::BatchId batch = batchInWork(window, true);
    if (!batch.isSet()) return;
    addDrawnPhotos(window.parts().context.workspace, batch);
    window.showBatch(batch);
    album.take("batch");
    auto* figures = window.findChild<QTabWidget*>("batchFigures");
    for (int tab = 1; figures != nullptr && tab < figures->count(); ++tab) {
        figures->setCurrentIndex(tab);
        album.take(QStringLiteral("batch_%1").arg(tab));
    }
    if (figures) figures->setCurrentIndex(0);
}

void takeFind(Album& album) {
    auto* field = album.window().findChild<FindField*>();
    album.window().showPage(0);
    album.window().activateWindow();
    QApplication::processEvents();
    album.window().findSomething();
    if (!field) return;
    field->insert(QStringLiteral("sal"));
    album.take("find");
    field->clear();
}

void takeEmptyBench(Album& album) {
    const QTemporaryDir folder;
    Workspace& workspace = album.window().parts().context.workspace;
    core::LogbookFacts facts = workspace.shelves().facts;
    facts.isInvented = false;
    workspace.close();
    workspace.create(folder.filePath("Willow Lane.strikebook").toStdString(), facts);
    album.window().showPage(0);
    album.take("bench_empty");
    workspace.close();
}

void takeFirstRun(Album& album) {
    album.window().parts().context.workspace.close();
    album.take("first_run");
}

}  // namespace desktop
