// SPDX-License-Identifier: MIT
// Corrects a session's day, who and note. The day is that of all its batches, so the dialog says how many it moves.
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/records.h"

class QLineEdit;

namespace desktop {

class DateEdit;

class SessionFactsDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Session&)>;

    SessionFactsDialog(const core::Session& session, int batches, core::Date today, Keep keep,
                       QWidget* parent = nullptr);

  private:
    void agree();

    core::Session session_;
    Keep keep_;
    FaultMarks marks_;
    DateEdit* day_;
    QLineEdit* worker_;
    QLineEdit* note_;
    FaultLabel* dayFault_;
};

}  // namespace desktop
