// SPDX-License-Identifier: MIT
// Brings in the readings of a logger: a file, what its columns are (matched once and remembered), what would come in, in a sentence, and one
// button. All or nothing. A file can also be dropped on it.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace desktop {

class ColumnChoosers;
class FaultLabel;
class LoggerModel;

class LoggerDialog : public QDialog {
    Q_OBJECT

  public:
    explicit LoggerDialog(const PageContext& context, QWidget* parent = nullptr);

    void setFile(const QString& file);

  signals:
    void said(const QString& sentence);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    // logger_dialog_layout.cpp
    void makeFields();
    void makeChoices();
    void build();
    QFormLayout* makeForm();
    void connectFields();
    void orderTab();

    void pickFile();
    void showFormats();
    void showState();
    void showChoices();
    void showFaults();
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QString readySentence() const;
    [[nodiscard]] QString gapsText() const;
    void copyFaults();
    void bringIn();

    PageContext context_;
    LoggerModel* model_;
    QLineEdit* file_{};
    QPushButton* choose_{};
    QFormLayout* form_{};
    QComboBox* format_{};
    QComboBox* order_{};
    QComboBox* decimal_{};
    QComboBox* zone_{};
    QComboBox* twice_{};
    QCheckBox* noReading_{};
    ColumnChoosers* columns_{};
    QLabel* sentence_{};
    QLabel* gaps_{};
    FaultLabel* unsaid_{};
    QProgressBar* progress_{};
    QTableWidget* faults_{};
    QLabel* nameLabel_{};
    QLineEdit* name_{};
    QPushButton* copy_{};
    QPushButton* bringIn_{};
    QPushButton* cancel_{};
};

}  // namespace desktop
