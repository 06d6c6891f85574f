// SPDX-License-Identifier: MIT
// Corrects a session's day, who and note, and what was spent on it: the minutes that it took, money and more. The day is that of all its
// batches, so the dialog says how many it moves.
#pragma once

#include <QDialog>

#include "app/desktop/widgets/fault_label.h"
#include "core/records.h"

class QFormLayout;
class QLineEdit;

namespace desktop {

class BatchPageModel;
class DateEdit;

class SessionFactsDialog : public QDialog {
    Q_OBJECT

  public:
    /// Of the session of the batch that the model shows.
    explicit SessionFactsDialog(BatchPageModel& model, QWidget* parent = nullptr);

  private:
    void build();
    void addButtons(QFormLayout& form);
    void takeWork();
    void agree();

    BatchPageModel& model_;
    core::Session session_;
    core::Expense work_;  // minutes and no money; without an id there is none yet
    FaultMarks marks_;
    DateEdit* day_;
    QLineEdit* worker_;
    QLineEdit* note_;
    QLineEdit* minutes_;
    FaultLabel* dayFault_;
};

}  // namespace desktop
