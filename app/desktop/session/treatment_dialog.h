// SPDX-License-Identifier: MIT
// Describes a treatment that the logbook doesn't know yet, while a session is typed. It is added when the session is saved.
#pragma once

#include <QDialog>

#include "core/treatment/treatment.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLineEdit;

namespace desktop {

class CountEdit;
class FaultLabel;
class SessionModel;

class TreatmentDialog : public QDialog {
    Q_OBJECT

  public:
    TreatmentDialog(SessionModel& model, const QString& name, QWidget* parent = nullptr);

  signals:
    void described(const QString& name);

  private:
    void build();
    void addRows(QFormLayout& form);
    [[nodiscard]] QString read(core::Treatment& treatment) const;
    void agree();

    SessionModel& model_;
    QLineEdit* name_;
    QComboBox* auxin_;
    QComboBox* form_;
    QLineEdit* dose_;
    QComboBox* carrier_;
    CountEdit* seconds_;
    QCheckBox* wounded_;
    FaultLabel* fault_;
};

}  // namespace desktop
