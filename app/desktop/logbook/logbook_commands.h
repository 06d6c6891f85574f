// SPDX-License-Identifier: MIT
// What the File menu and the first page do with whole logbooks: make, open, copy, bring in, hand out, back up, restore, close.
#pragma once

#include <QObject>
#include <QString>
#include <filesystem>
#include <functional>

#include "app/desktop/background/read_beside.h"
#include "app/desktop/background/waiting_dialog.h"
#include "app/desktop/page.h"

namespace db {
struct FolderContents;
}
namespace core {
struct LogbookFacts;
}

namespace desktop {

class Memory;

class LogbookCommands : public QObject {
    Q_OBJECT

  public:
    /// Dialogs open over `window`.
    LogbookCommands(const PageContext& context, Memory& memory, QWidget* window);

    /// True when it is open afterwards; else openingFailed() was emitted.
    bool openFile(const QString& file);
    void openPicked();
    void openSample();
    void makeNew();
    void importTables();
    void exportTables();
    void saveCopy();
    void backUpNow();
    void chooseBackup();
    /// Puts `backup` in the place of `file`, which may be damaged, after asking, and opens it.
    void restore(const std::filesystem::path& backup, const QString& file);
    void closeLogbook();

  signals:
    void said(const QString& sentence);
    void openingFailed(const QString& file, const QString& sentence);

  private:
    using Copying = std::function<bool(const db::Logbook&, const db::Waiting&)>;

    void rememberOpened();
    /// Copies the open logbook from a thread of its own; `done` comes when it is there.
    void waitForCopy(const QString& title, const QString& sentence, Copying copying, std::function<void()> done);
    void wait(const QString& title, const QString& sentence, WaitingDialog::Work work, std::function<void()> done,
              std::function<void()> notDone);
    void bringIn(const QString& folder, const db::FolderContents& contents);
    bool createFor(const QString& folder, const db::FolderContents& contents);
    [[nodiscard]] core::LogbookFacts proposedFacts() const;
    [[nodiscard]] QString logbookFile() const;
    [[nodiscard]] QString beside(const QString& ending) const;  // the logbook's own path with another ending

    PageContext context_;
    Memory& memory_;
    QWidget* window_;
    ReadBeside<bool> backup_;  // the day's, after opening
    QString backingUp_;
};

}  // namespace desktop
