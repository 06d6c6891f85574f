// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/logbook_commands.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QStandardPaths>
#include <QTimer>
#include <memory>
#include <stop_token>
#include <utility>

#include "app/desktop/logbook/import_dialog.h"
#include "app/desktop/logbook/logbook_dialog.h"
#include "app/desktop/logbook/restore_dialog.h"
#include "app/desktop/memory.h"
#include "app/desktop/prompts.h"
#include "app/desktop/settings/facts_by_locale.h"
#include "app/desktop/workspace.h"
#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"
#include "db/exchange/export_folder.h"
#include "db/safekeeping/backup.h"

namespace desktop {

namespace {

QString documentsFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

}  // namespace

LogbookCommands::LogbookCommands(const PageContext& context, Memory& memory, QWidget* window)
    : QObject(window), context_(context), memory_(memory), window_(window), backup_(context.workspace, this) {
    connect(&context_.workspace, &Workspace::logbookReplaced, this, [this] {
        if (!context_.workspace.hasLogbook() || logbookFile() != backingUp_) backup_.stop();
    });
}

bool LogbookCommands::openFile(const QString& file) {
    const QString whole = QFileInfo(file).absoluteFilePath();
    if (context_.workspace.hasLogbook() && QFileInfo(logbookFile()) == QFileInfo(whole)) return true;
    if (!context_.workspace.open(whole.toStdString())) {
        emit openingFailed(whole, context_.workspace.openingFault());
        return false;
    }
    rememberOpened();
    return true;
}

void LogbookCommands::rememberOpened() {
    memory_.addRecentLogbook(logbookFile());
    memory_.setLastLogbook(logbookFile());
    if (context_.workspace.isReadOnly()) return;
    // After the window has been drawn: nobody waits for the copy.
    QTimer::singleShot(0, this, [this] {
        if (context_.workspace.isReadOnly()) return;
        backingUp_ = logbookFile();
        backup_.ask(
            [](const db::Logbook& logbook, std::stop_token stop) {
                return !db::backUpAutomatically(logbook, false, db::backupsKept, {.stop = std::move(stop), .tell = {}})
                            .empty();
            },
            [](bool) {});
    });
}

QString LogbookCommands::logbookFile() const {
    return QString::fromStdString(context_.workspace.logbook().file().string());
}

QString LogbookCommands::beside(const QString& ending) const {
    const QFileInfo file(logbookFile());
    return file.dir().filePath(file.completeBaseName() + ending);
}

void LogbookCommands::openPicked() {
    const QString file = context_.prompts.pickFileToOpen(
        window_, {.title = tr("Open a logbook"),
                  .place = context_.workspace.hasLogbook() ? QFileInfo(logbookFile()).path() : documentsFolder(),
                  .filter = tr("Logbooks (*.strikebook);;All files (*)"),
                  .suffix = {}});
    if (!file.isEmpty()) openFile(file);
}

void LogbookCommands::openSample() {
    const QString file = QDir(documentsFolder()).filePath(tr("Sample logbook (invented).strikebook"));
    if (QFileInfo::exists(file)) {
        openFile(file);
        return;
    }
    QDir().mkpath(documentsFolder());
    const core::Date today = context_.workspace.today();
    core::Records records = core::demoSeason({.today = today});
    if (!context_.workspace.create(file.toStdString(), records.shelves.facts)) {
        emit openingFailed(file, context_.workspace.openingFault());
        return;
    }
    rememberOpened();
    const Outcome outcome = context_.workspace.run([&](db::Logbook& logbook) {
        return db::addRecords(logbook, std::move(records), tr("the invented seasons").toStdString(), true);
    });
    if (outcome.isDone) emit said(tr("This sample is a file of its own: %1").arg(QDir::toNativeSeparators(file)));
}

core::LogbookFacts LogbookCommands::proposedFacts() const {
    core::LogbookFacts facts = factsByLocale(QLocale());
    facts.name = tr("My cuttings").toStdString();
    facts.grower = memory_.grower().toStdString();
    return facts;
}

void LogbookCommands::makeNew() {
    const QString file = QDir(documentsFolder()).filePath(tr("My cuttings") + ".strikebook");
    auto* dialog = new LogbookDialog(context_, proposedFacts(), file, window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &LogbookDialog::created, this, [this, dialog] {
        memory_.setGrower(QString::fromStdString(dialog->facts().grower));
        rememberOpened();
    });
    dialog->open();
}

void LogbookCommands::importTables() {
    const QString folder =
        context_.prompts.pickFolder(window_, {.title = tr("A folder with batches.csv and checks.csv"),
                                              .place = documentsFolder(),
                                              .filter = {},
                                              .suffix = {}});
    if (folder.isEmpty()) return;
    auto* dialog = new ImportDialog(context_, folder, window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { bringIn(dialog->folder(), dialog->contents()); });
    dialog->open();
}

bool LogbookCommands::createFor(const QString& folder, const db::FolderContents& contents) {
    const QString name = QDir(folder).dirName();
    const QString file =
        context_.prompts.pickFileToSave(window_, {.title = tr("Where the new logbook goes"),
                                                  .place = QDir(documentsFolder()).filePath(name + ".strikebook"),
                                                  .filter = tr("Logbooks (*.strikebook)"),
                                                  .suffix = "strikebook"});
    if (file.isEmpty()) return false;
    core::LogbookFacts facts = proposedFacts();
    facts.name = name.toStdString();
    facts.citation = contents.records.shelves.facts.citation;
    if (contents.hasFacts) facts = contents.records.shelves.facts;
    if (context_.workspace.create(file.toStdString(), facts)) {
        rememberOpened();
        return true;
    }
    emit openingFailed(file, context_.workspace.openingFault());
    return false;
}

void LogbookCommands::bringIn(const QString& folder, const db::FolderContents& contents) {
    const bool isNew = !context_.workspace.hasLogbook();
    if (isNew && !createFor(folder, contents)) return;
    if (contents.records.shelves.facts.isInvented && !context_.workspace.shelves().facts.isInvented) {
        emit said(
            tr("The tables hold invented records and this logbook does not: bring them into a logbook of their own."));
        return;
    }
    const Outcome outcome = context_.workspace.run([&](db::Logbook& logbook) {
        return db::addRecords(logbook, contents.records, tr("tables from %1").arg(QDir(folder).dirName()).toStdString(),
                              isNew && contents.hasFacts);
    });
    if (!outcome.refusals.empty()) emit said(QString::fromStdString(outcome.refusals.front().sentence));
}

void LogbookCommands::exportTables() {
    const QString folder = context_.prompts.pickFileToSave(
        window_,
        {.title = tr("A new folder for the tables"), .place = beside(tr(" tables")), .filter = {}, .suffix = {}});
    if (folder.isEmpty()) return;
    const auto write = [folder](const db::Logbook& logbook, const db::Waiting& waiting) {
        return db::exportFolder(logbook, folder.toStdString(), waiting);
    };
    waitForCopy(tr("Export tables"), tr("Writing the tables to %1.").arg(QFileInfo(folder).fileName()), write,
                [this, folder] { emit said(tr("The tables are in %1.").arg(QDir::toNativeSeparators(folder))); });
}

void LogbookCommands::saveCopy() {
    const QString file = context_.prompts.pickFileToSave(window_, {.title = tr("Save a copy as"),
                                                                   .place = beside(tr(" copy.strikebook")),
                                                                   .filter = tr("Logbooks (*.strikebook)"),
                                                                   .suffix = "strikebook"});
    if (file.isEmpty()) return;
    const auto copy = [file](const db::Logbook& logbook, const db::Waiting& waiting) {
        return db::backUp(logbook, file.toStdString(), waiting);
    };
    waitForCopy(tr("Save a copy"), tr("Writing %1 and checking it.").arg(QFileInfo(file).fileName()), copy,
                [this, file] { emit said(tr("A checked copy is in %1.").arg(QDir::toNativeSeparators(file))); });
}

void LogbookCommands::backUpNow() {
    backup_.stop();  // this one stands for the day's
    const auto made = std::make_shared<std::filesystem::path>();
    const auto backUp = [made](const db::Logbook& logbook, const db::Waiting& waiting) {
        *made = db::backUpAutomatically(logbook, true, db::backupsKept, waiting);
        return !made->empty();
    };
    waitForCopy(tr("Back up"), tr("Writing a backup and checking it."), backUp, [this, made] {
        emit said(tr("Backed up to %1.").arg(QDir::toNativeSeparators(QString::fromStdString(made->string()))));
    });
}

void LogbookCommands::waitForCopy(const QString& title, const QString& sentence, Copying copying,
                                  std::function<void()> done) {
    std::shared_ptr<const db::Logbook> beside;
    const bool isOpen = context_.workspace.attempt([&](db::Logbook& logbook) {
        if (auto other = logbook.beside()) beside = std::make_shared<const db::Logbook>(std::move(*other));
    });
    if (!isOpen || beside == nullptr) return;
    wait(
        title, sentence,
        [beside, copying = std::move(copying)](const db::Waiting& waiting) { return copying(*beside, waiting); },
        std::move(done), [] {});
}

void LogbookCommands::wait(const QString& title, const QString& sentence, WaitingDialog::Work work,
                           std::function<void()> done, std::function<void()> notDone) {
    auto* dialog = new WaitingDialog(context_.workspace, title, sentence, window_);
    connect(dialog, &QDialog::finished, this,
            [dialog, done = std::move(done), notDone = std::move(notDone)](int result) {
                dialog->deleteLater();
                if (result == QDialog::Accepted)
                    done();
                else
                    notDone();
            });
    dialog->start(std::move(work));
}

void LogbookCommands::chooseBackup() {
    std::vector<db::BackupFile> backups;
    const QString file = logbookFile();
    if (!context_.workspace.attemptWithout([&] { backups = db::backupsOf(file.toStdString()); })) return;
    auto* dialog = new RestoreDialog(std::move(backups), window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog, file] { restore(dialog->chosen().file, file); });
    dialog->open();
}

void LogbookCommands::restore(const std::filesystem::path& backup, const QString& file) {
    const Question question{
        .title = tr("Restore a backup"),
        .sentence = tr("%1 goes back to what it was when the backup was made. What is there now is backed up first.")
                        .arg(QFileInfo(file).fileName()),
        .verb = tr("Go back")};
    if (!context_.prompts.confirm(window_, question)) return;
    context_.workspace.close();
    wait(
        tr("Restore a backup"), tr("Checking the backup, and keeping what is there now."),
        [backup, file, clock = context_.workspace.clock()](const db::Waiting& waiting) {
            return db::restore(backup, file.toStdString(), clock, waiting);
        },
        [this, file] {
            if (openFile(file)) emit said(tr("The logbook is back as it was when the backup was made."));
        },
        [this, file] { openFile(file); });
}

void LogbookCommands::closeLogbook() {
    memory_.setLastLogbook({});
    context_.workspace.close();
}

}  // namespace desktop
