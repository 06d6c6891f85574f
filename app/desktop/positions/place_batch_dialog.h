// SPDX-License-Identifier: MIT
// Where the cuttings of one batch stand: typed as "A1-B6", or painted on the map. What is free is proposed.
#pragma once

#include <QDialog>
#include <vector>

#include "app/desktop/page.h"
#include "core/batch/position_rules.h"

class QLabel;
class QLineEdit;

namespace desktop {

class FaultLabel;
class PositionMapModel;
class PositionPaintView;

class PlaceBatchDialog : public QDialog {
    Q_OBJECT

  public:
    /// Contract: the batch is in the logbook.
    PlaceBatchDialog(const PageContext& context, core::BatchId batch, QWidget* parent = nullptr);

  private:
    void build();
    void connectParts();
    void propose();
    void paint(const std::vector<core::Position>& positions);
    void showPlaces();
    void agree();
    [[nodiscard]] core::Batch placed() const;

    PageContext context_;
    core::Station station_;
    core::BatchRecord record_;
    std::vector<core::BatchRecord> others_;
    std::vector<core::HeldPosition> held_;
    PositionMapModel* map_;
    PositionPaintView* view_{};
    QLineEdit* typed_{};
    QLabel* count_{};
    FaultLabel* fault_{};
    bool takes_{true};  // what the stroke under way does
};

}  // namespace desktop
