// SPDX-License-Identifier: MIT
// Picks one of a logbook's backups, newest first. What is done with it is the caller's.
#pragma once

#include <QDialog>
#include <vector>

#include "db/safekeeping/backup.h"

class QListWidget;

namespace desktop {

/// "14 March 2026, 10:42", in local time.
[[nodiscard]] QString momentText(const std::string& utc);

class RestoreDialog : public QDialog {
    Q_OBJECT

  public:
    explicit RestoreDialog(std::vector<db::BackupFile> backups, QWidget* parent = nullptr);

    /// Contract: accepted.
    [[nodiscard]] const db::BackupFile& chosen() const;

  private:
    std::vector<db::BackupFile> backups_;
    QListWidget* list_;
};

}  // namespace desktop
