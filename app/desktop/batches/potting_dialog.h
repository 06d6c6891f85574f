// SPDX-License-Identifier: MIT
// A count after potting: how many of a batch's rooted cuttings were newly potted on, and how many of those potted were lost since.
#pragma once

#include <QDialog>
#include <functional>
#include <vector>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

class QFormLayout;
class QLabel;
class QPlainTextEdit;

namespace desktop {

class CountEdit;
class DateEdit;

class PottingDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Potting&)>;

    /// `potting` without an id is new; `others` are the batch's other counts.
    PottingDialog(core::Potting potting, core::BatchRecord record, std::vector<core::Potting> others, core::Date today,
                  Keep keep, QWidget* parent = nullptr);

  private:
    void build();
    void addCount(QFormLayout& form, const QString& label, CountEdit* edit, const char* field);
    [[nodiscard]] int rootedOn(core::Date day) const;
    /// What counts before it left to pot on the day.
    [[nodiscard]] int leftToPot(core::Date day) const;
    void tell();
    void agree();

    core::Potting potting_;
    core::BatchRecord record_;
    std::vector<core::Potting> others_;
    Keep keep_;
    FaultMarks marks_;
    DateEdit* day_;
    FaultLabel* dayFault_;
    CountEdit* potted_;
    CountEdit* lost_;
    QPlainTextEdit* note_;
    QLabel* inWords_;
};

}  // namespace desktop
