// SPDX-License-Identifier: MIT
// Where the cuttings of the batch that is shown stand, and what became of each: the map of its station with its own in front.
#pragma once

#include <QWidget>

#include "app/desktop/page.h"

class QPushButton;

namespace desktop {

class BatchPageModel;
class PositionMapModel;
class PositionMapPanel;

class BatchMap : public QWidget {
    Q_OBJECT

  public:
    BatchMap(BatchPageModel& model, const PageContext& context, QWidget* parent = nullptr);

    /// False where its station has no positions described: then there is nothing to show.
    bool show(bool isWritable);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void fill();

    BatchPageModel& model_;
    PageContext context_;
    PositionMapModel* positions_;
    QPushButton* look_;
    bool isFilled_{};
};

}  // namespace desktop
