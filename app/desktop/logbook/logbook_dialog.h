// SPDX-License-Identifier: MIT
// What a new logbook starts from, on one page: its name and file, who keeps it, and in which units. Everything can be changed later in the
// settings.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/records.h"

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace desktop {

class RootLengthEdit;

class LogbookDialog : public QDialog {
    Q_OBJECT

  public:
    /// `facts` are what is proposed.
    LogbookDialog(const PageContext& context, const core::LogbookFacts& facts, const QString& file,
                  QWidget* parent = nullptr);

    [[nodiscard]] core::LogbookFacts facts() const;

  signals:
    void created(const QString& file);

  private:
    void addRow(QFormLayout* form, const QString& label, QWidget* editor, const QString& field,
                const QString& after = {}, const QString& hint = {});
    void addFileRow(QFormLayout* form);
    void addUnitRows(QFormLayout* form);
    void addButtons(QFormLayout* form);
    void chooseFile();
    void finish();

    PageContext context_;
    core::LogbookFacts before_;
    FaultMarks marks_;

    QLineEdit* name_;
    QLineEdit* grower_;
    QLineEdit* file_;
    QComboBox* temperature_;
    QComboBox* ec_;
    QLineEdit* currency_;
    QComboBox* paper_;
    RootLengthEdit* rootLength_;
};

}  // namespace desktop
