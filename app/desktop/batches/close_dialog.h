// SPDX-License-Identifier: MIT
// Closes a batch by hand: the day, and why there is nothing left to wait for.
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/records.h"

class QComboBox;

namespace desktop {

class DateEdit;

class CloseDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(core::Date on, const QString& reason)>;

    CloseDialog(const core::BatchRecord& record, const core::Shelves& shelves, core::Date today, Keep keep,
                QWidget* parent = nullptr);

  private:
    void agree();

    Keep keep_;
    FaultMarks marks_;
    DateEdit* day_;
    QComboBox* reason_;
    FaultLabel* dayFault_;
    FaultLabel* reasonFault_;
};

}  // namespace desktop
