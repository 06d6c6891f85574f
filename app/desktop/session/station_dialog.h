// SPDX-License-Identifier: MIT
// Describes a station that the logbook doesn't know yet, while a session is typed. It is added when the session is saved.
#pragma once

#include <QDialog>

class QComboBox;
class QLineEdit;

namespace desktop {

class CountEdit;
class FaultLabel;
class SessionModel;

class StationDialog : public QDialog {
    Q_OBJECT

  public:
    StationDialog(SessionModel& model, const QString& name, QWidget* parent = nullptr);

  signals:
    void described(const QString& name);

  private:
    void build();
    void agree();

    SessionModel& model_;
    QLineEdit* name_;
    QComboBox* method_;
    CountEdit* rows_;
    CountEdit* columns_;
    FaultLabel* fault_;
};

}  // namespace desktop
