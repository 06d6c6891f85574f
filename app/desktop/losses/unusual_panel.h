// SPDX-License-Identifier: MIT
// The list of batches out of the ordinary, with the way to what may have gone wrong with one, and to the batch itself.
#pragma once

#include <QWidget>

#include "core/id.h"

class QLabel;
class QPushButton;
class QTableView;

namespace core {
struct Shelves;
}
namespace report {
struct LossesAnswer;
}

namespace desktop {

class UnusualTableModel;

class UnusualPanel : public QWidget {
    Q_OBJECT

  public:
    explicit UnusualPanel(QWidget* parent = nullptr);

    void show(const report::LossesAnswer& answer, const core::Shelves& shelves);
    using QWidget::show;

  signals:
    void suspectsWanted(core::BatchId batch);
    void batchWanted(core::BatchId batch);
    void said(const QString& sentence);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] core::BatchId current() const;
    void fit();

    UnusualTableModel* model_;
    QLabel* words_;
    QTableView* table_;
    QPushButton *suspects_, *batch_;
};

}  // namespace desktop
