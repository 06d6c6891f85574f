// SPDX-License-Identifier: MIT
// What a logbook says of itself, on one page: for a new one, with the file it will be, or for the one that is open. Everything can be changed
// later.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/records.h"

class QComboBox;
class QFormLayout;
class QLineEdit;
class QPushButton;

namespace desktop {

class CountEdit;

class LogbookDialog : public QDialog {
    Q_OBJECT

  public:
    enum class Purpose { New, Change };

    LogbookDialog(Purpose purpose, const PageContext& context, const core::LogbookFacts& facts, const QString& file,
                  QWidget* parent = nullptr);

    [[nodiscard]] core::LogbookFacts facts() const;

  signals:
    void created(const QString& file);

  private:
    void addRow(QFormLayout* form, const QString& label, QWidget* editor, const QString& field,
                const QString& after = {});
    void addFileRow(QFormLayout* form);
    void addDayRows(QFormLayout* form);
    void addButtons(QFormLayout* form);
    void chooseFile();
    void finish();
    [[nodiscard]] core::Refusals blanks() const;

    Purpose purpose_;
    PageContext context_;
    core::LogbookFacts before_;
    FaultMarks marks_;

    QLineEdit* name_;
    QLineEdit* grower_;
    QComboBox* paper_;
    CountEdit* rootLength_;
    CountEdit* firstCheck_;
    CountEdit* checkEvery_;
    CountEdit* horizon_;
    QLineEdit* file_{};
};

}  // namespace desktop
