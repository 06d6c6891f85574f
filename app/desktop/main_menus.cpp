// SPDX-License-Identifier: MIT
#include "app/desktop/main_menus.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QDir>
#include <QMenu>
#include <QMenuBar>

#include "app/desktop/help/about_dialog.h"
#include "app/desktop/help/keyboard_dialog.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/memory.h"
#include "app/desktop/names/mnemonic.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/review/season_review_dialog.h"
#include "app/desktop/settings/settings_dialog.h"
#include "app/desktop/workspace.h"
#include "app/report/caution_words.h"

namespace desktop {

MainMenus::MainMenus(MainWindow& window) : QObject(&window), window_(window) {
    addLogbook();
    addRecord();
    addEdit();
    addView();
    addHelp();
    connect(&window_, &MainWindow::situationChanged, this, &MainMenus::refresh);
    refresh();
}

QAction* MainMenus::add(QMenu* menu, const QString& name, const QString& text, const QString& keys, Doing doing) {
    QAction* action = menu->addAction(text);
    action->setObjectName(name);
    action->setShortcuts(QKeySequence::listFromString(keys));
    connect(action, &QAction::triggered, this, [doing = std::move(doing)] { doing(); });
    return action;
}

void MainMenus::addLogbook() {
    LogbookCommands& commands = window_.commands();
    QMenu* menu = window_.menuBar()->addMenu(tr("&File"));
    add(menu, "fileNew", tr("&New logbook…"), "Ctrl+Shift+N", [&] { commands.makeNew(); });
    add(menu, "fileOpen", tr("&Open…"), "Ctrl+O", [&] { commands.openPicked(); });
    recent_ = menu->addMenu(tr("Open &recent"));
    connect(recent_, &QMenu::aboutToShow, this, &MainMenus::fillRecent);
    add(menu, "fileSample", tr("Open the sa&mple logbook"), {}, [&] { commands.openSample(); });
    menu->addSeparator();
    needsLogbook_ << add(menu, "fileCopy", tr("&Save a copy as…"), "Ctrl+Shift+S", [&] { commands.saveCopy(); });
    needsWriting_ << add(menu, "fileImport", tr("&Import tables…"), {}, [&] { commands.importTables(); });
    needsWriting_ << add(menu, "fileLogger", tr("Import readings of a lo&gger…"), {},
                         [this] { window_.startTask(task::logger); });
    needsLogbook_ << add(menu, "fileExport", tr("&Export tables…"), {}, [&] { commands.exportTables(); });
    menu->addSeparator();
    needsLogbook_ << add(menu, "fileBackUp", tr("&Back up now"), {}, [&] { commands.backUpNow(); });
    needsWriting_ << add(menu, "fileRestore", tr("Res&tore a backup…"), {}, [&] { commands.chooseBackup(); });
    menu->addSeparator();
    needsLogbook_ << add(menu, "fileSeasonReview", tr("Season re&view…"), {}, [this] { showSeasonReview(); });
    print_ = add(menu, "filePrint", tr("&Print…"), "Ctrl+P", [this] { window_.printPage(); });
    menu->addSeparator();
    needsLogbook_ << add(menu, "fileClose", tr("&Close logbook"), "Ctrl+W", [&] { commands.closeLogbook(); });
    add(menu, "fileQuit", tr("&Quit"), "Ctrl+Q", [this] { window_.close(); });
}

void MainMenus::addRecord() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Record"));
    for (const TaskEntry& task : window_.parts().tasks) {
        QAction* action = add(menu, "task_" + task.name, task.title, task.shortcut,
                              [this, name = task.name] { window_.startTask(name); });
        action->setIcon(icon(task.icon));
        needsWriting_ << action;
    }
}

void MainMenus::addEdit() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Edit"));
    undo_ = add(menu, "editUndo", tr("&Undo"), "Ctrl+Z", [this] { window_.undo(); });
    undo_->setIcon(icon("undo"));
    redo_ = add(menu, "editRedo", tr("&Redo"), "Ctrl+Shift+Z; Ctrl+Y", [this] { window_.redo(); });
    redo_->setIcon(icon("redo"));
    menu->addSeparator();
    QAction* find = add(menu, "editFind", tr("Fin&d a batch, plant, station or page"), "Ctrl+K",
                        [this] { window_.findSomething(); });
    find->setIcon(icon("find"));
    needsLogbook_ << find;
    needsLogbook_ << add(menu, "editFilter", tr("&Filter"), "Ctrl+F", [this] {
        if (Page* page = window_.currentPage()) page->focusFilter();
    });
    menu->addSeparator();
    add(menu, "editSettings", tr("&Settings…"), "Ctrl+,",
        [this] { showSettings(window_.parts().context, window_.parts().appearance, &window_); });
}

void MainMenus::addView() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&View"));
    const std::vector<PageEntry>& pages = window_.parts().pages;
    for (int number = 0; number < static_cast<int>(pages.size()); ++number) {
        const PageEntry& page = pages[static_cast<std::size_t>(number)];
        QAction* action =
            add(menu, "page_" + page.name, page.title, page.shortcut, [this, number] { window_.showPage(number); });
        action->setIcon(icon(page.icon));
        needsLogbook_ << action;
    }
    menu->addSeparator();
    back_ = add(menu, "viewBack", tr("&Back"), "Alt+Left", [this] { window_.goBack(); });
    back_->setIcon(icon(window_.isRightToLeft() ? "forward" : "back"));
    forward_ = add(menu, "viewForward", tr("For&ward"), "Alt+Right", [this] { window_.goForward(); });
    forward_->setIcon(icon(window_.isRightToLeft() ? "back" : "forward"));
    menu->addSeparator();
    add(menu, "viewPageList", tr("Page &list"), "F9", [this] { window_.togglePageList(); });
    add(menu, "viewFullScreen", tr("&Full screen"), "F11", [this] { window_.toggleFullScreen(); });
    menu->addSeparator();
    Appearance& appearance = window_.parts().appearance;
    add(menu, "viewLarger", tr("&Larger text"), "Ctrl++; Ctrl+=", [&] { appearance.makeTextLarger(); });
    add(menu, "viewSmaller", tr("&Smaller text"), "Ctrl+-", [&] { appearance.makeTextSmaller(); });
    add(menu, "viewNormal", tr("&Normal text"), "Ctrl+0", [&] { appearance.resetText(); });
    menu->addSeparator();
    addLooks(menu);
}

void MainMenus::addLooks(QMenu* view) {
    QMenu* menu = view->addMenu(tr("L&ook"));
    auto* group = new QActionGroup(this);
    Appearance& appearance = window_.parts().appearance;
    const auto offer = [&](Theme theme, const QString& text) {
        QAction* action =
            add(menu, "look_" + wordFor(theme), text, {}, [&appearance, theme] { appearance.setTheme(theme); });
        action->setCheckable(true);
        action->setChecked(appearance.theme() == theme);
        group->addAction(action);
    };
    offer(Theme::System, tr("As the &system"));
    offer(Theme::Light, tr("&Light"));
    offer(Theme::Dark, tr("&Dark"));
    offer(Theme::HighContrast, tr("&High contrast"));
}

void MainMenus::addHelp() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Help"));
    add(menu, "helpKeys", tr("&Keyboard list"), "Ctrl+?; Ctrl+Shift+/",
        [this] { showKeyboardList(*window_.menuBar(), &window_); });
    needsLogbook_ << add(menu, "helpCautions", tr("What to &mind…"), {}, [this] { showCautionSheet(); });
    add(menu, "helpAbout", tr("&About Strikebook"), {}, [this] { showAbout(&window_); });
}

void MainMenus::showCautionSheet() {
    const PageContext& context = window_.parts().context;
    auto sheet = std::make_shared<const report::Sheet>(
        report::cautionSheet(context.workspace.shelves().facts, printedAt(context.workspace)));
    showPrintPreview(sheet, sheet->title, context, &window_);
}

void MainMenus::showSeasonReview() {
    auto* dialog = new SeasonReviewDialog(window_.parts().context, &window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &SeasonReviewDialog::said, &window_, &MainWindow::say);
    dialog->open();
}

void MainMenus::fillRecent() {
    recent_->clear();
    const QStringList files = window_.parts().memory.recentLogbooks();
    for (const QString& file : files)
        connect(recent_->addAction(asMenuText(QDir::toNativeSeparators(file))), &QAction::triggered, this,
                [this, file] { window_.commands().openFile(file); });
    if (files.isEmpty()) recent_->addAction(tr("None yet"))->setEnabled(false);
}

void MainMenus::refresh() {
    const Workspace& workspace = window_.parts().context.workspace;
    for (QAction* action : needsLogbook_) action->setEnabled(workspace.hasLogbook());
    // With no logbook open, tables become a new one.
    for (QAction* action : needsWriting_)
        action->setEnabled(!workspace.isReadOnly() ||
                           (action->objectName() == "fileImport" && !workspace.hasLogbook()));
    const QString undoWords = workspace.wordsToUndo();
    const QString redoWords = workspace.wordsToRedo();
    undo_->setText(undoWords.isEmpty() ? tr("&Undo") : tr("&Undo %1").arg(asMenuText(undoWords)));
    redo_->setText(redoWords.isEmpty() ? tr("&Redo") : tr("&Redo %1").arg(asMenuText(redoWords)));
    undo_->setEnabled(!undoWords.isEmpty() && !workspace.isReadOnly());
    redo_->setEnabled(!redoWords.isEmpty() && !workspace.isReadOnly());
    back_->setEnabled(workspace.hasLogbook() && window_.hasWayBack());
    forward_->setEnabled(workspace.hasLogbook() && window_.hasWayForward());
    const Page* page = window_.currentPage();
    print_->setEnabled(page && page->sheet());
}

}  // namespace desktop
