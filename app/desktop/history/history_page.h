// SPDX-License-Identifier: MIT
// "Who changed which figure when?": everything that was done to the logbook, newest first, and the way back from the top.
#pragma once

#include "app/desktop/page.h"

class QLabel;
class QPushButton;
class QTableView;

namespace desktop {

class HistoryModel;

class HistoryPage : public Page {
    Q_OBJECT

  public:
    explicit HistoryPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;

  private:
    void readAgain();
    void nameButtons();

    PageContext context_;
    HistoryModel* model_;
    QTableView* table_{};
    QPushButton* undo_{};
    QPushButton* redo_{};
};

}  // namespace desktop
