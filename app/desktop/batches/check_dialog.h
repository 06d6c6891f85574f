// SPDX-License-Identifier: MIT
// One look at one batch, new or to be corrected. A refusal is shown where it belongs and the dialog stays open with all that was typed.
#pragma once

#include <QDialog>
#include <functional>
#include <vector>

#include "app/desktop/batches/check_draft.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

class QButtonGroup;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace desktop {

class DateEdit;

class CheckDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Check&)>;

    CheckDialog(CheckDraft draft, core::Date today, Keep keep, QWidget* parent = nullptr);

  private:
    struct FieldWidgets {
        QLineEdit* line;
        QLabel* other;
    };

    void build();
    QGridLayout* makeCounts();
    void addCount(QGridLayout& grid, int place, std::size_t field);
    void showDraft();
    void agree();

    CheckDraft draft_;
    core::Date today_;
    Keep keep_;
    FaultMarks marks_;
    DateEdit* day_{};
    QButtonGroup* way_{};
    std::vector<FieldWidgets> widgets_;
    FaultLabel* countFault_{};
    FaultLabel* dayFault_{};
    QLineEdit* note_{};
    FaultLabel* restFault_{};
    QLabel* inWords_{};
};

}  // namespace desktop
