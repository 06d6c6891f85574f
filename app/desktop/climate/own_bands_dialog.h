// SPDX-License-Identifier: MIT
// Where cuttings do well, stage by stage: the trade's bands with their sources, and the grower's own in their place, in general or for one
// plant.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"

class QComboBox;
class QTableView;

namespace desktop {

class FaultLabel;
class OwnBandsModel;

class OwnBandsDialog : public QDialog {
    Q_OBJECT

  public:
    explicit OwnBandsDialog(const PageContext& context, QWidget* parent = nullptr);

    void reject() override;  // asks once where something typed would be lost

  private:
    void build();
    void fillPlants();
    void removeChosen();

    PageContext context_;
    OwnBandsModel* model_;
    QComboBox* plant_;
    QTableView* table_;
    FaultLabel* fault_;
    bool hasWarned_{};
};

}  // namespace desktop
