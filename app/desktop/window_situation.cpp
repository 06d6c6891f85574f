// SPDX-License-Identifier: MIT
// The part of MainWindow that shows how things stand: which logbook, who may write, what was saved, what went wrong.
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QStackedWidget>
#include <utility>

#include "app/desktop/first_run/first_run_page.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/logbook/restore_dialog.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page_list.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/workspace.h"
#include "db/safekeeping/backup.h"

namespace desktop {

void MainWindow::showSituation() {
    const Workspace& workspace = parts_.context.workspace;
    const bool hasLogbook = workspace.hasLogbook();
    stack_->setCurrentIndex(hasLogbook ? 1 : 0);
    list_->setVisible(hasLogbook);
    head_->setVisible(hasLogbook);
    invented_->setVisible(hasLogbook && workspace.shelves().facts.isInvented);
    saved_->clear();
    bar_->hush();
    if (hasLogbook) {
        firstRun_->clearFault();
        const QString file = QString::fromStdString(workspace.logbook().file().string());
        const QString name = QString::fromStdString(workspace.shelves().facts.name);
        setWindowTitle(tr("%1 – Strikebook").arg(workspace.isReadOnly() ? tr("%1 (read only)").arg(name) : name));
        place_->setText(QFileInfo(file).fileName());
        place_->setToolTip(QDir::toNativeSeparators(file));
        showAccess();
        if (std::exchange(fileOfTrail_, file) != file) trail_.clear();
        showPage(std::max(0, list_->currentRow()));
    } else {
        setWindowTitle(tr("Strikebook"));
        place_->clear();
    }
    emit situationChanged();
}

void MainWindow::showAccess() {
    const Workspace& workspace = parts_.context.workspace;
    if (workspace.logbook().isOpenInAnotherWindow()) {
        const QString file = QString::fromStdString(workspace.logbook().file().string());
        bar_->offer(tr("This logbook is open in another window. Here you can look at it; changes are made there."),
                    tr("&Try again"), [this, file] {
                        parts_.context.workspace.close();
                        commands_->openFile(file);
                    });
    } else if (workspace.isReadOnly()) {
        bar_->say(tr("This file can't be written to, so nothing in it can be changed here."));
    }
}

void MainWindow::showSaved(const db::Changes& changes) {
    const Workspace& workspace = parts_.context.workspace;
    const QDateTime now = QDateTime::fromSecsSinceEpoch(workspace.clock()().time_since_epoch().count());
    saved_->setText(tr("Saved %1").arg(QLocale().toString(now.time(), QLocale::ShortFormat)));
    bar_->offer(tr("Saved: %1.").arg(QString::fromStdString(changes.words)), tr("Un&do"), [this] { undo(); });
    const core::LogbookFacts& facts = workspace.shelves().facts;
    invented_->setVisible(facts.isInvented);
    setWindowTitle(tr("%1 – Strikebook").arg(QString::fromStdString(facts.name)));
    emit situationChanged();
}

void MainWindow::showOpeningFault(const QString& file, const QString& sentence) {
    if (parts_.context.workspace.hasLogbook()) return bar_->say(sentence, MessageBar::Tone::Fault);
    faultyFile_ = file;
    std::vector<db::BackupFile> backups;
    parts_.context.workspace.attemptWithout([&] { backups = db::backupsOf(file.toStdString()); });
    firstRun_->showFault(sentence, backups.empty() ? QString() : momentText(backups.front().madeAt));
}

}  // namespace desktop
