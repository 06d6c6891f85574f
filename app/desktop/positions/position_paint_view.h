// SPDX-License-Identifier: MIT
// A map that is painted on: a press begins a stroke, dragging carries it over other positions, and Space does the same to the block that is
// selected. What a stroke does is its owner's to say.
#pragma once

#include <optional>

#include "app/desktop/positions/position_map_view.h"

namespace desktop {

class PositionPaintView : public PositionMapView {
    Q_OBJECT

  public:
    explicit PositionPaintView(PositionMapModel& model, QWidget* parent = nullptr);

  signals:
    /// Pressed here: decide what is painted.
    void strokeBegun(core::Position position);
    /// Carried on over here.
    void strokeWentOver(core::Position position);
    /// Space, on the block or the one position selected.
    void spacePressed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    void goOver(core::Position position);

    std::optional<QPoint> brush_;  // where the pressed button was last
};

}  // namespace desktop
