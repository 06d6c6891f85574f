// SPDX-License-Identifier: MIT
// Brings in a folder of tables: reads it in the background, then either lists every fault with its place or says what would come in and asks
// for one press of a button. All or nothing.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "db/exchange/import_folder.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace desktop {

class ImportReader;

class ImportDialog : public QDialog {
    Q_OBJECT

  public:
    ImportDialog(const PageContext& context, const QString& folder, QWidget* parent = nullptr);

    [[nodiscard]] const db::FolderContents& contents() const { return contents_; }
    [[nodiscard]] const QString& folder() const { return folder_; }

  private:
    void showContents();
    void showFaults();
    void showNews();
    void copyFaults();

    PageContext context_;
    QString folder_;
    ImportReader* reader_;
    db::FolderContents contents_;
    QLabel* sentence_;
    QProgressBar* progress_;
    QTableWidget* faults_;
    QPushButton* copy_;
    QPushButton* bringIn_;
    QPushButton* cancel_;
};

}  // namespace desktop
