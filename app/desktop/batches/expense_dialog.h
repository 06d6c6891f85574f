// SPDX-License-Identifier: MIT
// Money that went into a batch, new or to be corrected.
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

class QLineEdit;

namespace desktop {

class DateEdit;

class ExpenseDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Expense&)>;

    /// `expense` without an id is new.
    ExpenseDialog(core::Expense expense, const core::Batch& batch, const std::string& currency, core::Date today,
                  Keep keep, QWidget* parent = nullptr);

  private:
    void agree();

    core::Expense expense_;
    Keep keep_;
    FaultMarks marks_;
    QLineEdit* what_;
    QLineEdit* amount_;
    FaultLabel* amountFault_;
    DateEdit* day_;
    FaultLabel* dayFault_;
};

}  // namespace desktop
