// SPDX-License-Identifier: MIT
// What the batch that is shown lived through at its station: a row for each quantity. Read and worked out in the background, when it is in
// front.
#pragma once

#include <QWidget>
#include <vector>

#include "app/desktop/background/read_beside.h"
#include "app/desktop/page.h"
#include "core/climate/lived_through.h"

class QLabel;
class QTableView;

namespace desktop {

class BatchPageModel;
class FigureTableModel;

class BatchConditions : public QWidget {
    Q_OBJECT

  public:
    BatchConditions(BatchPageModel& model, const PageContext& context, QWidget* parent = nullptr);

    /// What stands here is of another batch, or of other records.
    void forget();

  signals:
    void said(const QString& sentence);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void ask();
    void fill(const std::vector<core::LivedQuantity>& lived);

    BatchPageModel& model_;
    PageContext context_;
    FigureTableModel* rows_;
    QLabel* words_;
    QTableView* table_;
    QLabel* method_;
    bool isAsked_{};
    ReadBeside<std::vector<core::LivedQuantity>> reading_;
};

}  // namespace desktop
