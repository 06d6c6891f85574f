// SPDX-License-Identifier: MIT
// The part of the bench that points out what is out of the ordinary. Enter or a double click leads to where it is dealt with.
#pragma once

#include <QWidget>
#include <vector>

#include "app/desktop/bench/attention_view.h"

class QLabel;
class QPushButton;
class QTableView;

namespace desktop {

class AttentionModel;

class AttentionPanel : public QWidget {
    Q_OBJECT

  public:
    explicit AttentionPanel(QWidget* parent = nullptr);

    /// `isLooking`: some batches are still being judged.
    /// `falseAlarmRate`: how often luck alone brings as few in an open batch.
    void show(std::vector<AttentionRow> rows, bool isLooking, double falseAlarmRate);
    void fitColumns();  // to what is shown, at the text size that is on

  signals:
    void batchWanted(core::BatchId batch);
    void stationWanted(core::StationId station);
    void suspectsWanted(core::BatchId batch);

  private:
    void lead(const QModelIndex& index);
    [[nodiscard]] core::BatchId currentBatch() const;
    void followCurrent();

    AttentionModel* model_;
    QTableView* table_{};
    QLabel* state_{};
    QPushButton* suspects_{};
};

}  // namespace desktop
