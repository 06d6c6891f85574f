// SPDX-License-Identifier: MIT
// The day and the caption of a photo.
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

class QLineEdit;

namespace desktop {

class DateEdit;

class PhotoFactsDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Photo&)>;

    PhotoFactsDialog(const core::Photo& photo, core::Date stuckOn, core::Date today, Keep keep,
                     QWidget* parent = nullptr);

  private:
    void agree();

    core::Photo photo_;
    Keep keep_;
    FaultMarks marks_;
    DateEdit* day_;
    FaultLabel* dayFault_;
    QLineEdit* caption_;
};

}  // namespace desktop
