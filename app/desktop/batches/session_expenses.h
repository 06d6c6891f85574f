// SPDX-License-Identifier: MIT
// What was spent on a session, which its batches share: a list to add to, to correct and to take from. Each is kept at once.
#pragma once

#include <QWidget>

#include "core/records.h"

class QListWidget;
class QPushButton;

namespace desktop {

class BatchPageModel;
class FaultLabel;

class SessionExpenses : public QWidget {
    Q_OBJECT

  public:
    /// Of the session of the batch that the model shows.
    explicit SessionExpenses(BatchPageModel& model, QWidget* parent = nullptr);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QPushButton* makeButton(const QString& text, const char* name, const QString& tip, void (SessionExpenses::*act)());
    void fill();
    [[nodiscard]] const core::Expense* chosen() const;
    void add();
    void edit();
    void remove();
    void open(const core::Expense& expense);

    BatchPageModel& model_;
    QListWidget* list_;
    QPushButton *edit_{}, *remove_{};
    FaultLabel* fault_;
};

}  // namespace desktop
