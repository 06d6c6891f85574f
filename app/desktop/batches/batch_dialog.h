// SPDX-License-Identifier: MIT
// Corrects what was written down of a batch when it was stuck. Its day and who stuck it are the session's: see session_facts_dialog.h.
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/records.h"

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace desktop {

class CautionStrip;
class CountEdit;

class BatchDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Batch&)>;

    BatchDialog(const core::Batch& batch, const core::Shelves& shelves, Keep keep, QWidget* parent = nullptr);

  private:
    void build();
    void addField(QFormLayout& form, const QString& caption, const QString& field, QWidget* editor);
    void fillStockPlants();
    void mind();
    [[nodiscard]] core::Batch result() const;
    void agree();

    core::Batch batch_;
    core::Shelves shelves_;
    Keep keep_;
    FaultMarks marks_;
    QLineEdit* code_;
    QComboBox *plant_, *stockPlant_, *kind_, *treatment_, *station_, *medium_;
    CountEdit* stuck_;
    QLineEdit* note_;
    QLineEdit* licence_;
    CautionStrip* cautions_;
    FaultLabel* stuckFault_{};
    FaultLabel* rest_{};
};

}  // namespace desktop
