// SPDX-License-Identifier: MIT
// "Split by chance": which stations or treatments share a row's cuttings, under which trial and horizon, and which cutting goes where,
// to be printed and taken to the bench.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "app/desktop/session/split_draft.h"

class QButtonGroup;
class QLabel;
class QLineEdit;
class QListWidget;
class QListWidgetItem;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace desktop {

class AllocationTableModel;
class FaultLabel;

class SplitDialog : public QDialog {
    Q_OBJECT

  public:
    SplitDialog(SessionModel& model, SplitQuestion question, const PageContext& context, QWidget* parent = nullptr);

  signals:
    /// The person agreed; the dialog closes.
    void splitWanted(int row, const desktop::SplitByChance& split);

  private:
    void build();
    QVBoxLayout* makeChoices();
    QVBoxLayout* makeMap();
    void fillArms();
    void readArms();
    void showDraft();
    void agree();
    void print();

    SessionModel& model_;
    PageContext context_;
    SplitDraft draft_;
    AllocationTableModel* map_;
    QButtonGroup* factor_{};
    QListWidget* arms_{};
    QLineEdit* trial_{};
    QLineEdit* horizon_{};
    QLabel* legend_{};
    QTableView* table_{};
    FaultLabel* armsFault_{};
    FaultLabel* trialFault_{};
    FaultLabel* horizonFault_{};
    QPushButton* agree_{};
    QPushButton* print_{};
    QPushButton* method_{};
};

}  // namespace desktop
